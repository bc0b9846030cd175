/** Whatever the devices, faults and jumpers of a model scene, its circuit can be solved and its protection comes to rest. */
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { componentKind } from '../../../../src/engine/catalogue/components.ts';
import { settle } from '../../../../src/engine/circuit/settle.ts';
import { solveCircuit } from '../../../../src/engine/circuit/solveCircuit.ts';
import { RESIDUAL_BOUND } from '../../../../src/engine/network/solveNetwork.ts';
import { faultsOf, pointsOf, withoutFault } from '../../../../src/engine/world/edit.ts';
import type { World } from '../../../../src/engine/world/types.ts';
import { withJumpers, withState } from '../scene.ts';
import { model, modelNames } from './scenes.ts';

function anyOf(start: World): fc.Arbitrary<World> {
  const choices = start.parts.flatMap((part) =>
    Object.entries(componentKind(part.kind).states).map(([state, values]) => ({ part: part.id, state, values })),
  );
  const jumpers = fc.array(fc.uniqueArray(fc.constantFrom(...pointsOf(start)), { minLength: 2, maxLength: 4 }), {
    maxLength: 3,
  });
  const faults = faultsOf(start).map(({ fault }) => fault.id);
  return fc
    .tuple(fc.tuple(...choices.map(({ values }) => fc.constantFrom(...values))), jumpers, fc.subarray(faults))
    .map(([values, put, mended]) => {
      const stated = choices.reduce(
        (w, { part, state }, i) => withState(w, part, { [state]: values[i] as string }),
        start,
      );
      return mended.reduce(withoutFault, withJumpers(stated, put));
    });
}

describe.each(modelNames)('the scene %s', (name) => {
  const start = model(name);

  test('has a solution in any state, flashed over or not', () => {
    fc.assert(
      fc.property(anyOf(start), fc.boolean(), (world, isCredible) => {
        const { network } = solveCircuit(world, isCredible ? { credible: true } : {});
        expect(network.residual).toBeLessThan(RESIDUAL_BOUND);
      }),
      { numRuns: 60, seed: 20261125 },
    );
  });

  test('comes to rest, where nothing more would operate', () => {
    fc.assert(
      fc.property(anyOf(start), (world) => {
        const { world: rested } = settle(world);
        expect(settle(rested)).toMatchObject({ operations: [], world: rested });
      }),
      { numRuns: 30, seed: 20261126 },
    );
  });
});
