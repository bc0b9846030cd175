/** Supply systems: volts between phases and to earth, fault currents, against the printed volts and closed forms. */
import { describe, expect, test } from 'vitest';
import { faultCurrent } from '../../../../src/engine/circuit/faultCurrent.ts';
import { solveCircuit } from '../../../../src/engine/circuit/solveCircuit.ts';
import { nominalSystems, soundPhaseInFault } from '../../../../src/engine/standards/systems.ts';
import { partById, withPart } from '../../../../src/engine/world/edit.ts';
import type { World } from '../../../../src/engine/world/types.ts';
import { withJumpers } from '../scene.ts';
import { model, modelText, only, worldOf } from './scenes.ts';

const onSystem = (id: string): World =>
  only(worldOf(modelText('wye-bank').replace('system: 13.2Y/7.62', `system: ${id}`)));
const near = (value: number, expected: number, part: number): void =>
  expect(Math.abs(value / expected - 1)).toBeLessThan(part);
/** The broken wire on dry asphalt, where staged tests saw next to no current. */
const onAsphalt = (world: World): World =>
  withPart(world, 's2.phase-c', {
    faults: partById(world, 's2.phase-c').faults.map((fault) => ({
      ...fault,
      values: { ...fault.values, groundOhms: 1e7 },
    })),
  });
const phases = ['a', 'b', 'c'] as const;
const wyes = nominalSystems.flatMap((system) =>
  system.phase === undefined ? [] : [{ ...system, phase: system.phase }],
);

describe.each(wyes)('$id', ({ id, line, phase }) => {
  const world = onSystem(id);
  const solution = solveCircuit(world);

  test('stands at its printed volts to earth and, phase to phase, at root three times that', () => {
    for (const letter of phases) near(solution.point(`p1.insulator-${letter}/conductor`).volts, phase, 2e-3);
    for (const [a, b] of [
      ['a', 'b'],
      ['b', 'c'],
      ['c', 'a'],
    ] as const) {
      const volts = solution.between(`p1.insulator-${a}/conductor`, `p1.insulator-${b}/conductor`);
      near(volts, Math.sqrt(3) * phase, 2e-3);
      // Printed line volts are rounded.
      near(volts, line, 5e-3);
    }
  });

  test('gives the stated fault current of one phase to the neutral and of three phases', () => {
    const ground = faultCurrent(world, 'p1.insulator-b/conductor', 'p1.neutral-spool/neutral');
    near(ground?.amperes ?? 0, 1600, 5e-3);
    near(ground?.xOverR ?? 0, 3, 1e-2);
    const shorted = withJumpers(world, [phases.map((letter) => `p1.insulator-${letter}/conductor`)]);
    for (const letter of phases)
      near(solveCircuit(shorted).branchCurrent('p1.source', `thevenin-${letter}`), 2000, 5e-3);
  });

  test('gives root three halves of the three-phase fault current between two phases', () => {
    const between = faultCurrent(world, 'p1.insulator-a/conductor', 'p1.insulator-c/conductor');
    near(between?.amperes ?? 0, (Math.sqrt(3) / 2) * 2000, 5e-3);
  });

  test('gives transformers the turns of the system and so 120 and 208 V', () => {
    const [x1, x3, x2] = ['p2.unit-a/x1', 'p2.unit-b/x1', 'p2.unit-a/x2'] as const;
    near(solution.between(x1, x2), 120, 0.02);
    near(solution.between(x1, x3), 208, 0.02);
  });
});

describe('4.8 kV delta', () => {
  const world = only(model('delta'));
  const solution = solveCircuit(world);
  const delta = nominalSystems.find(({ connection }) => connection === 'delta');

  test('stands at line volts between phases and, in balance, at line over root three to earth', () => {
    near(solution.between('p1.insulator-a/conductor', 'p1.insulator-b/conductor'), 4800, 2e-3);
    for (const letter of phases)
      near(solution.point(`p1.insulator-${letter}/conductor`).volts, 4800 / Math.sqrt(3), 0.03);
  });

  test('lifts the sound phases to line volts when one is grounded, and draws only its charging current', () => {
    const grounded = withJumpers(world, [['p1.insulator-a/conductor', 'p1.ground-lead/foot']]);
    const after = solveCircuit(grounded);
    const expected = delta ? soundPhaseInFault(delta) : 0;
    for (const letter of ['b', 'c']) near(after.point(`p1.insulator-${letter}/conductor`).volts, expected, 0.01);
    // 3 w C V of the rest of the circuit; leakage and the scene's own wires add a little.
    const charging = 3 * 2 * Math.PI * 60 * 35e-9 * (4800 / Math.sqrt(3));
    near(after.branchCurrent('jumper-1', '1'), charging, 0.05);
    expect(after.branchCurrent('jumper-1', '1')).toBeLessThan(0.2);
  });

  test('feeds a transformer with two bushings at 120/240 V and has no neutral along the line', () => {
    near(solution.between('p3.transformer/x1', 'p3.transformer/x3'), 240, 0.02);
    expect(world.parts.filter(({ kind }) => kind === 'neutral-spool' || kind === 'coupled-neutral')).toEqual([]);
  });

  test('makes a broken wire alive from behind through the transformer', () => {
    const dry = solveCircuit(onAsphalt(only(model('delta'), 'break')));
    expect(dry.point('s2.phase-c/b')).toMatchObject({ live: true, sources: ['system'] });
  });

  test('holds the far piece of its broken wire near earth where that lies on wet grass', () => {
    const [wet, dry] = [only(model('delta'), 'break'), onAsphalt(only(model('delta'), 'break'))].map((world) =>
      solveCircuit(world).between('s2.phase-c/b', 'earth'),
    );
    expect(wet).toBeLessThan(100);
    expect(dry).toBeGreaterThan(1000);
  });
});

test('two phases of a wye stand 120 degrees apart', () => {
  const solution = solveCircuit(only(model('open-wye')));
  near(solution.between('p1.insulator-a/conductor', 'p1.insulator-c/conductor'), Math.sqrt(3) * 7200, 2e-3);
});

test('a fault current between two points of one net is no fault', () => {
  expect(faultCurrent(model('delta'), 'p1.insulator-a/conductor', 's1.phase-a/a')).toBeNull();
});
