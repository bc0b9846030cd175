/** The five parts on whole drills of Quarry Road, and what may never raise a score. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Act, Replay } from '../../../src/engine/acts/types.ts';
import { conditionsFor } from '../../../src/engine/catalogue/conditions.ts';
import { score } from '../../../src/engine/score/score.ts';
import type { Score } from '../../../src/engine/score/types.ts';
import { byStick, find, go, look, primary } from '../../logs/quarry-road-fog/shorthand.ts';
import { start } from '../acts/scene.ts';
import { built, shuffled } from '../world/shuffled.ts';
import { committed, fresh, goOn, played, rank, value } from './logs.ts';

const logs = { careful: committed('careful'), hasty: committed('hasty'), stuck: committed('stuck') };
const scores = { careful: score(logs.careful), hasty: score(logs.hasty), stuck: score(logs.stuck) };

const names = ['recognition', 'order', 'control', 'exposure', 'service'] as const;

describe('the three drills', () => {
  it('careful passes: all causes found, all hazards held, nobody exposed, service back', () => {
    const { careful } = scores;
    expect([careful.verdict, careful.end]).toEqual(['pass', 'closed-out']);
    for (const name of ['recognition', 'order', 'exposure', 'service'] as const) expect(value(careful, name)).toBe(1);
    expect(value(careful, 'control')).toBeGreaterThan(0.85);
    expect(careful.lookAlikes.filter(({ called }) => called)).toEqual([]);
  });

  it('hasty fails by exposures whose volts and amperes come from the solution', () => {
    const { hasty } = scores;
    expect(hasty.verdict).toBe('fail');
    const fatal = hasty.exposures.filter(({ potentiallyFatal }) => potentiallyFatal);
    expect(fatal.length).toBeGreaterThan(0);
    const volts = fatal.flatMap(({ quantities }) => quantities.filter(({ unit }) => unit === 'V'));
    expect(Math.max(...volts.map((each) => each.value))).toBeGreaterThan(6500);
    for (const name of ['recognition', 'exposure', 'service'] as const) expect(value(hasty, name)).toBe(0);
    expect(value(hasty, 'order')).toBeLessThan(0.5);
    expect(value(hasty, 'control')).toBeLessThan(0.5);
  });

  it('stuck passes by handing over: no exposure, no service lost by it, causes left unfound', () => {
    const { stuck } = scores;
    expect([stuck.verdict, stuck.end, stuck.exposures]).toEqual(['pass', 'handed-over', []]);
    expect(value(stuck, 'service')).toBe(1);
    expect(value(stuck, 'recognition')).toBeLessThan(0.6);
    expect(value(stuck, 'exposure')).toBe(1);
  });

  it('differ in each of the five parts', () => {
    for (const name of names) {
      const values = Object.values(scores).map((each) => value(each, name));
      expect(new Set(values.map(String)).size).toBeGreaterThan(1);
    }
  });

  it('score the same each time, with the hash of the World at the end', () => {
    expect(score(committed('hasty'))).toEqual(scores.hasty);
    expect(scores.careful.worldHash).toBe(logs.careful.log.entries.at(-1)?.hash);
  });

  it('have parts between 0 and 1, reasons and sentences', () => {
    for (const { parts, reasons } of Object.values(scores)) {
      expect(parts.map(({ name }) => name)).toEqual(names);
      expect(reasons.length).toBeGreaterThan(0);
      for (const part of parts) {
        if (part.value !== null) expect(part.value >= 0 && part.value <= 1).toBe(true);
        expect(part.says.length).toBeGreaterThan(0);
      }
    }
  });
});

/** The drill as it was, its scenario having one more fault that nobody called. */
const withMissed = (replay: Replay, add: (world: Replay['start']) => Replay['start']): Replay => ({
  ...replay,
  start: add(replay.start),
  end: add(replay.end),
  steps: replay.steps.map((step) => ({ ...step, before: add(step.before), after: add(step.after) })),
});
const faulty =
  (on: string, kind: string) =>
  (world: Replay['start']): Replay['start'] => ({
    ...world,
    tools: world.tools.map((tool) =>
      tool.id === on ? { ...tool, faults: [{ id: 'extra', kind, side: 'any', to: null, values: {} }] } : tool,
    ),
    parts: world.parts.map((part) =>
      part.id === on ? { ...part, faults: [{ id: 'extra', kind, side: 'any', to: null, values: {} }] } : part,
    ),
  });

