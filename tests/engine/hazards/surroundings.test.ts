/** Weather, traffic, people below, grounds too small, wrong numbers: what they do to acts, and what holds them. */
import { describe, expect, it } from 'vitest';
import { act } from '../../../src/engine/acts/act.ts';
import type { Act } from '../../../src/engine/acts/types.ts';
import { exposuresOf } from '../../../src/engine/hazards/exposuresOf.ts';
import { isSized } from '../../../src/engine/hazards/groundSize.ts';
import { precondition } from '../../../src/engine/hazards/preconditions.ts';
import { toolById, withTool } from '../../../src/engine/world/edit.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { arrive, crewWorld, last, met, upP2 } from './crewScene.ts';

const test: Act = { act: 'test', point: 'p2.cutout/top', tool: 'detector-1', stick: 'stick-1' };
const work: Act = { act: 'cover', part: 'p2.cutout', tool: 'hose-1', on: true };

describe('lightning', () => {
  it('meets hands on the line until half an hour after the last thunder', () => {
    const world = crewWorld({ site: { lightning: 'near' } });
    const at = last(world, ...arrive, { act: 'go', to: 'p2.butt' });
    expect(met(last(at.world, test))).toContain('lightning:site trainee');
    const calm: World = { ...at.world, site: { ...at.world.site, lightning: 'none' } };
    expect(met(last(calm, { act: 'wait', minutes: 20 }, test))).toContain('lightning:site trainee');
    expect(met(last(calm, { act: 'wait', minutes: 32 }, test))).not.toContain('lightning:site trainee');
  });

  it('does not meet who looks and waits on the ground', () => {
    const { exposures } = last(crewWorld({ site: { lightning: 'near' } }), ...arrive, { act: 'wait', minutes: 10 });
    expect(exposures).toEqual([]);
  });
});

describe('wind and ice', () => {
  it('meet who goes aloft above the limit, and not below it', () => {
    const up = (windMs: number) => met(last(crewWorld({ site: { windMs, windLimitMs: 13 } }), ...arrive, ...upP2));
    expect(up(14)).toContain('fall:wind trainee');
    expect(up(12)).not.toContain('fall:wind trainee');
  });

  it('meets hooks on an iced pole, not the lift', () => {
    const world = crewWorld({ site: { precipitation: 'ice' } });
    const hooks = [...upP2.slice(0, -1), { act: 'aloft', pole: 'p2', by: 'hooks', zone: 'below' } as const];
    expect(met(last(world, ...arrive, ...hooks))).toContain('fall:ice trainee');
    expect(met(last(world, ...arrive, ...upP2))).not.toContain('fall:ice trainee');
  });
});

describe('traffic', () => {
  const onRoad: readonly Act[] = [
    { act: 'go', to: 'p2.field' },
    { act: 'go', to: 'p2.road' },
    { act: 'wait', minutes: 5 },
  ];
  const stands = (site: Parameters<typeof crewWorld>[0], ...guards: readonly Act[]) =>
    met(last(crewWorld(site), ...arrive, ...guards, ...onRoad));

  it('hits who stays on the road, and not where nothing passes', () => {
    expect(stands({ site: { traffic: 'light' } })).toContain('struck-by:traffic trainee');
    expect(stands({ site: { traffic: 'none' } })).toEqual([]);
  });

  it('is held by cones where it is light, a barrier or a flagger besides where it is heavy, a barrier alone where it is fast', () => {
    const cones: Act = { act: 'guard', with: 'cones' };
    expect(stands({ site: { traffic: 'light' } }, cones)).toEqual([]);
    expect(stands({ site: { traffic: 'heavy' } }, cones)).toContain('struck-by:traffic trainee');
    expect(stands({ site: { traffic: 'heavy' } }, cones, { act: 'guard', with: 'barrier' })).toEqual([]);
    const flag: Act = { act: 'assign', who: 'flagger', task: 'flag' };
    const flagged = (site: { readonly traffic: 'heavy' | 'light'; readonly trafficMs?: number }) =>
      stands({ site, people: ['flagger'] }, cones, { act: 'go', to: 'p1.butt' }, flag);
    expect(flagged({ traffic: 'heavy' })).toEqual([]);
    const fast = { traffic: 'light', trafficMs: 22 } as const;
    expect(flagged(fast)).toContain('struck-by:traffic trainee');
    expect(stands({ site: fast }, cones, { act: 'guard', with: 'barrier' })).toEqual([]);
  });
});

