/** Builds a piece of hardware where it stands; wires are given the thickness and the swing that keep them even lines. */
import { BufferAttribute, type BufferGeometry, type Group, type Material, type Mesh } from 'three';
import { hardware } from '../hardware/registry.ts';
import type { Point } from '../hardware/types.ts';
import { thin } from '../look/thinWire.ts';
import type { Materials } from '../materials/materials.ts';
import { lineCover } from './lineCover.ts';
import type { Piece } from './types.ts';

/**
 * Writes for each vertex of a wire how far it hangs below the chord of its supports, along it sideways and down, and the wire's
 * radius, metres. What does not swing hangs by nothing.
 */
const hang = (g: BufferGeometry, points: readonly Point[], radius: number): void => {
  const p = g.getAttribute('position');
  const swing = new Float32Array(p.count * 4);
  const [a, b] = [points[0], points[points.length - 1]];
  const [dx, dy] = a && b ? [b[0] - a[0], b[1] - a[1]] : [0, 0];
  const l = Math.max(1e-6, Math.hypot(dx, dy));
  for (let i = 0; i < p.count; i++) {
    swing[i * 4 + 3] = radius;
    if (!a || !b) continue;
    const t = Math.min(1, Math.max(0, ((p.getX(i) - a[0]) * dx + (p.getY(i) - a[1]) * dy) / (l * l)));
    const depth = Math.max(0, a[2] + (b[2] - a[2]) * t - p.getZ(i));
    swing.set([(-dy / l) * depth, (dx / l) * depth, depth], i * 4);
  }
  g.setAttribute('swing', new BufferAttribute(swing, 4));
};

/** Builds a piece of hardware where it stands. */
export const buildPiece = (piece: Piece, set: Materials): Group => {
  const build = piece.spec.kind === lineCover.kind ? lineCover : hardware[piece.spec.kind];
  if (!build) throw new Error(`nothing draws ${piece.spec.kind}`);
  const group = build(piece.spec, set);
  group.position.set(...piece.at);
  group.updateMatrix();
  group.matrixAutoUpdate = false;
  const { thin: radius } = piece;
  if (radius !== undefined) {
    for (const child of group.children as Mesh[]) {
      child.material = thin(child.material as Material);
      child.renderOrder = 5;
      hang(child.geometry, piece.swings ? (piece.spec.points ?? []) : [], radius);
    }
  }
  return group;
};
