/**
 * Lead or span of wire through given points, in the frame of its parent (origin: the parent's). Variants name the
 * material. States: `whole`, `cut` (a clean bright end) or `burned` (a melted bead, sooty) at the last point, `frayed` (strands
 * sprung out), `worn` (jacket gone, bright metal), `armoured` (rods laid round it) or `spliced` (a sleeve) at share `at` of the way. Size: radius, sag (with two points only), at.
 */
import { SphereGeometry, Vector3 } from 'three';
import type { MaterialName } from '../materials/materials.ts';
import { type Assembly, builder } from './assembly.ts';
import { curve, hanging } from './shapes.ts';
import { armoured, frayed, spliced, spotOn } from './spanFittings.ts';
import type { Point } from './types.ts';
import { wire } from './wire.ts';

const materialOf: Readonly<Record<string, MaterialName>> = {
  copper: 'copper',
  insulated: 'insulation',
  aluminium: 'aluminiumStrand',
  steel: 'steelStrand',
  bronze: 'bronze',
  zinc: 'zinc',
  verdigris: 'verdigris',
  cord: 'safetyOrange',
  pale: 'white',
  amber: 'lampLit',
  blade: 'green',
};

/** Strands of a conductor that parted under tension: spread at its tip, each bent its own way. */
const spread = (a: Assembly, end: Vector3, toward: Vector3, radius: number): void => {
  const side = toward
    .clone()
    .cross(new Vector3(0.3, 0.8, 0.2))
    .normalize();
  const other = toward.clone().cross(side);
  for (let k = 0; k < 6; k++) {
    const t = k * 1.05 + 0.3;
    const out = side.clone().multiplyScalar(Math.cos(t)).addScaledVector(other, Math.sin(t));
    const reach = 0.05 + 0.009 * ((k * 5) % 6);
    const course = [0, 0.35, 0.7, 1].map((s): Point => {
      const p = end
        .clone()
        .addScaledVector(toward, reach * s - 0.01)
        .addScaledVector(out, radius * 0.6 + 0.028 * s * s);
      return [p.x, p.y, p.z];
    });
    a.add('aluminium', wire(curve(course, 10), radius * 0.34, 5));
  }
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
  states: ['whole', 'cut', 'burned', 'frayed', 'worn', 'armoured', 'spliced'],
  variants: [
    'copper',
    'insulated',
    'aluminium',
    'steel',
    'bronze',
    'zinc',
    'verdigris',
    'cord',
    'pale',
    'amber',
    'blade',
  ],
  size: { radius: 0.0032, sag: 0, at: 0.06 },
  build: (a, size, part) => {
    if (part.points.length < 2) throw new RangeError('lead: two points at least');
    const line = course(part.points, size.sag);
    a.add(materialOf[part.variant] as MaterialName, wire(line, size.radius, 8, size.radius * 22));
    const end = line[line.length - 1] as Vector3;
    const before = line[line.length - 2] as Vector3;
    const fitted = { frayed, armoured, spliced }[part.state];
    if (fitted) fitted(a, line, size.radius, size.at);
    else if (part.state === 'worn') worn(a, line, size.radius, size.at);
    else if (part.state === 'cut' && part.variant === 'aluminium')
      spread(a, end, end.clone().sub(before).normalize(), size.radius);
    else if (part.state !== 'whole') {
      partedEnd(a, end, end.clone().sub(before).normalize(), size.radius, part.state === 'burned');
    }
    a.name('end', [end.x, end.y, end.z]);
  },
});
