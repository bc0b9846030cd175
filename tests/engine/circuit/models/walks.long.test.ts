/** Walks of acts that are on offer, drawn at random, in each model scene: every World on the way can be solved and is at rest. */
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { act } from '../../../../src/engine/acts/act.ts';
import { possibleActs } from '../../../../src/engine/acts/possibleActs.ts';
import { circuitKey } from '../../../../src/engine/circuit/circuitKey.ts';
import { settle } from '../../../../src/engine/circuit/settle.ts';
import { solveCircuit } from '../../../../src/engine/circuit/solveCircuit.ts';
import { RESIDUAL_BOUND } from '../../../../src/engine/network/solveNetwork.ts';
import { model, modelNames } from './scenes.ts';

const STEPS = 40;
const idle = [
  ...['look', 'listen', 'ask', 'tell', 'guard', 'check-tool', 'engine', 'wait', 'count-grounds', 'everyone-clear'],
  ...['call-finding', 'withdraw-finding', 'plan', 'withdraw-plan', 'brief', 'hand-over', 'close-out', 'touch'],
];

describe.each(modelNames)('in the scene %s', (name) => {
  test('every World that acts lead to can be solved, and nothing more operates in it', () => {
    let changed = 0;
    fc.assert(
      fc.property(fc.array(fc.nat({ max: 1_000_000 }), { minLength: STEPS, maxLength: STEPS }), (draws) => {
        let world = model(name);
        for (const draw of draws) {
          // Who is struck or done begins anew.
          if (world.ended !== null) world = model(name);
          const offers = possibleActs(world);
          // Words and looks change no circuit, and a walk shall not end early.
          const rest = offers.filter(({ act: { act: verb } }) => !idle.includes(verb));
          const offer = rest[draw % Math.max(1, rest.length)];
          if (offer === undefined) break;
          const result = act(world, offer.act);
          if (!result.ok) continue;
          if (circuitKey(result.world) !== circuitKey(world)) changed += 1;
          world = result.world;
          expect(solveCircuit(world).network.residual).toBeLessThan(RESIDUAL_BOUND);
          expect(settle(world).operations).toEqual([]);
        }
      }),
      { numRuns: 8, seed: 20261125 },
    );
    expect(changed).toBeGreaterThan(5);
  });
});
