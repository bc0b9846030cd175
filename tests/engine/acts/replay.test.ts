import { describe, expect, it } from 'vitest';
import { appendEntry, newLog, worldHash } from '../../../src/engine/acts/log.ts';
import { logLimits, parseAct, parseLog } from '../../../src/engine/acts/logForm.ts';
import { replay } from '../../../src/engine/acts/replay.ts';
import { stageOf } from '../../../src/engine/acts/stageOf.ts';
import type { Act, Log } from '../../../src/engine/acts/types.ts';
import { engineVersion } from '../../../src/engine/acts/version.ts';
import { onScene, played, start } from './scene.ts';

const acts: readonly Act[] = [
  { act: 'acknowledge' },
  { act: 'park', at: 'clear' },
  { act: 'go', to: 'p1.butt' },
  { act: 'close-out' },
];

function logOf(list: readonly Act[]): Log {
  let [world, log] = [start(), newLog(start(), 1)];
  for (const each of list) {
    world = played(world, each);
    log = appendEntry(log, each, world);
  }
  return log;
}
const log = logOf(acts);
const problem = (changed: Log) => {
  const result = replay(start(), changed);
  return result.ok ? null : result.problem;
};
const withEntry = (index: number, change: Partial<Log['entries'][number]>): Log => ({
  ...log,
  entries: log.entries.map((entry, i) => (i === index ? { ...entry, ...change } : entry)),
});

describe('replay', () => {
  it('ends in the World of the last entry, a step for each', () => {
    const result = replay(start(), log);
    if (!result.ok) throw new Error(result.problem.words);
    expect(result.replay.steps).toHaveLength(acts.length);
    expect(worldHash(result.replay.end)).toBe(log.entries.at(-1)?.hash);
    expect(result.replay.end.ended).toBe('closed-out');
  });

  it('says that another engine version made the log, and calls it no forgery', () => {
    expect(problem({ ...log, engine: '0.0.9' })?.words).toBe(
      `made by another engine version: 0.0.9, this is ${engineVersion}`,
    );
  });

  it('says that the log belongs to another scenario', () => {
    expect(problem({ ...log, scenarioHash: 'f'.repeat(64) })?.problem).toBe('scenario');
  });

  it('stops at the first entry whose World comes out otherwise', () => {
    expect(problem(withEntry(2, { hash: '0123456789abcdef' }))).toMatchObject({ problem: 'hash', entry: 2 });
  });

  it('stops at an act that was exchanged for another', () => {
    expect(problem(withEntry(2, { act: { act: 'go', to: 'p1.field' } }))).toMatchObject({ problem: 'hash', entry: 2 });
  });

  it('stops at an act that is impossible there', () => {
    expect(problem(withEntry(1, { act: { act: 'come-down' } }))).toMatchObject({ problem: 'refused', entry: 1 });
  });

  it('stops at a minute that is not the World’s', () => {
    expect(problem(withEntry(1, { minute: 1 }))).toMatchObject({ problem: 'minute', entry: 1 });
  });

  it('gives another World, and so another hash, for another seed', () => {
    expect(worldHash(start(2))).not.toBe(worldHash(start(1)));
  });
});

describe('reading a log', () => {
  it('gives back what was written', () => {
    expect(parseLog(JSON.stringify(log))).toEqual({ ok: true, log });
  });

  const problems = (text: string) => {
    const read = parseLog(text);
    return read.ok ? [] : read.problems;
  };
  const changed = (change: object) => JSON.stringify({ ...log, ...change });

  it.each([
    ['no JSON', '{', /no JSON/],
    ['another format', changed({ format: 'diary' }), /^format: /],
    ['a later version', changed({ version: 2 }), /^version: /],
    ['a key that is not there', changed({ verdict: 'pass' }), /verdict/],
    [
      'an act that is unknown',
      changed({ entries: [{ act: { act: 'fly' }, minute: 0, hash: '0'.repeat(16) }] }),
      /^entries\[0\].act/,
    ],
    [
      'an act with a foreign key',
      changed({ entries: [{ act: { act: 'listen', x: 1 }, minute: 0, hash: '0'.repeat(16) }] }),
      /"x"/,
    ],
    [
      'half a minute to wait',
      changed({ entries: [{ act: { act: 'wait', minutes: 0.5 }, minute: 0, hash: '0'.repeat(16) }] }),
      /minutes/,
    ],
    ['a prototype', changed({}).replace('"entries"', '"__proto__": {"x": 1}, "entries"'), /__proto__/],
    ['a text without end', ' '.repeat(logLimits.characters + 1), /at most/],
  ])('tells %s', (_what, text, expected) => {
    expect(problems(text).join('\n')).toMatch(expected);
  });

  it('tells every problem at once', () => {
    expect(problems(changed({ version: 2, seed: 'one', engine: '' }))).toHaveLength(3);
  });

  it('reads a single act by the same form', () => {
    expect(parseAct({ act: 'touch', point: 'p2.cutout/top' })).toEqual({
      ok: true,
      act: { act: 'touch', point: 'p2.cutout/top' },
    });
    expect(parseAct({ act: 'touch' }).ok).toBe(false);
  });
});

describe('the stage', () => {
  const stages = (...list: readonly Act[]) => list.map((_, i) => stageOf(played(onScene(), ...list.slice(0, i + 1))));
  it('begins with the call and goes on to the survey once acknowledged', () => {
    expect(stageOf(start())).toBe('call');
    expect(stageOf(played(start(), { act: 'acknowledge' }))).toBe('survey');
  });

  it('follows from the World: planning, making safe, work, restoring, the end', () => {
    expect(
      stages(
        { act: 'plan', finding: null, control: 'isolate-source', by: 'trainee' },
        { act: 'brief', topics: ['hazards'], rescue: false },
        { act: 'go', to: 'a.yard' },
        { act: 'owner', part: 'a.generator', operation: 'stop' },
        { act: 'go', to: 'p2.butt' },
        { act: 'aloft', pole: 'p2', by: 'bucket', zone: 'below' },
        { act: 'come-down' },
        { act: 'everyone-clear' },
        { act: 'close-out' },
      ),
    ).toEqual([
      'briefing',
      'make-safe',
      'make-safe',
      'make-safe',
      'make-safe',
      'work',
      'make-safe',
      'restore',
      'debrief',
    ]);
  });
});
