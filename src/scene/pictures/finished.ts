/** Runs work that is cut into steps to its end, and answers what comes of it. */
export const finished = <T>(work: Generator<unknown, T>): T => {
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
  }
};
