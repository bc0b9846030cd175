/**
 * Spool insulator in its clevis, for the neutral (`neutral-spool`, standing off a little) or a secondary or service
 * (`secondary-clevis`, smaller, swinging). Origin: face of the pole at the bolt; it stands off along `side`. The conductor
 * passes the spool on its outer side.
 */
import { Matrix4 } from 'three';
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

const spoolOn = (kind: string, scale: number, variants: readonly string[]): Builder =>
  builder({
    kind,
    variants,
    size: { conductor: 0.0051 },
    build: (a, size, part) => {
      const axis = 0.062 * scale;
      clevis(a, scale, axis);
      a.within(new Matrix4().makeTranslation(axis, 0, 0), () => {
        const k = [scale, scale] as const;
        a.add(part.variant === 'grey' ? 'porcelainGrey' : 'porcelainBrown', turnedOf('spool', k));
        a.markable(outerOf(profileOf('spool', k)));
        a.name('conductor', [0.027 * scale + size.conductor, 0, 0]);
        a.name('axis', [0, 0, 0]);
      });
    },
  });

export const neutralSpool = spoolOn('neutral-spool', 1, ['brown', 'grey']);
export const secondaryClevis = spoolOn('secondary-clevis', 0.78, ['grey', 'brown']);