describe('people beneath the work', () => {
  const below = (...before: readonly Act[]) =>
    met(last(crewWorld({ people: ['neighbour', 'dog'] }), ...arrive, ...before, ...upP2, work));

  it('are met by what falls until they are moved; a dog stays until its owner is told', () => {
    expect(below()).toEqual(expect.arrayContaining(['struck-by:work@neighbour neighbour', 'struck-by:work@dog dog']));
    expect(below({ act: 'send', who: 'neighbour', to: 'away' })).not.toContain('struck-by:work@neighbour neighbour');
    const taped = below({ act: 'guard', with: 'keep-out' });
    expect(taped).not.toContain('struck-by:work@neighbour neighbour');
    expect(taped).toContain('struck-by:work@dog dog');
    const told = below({ act: 'go', to: 'a.yard' }, { act: 'tell', who: 'a.customer', what: 'shut-dog-in' });
    expect(told).not.toContain('struck-by:work@dog dog');
  });
});

describe('a dog that nothing holds', () => {
  const shutIn: Act = { act: 'tell', who: 'a.customer', what: 'shut-dog-in' };
  const sounded = (faults: readonly string[], ...before: readonly Act[]) =>
    met(
      last(
        crewWorld({ people: ['dog'], faults }),
        ...arrive,
        ...before,
        { act: 'go', to: 'p2.butt' },
        { act: 'sound', pole: 'p2' },
      ),
    );

  it('is at whoever has the hands full, not where it is on its chain or shut in', () => {
    expect(sounded(['loose-dog'])).toContain('struck-by:dog trainee');
    expect(sounded([])).not.toContain('struck-by:dog trainee');
    expect(sounded(['loose-dog'], { act: 'go', to: 'a.yard' }, shutIn)).not.toContain('struck-by:dog trainee');
  });

  it('does nothing to who walks and looks, nor aloft', () => {
    const world = crewWorld({ people: ['dog'], faults: ['loose-dog'] });
    expect(met(last(world, ...arrive, { act: 'go', to: 'p2.butt' }))).toEqual([]);
    expect(met(last(world, ...arrive, ...upP2, work))).not.toContain('struck-by:dog trainee');
  });
});

describe('a lift near live metal', () => {
  const beside = (...guards: readonly Act[]) => {
    const parked: readonly Act[] = [
      { act: 'acknowledge' },
      { act: 'park', at: 'under-line' },
      { act: 'wait', minutes: 6 },
    ];
    return met(last(crewWorld(), ...parked, ...guards, ...upP2.slice(1), work));
  };

  it('makes its truck a hazard for who stands there, unless grounded by a lead that is whole, or coned off', () => {
    expect(beside()).toContain('contact:truck@second second');
    expect(beside({ act: 'guard', with: 'truck-ground' })).not.toContain('contact:truck@second second');
    expect(beside({ act: 'guard', with: 'cones' })).not.toContain('contact:truck@second second');
  });
});

describe('reclosing', () => {
  it('feeds a slip again while it is automatic, and not once the dispatcher has blocked it', () => {
    const near = (...told: readonly Act[]) => met(last(crewWorld(), ...arrive, ...told, ...upP2, work));
    expect(near()).toContain('flash:p1.recloser@again trainee');
    expect(near({ act: 'tell', who: 'dispatcher', what: 'block-reclosing' })).not.toContain(
      'flash:p1.recloser@again trainee',
    );
  });
});

describe('grounds', () => {
  it('of #2 do not carry 12 kA for half a second, 4/0 do (ASTM F855: 10 kA and 30 kA)', () => {
    const world = crewWorld({ faults: ['small'] });
    const set = (id: string) => toolById(world, id);
    const [small, large] = [set('ground-1'), set('ground-3')];
    if (!small || !large) throw new Error('no such sets');
    expect([isSized(world, small), isSized(world, large)]).toEqual([false, true]);
  });

  const touched = (faults: readonly string[], tool: string) => {
    const on: readonly Act[] = [
      { act: 'go', to: 'p1.butt' },
      { act: 'check-tool', tool: 'stick-1', check: 'wipe' },
      { act: 'operate', part: 'p1.tap-cutout', operation: 'open', stick: 'stick-1' },
      { act: 'go', to: 'p2.butt' },
      { act: 'ground', tool, points: ['p2.ground-bond/neutral', 's1.phase/b'], stick: 'stick-1' },
      ...upP2.filter((each) => each.act !== 'go'),
      { act: 'touch', point: 's1.phase/b' },
    ];
    const { world, reach } = last(crewWorld({ faults }), ...arrive, ...on);
    const bare = { stick: null, gloves: null };
    const both = ['s1.phase/b', 'p2.ground-bond/neutral'].map((point) => ({ point, through: bare }));
    return reach
      .flatMap((each) => exposuresOf({ ...each, touches: both }, world, world))
      .filter(({ mechanism }) => mechanism === 'contact');
  };

  it('that melt or never bit leave the line alive when somebody closes, those that hold do not', () => {
    const worst = (found: ReturnType<typeof touched>): number =>
      Math.max(
        0,
        ...found.flatMap(({ quantities }) => quantities.filter(({ unit }) => unit === 'V').map((q) => q.value)),
      );
    expect(worst(touched(['small'], 'ground-1'))).toBeGreaterThan(5000);
    expect(worst(touched(['clamp'], 'ground-2'))).toBeGreaterThan(5000);
    expect(worst(touched([], 'ground-3'))).toBeLessThan(2000);
  });
});

