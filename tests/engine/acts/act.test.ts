import { describe, expect, it } from 'vitest';
import type { Act } from '../../../src/engine/acts/types.ts';
import { done, onScene, played, refused, start } from './scene.ts';

const at = (stand: string) => played(onScene(), { act: 'go', to: stand });
const words = (world: Parameters<typeof done>[0], each: Act) => done(world, each).events.map((event) => event.words);

describe('what is impossible', () => {
  const cases: readonly (readonly [string, () => Parameters<typeof refused>[0], Act, string])[] = [
    [
      'anything on scene before the truck is parked',
      start,
      { act: 'go', to: 'p2.road' },
      'the truck is still on the way, park it first',
    ],
    [
      'parking before the call is acknowledged',
      start,
      { act: 'park', at: 'clear' },
      'the call is not acknowledged yet',
    ],
    ['acknowledging twice', onScene, { act: 'acknowledge' }, 'the call is acknowledged already'],
    ['walking to a place aloft', onScene, { act: 'go', to: 'p2.work' }, 'one gets there with hooks or a bucket only'],
    ['walking to nowhere', onScene, { act: 'go', to: 'p9.road' }, 'there is no such place'],
    [
      'asking a customer over the fence',
      onScene,
      { act: 'ask', who: 'a.customer', about: 'generator' },
      'that person is not here',
    ],
    [
      'asking what nobody can answer',
      onScene,
      { act: 'ask', who: 'dispatcher', about: 'constructor' },
      'there is no answer to that',
    ],
    [
      'telling a worker who is not there',
      onScene,
      { act: 'tell', who: 'second', what: 'restored' },
      'that worker is not here yet',
    ],
    [
      'testing primary without a stick',
      () => at('p1.butt'),
      { act: 'test', point: 'p1.tap-cutout/top', tool: 'detector-1', stick: null },
      'that detector goes on a stick',
    ],
    [
      'testing beyond the end of the stick',
      () => at('p3.butt'),
      { act: 'test', point: 'p1.tap-cutout/top', tool: 'detector-1', stick: 'stick-1' },
      'it is beyond the end of that stick',
    ],
    [
      'touching a name that every object has',
      () => at('p2.butt'),
      { act: 'touch', point: 'p2.cutout/constructor' },
      'there is no bare metal to be reached',
    ],
    [
      'touching what is far up',
      () => at('p2.butt'),
      { act: 'touch', point: 'p2.cutout/top' },
      'it is out of reach of the hand from here',
    ],
    [
      'closing a cutout whose link is gone',
      () => at('p1.butt'),
      { act: 'operate', part: 'p1.tap-cutout', operation: 'close', stick: 'stick-1' },
      'it cannot be done as it stands now',
    ],
    [
      'working a customer’s main with one’s own hand',
      () => at('a.yard'),
      { act: 'operate', part: 'a.main', operation: 'open', stick: null },
      'only its owner works that',
    ],
    [
      'having an owner act who is not asked there',
      () => at('b.yard'),
      { act: 'owner', part: 'a.generator', operation: 'stop' },
      'its owner is not here',
    ],
    [
      'climbing from elsewhere',
      () => at('p1.butt'),
      { act: 'aloft', pole: 'p2', by: 'hooks', zone: 'work' },
      'you are not at the foot of that pole',
    ],
    [
      'changing an insulator from the ground',
      () => at('p2.butt'),
      { act: 'repair', part: 'p2.insulator', repair: 'replace-pin-insulator' },
      'it is out of reach of the hand from here',
    ],
    [
      'a ground of one clamp',
      () => at('p1.butt'),
      { act: 'ground', tool: 'ground-1', points: ['p1.neutral-spool/neutral'], stick: 'stick-1' },
      'a jumper takes two clamps',
    ],
    [
      'calling a condition that is on no list',
      onScene,
      { act: 'call-finding', on: 'p2.pole', condition: 'bewitched' },
      'that is no condition on the list',
    ],
    ['waiting half a minute', onScene, { act: 'wait', minutes: 0.5 }, 'one waits 1 to 60 whole minutes at a time'],
    [
      'giving back what was never given',
      onScene,
      { act: 'clearance', step: 'release', device: 'p1.tap-cutout' },
      'there is no clearance to give back',
    ],
  ];
  it.each(cases)('refuses %s with the same World and a reason', (_what, world, act, reason) => {
    expect(refused(world(), act)).toBe(reason);
  });

  it('is everything once the drill has ended', () => {
    const over = played(onScene(), { act: 'hand-over' });
    expect(refused(over, { act: 'wait', minutes: 1 })).toBe('the drill is over');
    expect(refused(over, { act: 'close-out' })).toBe('the drill is over');
  });
});

