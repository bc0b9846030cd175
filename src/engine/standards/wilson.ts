/**
 * Wilson's score interval for a proportion (E. B. Wilson 1927; values in Newcombe 1998, Table I), without continuity
 * correction. Left out: anything but independent trials.
 */

/** Two-sided 95 % normal quantile. */
const z95 = 1.959963984540054;

/** Bounds of a proportion of `hits` in `trials`; 0 to 1 without trials. */
export const wilsonInterval = (
  hits: number,
  trials: number,
  z = z95,
): { readonly lower: number; readonly upper: number } => {
  if (trials === 0) return { lower: 0, upper: 1 };
  const p = hits / trials;
  const z2 = z * z;
  const centre = p + z2 / (2 * trials);
  const reach = z * Math.sqrt((p * (1 - p)) / trials + z2 / (4 * trials * trials));
  const scale = 1 + z2 / trials;
  // At either end the bound is exact; rounding would leave a trace of it.
  return {
    lower: hits === 0 ? 0 : Math.max(0, (centre - reach) / scale),
    upper: hits === trials ? 1 : Math.min(1, (centre + reach) / scale),
  };
};

/** The same for a report: nothing without trials. */
export const rateInterval = (hits: number, trials: number): readonly [number | null, number | null] => {
  if (trials === 0) return [null, null];
  const { lower, upper } = wilsonInterval(hits, trials);
  return [lower, upper];
};
