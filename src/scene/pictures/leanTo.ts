/** Groups of a pole out of plumb: built as if it stood plumb, then moved aside by their height, the way the engine moves the parts (`world/lean.ts`). */
import { type Group, Matrix4, type Object3D } from 'three';
import type { Lean } from '../../engine/world/types.ts';

/** How a group leans; null: not at all. */
export const leanOfGroup = ({ userData }: Object3D): Lean | null => (userData.lean as Lean | undefined) ?? null;

/** Leans a group that has been set down; its matrix is its own from then on. */
export const leanTo = (group: Group, lean: Lean): void => {
  group.userData.lean = lean;
  const [x, y] = lean;
  group.updateMatrix();
  group.matrix.premultiply(new Matrix4().set(1, 0, x, 0, 0, 1, y, 0, 0, 0, 1, 0, 0, 0, 0, 1));
  group.matrixAutoUpdate = false;
};
