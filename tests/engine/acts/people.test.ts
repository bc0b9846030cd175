/** People who are asked, sent and told, the dispatcher who answers from the scene, and what happens by the clock. */
import { describe, expect, it } from 'vitest';
import { act } from '../../../src/engine/acts/act.ts';
import type { Act, WorldEvent } from '../../../src/engine/acts/types.ts';
import { seedFrom } from '../../../src/engine/math/random.ts';
import { personById } from '../../../src/engine/world/edit.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { arrive, crewWorld, last } from '../hazards/crewScene.ts';

const said = ({ events }: { readonly events: readonly WorldEvent[] }): string =>
  events.map(({ words }) => words).join(' ');
const asked = (world: World, about: string): string =>
  last(world, { act: 'ask', who: 'dispatcher', about })
    .events.filter(({ on }) => on === 'dispatcher')
    .map(({ words }) => words)
    .join(' ');
const recloser = (world: World) => world.parts.find(({ id }) => id === 'p1.recloser')?.state;
const tell = (what: string): Act => ({ act: 'tell', who: 'dispatcher', what });
const wait = (minutes: number): Act => ({ act: 'wait', minutes });

describe('the dispatcher', () => {
  it('counts customers by the circuit, before the tap is opened and after', () => {
    const { world } = last(
      crewWorld(),
      ...arrive,
      { act: 'go', to: 'p1.butt' },
      { act: 'check-tool', tool: 'stick-1', check: 'wipe' },
    );
    expect(asked(world, 'customers')).toBe('On my screen nobody is out there now.');
    const { world: open } = last(world, { act: 'operate', part: 'p1.tap-cutout', operation: 'open', stick: 'stick-1' });
    expect(asked(open, 'customers')).toBe('One customer without service now.');
  });

  it('tells the minutes that are left until the second worker is there', () => {
    const { world } = last(crewWorld(), ...arrive);
    expect(asked(world, 'eta')).toBe('The second worker: 2 minutes out.');
    expect(asked(last(world, wait(5)).world, 'eta')).toBe('The second worker is with you.');
    expect(asked(crewWorld({ faults: ['alone'] }), 'eta')).toContain('nobody to send');
  });

  it('says what is written where the scenario writes it', () => {
    expect(asked(crewWorld(), 'history')).toBe('It was closed on trial in the spring and held.');
  });

  it('blocks and restores the reclosing of the device itself, and says so', () => {
    const { world } = last(crewWorld(), ...arrive);
    expect([recloser(world)?.reclosing, asked(world, 'reclosing')]).toEqual([
      'automatic',
      'Recloser R-9 recloses by itself. I can block it when you ask.',
    ]);
    const blocked = last(world, tell('block-reclosing'));
    expect(said(blocked)).toContain('Feeder 4271, recloser R-9');
    expect([recloser(blocked.world)?.reclosing, asked(blocked.world, 'reclosing')]).toEqual([
      'blocked',
      'Recloser R-9: reclosing is blocked.',
    ]);
    expect(recloser(last(blocked.world, tell('unblock-reclosing')).world)?.reclosing).toBe('automatic');
  });

  it('opens the device toward the source once somebody has got there, not before', () => {
    const { world } = last(crewWorld(), ...arrive, { act: 'order', device: 'p1.recloser', step: 'open' });
    expect(recloser(last(world, wait(8)).world)?.position).toBe('closed');
    const due = last(world, wait(10));
    expect(recloser(due.world)?.position).toBe('locked-out');
    expect(said(due)).toContain('open, done');
  });

  it('with another circuit in mind, blocks and opens nothing here', () => {
    const { world } = last(
      crewWorld({ faults: ['number'] }),
      ...arrive,
      tell('block-reclosing'),
      { act: 'order', device: 'p1.recloser', step: 'open' },
      wait(12),
    );
    expect(recloser(world)).toMatchObject({ position: 'closed', reclosing: 'automatic' });
    const { world: right } = last(
      world,
      tell('correct-number'),
      { act: 'order', device: 'p1.recloser', step: 'open' },
      wait(12),
    );
    expect(recloser(right)?.position).toBe('locked-out');
  });

  it('gives the wrong circuit away when asked', () => {
    const { world, events } = last(crewWorld({ faults: ['number'] }), {
      act: 'ask',
      who: 'dispatcher',
      about: 'circuit',
    });
    expect(said({ events })).toContain('Feeder 4217');
    expect(world.knowledge.tests.map(({ sign }) => sign)).toContain('number/circuit');
  });
});

