/**
 * Lead or span of wire through given points, in the frame of its parent (origin: the parent's). Variants name the
 * material. States: `whole`, `cut` (a clean bright end) or `burned` (a melted bead, sooty) at the last point.
 * Size: radius, sag (with two points only).
 */
import { SphereGeometry, Vector3 } from 'three';
import type { MaterialName } from '../materials/materials.ts';
import { type Assembly, builder } from './assembly.ts';
import { curve, hanging } from './shapes.ts';
import type { Point } from './types.ts';
import { wire } from './wire.ts';

const materialOf: Readonly<Record<string, MaterialName>> = {
  copper: 'copper',
  insulated: 'insulation',
  aluminium: 'aluminiumStrand',
  steel: 'steelStrand',
};

/** Draws what a parted wire shows: bright splayed strands of a cut, or the bead and soot of a burn. */
export const partedEnd = (a: Assembly, end: Vector3, toward: Vector3, radius: number, burned: boolean): void => {
  if (burned) {
    const bead = new SphereGeometry(radius * 1.7, 10, 7).scale(1, 1, 1.2);
    a.add('steelDark', bead.translate(end.x, end.y, end.z));
    const neck = [
      end.clone().addScaledVector(toward, -radius * 14),
      end.clone().addScaledVector(toward, -radius * 6),
      end,
    ];
    a.add(
      'black',
      wire(neck, (t) => radius * (1.06 + 0.12 * t), 8),
    );
    return;
  }
  for (let i = 0; i < 3; i++) {
    const t = (i / 3) * 2 * Math.PI;
    const off = new Vector3(Math.cos(t), Math.sin(t), 0.4 * Math.sin(t * 2)).multiplyScalar(radius * 0.5);
    const root = end
      .clone()
      .add(off)
      .addScaledVector(toward, -radius * 2);
    const tip = end
      .clone()
      .addScaledVector(off, 2.2)
      .addScaledVector(toward, radius * (2.4 + i));
    a.add('copperFresh', wire([root, end.clone().add(off), tip], radius * 0.42, 5));
  }
};

const course = (points: readonly Point[], sag: number): Vector3[] => {
  const [p, q] = points;
  if (points.length === 2 && p && q) return hanging(p, q, sag, sag > 0 ? 32 : 2);
  return curve(points, Math.min(120, points.length * 9));
};

export const lead = builder({
  kind: 'lead',
  states: ['whole', 'cut', 'burned'],
  variants: ['copper', 'insulated', 'aluminium', 'steel'],
  size: { radius: 0.0032, sag: 0 },
  build: (a, size, part) => {
    if (part.points.length < 2) throw new RangeError('lead: two points at least');
    const line = course(part.points, size.sag);
    a.add(materialOf[part.variant] as MaterialName, wire(line, size.radius, 8, size.radius * 22));
    const end = line[line.length - 1] as Vector3;
    const before = line[line.length - 2] as Vector3;
    if (part.state !== 'whole') {
      partedEnd(a, end, end.clone().sub(before).normalize(), size.radius, part.state === 'burned');
    }
    a.name('end', [end.x, end.y, end.z]);
  },
});
