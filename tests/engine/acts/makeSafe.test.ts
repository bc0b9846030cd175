import { describe, expect, it } from 'vitest';
import { customersOut, minutesOut, premisesOut } from '../../../src/engine/acts/customersOut.ts';
import { appendEntry, newLog } from '../../../src/engine/acts/log.ts';
import { replay } from '../../../src/engine/acts/replay.ts';
import type { Act } from '../../../src/engine/acts/types.ts';
import { solveCircuit } from '../../../src/engine/circuit/solveCircuit.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { done, onScene, played, refused, start } from './scene.ts';

const volts = (world: World, point: string): number => solveCircuit(world).point(point).volts;
const test = (point: string, tool = 'detector-1'): Act => ({ act: 'test', point, tool, stick: 'stick-1' });
const wipe: Act = { act: 'check-tool', tool: 'stick-1', check: 'wipe' };
/** Good gloves on, tested today. */
const gloved = (): World =>
  played(
    onScene(),
    { act: 'check-tool', tool: 'gloves-1', check: 'air-test' },
    { act: 'wear', tool: 'gloves-1', on: true },
    { act: 'wear', tool: 'shield-1', on: true },
  );
const shows = (world: World): string | undefined => world.knowledge.readings.at(-1)?.shows;

describe('a voltage test', () => {
  const tap = () => played(onScene(), { act: 'go', to: 'p1.butt' });

  it('finds both contacts of the open tap cutout alive', () => {
    expect(shows(played(tap(), test('p1.tap-cutout/top')))).toBe('voltage');
    expect(shows(played(tap(), test('p1.tap-cutout/bottom')))).toBe('voltage');
  });

  it('shows nothing with the detector that fails its self-test, alive or not', () => {
    expect(shows(played(tap(), test('p1.tap-cutout/top', 'detector-2')))).toBe('nothing');
  });

  it('finds the load contact without voltage once the owner has stopped the set', () => {
    const stopped = played(
      onScene(),
      { act: 'go', to: 'a.yard' },
      { act: 'owner', part: 'a.generator', operation: 'stop' },
    );
    expect(stopped.knowledge.tests.at(-1)).toMatchObject({ on: 'a.generator', test: 'watched', result: 'stop' });
    const tested = played(
      stopped,
      { act: 'go', to: 'p1.butt' },
      test('p1.tap-cutout/bottom'),
      test('p1.tap-cutout/top'),
    );
    expect(tested.knowledge.readings.map((reading) => reading.shows)).toEqual(['no voltage', 'voltage']);
  });

  it('reads whole volts at a meter and enters them as shown', () => {
    const yard = played(onScene(), { act: 'go', to: 'a.yard' });
    const read = played(yard, { act: 'test', point: 'a.meter/line1', tool: 'tester-1', stick: null });
    expect(read.knowledge.readings.at(-1)).toMatchObject({
      shows: 'voltage',
      volts: Math.round(volts(yard, 'a.meter/line1')),
    });
  });

  it('overloads a low-voltage tester on what is at line voltage', () => {
    const butt = played(gloved(), { act: 'go', to: 'p2.butt' });
    const result = done(butt, { act: 'test', point: 'p2.ground-lead/low', tool: 'tester-1', stick: null });
    expect(result.events.map(({ event }) => event)).toContain('flash');
    expect(result.world.knowledge.readings.at(-1)?.shows).toBe('nothing');
  });
});

describe('a customer’s source', () => {
  it('is parted from the line by pulling, blanking and tagging the meter', () => {
    const yard = played(gloved(), { act: 'go', to: 'a.yard' });
    const pulled = played(yard, { act: 'operate', part: 'a.meter', operation: 'pull', stick: null });
    expect(volts(pulled, 'p1.tap-cutout/bottom')).toBeLessThan(50);
    expect(volts(pulled, 'a.meter/load1')).toBeGreaterThan(100);
    const blanked = played(
      pulled,
      { act: 'operate', part: 'a.meter', operation: 'blank', stick: null },
      { act: 'tag', part: 'a.meter', on: true },
    );
    expect(blanked.parts.find(({ id }) => id === 'a.meter')).toMatchObject({
      state: { position: 'blanked' },
      tags: ['hold'],
    });
  });

  it('trips protection when the line is closed against it, told as what is heard', () => {
    const fitted = played(
      onScene(),
      { act: 'go', to: 'p1.butt' },
      wipe,
      { act: 'operate', part: 'p1.tap-cutout', operation: 'remove-tube', stick: 'stick-1' },
      { act: 'repair', part: 'p1.tap-cutout', repair: 'fit-link' },
      { act: 'operate', part: 'p1.tap-cutout', operation: 'hang-tube', stick: 'stick-1' },
    );
    const closed = done(fitted, { act: 'operate', part: 'p1.tap-cutout', operation: 'close', stick: 'stick-1' });
    const set = closed.world.parts.filter(({ id }) =>
      ['a.generator', 'a.main', 'a.cord', 'p1.tap-cutout'].includes(id),
    );
    const operated = set.filter(({ state }) =>
      Object.values(state).some((value) => ['open', 'tripped', 'blown'].includes(value)),
    );
    expect(operated.length).toBeGreaterThan(0);
  });
});