describe('by the clock', () => {
  const on = (...acts: readonly Act[]) => last(crewWorld({ people: ['walker'], events: true }), ...arrive, ...acts);
  const running = (world: World) => world.parts.find(({ id }) => id === 'a.generator')?.state.run;

  it('a set is started, unless its owner was told to leave it off', () => {
    expect(running(on(wait(15)).world)).toBe('stopped');
    expect(running(on(wait(20)).world)).toBe('running');
    const told = on({ act: 'go', to: 'a.yard' }, { act: 'tell', who: 'a.customer', what: 'keep-set-off' }, wait(30));
    expect(running(told.world)).toBe('stopped');
  });

  it('somebody comes beneath the line and goes again, or stops at the tape', () => {
    const place = (world: World) => personById(world, 'walker')?.at;
    expect(place(on(wait(30)).world)).toBe('p2.butt');
    expect(place(on(wait(45)).world)).toBe(null);
    const taped = on({ act: 'guard', with: 'keep-out' }, wait(30));
    expect([place(taped.world), said(taped)]).toEqual([null, expect.stringContaining('stops at the tape')]);
  });

  it('it thunders, and the dispatcher calls', () => {
    expect(on(wait(50)).world.site.thunderAt).toBe(50);
    expect(said(on(wait(15)))).toContain('A second call from the same lane.');
  });

  it('a cutout that was left open is closed by others, unless it is tagged under a clearance', () => {
    const opened: readonly Act[] = [
      { act: 'go', to: 'p1.butt' },
      { act: 'check-tool', tool: 'stick-1', check: 'wipe' },
      { act: 'operate', part: 'p1.tap-cutout', operation: 'open', stick: 'stick-1' },
    ];
    const position = (...acts: readonly Act[]) =>
      on(...opened, ...acts).world.parts.find(({ id }) => id === 'p1.tap-cutout')?.state.position;
    expect(position(wait(60))).toBe('closed');
    const held: readonly Act[] = [
      { act: 'tag', part: 'p1.tap-cutout', on: true },
      { act: 'clearance', step: 'request', device: 'p1.tap-cutout' },
      wait(60),
    ];
    expect(position(...held)).toBe('open');
  });
});

describe('an insulator that is cracked through', () => {
  const kinds = (world: World) => world.parts.find(({ id }) => id === 'p2.insulator')?.faults.map(({ kind }) => kind);
  const waited = (seed: number, minutes: number) => {
    const start = { ...crewWorld({ faults: ['through'] }), chance: seedFrom(seed) };
    return last(start, ...arrive, ...Array.from({ length: minutes / 60 }, () => wait(60)));
  };

  it('lets go once in about a hundred minutes, by the seed alone, and is heard', () => {
    const gone = [1, 2, 3, 4, 5, 6].map((seed) => kinds(waited(seed, 60).world)?.[0]);
    expect(new Set(gone)).toEqual(new Set(['pin-insulator-cracked-through', 'pin-insulator-parted']));
    expect(gone).toEqual([1, 2, 3, 4, 5, 6].map((seed) => kinds(waited(seed, 60).world)?.[0]));
    expect(kinds(waited(1, 1200).world)).toEqual(['pin-insulator-parted']);
  });
});

describe('people here', () => {
  it('of the public go when asked, and only away; crew go where they are sent', () => {
    const { world } = last(crewWorld({ people: ['neighbour'] }), ...arrive, wait(5));
    const at = (after: World, who: string) => personById(after, who)?.at;
    expect(at(last(world, { act: 'send', who: 'neighbour', to: 'away' }).world, 'neighbour')).toBe(null);
    expect(act(world, { act: 'send', who: 'neighbour', to: 'p1.road' })).toMatchObject({ ok: false });
    expect(at(last(world, { act: 'send', who: 'second', to: 'p1.road' }).world, 'second')).toBe('p1.road');
    expect(act(world, { act: 'send', who: 'second', to: 'p2.work' })).toMatchObject({ ok: false });
  });

  it('put gloves on when asked, none that somebody else wears', () => {
    const { world } = last(crewWorld(), ...arrive, wait(5), { act: 'wear', tool: 'gloves-5', on: true, who: 'second' });
    expect(personById(world, 'second')?.wearing).toEqual(['gloves-5']);
    expect(act(world, { act: 'wear', tool: 'gloves-5', on: true })).toMatchObject({ ok: false });
  });

  it('are seen for what they do by who looks at them, and the weather by who looks round', () => {
    const { world } = last(crewWorld({ faults: ['onlooker', 'gale'], people: ['neighbour'] }), ...arrive);
    const looked = last(
      world,
      { act: 'look', part: 'neighbour', aid: 'eyes' },
      { act: 'look', part: 'site', aid: 'eyes' },
    );
    expect(looked.world.knowledge.looks.flatMap(({ seen }) => seen)).toEqual(
      expect.arrayContaining(['onlooker/stands', 'gale/wind']),
    );
  });
});
