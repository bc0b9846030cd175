/**
 * Lead or span of wire through given points, in the frame of its parent (origin: the parent's). Variants name the
 * material. States: `whole`, `cut` (a clean bright end) or `burned` (a melted bead, sooty) at the last point, `frayed` (strands
 * sprung out) or `worn` (jacket gone, bright metal) at share `at` of the way. Size: radius, sag (with two points only), at.
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
  rust: 'rust',
  verdigris: 'green',
  cord: 'safetyOrange',
  pale: 'white',
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

/** The place and direction at a share of a course. */
const spotOn = (line: readonly Vector3[], share: number): { readonly at: Vector3; readonly d: Vector3 } => {
  const place = Math.min(line.length - 1.001, share * (line.length - 1));
  const i = Math.floor(place);
  const [p, q] = [line[i] as Vector3, line[i + 1] as Vector3];
  return { at: p.clone().lerp(q, place - i), d: q.clone().sub(p).normalize() };
};

/** Outer strands broken and sprung away from the conductor, each with its own curl. */
const frayed = (a: Assembly, line: readonly Vector3[], radius: number, share: number): void => {
  const { at, d } = spotOn(line, share);
  const n = d
    .clone()
    .cross(new Vector3(0.31, 0.2, 1))
    .normalize();
  const b = d.clone().cross(n);
  for (let k = 0; k < 5; k++) {
    const t = k * 2.4 + 0.5;
    const out = n.clone().multiplyScalar(Math.cos(t)).addScaledVector(b, Math.sin(t));
    const sign = k % 2 === 0 ? 1 : -1;
    const reach = 0.03 + 0.016 * k;
    const course = [
      at.clone().addScaledVector(out, radius * 0.8),
      at
        .clone()
        .addScaledVector(d, sign * 0.03)
        .addScaledVector(out, radius + reach * 0.4),
      at
        .clone()
        .addScaledVector(d, sign * 0.06)
        .addScaledVector(out, radius + reach),
      at
        .clone()
        .addScaledVector(d, sign * 0.055)
        .addScaledVector(out, radius + reach * 1.4),
    ];
    a.add(
      'aluminium',
      wire(
        curve(
          course.map((p) => [p.x, p.y, p.z] as Point),
          10,
        ),
        radius * 0.32,
        5,
      ),
    );
  }
};

/** A hand of jacket gone, its ends ragged, metal bare between. */
const worn = (a: Assembly, line: readonly Vector3[], radius: number, share: number): void => {
  const { at, d } = spotOn(line, share);
  const ends = [-0.06, 0, 0.06].map((s) => at.clone().addScaledVector(d, s));
  a.add('aluminiumStrand', wire(ends, radius * 1.04, 9, radius * 22));
  for (const s of [-1, 1])
    a.add(
      'insulation',
      wire(
        [
          at.clone().addScaledVector(d, s * 0.06),
          at.clone().addScaledVector(d, s * 0.075),
          at.clone().addScaledVector(d, s * 0.095),
        ],
        radius * 1.3,
        8,
      ),
    );
};

export const lead = builder({
  kind: 'lead',
  states: ['whole', 'cut', 'burned', 'frayed', 'worn'],
  variants: ['copper', 'insulated', 'aluminium', 'steel', 'rust', 'verdigris', 'cord', 'pale'],
  size: { radius: 0.0032, sag: 0, at: 0.06 },
  build: (a, size, part) => {
    if (part.points.length < 2) throw new RangeError('lead: two points at least');
    const line = course(part.points, size.sag);
    a.add(materialOf[part.variant] as MaterialName, wire(line, size.radius, 8, size.radius * 22));
    const end = line[line.length - 1] as Vector3;
    const before = line[line.length - 2] as Vector3;
    if (part.state === 'frayed') frayed(a, line, size.radius, size.at);
    else if (part.state === 'worn') worn(a, line, size.radius, size.at);
    else if (part.state !== 'whole') {
      partedEnd(a, end, end.clone().sub(before).normalize(), size.radius, part.state === 'burned');
    }
    a.name('end', [end.x, end.y, end.z]);
  },
});
