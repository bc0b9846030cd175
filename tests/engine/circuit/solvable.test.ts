/** Whatever the devices, faults and jumpers of the fog scene, its circuit can be solved and its protection comes to rest. */
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { componentKind } from '../../../src/engine/catalogue/components.ts';
import { elementsOf } from '../../../src/engine/circuit/elementsOf.ts';
import { settle } from '../../../src/engine/circuit/settle.ts';
import { solveCircuit } from '../../../src/engine/circuit/solveCircuit.ts';
import { RESIDUAL_BOUND } from '../../../src/engine/network/solveNetwork.ts';
import { faultsOf, pointsOf, withoutFault } from '../../../src/engine/world/edit.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { fogScene, withJumpers, withState } from './scene.ts';

const start = fogScene();
const faults = faultsOf(start).map(({ fault }) => fault.id);

/** Every state of every part that has states. */
const choices = start.parts.flatMap((part) =>
  Object.entries(componentKind(part.kind).states).map(([state, values]) => ({ part: part.id, state, values })),
);

const anyStates: fc.Arbitrary<World> = fc
  .tuple(...choices.map(({ values }) => fc.constantFrom(...values)))
  .map((values) =>
    choices.reduce((world, { part, state }, i) => withState(world, part, { [state]: values[i] as string }), start),
  );

const anyJumpers = fc.array(fc.uniqueArray(fc.constantFrom(...pointsOf(start)), { minLength: 2, maxLength: 4 }), {
  maxLength: 4,
});

const anyWorld: fc.Arbitrary<World> = fc
  .tuple(anyStates, anyJumpers, fc.subarray(faults))
  .map(([world, jumpers, mended]) => mended.reduce(withoutFault, withJumpers(world, jumpers)));

describe('the circuit', () => {
  test('has a solution in any state of devices, jumpers and faults, flashed over or not', () => {
    fc.assert(
      fc.property(anyWorld, fc.boolean(), (world, isCredible) => {
        const { network } = solveCircuit(world, isCredible ? { credible: true } : {});
        expect(network.residual).toBeLessThan(RESIDUAL_BOUND);
      }),
      { numRuns: 300, seed: 20261124 },
    );
  });

  test('comes to rest: each device operates at most once, at the end none would', () => {
    fc.assert(
      fc.property(anyWorld, (world) => {
        const { world: rested, operations } = settle(world);
        const devices = operations.map(({ part, branch }) => `${part}:${branch}`);
        expect(new Set(devices).size).toBe(devices.length);
        expect(settle(rested)).toMatchObject({ operations: [], world: rested });
      }),
      { numRuns: 150, seed: 20261125 },
    );
  });

  test('gives every bare point a finite voltage and current, and no source where nothing is live', () => {
    fc.assert(
      fc.property(anyWorld, (world) => {
        for (const { volts, throughKilohm, live, sources } of solveCircuit(world).points) {
          expect(Number.isFinite(volts) && volts >= 0 && Number.isFinite(throughKilohm)).toBe(true);
          expect(live).toBe(sources.length > 0);
        }
      }),
      { numRuns: 40, seed: 20261126 },
    );
  });

  test('is the same, and comes to rest the same way, whatever the order of parts and jumpers', () => {
    fc.assert(
      fc.property(anyWorld, (world) => {
        const shuffled = { ...world, parts: [...world.parts].reverse(), jumpers: [...world.jumpers].reverse() };
        expect(elementsOf(shuffled)).toEqual(elementsOf(world));
        // Other soil, so that the answer is worked out anew: operations do not hang on it.
        const elsewhere = { ...shuffled, site: { ...world.site, resistivity: 2 * world.site.resistivity } };
        expect(settle(elsewhere).operations).toEqual(settle(world).operations);
      }),
      { numRuns: 20, seed: 20261127 },
    );
  });
});