describe('the clock', () => {
  it('brings the second worker the stated minutes after the call is acknowledged', () => {
    const later = played(
      start(),
      { act: 'ask', who: 'dispatcher', about: 'history' },
      { act: 'acknowledge' },
      { act: 'park', at: 'clear' },
    );
    const almost = played(later, { act: 'wait', minutes: 12 });
    expect(almost.people.find(({ id }) => id === 'second')?.at).toBeNull();
    const come = done(almost, { act: 'wait', minutes: 1 });
    expect(come.world.people.find(({ id }) => id === 'second')?.at).toBe('p2.road');
    expect(come.events.map(({ event }) => event)).toContain('arrived');
  });

  it('changes light and fog at the minutes of the timeline and says so', () => {
    const world = played(onScene(), { act: 'wait', minutes: 12 });
    expect(world.clock.minute).toBe(14);
    expect(world.site.skyLux).toBe(25);
    const lighter = done(world, { act: 'wait', minutes: 1 });
    expect(lighter.world.site.skyLux).toBe(120);
    expect(lighter.events.find(({ event }) => event === 'weather')?.words).toBe('It gets lighter.');
  });

  it('wets a wiped stick again after half an hour in fog, not before', () => {
    const wiped = played(onScene(), { act: 'check-tool', tool: 'stick-1', check: 'wipe' });
    const wet = (world: typeof wiped) => world.tools.find(({ id }) => id === 'stick-1')?.wet;
    expect(wet(wiped)).toBe(false);
    expect(wet(played(wiped, { act: 'wait', minutes: 29 }))).toBe(false);
    expect(wet(played(wiped, { act: 'wait', minutes: 30 }))).toBe(true);
  });
});

describe('a clearance', () => {
  const asked = () => played(at('p1.butt'), { act: 'clearance', step: 'request', device: 'p1.tap-cutout' });

  it('is not given while the device is untagged, and the dispatcher says what is missing', () => {
    const waited = done(asked(), { act: 'wait', minutes: 2 });
    expect(waited.world.orders.clearance?.state).toBe('requested');
    expect(waited.events.map((event) => event.words).join(' ')).toContain('Report when it is open and tagged.');
  });

  it('is given once the device is open and tagged, reading back device and circuit', () => {
    const tagged = done(played(asked(), { act: 'wait', minutes: 2 }), { act: 'tag', part: 'p1.tap-cutout', on: true });
    expect(tagged.world.orders.clearance?.state).toBe('requested');
    const held = done(tagged.world, { act: 'wait', minutes: 1 });
    expect(held.world.orders.clearance?.state).toBe('held');
    expect(held.events.map((event) => event.words).join(' ')).toContain(
      'fused cutout, pole QR-13, Feeder 4271: open and tagged.',
    );
  });

  it('can be given back and asked for again', () => {
    const released = played(asked(), { act: 'clearance', step: 'release', device: 'p1.tap-cutout' });
    expect(released.orders.clearance?.state).toBe('released');
    expect(refused(released, { act: 'clearance', step: 'request', device: 'p1.tap-cutout' })).toBeNull();
  });
});

describe('tools', () => {
  const check = (tool: string, kind: 'read-tag' | 'self-test') =>
    words(onScene(), { act: 'check-tool', tool, check: kind }).join(' ');

  it('tells a good detector from one that fails its self-test', () => {
    expect(check('detector-1', 'self-test')).toContain('tone sounds');
    expect(check('detector-2', 'self-test')).toContain('no tone, no lamp');
  });

  it('shows the test date on the tag and leaves the arithmetic to the reader', () => {
    expect(check('stick-2', 'read-tag')).toContain('Tested 2024-05-20.');
  });

  it('keeps what a check gave away with the sign that it showed', () => {
    const world = played(onScene(), { act: 'check-tool', tool: 'detector-2', check: 'self-test' });
    expect(world.knowledge.tests.at(-1)).toMatchObject({
      on: 'detector-2',
      test: 'self-test',
      sign: 'dead-detector/silent',
    });
  });
});

describe('the briefing', () => {
  it('is heard by the crew that is there, and locks the findings that stood on the sheet', () => {
    const called = played(onScene(), {
      act: 'call-finding',
      on: 'p2.insulator',
      condition: 'cracked',
      confidence: 0.8,
    });
    const briefed = played(called, { act: 'brief', topics: ['hazards', 'procedures'], rescue: false });
    expect(briefed.paper.briefings[0]).toMatchObject({ heard: ['trainee'], topics: ['hazards', 'procedures'] });
    expect(refused(briefed, { act: 'withdraw-finding', finding: 'f1' })).toBe('the crew was briefed on it');
    const late = played(briefed, { act: 'call-finding', on: 'p2.tie', condition: 'tie-broken' });
    expect(refused(late, { act: 'withdraw-finding', finding: 'f2' })).toBeNull();
    const both = played(late, { act: 'wait', minutes: 20 }, { act: 'brief', topics: ['hazards'], rescue: true });
    expect(both.paper.briefings[1]?.heard).toEqual(['second', 'trainee']);
  });
});

describe('a planned control', () => {
  const found = () => played(onScene(), { act: 'call-finding', on: 'p2.tie', condition: 'tie-broken' });
  const plan = { act: 'plan', finding: 'f1', control: 'support-conductor', by: 'trainee' } as const;

  it('keeps what the finding can do as it was said, and no word of it where nothing was said', () => {
    const world = played(found(), { ...plan, harm: 'drop' }, plan);
    expect(world.paper.plans.map(({ harm }) => harm)).toEqual(['drop', undefined]);
    expect(Object.keys(world.paper.plans[1] ?? {})).not.toContain('harm');
  });

  it('is refused a second time unless it is planned against something else that can happen', () => {
    expect(refused(played(found(), { ...plan, harm: 'drop' }), { ...plan, harm: 'drop' })).toContain('planned already');
    expect(played(found(), { ...plan, harm: 'drop' }, { ...plan, harm: 'fall' }).paper.plans).toHaveLength(2);
  });
});