const neverRaised = (before: Score, after: Score): void => {
  for (const name of names) {
    const [was, is] = [before, after].map(({ parts }) => parts.find((part) => part.name === name)?.value);
    if (was != null && is != null) expect(is).toBeLessThanOrEqual(was + 1e-12);
  }
  expect(rank[after.verdict]).toBeLessThanOrEqual(rank[before.verdict]);
};

describe('a missed cause more', () => {
  it.each([
    ['detector-1', 'detector-fails-self-test', 'stuck'],
    ['stick-1', 'stick-test-overdue', 'stuck'],
    ['p1.tie', 'tie-broken', 'stuck'],
    ['p1.tie', 'tie-broken', 'careful'],
    ['p3.ground-lead', 'ground-lead-cut', 'careful'],
  ] as const)('(%s, %s) never raises the score of %s', (on, kind, name) => {
    neverRaised(scores[name], score(withMissed(logs[name], faulty(on, kind))));
  });
});

describe('calling', () => {
  it('one thing more that is not there never raises a score, wherever it is called', () => {
    const arrived = goOn(
      played({ act: 'acknowledge' }, { act: 'park', at: 'clear' }, go('p2.field')),
      find('p2.tie', 'tie-broken'),
    );
    const before = score(arrived);
    for (const [on, condition] of [
      ['p2.arrester', 'failed'],
      ['p3.pole', 'leaning'],
      ['p2.pole', 'old-scar'],
      ['gloves-1', 'damaged'],
      ['p2.insulator', 'sound'],
    ] as const) {
      neverRaised(before, score(goOn(arrived, find(on, condition))));
    }
  });

  it('everything on everything gains nothing over calling what was seen', () => {
    const seen = goOn(
      played({ act: 'acknowledge' }, { act: 'park', at: 'clear' }, go('p2.field')),
      ...look('glass', 'p2.insulator'),
    );
    const one = goOn(seen, find('p2.insulator', 'cracked'));
    const everythingAt = (owner: string): readonly Act[] =>
      start()
        .parts.filter(({ pole, premises }) => pole === owner || premises === owner)
        .flatMap(({ id, kind }) => conditionsFor(kind).map((condition) => find(id, condition.id)));
    const all = everythingAt('p2');
    expect(all.length).toBeGreaterThan(60);
    expect(value(score(goOn(seen, ...all)), 'recognition')).toBeLessThan(value(score(one), 'recognition') + 0.05);
    const blind = played({ act: 'acknowledge' }, { act: 'park', at: 'clear' }, ...everythingAt('a'));
    expect(value(score(blind), 'recognition')).toBe(0);
  });

  it('what was found takes it back to where it was', () => {
    const found = goOn(
      played({ act: 'acknowledge' }, { act: 'park', at: 'clear' }, go('p2.field')),
      find('p2.tie', 'tie-broken'),
    );
    const id = found.end.paper.findings.at(-1)?.id ?? '';
    const back = goOn(found, { act: 'withdraw-finding', finding: id });
    expect(value(score(back), 'recognition')).toBeLessThan(value(score(found), 'recognition'));
  });
});

