/** Protection: which device operates, when, and that it ends. */
import { describe, expect, test } from 'vitest';
import { JUMPER } from '../../../src/engine/circuit/impedances.ts';
import { HORIZON, settle } from '../../../src/engine/circuit/settle.ts';
import { solveCircuit } from '../../../src/engine/circuit/solveCircuit.ts';
import { abs, add, complex } from '../../../src/engine/math/complex.ts';
import { tripTime } from '../../../src/engine/standards/breaker.ts';
import { clearTime } from '../../../src/engine/standards/fuseLinks.ts';
import { partById } from '../../../src/engine/world/edit.ts';
import { fogScene, piece, tinyWorld, withState } from './scene.ts';

const source = (ohms: number) =>
  piece('s', 'system-source', { nets: { line: 'line', neutral: 'earth' }, values: { ohms, reactance: 0 } });
const cutout = (id: string, link: string, top: string, bottom: string) =>
  piece(id, 'cutout', { nets: { top, bottom }, state: { position: 'closed', link: 'sound' }, words: { link } });

describe('a faulted fuse', () => {
  const earth = piece('e', 'ground-rod', { nets: { rod: 'rod' }, values: { ohms: 10 } });
  const world = tinyWorld([source(20), cutout('c', '10K', 'line', 'load'), earth], [['c/bottom', 'e/rod']]);

  test('operates at the current of the fault, after the clearing time of its link, and hangs open', () => {
    const { operations, world: rested, solution } = settle(world);
    const amperes = 7200 / abs(add(complex(20 + 10 + 0.02, 0.001), JUMPER));
    expect(operations).toHaveLength(1);
    expect(operations[0]).toMatchObject({ part: 'c', branch: 'link' });
    expect(operations[0]?.amperes).toBeCloseTo(amperes, 3);
    expect(operations[0]?.seconds).toBeCloseTo(clearTime({ speed: 'K', rating: 10 }, amperes), 5);
    expect(partById(rested, 'c').state).toEqual({ position: 'open', link: 'blown' });
    expect(solution.point('c/bottom').live).toBe(false);
  });

  test('leaves every other part the same object and the World that it was given as it was', () => {
    const before = JSON.stringify(world);
    const { world: rested } = settle(world);
    expect(JSON.stringify(world)).toBe(before);
    expect(partById(rested, 'e')).toBe(partById(world, 'e'));
  });

  test('does not operate under twice its rating', () => {
    const light = tinyWorld([source(400), cutout('c', '10K', 'line', 'load'), earth], [['c/bottom', 'e/rod']]);
    const { operations, world: rested } = settle(light);
    expect(operations).toEqual([]);
    expect(rested).toBe(light);
  });
});

describe('devices in series', () => {
  const fault = [['b/bottom', 'e/rod']];
  const earth = piece('e', 'ground-rod', { nets: { rod: 'rod' }, values: { ohms: 60 } });

  test('the faster link operates and saves the slower one', () => {
    const world = tinyWorld(
      [source(20), cutout('a', '40K', 'line', 'm'), cutout('b', '10K', 'm', 'load'), earth],
      fault,
    );
    expect(settle(world).operations.map(({ part }) => part)).toEqual(['b']);
  });

  test('of equal links the first by id operates, whatever the order of the parts', () => {
    const parts = [source(20), cutout('a', '10K', 'line', 'm'), cutout('b', '10K', 'm', 'load'), earth];
    const forward = settle(tinyWorld(parts, fault)).operations;
    expect(forward.map(({ part }) => part)).toEqual(['a']);
    expect(settle(tinyWorld([...parts].reverse(), fault)).operations).toEqual(forward);
  });
});

describe('in the fog scene', () => {
  test('nothing operates at the start', () => {
    const world = fogScene();
    expect(settle(world)).toMatchObject({ operations: [] });
    expect(settle(world).world).toBe(world);
  });

  test('closing the tap on the running set trips its breaker at once, at the worst angle, and no fuse', () => {
    const joined = withState(fogScene(), 'p1.tap-cutout', { position: 'closed', link: 'sound' });
    const amperes = solveCircuit(joined).branchCurrent('a.generator', 'breaker-1');
    const { operations, world } = settle(joined);
    expect(operations.map(({ part }) => part)).toEqual(['a.generator']);
    expect(operations[0]?.seconds).toBeCloseTo(tripTime(30, amperes), 6);
    expect(partById(world, 'a.generator').state.breaker).toBe('open');
    expect(partById(world, 'p1.tap-cutout').state).toEqual({ position: 'closed', link: 'sound' });
  });

  test('a flashover with the tap closed blows the link that took the current before', () => {
    const { operations } = settle({
      ...withState(withState(fogScene(), 'p1.tap-cutout', { position: 'closed', link: 'sound' }), 'a.generator', {
        run: 'stopped',
        breaker: 'open',
      }),
      jumpers: [{ id: 'arc', tool: 'arc', points: ['p2.insulator/conductor', 'p2.neutral-spool/neutral'] }],
    });
    expect(operations[0]).toMatchObject({ part: 'p1.tap-cutout', branch: 'link' });
    expect(operations[0]?.seconds).toBeLessThan(1);
  });

  test('each operation is within the horizon', () => {
    const joined = withState(fogScene(), 'p1.tap-cutout', { position: 'closed', link: 'sound' });
    for (const { seconds } of settle(joined).operations) expect(seconds).toBeLessThanOrEqual(HORIZON);
  });
});
