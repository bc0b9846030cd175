/** Walls that buildings share: a flat one with its texture in metres, and the pointed one under a gable. */
import { BufferAttribute, type BufferGeometry, PlaneGeometry } from 'three';
import { plate } from './shapes.ts';

/** Wall in the plane y, z facing +x, its foot at z = 0, its texture repeated every `tile` metres. */
export const sheet = (width: number, height: number, tile = 1): BufferGeometry => {
  const g = new PlaneGeometry(width, height).rotateY(Math.PI / 2).rotateX(Math.PI / 2);
  const uv = g.getAttribute('uv');
  for (let i = 0; i < uv.count; i++) uv.setXY(i, (uv.getX(i) * width) / tile, (uv.getY(i) * height) / tile);
  g.setAttribute('uv', new BufferAttribute(new Float32Array(uv.array), 2));
  return g.translate(0, 0, height / 2);
};

/** Gable end across x, half as wide as `w` says, standing at y = 0. */
export const gableEnd = (w: number, eaves: number, rise: number, thick: number): BufferGeometry =>
  plate(
    [
      [-w, 0],
      [w, 0],
      [w, eaves],
      [0, eaves + rise],
      [-w, eaves],
    ],
    thick,
    0,
  ).rotateX(Math.PI / 2);
