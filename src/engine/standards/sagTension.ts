/**
 * Sag and tension after a change of temperature or load: the length that heat and stress give must be the length that the
 * parabola needs, (w2 S)2/(24 T2 2) - (w1 S)2/(24 T1 2) = alpha (t2 - t1) + (T2 - T1)/(E A). Change-of-state
 * equation of line-design manuals, solved by bisection. Level dead-end or ruling span. Left out: creep and the
 * strand-by-strand behaviour of ACSR (one modulus, one coefficient), movement of supports, sag over 5 % of the span.
 */
import { hypot } from '../math/elementary.ts';
import type { Metres, Newtons } from '../units/quantities.ts';

/** One state of a span: weight per metre with ice and wind, horizontal tension, temperature in degrees Celsius. */
export interface SpanState {
  readonly weight: Newtons;
  readonly tension: Newtons;
  readonly celsius: number;
}

/** What stretches: modulus times area in newtons, and the coefficient of expansion per degree. */
export interface Elastic {
  readonly stiffness: Newtons;
  readonly expansion: number;
}

/** Moduli (Pa) and coefficients of ACSR 6/1 and 26/7 and of hard-drawn copper (from memory of conductor manuals). */
export const conductorElasticity = {
  'acsr-6/1': { modulus: 79e9, expansion: 19.1e-6 },
  'acsr-26/7': { modulus: 75e9, expansion: 18.9e-6 },
  copper: { modulus: 117e9, expansion: 16.9e-6 },
} as const;

/** Horizontal tension in the new state; throws a RangeError for a span or tension that is not positive. */
export const tensionAfter = (
  span: Metres,
  before: SpanState,
  { weight, celsius }: Omit<SpanState, 'tension'>,
  { stiffness, expansion }: Elastic,
): Newtons => {
  if (!(span > 0 && before.tension > 0 && weight > 0)) throw new RangeError('a span needs length, weight and tension');
  const slack = (w: Newtons, tension: Newtons): number => (w * span * (w * span)) / (24 * tension * tension);
  const free = slack(before.weight, before.tension) + expansion * (celsius - before.celsius);
  const excess = (tension: Newtons): number => slack(weight, tension) - free - (tension - before.tension) / stiffness;
  let low = before.tension * 1e-6;
  let high = before.tension;
  while (excess(high) > 0) high *= 2;
  // 60 halvings reach the last bit of a double.
  for (let k = 0; k < 60; k++) {
    const middle = (low + high) / 2;
    if (excess(middle) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

/** Weight per metre under ice and wind: vertical and horizontal loads at right angles. */
export const resultantWeight = (bare: Newtons, ice: Newtons, wind: Newtons): Newtons => hypot(bare + ice, wind);

/** Weight per metre of radial ice on a conductor; ice of 913 kg/m3 (NESC 57 lb/ft3, from memory). */
export const iceWeight = (diameter: Metres, radial: Metres): Newtons =>
  9.80665 * 913 * Math.PI * radial * (diameter + radial);