describe('exposing', () => {
  const arrived = played(
    { act: 'acknowledge' },
    { act: 'park', at: 'clear' },
    { act: 'engine', on: false },
    go('p2.butt'),
  );

  it('somebody once more never raises a score', () => {
    const once = goOn(arrived, { act: 'touch', point: 'p2.ground-lead/low' });
    neverRaised(score(arrived), score(once));
    if (once.end.ended === null)
      neverRaised(score(once), score(goOn(once, { act: 'touch', point: 'p2.ground-lead/low' })));
  });

  it('somebody to what may kill fails, whatever else went well; so does being hit', () => {
    const bad = goOn(arrived, { act: 'touch', point: 'p2.ground-lead/low' });
    const scored = score(bad);
    expect(scored.exposures.some(({ potentiallyFatal }) => potentiallyFatal)).toBe(true);
    expect(scored.verdict).toBe('fail');
    expect(value(scored, 'exposure')).toBe(0);
  });

  it('is not made good by harmless acts with hands on', () => {
    const bad = goOn(
      played(
        { act: 'acknowledge' },
        { act: 'park', at: 'under-line' },
        { act: 'check-tool', tool: 'stick-1', check: 'wipe' },
        go('p1.butt'),
      ),
      byStick('p1.tap-cutout', 'remove-tube'),
      { act: 'repair', part: 'p1.tap-cutout', repair: 'fit-link' },
      byStick('p1.tap-cutout', 'hang-tube'),
      byStick('p1.tap-cutout', 'close'),
    );
    const scored = score(bad);
    expect(scored.exposures.length).toBeGreaterThan(0);
    const order = value(scored, 'order');
    const padded = goOn(
      bad,
      { act: 'check-tool', tool: 'detector-1', check: 'self-test' },
      primary('p1.tap-cutout/top'),
      primary('p1.tap-cutout/top'),
    );
    expect(value(score(padded), 'order')).toBeLessThanOrEqual(order);
  });
});

describe('testing', () => {
  it('once more never lowers the control part', () => {
    const upTo = (count: number): Replay =>
      goOn(fresh(), ...logs.careful.log.entries.slice(0, count).map(({ act }) => act));
    const at = logs.careful.log.entries.findIndex(({ act }) => act.act === 'test') + 1;
    const before = upTo(at + 2);
    const after = goOn(before, primary('p1.tap-cutout/bottom'), primary('p1.tap-cutout/top'));
    expect(after.steps.at(-1)?.exposures).toEqual([]);
    const [was, is] = [before, after].map((replay) => score(replay).parts[2]?.value ?? 1);
    expect(is).toBeGreaterThanOrEqual(was ?? 1);
  });
});

describe('the order of looks that expose nobody', () => {
  it('changes no part and no verdict', () => {
    const looks = look('glass', 'p2.insulator', 'p2.tie', 'p2.pole', 'p2.ground-bond', 'p1.tie');
    const there: readonly Act[] = [
      { act: 'acknowledge' },
      { act: 'park', at: 'clear' },
      { act: 'engine', on: false },
      go('p2.field'),
    ];
    const straight = score(played(...there, ...looks, find('p2.tie', 'tie-broken')));
    fc.assert(
      fc.property(fc.shuffledSubarray(looks, { minLength: looks.length }), (shuffled) => {
        const other = score(played(...there, ...shuffled, find('p2.tie', 'tie-broken')));
        expect(other.parts).toEqual(straight.parts);
        expect([other.verdict, other.reasons]).toEqual([straight.verdict, straight.reasons]);
      }),
      { seed: 5, numRuns: 6 },
    );
  });
});

describe('the order of the lists in a scenario file', () => {
  it('changes nothing of a score', () => {
    const acts = logs.stuck.log.entries.map(({ act }) => act);
    const other = goOn(fresh(built(shuffled((list) => [...list].reverse()))), ...acts);
    expect(score(other)).toEqual(scores.stuck);
  });
});

it('a drill of some eighty acts is scored in well under two seconds of processor time', () => {
  const acts = logs.careful.log.entries.slice(0, 80).map(({ act }) => act);
  const replay = goOn(fresh(), ...acts);
  const from = process.cpuUsage();
  score(replay);
  const { user, system } = process.cpuUsage(from);
  expect((user + system) / 1e6).toBeLessThan(2);
});
