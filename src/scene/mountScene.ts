/**
 * The picture of a drill: three.js draws the world on the canvas below, Phaser runs the transparent one above. Reads snapshots
 * and tells what is looked at; the drill never depends on it. Nothing is drawn and no loop runs while nothing changes.
 */
import type { MountScene, SceneHandle, SceneView } from '../drill/sceneTypes.ts';
import type { Snapshot } from '../drill/types.ts';
import { Attention } from './attention.ts';
import { hasWebGl } from './renderer.ts';
import { stageOf } from './stage.ts';

const absent: SceneHandle = {
  update: () => undefined,
  lookToward: () => undefined,
  turn: () => undefined,
  yaw: () => 0,
  photograph: () => null,
  dispose: () => undefined,
  supported: false,
};

/** Says in the picture's place how far it has come; gone when it is there. */
const progressIn = (el: HTMLElement): { show(share: number): void; remove(): void } => {
  const note = document.createElement('div');
  note.setAttribute('role', 'progressbar');
  note.setAttribute('aria-label', 'Drawing the scene');
  note.style.cssText =
    'position:absolute;left:50%;top:42%;transform:translate(-50%,-50%);padding:6px 12px;background:#1b1f26;color:#f4efe2;font:15px system-ui,sans-serif;pointer-events:none;';
  el.append(note);
  return {
    show: (share) => {
      if (share >= 1) {
        note.remove();
        return;
      }
      const percent = String(Math.floor(share * 100));
      if (note.getAttribute('aria-valuenow') === percent) return;
      note.setAttribute('aria-valuenow', percent);
      note.textContent = `Drawing the scene … ${percent} %`;
    },
    remove: () => note.remove(),
  };
};

const fill = 'position:absolute;inset:0;width:100%;height:100%;display:block;';

/** Mounts the picture in an element; without WebGL it mounts nothing and says so. */
export const mountScene: MountScene = (el: HTMLElement, view: SceneView): SceneHandle => {
  if (!hasWebGl()) return absent;
  const first: Snapshot = view.snapshot();
  let redraw = (): void => undefined;
  const stage = stageOf(first.world, () => redraw());
  stage.canvas.style.cssText = fill;
  stage.canvas.setAttribute('aria-hidden', 'true');
  const above = document.createElement('div');
  above.style.cssText = `${fill}touch-action:none;`;
  above.setAttribute('aria-hidden', 'true');
  const before = el.style.position;
  if (getComputedStyle(el).position === 'static') el.style.position = 'relative';
  el.append(stage.canvas, above);
  const progress = progressIn(el);
  const attention = new Attention(el, above, stage, view, progress.show);
  redraw = () => attention.change();
  return {
    ...attention.handle,
    dispose: () => {
      attention.handle.dispose();
      stage.dispose();
      above.remove();
      progress.remove();
      el.style.position = before;
    },
  };
};
