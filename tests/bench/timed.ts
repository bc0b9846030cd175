/** Times benchmarks by the clock and by the processor time, and says the medians with their ratios. */

const medianOf = (samples: readonly number[]): number =>
  samples.slice().sort((a, b) => a - b)[Math.floor(samples.length / 2)] ?? Number.NaN;

interface Watch {
  readonly wall: number;
  readonly cpu: number;
}

const look = (): Watch => {
  const { user, system } = process.cpuUsage();
  return { wall: performance.now(), cpu: (user + system) / 1000 };
};

/** Medians by name, milliseconds: on a shared machine processor time says more than the clock on the wall. */
const medians = new Map<string, Watch>();

/** Times what a benchmark does and says the median, which the table lacks. */
export function timed(name: string) {
  let samples: Watch[] = [];
  return {
    begin: look,
    end: (began: Watch) => {
      const now = look();
      samples.push({ wall: now.wall - began.wall, cpu: now.cpu - began.cpu });
    },
    setup: () => {
      samples = [];
    },
    teardown: (_: unknown, mode: 'run' | 'warmup') => {
      if (mode !== 'run') return;
      const median = { wall: medianOf(samples.map(({ wall }) => wall)), cpu: medianOf(samples.map(({ cpu }) => cpu)) };
      medians.set(name, median);
      const said = [...medians].map(
        ([other, { cpu }]) => `${(median.cpu / cpu).toFixed(1)} times the processor time of: ${other}`,
      );
      console.log(
        `${name}: median ${median.wall.toFixed(4)} ms, ${median.cpu.toFixed(4)} ms of processor time, ${samples.length} samples`,
        ...said.slice(0, -1).map((line) => `\n  ${line}`),
      );
    },
  };
}
