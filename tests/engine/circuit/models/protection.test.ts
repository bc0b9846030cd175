/** Protection stepped in time: reclosers, links, breakers; closing into a fault, a shorted secondary, two circuits crossed. */
import { describe, expect, test } from 'vitest';
import { settle } from '../../../../src/engine/circuit/settle.ts';
import { solveCircuit } from '../../../../src/engine/circuit/solveCircuit.ts';
import type { Operation } from '../../../../src/engine/circuit/types.ts';
import { clearTime } from '../../../../src/engine/standards/fuseLinks.ts';
import {
  lockoutTime,
  recloserSequence,
  recloserTrip,
  usualSequence,
} from '../../../../src/engine/standards/recloser.ts';
import { partById } from '../../../../src/engine/world/edit.ts';
import type { Part, PointId, World } from '../../../../src/engine/world/types.ts';
import { piece, tinyWorld, withJumpers, withState } from '../scene.ts';
import { model, only } from './scenes.ts';

const source = (amps: number): Part =>
  piece('s', 'system-source', {
    nets: { line: 'feed', neutral: 'earth' },
    values: { ohms: 7200 / amps, reactance: 1e-3 },
  });
const recloser = (values: Record<string, number> = {}, state: Record<string, string> = {}): Part =>
  piece('r', 'upstream-recloser', {
    nets: { source: 'feed', load: 'line' },
    values: { pickUpA: 100, ...values },
    state: { position: 'closed', reclosing: 'automatic', ...state },
  });
const cutout = (link: string): Part =>
  piece('c', 'cutout', {
    nets: { top: 'line', bottom: 'tap' },
    words: { link },
    state: { position: 'closed', link: 'sound' },
  });
const earth = piece('e', 'neutral-spool', { nets: { neutral: 'earth' } });
const told = (operations: readonly Operation[]): string[] => operations.map(({ part, branch }) => `${part}:${branch}`);

describe('a recloser on a lasting fault', () => {
  const fault: readonly (readonly PointId[])[] = [['r/load', 'e/neutral']];
  const world = (amps: number, ...more: Parameters<typeof recloser>): World =>
    tinyWorld([source(amps), recloser(...more), earth], fault);

  test.each([
    [400, 1],
    [800, 2],
    [1500, 0],
  ])('of %d A trips as its curves say with %d fast trips, and locks out', (amps, fast) => {
    const { operations, world: rested } = settle(world(amps, { fast }));
    const amperes = operations[0]?.amperes ?? 0;
    const shots = recloserSequence({ pickUp: 100, fast, waits: usualSequence.waits }, amperes);
    expect(operations.map(({ seconds }) => seconds)).toEqual(
      shots.map(({ from, trips }) => expect.closeTo(trips - from, 9)),
    );
    expect(operations.map(({ closesAfter }) => closesAfter)).toEqual([...usualSequence.waits, null]);
    const waited = usualSequence.waits.reduce((sum, wait) => sum + wait, 0);
    const total = operations.reduce((sum, { seconds }) => sum + seconds, waited);
    expect(total).toBeCloseTo(lockoutTime(shots) ?? 0, 9);
    expect(partById(rested, 'r').state.position).toBe('locked-out');
    expect(solveCircuit(rested).point('r/load' as PointId).live).toBe(false);
  });

  test('trips once and stays open when its reclosing is blocked', () => {
    const { operations, world: rested } = settle(world(800, { fast: 1 }, { reclosing: 'blocked' }));
    expect(operations).toMatchObject([{ part: 'r', closesAfter: null }]);
    expect(operations[0]?.seconds).toBeCloseTo(recloserTrip('fast', 100, operations[0]?.amperes ?? 0), 9);
    expect(partById(rested, 'r').state.position).toBe('locked-out');
  });

  test('stays closed under its pick-up', () => {
    expect(settle(world(95)).operations).toEqual([]);
  });
});

describe('a recloser before a link', () => {
  const fault: readonly (readonly PointId[])[] = [['c/bottom', 'e/neutral']];
  const world = (link: string, fast: number): World =>
    tinyWorld([source(600), recloser({ fast }), cutout(link), earth], fault);

  test('of 25 K trips fast first, then the link clears and the recloser stays closed', () => {
    const { operations, world: rested } = settle(world('25K', 1));
    expect(told(operations)).toEqual(['r:contacts', 'c:link']);
    expect(operations[0]?.closesAfter).toBe(usualSequence.waits[0]);
    expect(partById(rested, 'r').state).toEqual({ position: 'closed', reclosing: 'automatic' });
    expect(partById(rested, 'c').state).toEqual({ position: 'open', link: 'blown' });
  });

  test('of 10 K comes too late: the link is quicker than its fast curve', () => {
    const { operations } = settle(world('10K', 1));
    expect(told(operations)).toEqual(['c:link']);
    expect(operations[0]?.seconds).toBeLessThan(recloserTrip('fast', 100, operations[0]?.amperes ?? 0));
  });

  test('of 25 K without a fast trip lets the link clear by itself', () => {
    const { operations } = settle(world('25K', 0));
    expect(told(operations)).toEqual(['c:link']);
    expect(operations[0]?.seconds).toBeCloseTo(clearTime({ speed: 'K', rating: 25 }, operations[0]?.amperes ?? 0), 9);
  });

  test('of 200 K is not in time: the recloser locks out and the link is whole', () => {
    const { operations, world: rested } = settle(world('200K', 1));
    expect(told(operations)).toEqual(['r:contacts', 'r:contacts', 'r:contacts', 'r:contacts']);
    expect(partById(rested, 'c').state.link).toBe('sound');
  });

  test('a T link of the same size is slower than a K link', () => {
    const [k, t] = ['25K', '25T'].map(
      (link) => settle(world(link, 0)).operations.find(({ part }) => part === 'c')?.seconds ?? Number.POSITIVE_INFINITY,
    );
    expect(t).toBeGreaterThan(k ?? 0);
  });
});