describe('grounds', () => {
  const points = ['p1.neutral-spool/neutral', 's1.phase/a'];
  const safe = () =>
    played(
      onScene(),
      { act: 'go', to: 'a.yard' },
      { act: 'owner', part: 'a.generator', operation: 'stop' },
      { act: 'go', to: 'p1.butt' },
    );
  const grounded = () => played(safe(), { act: 'ground', tool: 'ground-1', points, stick: 'stick-1' });

  it('keep the order of their clamps and hold the line at the neutral', () => {
    const world = grounded();
    expect(world.jumpers).toEqual([{ id: 'j1', tool: 'ground-1', points }]);
    expect(solveCircuit(world).between('s1.phase/a', 'p1.neutral-spool/neutral')).toBeLessThan(1);
  });

  it('need a set that is not on yet', () => {
    expect(refused(grounded(), { act: 'ground', tool: 'ground-1', points, stick: 'stick-1' })).toBe(
      'that set is on already',
    );
  });

  it('are reached in their order and come off last clamp first', () => {
    const on = done(safe(), { act: 'ground', tool: 'ground-1', points, stick: 'stick-1' });
    expect(on.reach[0]?.touches.map(({ point }) => point)).toEqual(points);
    const off = done(on.world, { act: 'unground', jumper: 'j1', stick: 'stick-1' });
    expect(off.reach[0]?.touches.map(({ point }) => point)).toEqual([...points].reverse());
    expect(off.world.jumpers).toEqual([]);
  });

  it('are counted', () => {
    const count = (world: World) => played(world, { act: 'count-grounds' }).knowledge.tests.at(-1)?.result;
    expect(count(grounded())).toBe('1 still on');
    expect(count(safe())).toBe('all off');
  });
});

describe('work aloft', () => {
  const up = () =>
    played(
      onScene(),
      { act: 'go', to: 'a.yard' },
      { act: 'owner', part: 'a.generator', operation: 'stop' },
      { act: 'go', to: 'p2.butt' },
      { act: 'aloft', pole: 'p2', by: 'bucket', zone: 'below' },
    );

  it('holds the whole conductor past the pole, not one span of it', () => {
    const held = played(up(), { act: 'support', part: 's1.phase', on: true });
    expect(held.parts.filter(({ supported }) => supported).map(({ id }) => id)).toEqual(['s1.phase', 's2.phase']);
  });

  it('mends the fault that the repair is made for and no other', () => {
    const held = played(
      up(),
      { act: 'support', part: 's1.phase', on: true },
      { act: 'aloft', pole: 'p2', by: 'bucket', zone: 'work' },
    );
    const mended = played(held, { act: 'repair', part: 'p2.insulator', repair: 'replace-pin-insulator' });
    const left = mended.parts.flatMap((part) => part.faults.map(({ id }) => id));
    expect(left).not.toContain('crack');
    expect(left).toContain('tie');
  });

  it('is entered only with the way up that one is on, and left by coming down', () => {
    expect(refused(up(), { act: 'aloft', pole: 'p2', by: 'hooks', zone: 'work' })).toBe('you went up another way');
    expect(refused(up(), { act: 'go', to: 'p2.road' })).toBe('you are aloft, come down first');
    expect(played(up(), { act: 'come-down' }).people.find(({ id }) => id === 'trainee')).toMatchObject({
      at: 'p2.butt',
      aloftBy: null,
    });
  });
});

describe('customers out', () => {
  it('are both houses at the start, lit or not, for neither has service from the line', () => {
    expect(premisesOut(onScene())).toEqual(['a', 'b']);
  });

  it('become none when the line is made right and closed, and their minutes stop', () => {
    const acts: readonly Act[] = [
      { act: 'acknowledge' },
      { act: 'park', at: 'clear' },
      { act: 'go', to: 'a.yard' },
      { act: 'owner', part: 'a.generator', operation: 'stop' },
      { act: 'owner', part: 'a.cord', operation: 'unplug' },
      { act: 'go', to: 'p1.butt' },
      wipe,
      { act: 'operate', part: 'p1.tap-cutout', operation: 'remove-tube', stick: 'stick-1' },
      { act: 'repair', part: 'p1.tap-cutout', repair: 'fit-link' },
      { act: 'operate', part: 'p1.tap-cutout', operation: 'hang-tube', stick: 'stick-1' },
      { act: 'operate', part: 'p1.tap-cutout', operation: 'close', stick: 'stick-1' },
      { act: 'wait', minutes: 10 },
    ];
    let [world, log] = [start(), newLog(start(), 1)];
    for (const each of acts) {
      world = played(world, each);
      log = appendEntry(log, each, world);
    }
    const replayed = replay(start(), log);
    if (!replayed.ok) throw new Error(replayed.problem.words);
    expect(customersOut(world)).toBe(0);
    expect(minutesOut(replayed.replay)).toEqual({ a: world.clock.minute - 10, b: world.clock.minute - 10 });
  });
});
