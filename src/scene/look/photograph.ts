/**
 * A photo as a phone takes it: what the eye has before it, no nearer than attention brings it to the bare eye, small, in the light
 * there is. A phone is not held to the glass, and shows nothing that the view does not.
 */
import type { Aid } from '../../engine/senses/types.ts';
import type { Stage } from '../stage.ts';
import { type Look, zooms } from './view.ts';

const WIDTH = 480;
const HEIGHT = 320;
const QUALITY = 0.72;

/** Draws the view once more and takes its middle, as a JPEG data address; null where nothing can be drawn now. */
export const photographOf = (stage: Stage, look: Look, aid: Aid, near?: number): string | null => {
  if (stage.lost()) return null;
  stage.draw({ ...look, zoom: Math.min(look.zoom, zooms.eyes.near) }, aid === 'glass' ? 'eyes' : aid, near);
  const copy = document.createElement('canvas');
  copy.width = WIDTH;
  copy.height = HEIGHT;
  const context = copy.getContext('2d');
  if (context === null) return null;
  const { width, height } = stage.canvas;
  const share = Math.min(width / WIDTH, height / HEIGHT);
  const [w, h] = [WIDTH * share, HEIGHT * share];
  context.drawImage(stage.canvas, (width - w) / 2, (height - h) / 2, w, h, 0, 0, WIDTH, HEIGHT);
  return copy.toDataURL('image/jpeg', QUALITY);
};
