/**
 * The circuit of the first scene from scratch, ours against ngspice on a deck of the same elements in the same process; and one act that
 * changes the circuit with all that follows from it. Ratios are what counts: machines are shared.
 */
import { bench, describe } from 'vitest';
import { act } from '../../src/engine/acts/act.ts';
import { elementsOf } from '../../src/engine/circuit/elementsOf.ts';
import { netlistOf } from '../../src/engine/circuit/netlistOf.ts';
import { complex } from '../../src/engine/math/complex.ts';
import { solveNetwork } from '../../src/engine/network/solveNetwork.ts';
import { signsFrom } from '../../src/engine/senses/signsFrom.ts';
import type { World } from '../../src/engine/world/types.ts';
import { played, start } from '../engine/acts/scene.ts';
import { runNgspice } from '../oracle/ngspice.ts';

const scene = start();
const deck = netlistOf(scene);

describe('the scene from scratch', () => {
  let step = 0;
  bench('assembled and solved by us', () => {
    // A load that differs each time, so that nothing remembered can answer.
    step += 1;
    const solution = solveNetwork([
      ...elementsOf(scene),
      { kind: 'admittance', id: `bench:${step}`, from: 'a.b1', to: 'earth', y: complex(1e-9 * step) },
    ]);
    if (!solution.ok) throw new Error(solution.reason);
  });
  bench('ngspice on the same elements', async () => {
    await runNgspice(deck);
  });
});

const onScene = (): World => {
  const there = played(played(scene, { act: 'acknowledge' }), { act: 'park', at: 'clear' });
  return played(there, { act: 'go', to: 'a.yard' });
};

describe('one act that changes the circuit', () => {
  const yard = onScene();
  let watts = 600;
  bench('owner stops the set: circuit, hazards met and signs', () => {
    watts += 1;
    const parts = yard.parts.map((part) =>
      part.id === 'a.load' ? { ...part, values: { ...part.values, bothW: watts } } : part,
    );
    const result = act({ ...yard, parts }, { act: 'owner', part: 'a.generator', operation: 'stop' });
    if (!result.ok) throw new Error(result.reason);
    signsFrom(result.world, 'a.yard', 'eyes');
  });
});
