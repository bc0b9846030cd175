/** A lit room as seen through its window: a ceiling brighter than the floor, a lamp, curtains drawn back. Centred on the pane, metres times `chamferBox`'s tiles. */
import { ClampToEdgeWrapping, type DataTexture } from 'three';
import { colours } from './textures.ts';

/** Width of what the texture shows, metres; wider panes show curtain on. */
const SPAN = 1.3;
/** Tiles of a metre on a chamfered box. */
const TILES = 6;
/** Share of the width that a curtain takes on each side. */
const CURTAIN = 0.2;

/** How bright a spot of the pane is, 0 to 1. */
const shade = (u: number, v: number): number => {
  const aside = Math.min(u, 1 - u);
  const fold = 0.5 + 0.5 * Math.cos(aside * 110);
  if (aside < CURTAIN * (0.8 + 0.35 * (1 - v))) return 0.34 + 0.16 * fold;
  const lamp = Math.exp(-((u - 0.63) ** 2 + (v - 0.62) ** 2) / 0.012);
  const board = v < 0.36 && u > 0.3 && u < 0.5 ? 0.6 : 1;
  return Math.min(1, board * (0.55 + 0.3 * v) + 0.5 * lamp);
};

export const litRoom = (): DataTexture => {
  const texture = colours(64, 64, (u, v) => {
    const s = 255 * shade(u, v);
    return [s, s, s];
  });
  texture.wrapS = ClampToEdgeWrapping;
  texture.wrapT = ClampToEdgeWrapping;
  texture.repeat.setScalar(1 / (TILES * SPAN));
  texture.offset.setScalar(0.5);
  return texture;
};
