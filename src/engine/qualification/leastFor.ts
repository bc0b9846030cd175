/** Where a model changes its answer, by halving. */

/** The least of low to high for which `is` holds; `is` must hold from somewhere on. */
export const leastFor = (low: number, high: number, is: (value: number) => boolean): number => {
  let [no, yes] = [low, high];
  for (let k = 0; k < 40; k += 1) {
    const middle = (no + yes) / 2;
    if (is(middle)) yes = middle;
    else no = middle;
  }
  return yes;
};
