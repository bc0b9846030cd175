/**
 * The circuit of the first scene from scratch, ours against ngspice on a deck of the same elements in the same process;
 * and one act that changes the circuit with all that follows from it. Ratios are what counts: machines are shared.
 * ngspice gets its deck written, without a line that it could do without; we assemble the elements as well, solve for each
 * group of sources apart, and read the volts of every node, as ngspice writes them. What we keep of networks met before
 * is which entries they have and which were pivots, never a value: "never met" has an element more whose name is new.
 */
import { bench, describe } from 'vitest';
import { act } from '../../src/engine/acts/act.ts';
import type { Act } from '../../src/engine/acts/types.ts';
import { elementsOf, netsOf } from '../../src/engine/circuit/elementsOf.ts';
import { netlistOf } from '../../src/engine/circuit/netlistOf.ts';
import { complex } from '../../src/engine/math/complex.ts';
import { solveNetwork } from '../../src/engine/network/solveNetwork.ts';
import { EARTH } from '../../src/engine/network/types.ts';
import { signsFrom } from '../../src/engine/senses/signsFrom.ts';
import type { World } from '../../src/engine/world/types.ts';
import { played, start } from '../engine/acts/scene.ts';
import { runNgspice } from '../oracle/ngspice.ts';
import { timed } from './timed.ts';

const scene = start();
const deck = netlistOf(scene)
  .split('\n')
  .filter((line) => !/^(\*|\.print)/.test(line))
  .join('\n');
const nodes = [...new Set(elementsOf(scene).flatMap(netsOf))].filter((node) => node !== EARTH);

describe('the scene from scratch', () => {
  let step = 0;
  // A load that differs each time, so that no remembered solution can answer.
  const solve = (id: string): void => {
    step += 1;
    const load = { kind: 'admittance', id, from: 'a.b1', to: 'earth', y: complex(1e-9 * step) } as const;
    const solution = solveNetwork([...elementsOf(scene), load]);
    if (!solution.ok) throw new Error(solution.reason);
    let sum = 0;
    for (const node of nodes) {
      const { re, im } = solution.voltage(node);
      sum += re * re + im * im;
    }
    if (!(sum > 0)) throw new Error('nothing is live');
  };
  const warmed = { warmupIterations: 2000, iterations: 1000 };
  const ours = timed('assembled and solved by us');
  bench(
    'assembled and solved by us',
    () => {
      const began = ours.begin();
      solve('bench:load');
      ours.end(began);
    },
    { ...ours, ...warmed },
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
    { ...first, ...warmed },
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
