/**
 * Area under the ROC curve as the share of pairs that stand in the right order, a tie counting half: the Mann-Whitney
 * statistic over the number of pairs (Mann and Whitney 1947, Annals of Mathematical Statistics 18, 50-60; Hanley and McNeil
 * 1982, Radiology 143, 29-36). Standard error after Hanley and McNeil: their Q1 and Q2 of exponential distributions.
 * Left out: fitted (binormal) areas.
 */

/** Share of pairs (high, low) with high above low; null when a list is empty. Mid-ranks, in n log n. */
export const rankArea = (high: readonly number[], low: readonly number[]): number | null => {
  if (high.length === 0 || low.length === 0) return null;
  const all = [...high.map((value) => ({ value, mine: true })), ...low.map((value) => ({ value, mine: false }))].sort(
    (a, b) => a.value - b.value,
  );
  let ranks = 0;
  for (let from = 0; from < all.length; ) {
    let to = from;
    while (to < all.length && all[to]?.value === all[from]?.value) to++;
    const middle = (from + 1 + to) / 2;
    ranks += middle * all.slice(from, to).filter(({ mine }) => mine).length;
    from = to;
  }
  const [n, m] = [high.length, low.length];
  return (ranks - (n * (n + 1)) / 2) / (n * m);
};

/** Standard error of an area found with `n` above and `m` below; Hanley and McNeil 1982, equations 1 and 2. */
export const rankAreaError = (area: number, n: number, m: number): number => {
  const q1 = area / (2 - area);
  const q2 = (2 * area * area) / (1 + area);
  const square = area * area;
  return Math.sqrt(Math.max(0, area * (1 - area) + (n - 1) * (q1 - square) + (m - 1) * (q2 - square)) / (n * m));
};
