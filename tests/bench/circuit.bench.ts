/**
 * The circuit of the first scene from scratch, ours against ngspice on a deck of the same elements in the same process;
 * one act that changes the circuit with all that follows from it; and the acts of a walk through the scenario. Ratios are
 * what counts: machines are shared.
 */
import { bench, describe } from 'vitest';
import { act } from '../../src/engine/acts/act.ts';
import { possibleActs } from '../../src/engine/acts/possibleActs.ts';
import type { Act } from '../../src/engine/acts/types.ts';
import { elementsOf } from '../../src/engine/circuit/elementsOf.ts';
import { netlistOf } from '../../src/engine/circuit/netlistOf.ts';
import { complex } from '../../src/engine/math/complex.ts';
import { solveNetwork } from '../../src/engine/network/solveNetwork.ts';
import { signsFrom } from '../../src/engine/senses/signsFrom.ts';
import type { World } from '../../src/engine/world/types.ts';
import { played, start } from '../engine/acts/scene.ts';
import { runNgspice } from '../oracle/ngspice.ts';

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
function timed(name: string) {
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

const scene = start();
const deck = netlistOf(scene);

describe('the scene from scratch', () => {
  let step = 0;
  // A load that differs each time, so that no remembered solution can answer.
  const solve = (id: string): void => {
    step += 1;
    const load = { kind: 'admittance', id, from: 'a.b1', to: 'earth', y: complex(1e-9 * step) } as const;
    const solution = solveNetwork([...elementsOf(scene), load]);
    if (!solution.ok) throw new Error(solution.reason);
  };
  const ours = timed('assembled and solved by us');
  bench(
    'assembled and solved by us',
    () => {
      const began = ours.begin();
      solve('bench:load');
      ours.end(began);
    },
    ours,
  );
  const first = timed('assembled and solved by us, as a network never met');
  // A name never met before: unknowns are numbered and pivots searched anew.
  bench(
    'assembled and solved by us, as a network never met',
    () => {
      const began = first.begin();
      solve(`bench:${step}`);
      first.end(began);
    },
    first,
  );
  const theirs = timed('ngspice on the same elements');
  bench(
    'ngspice on the same elements',
    async () => {
      const began = theirs.begin();
      await runNgspice(deck);
      theirs.end(began);
    },
    // Until its WebAssembly is compiled for speed.
    { ...theirs, warmupIterations: 60, iterations: 60 },
  );
});

const parked = played(scene, { act: 'acknowledge' }, { act: 'park', at: 'clear' });

function done(world: World, each: Act): World {
  const result = act(world, each);
  if (!result.ok) throw new Error(result.reason);
  return result.world;
}

describe('one act that changes the circuit', () => {
  let watts = 600;
  let apart = 0;
  /** In the yard, by an act as any other, in a World whose load no circuit was ever solved for; its time does not count. */
  const inYard = (): World => {
    const began = performance.now();
    watts += 1;
    const parts = parked.parts.map((part) =>
      part.id === 'a.load' ? { ...part, values: { ...part.values, bothW: watts } } : part,
    );
    const there = done({ ...parked, parts }, { act: 'go', to: 'a.yard' });
    apart += performance.now() - began;
    return there;
  };
  const one = timed('owner stops the set: circuit, hazards met and signs');
  bench(
    'owner stops the set: circuit, hazards met and signs',
    () => {
      const before = inYard();
      const began = one.begin();
      const after = done(before, { act: 'owner', part: 'a.generator', operation: 'stop' });
      signsFrom(after, 'a.yard', 'eyes');
      one.end(began);
    },
    { ...one, now: () => performance.now() - apart, warmupIterations: 100, iterations: 300 },
  );
});

const TRANSITIONS = 200;

/** The first transitions of a breadth-first walk through all that is on offer. */
function walk(from: World): readonly { readonly world: World; readonly act: Act }[] {
  const steps: { readonly world: World; readonly act: Act }[] = [];
  const worlds = [from];
  const began = performance.now();
  for (const world of worlds) {
    for (const { act: each } of possibleActs(world)) {
      steps.push({ world, act: each });
      const after = act(world, each);
      if (after.ok && after.world.ended === null) worlds.push(after.world);
      if (steps.length === TRANSITIONS) {
        const seconds = (performance.now() - began) / 1000;
        console.log(`walked for the first time: ${(TRANSITIONS / seconds).toFixed(0)} transitions a second`);
        return steps;
      }
    }
  }
  return steps;
}

describe('acts of a breadth-first walk', () => {
  const steps = walk(parked);
  let at = 0;
  let clones = 0;
  // Every step once before: circuit solutions are remembered by what they are read from, as in a search.
  const again = { time: 0, warmupTime: 0, warmupIterations: TRANSITIONS, iterations: TRANSITIONS };
  const acting = timed('an act, its circuit met before');
  bench(
    'an act, its circuit met before',
    () => {
      const { world, act: each } = steps[at++ % steps.length] as (typeof steps)[number];
      const began = acting.begin();
      act(world, each);
      acting.end(began);
    },
    { ...acting, ...again },
  );
  const cloning = timed('a structured clone of a World');
  bench(
    'a structured clone of a World',
    () => {
      const { world } = steps[clones++ % steps.length] as (typeof steps)[number];
      const began = cloning.begin();
      structuredClone(world);
      cloning.end(began);
    },
    { ...cloning, ...again },
  );
});
