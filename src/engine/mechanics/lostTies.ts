/**
 * A conductor over several supports that have let go, one tie or two: the spans between the next ties that hold become one.
 * Its length is the sum of theirs (parabola, standards/sag.ts), so it hangs at the sag of that length; places and swing are
 * those of looseConductor.ts. Left out: stretch, slip at the ties that hold, and what it catches on below.
 */
import { distance, length as size, type Vec3 } from '../math/vec3.ts';
import { parabolicLength } from '../standards/sag.ts';
import type { Metres } from '../units/quantities.ts';
import type { LooseConductor } from './looseConductor.ts';

const level = (a: Vec3, b: Vec3): Metres => size([b[0] - a[0], b[1] - a[1], 0]);

/** Length along a conductor between supports of any height: its parabola, on the chord. */
const along = (a: Vec3, b: Vec3, sag: Metres): Metres => {
  const span = level(a, b);
  return parabolicLength(span, sag) - span + distance(a, b);
};

/** A loose conductor and the places where its ties were, metres from its first support. */
export interface LooseOver {
  readonly conductor: LooseConductor;
  readonly lostAt: readonly Metres[];
}

/**
 * Joins spans between `supports` (the first and last hold) that hang at `sags`, one less; throws a RangeError unless each
 * span has length and one support at least has let go.
 */
export function looseOver(supports: readonly Vec3[], sags: readonly Metres[]): LooseOver {
  const [from, to] = [supports[0], supports.at(-1)];
  if (from === undefined || to === undefined || supports.length < 3) throw new RangeError('no support has let go');
  if (sags.length !== supports.length - 1) throw new RangeError('a sag for each span');
  let length = 0;
  let run = 0;
  const lostAt: Metres[] = [];
  for (const [i, sag] of sags.entries()) {
    const [a, b] = [supports[i] as Vec3, supports[i + 1] as Vec3];
    const span = level(a, b);
    if (!(span > 0)) throw new RangeError('a span without length');
    length += along(a, b, sag);
    run += span;
    if (i < sags.length - 1) lostAt.push(run);
  }
  const span = level(from, to);
  const spare = Math.max(0, length - distance(from, to));
  const sag = Math.sqrt((3 * span * spare) / 8);
  return { conductor: { from, to, length, sag, lostAt: lostAt[0] ?? 0 }, lostAt };
}
