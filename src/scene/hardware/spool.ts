/**
 * Spool insulator in its clevis, for the neutral (`neutral-spool`, standing off a little) or a secondary or service
 * (`secondary-clevis`, smaller, swinging). Origin: face of the pole at the bolt; it stands off along `side`. The conductor
 * passes the spool on its outer side. State `broken`: the outer half gone, the wire on the bolt.
 */
import { type BufferGeometry, Matrix4 } from 'three';
import { type Assembly, builder } from './assembly.ts';
import { outerOf, profileOf, turnedOf } from './profiles.ts';
import { bar, bolt, rod } from './shapes.ts';
import type { Builder } from './types.ts';

const clevis = (a: Assembly, k: number, axis: number): void => {
  const half = 0.046 * k;
  a.add('zinc', bar([0.006, 0, -half], [0.006, 0, half], 0.045 * k, 0.006, [1, 0, 0]));
  for (const s of [-1, 1]) {
    a.add('zinc', bar([0.004, 0, s * half], [axis + 0.028 * k, 0, s * half], 0.045 * k, 0.006));
  }
  a.add('zinc', rod([axis, 0, -half - 0.03 * k], [axis, 0, half + 0.012 * k], 0.0075 * k, 10));
  a.add('zinc', rod([axis, 0, half + 0.003], [axis, 0, half + 0.014 * k], 0.013 * k, 12));
  a.add(
    'steelDark',
    rod([axis - 0.016 * k, 0, -half - 0.02 * k], [axis + 0.016 * k, 0.004, -half - 0.022 * k], 0.002 * k, 6),
  );
  a.add('zinc', bolt([0.01, 0, 0], [1, 0, 0], 0.026 * k, 0));
};

const glazes = { brown: 'porcelainBrown', grey: 'porcelainGrey', white: 'porcelainWhite' } as Readonly<
  Record<string, 'porcelainBrown' | 'porcelainGrey' | 'porcelainWhite'>
>;

/** Where porcelain broke along the bolt, toward the pole, ragged. */
const fracture = (z: number): number => -0.003 + 0.004 * Math.sin(z * 190 + 1) + 0.0025 * Math.sin(z * 510);

/** The half that is left in the clevis, and the raw face where the other came off. */
const broken = (whole: BufferGeometry): readonly [glazed: BufferGeometry, raw: BufferGeometry] => {
  const p = whole.getAttribute('position');
  const index = whole.getIndex()?.array ?? [];
  const edge = (i: number): number => fracture(p.getZ(i) + 0.4 * p.getY(i));
  const parts: [number[], number[]] = [[], []];
  for (let i = 0; i < index.length; i += 3) {
    const corners = [0, 1, 2].map((k) => index[i + k] as number);
    parts[corners.every((k) => p.getX(k) >= edge(k)) ? 1 : 0].push(...corners);
  }
  const cut = whole.clone();
  const q = cut.getAttribute('position');
  for (let i = 0; i < q.count; i++) q.setX(i, Math.min(q.getX(i), edge(i)));
  const [glazed, raw] = [cut, cut.clone()];
  glazed.setIndex(parts[0]);
  raw.setIndex(parts[1]);
  const normal = raw.getAttribute('normal');
  for (let i = 0; i < normal.count; i++) normal.setXYZ(i, 1, 0, 0);
  return [glazed, raw];
};

const spoolOn = (kind: string, scale: number, variants: readonly string[]): Builder =>
  builder({
    kind,
    states: ['whole', 'broken'],
    variants,
    size: { conductor: 0.0051 },
    build: (a, size, part) => {
      const axis = 0.062 * scale;
      clevis(a, scale, axis);
      a.within(new Matrix4().makeTranslation(axis, 0, 0), () => {
        const k = [scale, scale] as const;
        const glaze = glazes[part.variant] as 'porcelainBrown';
        if (part.state === 'broken') {
          const [left, raw] = broken(turnedOf('spool', k));
          a.add(glaze, left);
          a.add('bisque', raw);
        } else a.add(glaze, turnedOf('spool', k));
        a.markable(outerOf(profileOf('spool', k)));
        // Of a broken one the wire rests on the bolt.
        const held = part.state === 'broken' ? 0.0075 : 0.027;
        a.name('conductor', [held * scale + size.conductor, 0, 0]);
        a.name('axis', [0, 0, 0]);
      });
    },
  });

export const neutralSpool = spoolOn('neutral-spool', 1, ['brown', 'grey', 'white']);
export const secondaryClevis = spoolOn('secondary-clevis', 0.78, ['grey', 'brown']);