describe('in the scene with two reclosers and a link', () => {
  const sound = only(model('recloser'));
  const faulted = withJumpers(sound, [['p2.insulator/conductor', 'p2.neutral-spool/neutral']]);

  test('nothing operates while nothing is wrong', () => {
    expect(settle(sound).operations).toEqual([]);
    expect(settle(sound).world).toBe(sound);
  });

  test('a fault on the tap trips the nearer recloser fast, then blows the link; the rest stays in service', () => {
    const { operations, world } = settle(faulted);
    expect(told(operations)).toEqual(['p1.unit:contacts', 'p1.unit:contacts', 'p1.tap-cutout:link']);
    expect(partById(world, 'p1.unit').state.position).toBe('closed');
    expect(partById(world, 'p1.recloser').state.position).toBe('closed');
    expect(solveCircuit(world).point('p1.unit/load').live).toBe(true);
    expect(solveCircuit(world).point('p2.insulator/conductor').live).toBe(false);
  });

  test('closing the tap into a fault is the same as the fault itself', () => {
    const open = withState(faulted, 'p1.tap-cutout', { position: 'open', link: 'sound' });
    expect(settle(open).operations).toEqual([]);
    const closing = withState(open, 'p1.tap-cutout', { position: 'closed' });
    expect(settle(closing).operations).toEqual(settle(faulted).operations);
  });

  test('an oversize link lets the recloser lock out instead', () => {
    const { operations } = settle({
      ...faulted,
      parts: faulted.parts.map((part) =>
        part.id === 'p1.tap-cutout'
          ? {
              ...part,
              faults: [{ id: 'x', kind: 'link-oversize', side: 'any' as const, to: null, values: {} }],
              words: { link: '10K' },
            }
          : part,
      ),
    });
    expect(operations.filter(({ part }) => part === 'p1.tap-cutout').every(({ seconds }) => seconds > 0.02)).toBe(true);
    expect(told(operations)[0]).toBe('p1.unit:contacts');
  });
});

test('shorting a backfed secondary ends the backfeed: the breaker of the set opens and the line is dead', () => {
  const base = withState(
    withState(only(model('recloser'), 'plate'), 'p1.tap-cutout', { position: 'open' }),
    'a.generator',
    { run: 'running' },
  );
  expect(solveCircuit(base).point('p2.insulator/conductor').live).toBe(true);
  const shorted = withJumpers(base, [['p2.transformer/x1', 'p2.transformer/x2', 'p2.transformer/x3']]);
  expect(solveCircuit(shorted).point('p2.insulator/conductor').volts).toBeLessThan(0.2 * 19_920);
  const { operations, world } = settle(shorted);
  // Set and inlet have breakers of one size.
  expect(['a.generator', 'a.main']).toContain(operations[0]?.part);
  expect(solveCircuit(world).point('p2.insulator/conductor').live).toBe(false);
});

describe('two circuits that cross', () => {
  /** A 34.5 kV circuit behind a recloser falls onto a 12.47 kV tap behind a link that holds 40 A. */
  const high = piece('h', 'system-source', {
    nets: { line: 'high-feed', neutral: 'earth' },
    values: { volts: 19_920, ohms: 10, reactance: 20 },
  });
  const above = piece('r', 'upstream-recloser', {
    nets: { source: 'high-feed', load: 'high' },
    state: { position: 'closed', reclosing: 'automatic' },
  });
  const low = piece('s', 'system-source', {
    nets: { line: 'line', neutral: 'earth' },
    values: { ohms: 5, reactance: 8 },
  });
  const parts = [high, above, low, cutout('40K'), piece('w', 'neutral-spool', { nets: { neutral: 'high' } })];
  const world = tinyWorld(parts, [['w/neutral', 'c/top']]);

  test('drive current into each other until one of them lets go', () => {
    const { operations, world: rested } = settle(world);
    expect(operations.length).toBe(4);
    expect(partById(rested, 'r').state.position).toBe('locked-out');
    // What is left hangs on the lower circuit, at its volts.
    expect(solveCircuit(rested).point('w/neutral').volts).toBeCloseTo(solveCircuit(rested).point('c/top').volts, -1);
    expect(solveCircuit(rested).point('w/neutral').volts).toBeLessThan(7300);
    expect(solveCircuit(world).point('c/top').volts).toBeGreaterThan(9000);
  });
});

test('coming to rest does not hang on the order of the parts', () => {
  const sound = only(model('recloser'));
  const faulted = withJumpers(sound, [['p2.insulator/conductor', 'p2.neutral-spool/neutral']]);
  const turned = { ...faulted, parts: [...faulted.parts].reverse(), site: { ...faulted.site, resistivity: 121 } };
  expect(told(settle(turned).operations)).toEqual(told(settle(faulted).operations));
});