describe('what fails in people and tools', () => {
  it('a second worker who is tired, untrained or flags the traffic is none', () => {
    const here = (faults: readonly string[]) =>
      last(crewWorld({ faults }), ...arrive, { act: 'wait', minutes: 6 }).world;
    expect(precondition(here([]), 'second-qualified')).toBe(true);
    for (const fault of ['tired', 'helper', 'alone'])
      expect(precondition(here([fault]), 'second-qualified')).toBe(false);
    const flagging = last(here([]), { act: 'assign', who: 'second', task: 'flag' }).world;
    expect(precondition(flagging, 'second-qualified')).toBe(false);
  });

  it('nobody comes whom the fault keeps away, however long one waits', () => {
    const { world } = last(crewWorld({ faults: ['alone'] }), ...arrive, { act: 'wait', minutes: 60 });
    expect(world.people.find(({ id }) => id === 'second')?.at).toBe(null);
  });

  it('a clearance on another circuit is none until the numbers are put right', () => {
    const opened: readonly Act[] = [
      { act: 'go', to: 'p1.butt' },
      { act: 'check-tool', tool: 'stick-1', check: 'wipe' },
      { act: 'operate', part: 'p1.tap-cutout', operation: 'open', stick: 'stick-1' },
      { act: 'tag', part: 'p1.tap-cutout', on: true },
      { act: 'clearance', step: 'request', device: 'p1.tap-cutout' },
      { act: 'wait', minutes: 3 },
    ];
    const { world, events } = last(crewWorld({ faults: ['number'] }), ...arrive, ...opened);
    expect(events.map(({ words }) => words).join(' ')).toContain('Feeder 4217');
    expect(world.orders.clearance?.state).toBe('held');
    expect(precondition(world, 'clearance')).toBe(false);
    const right = last(world, { act: 'tell', who: 'dispatcher', what: 'correct-number' }, { act: 'wait', minutes: 3 });
    expect(right.events.map(({ words }) => words).join(' ')).toContain('Feeder 4271');
    expect(precondition(right.world, 'clearance')).toBe(true);
  });

  it('rubber with a cut covers nothing, a worn strap holds nobody', () => {
    const cover = (faults: readonly string[]) => {
      const { world } = last(crewWorld({ faults }), ...arrive, ...upP2, { ...work, tool: 'blanket-1' });
      return precondition(world, 'cover-rated', { part: 'p2.cutout', volts: 12470 });
    };
    expect([cover([]), cover(['hole'])]).toEqual([true, false]);
    const worn = (faults: readonly string[]) =>
      precondition(
        last(crewWorld({ faults }), ...arrive, { act: 'wear', tool: 'belt-1', on: true }).world,
        'fall-gear',
      );
    expect([worn([]), worn(['strap'])]).toEqual([true, false]);
  });

  it('gloves bear the class that their fault gives them', () => {
    expect(toolById(crewWorld({ faults: ['low'] }), 'gloves-1')?.ratedVolts).toBe(1000);
    expect(toolById(crewWorld(), 'gloves-1')?.ratedVolts).toBe(17000);
  });

  it('without a hammer nobody sounds a pole', () => {
    const { world } = last(crewWorld(), ...arrive, { act: 'go', to: 'p2.butt' });
    const without: World = { ...world, tools: world.tools.filter(({ kind }) => kind !== 'hammer') };
    expect(act(without, { act: 'sound', pole: 'p2' }).ok).toBe(false);
    expect(act(world, { act: 'sound', pole: 'p2' }).ok).toBe(true);
    expect(withTool(world, 'hammer-1', {}).tools.length).toBe(world.tools.length);
  });
});
