import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { appendEntry, newLog } from '../../../src/engine/acts/log.ts';
import { parseLog } from '../../../src/engine/acts/logForm.ts';
import { possibleActs } from '../../../src/engine/acts/possibleActs.ts';
import { replay } from '../../../src/engine/acts/replay.ts';
import type { Act, Log, Replay } from '../../../src/engine/acts/types.ts';
import { canonicalJson } from '../../../src/engine/math/hash.ts';
import { played, start } from '../../engine/acts/scene.ts';
import { careful } from './careful.acts.ts';
import { hasty } from './hasty.acts.ts';
import { stuck } from './stuck.acts.ts';

const seed = 1;
const lists: Readonly<Record<string, readonly Act[]>> = { careful, hasty, stuck };

function logOf(acts: readonly Act[]): Log {
  let [world, log] = [start(seed), newLog(start(seed), seed)];
  for (const act of acts) {
    world = played(world, act);
    log = appendEntry(log, act, world);
  }
  return log;
}

const text = (log: Log): string =>
  `${JSON.stringify({ ...log, entries: [] }, null, 2).replace('"entries": []', () => `"entries": [\n${log.entries.map((entry) => `    ${JSON.stringify(entry)}`).join(',\n')}\n  ]`)}\n`;

const fileOf = (name: string): string => fileURLToPath(new URL(`./${name}.json`, import.meta.url));

function replayed(name: string): Replay {
  const parsed = parseLog(readFileSync(fileOf(name), 'utf8'));
  if (!parsed.ok) throw new Error(parsed.problems.join('\n'));
  const result = replay(start(parsed.log.seed), parsed.log);
  if (!result.ok) throw new Error(result.problem.words);
  return result.replay;
}

/** What is chosen on a form, not from the list of acts. */
const onForms = new Set(['look', 'call-finding', 'plan', 'brief']);

describe('the committed logs of Quarry Road', () => {
  it.each(Object.entries(lists))('%s.json is what its list of acts gives (UPDATE=1 writes it)', (name, acts) => {
    const made = text(logOf(acts));
    if (process.env.UPDATE) writeFileSync(fileOf(name), made);
    expect(readFileSync(fileOf(name), 'utf8')).toBe(made);
  });

  it.each(Object.keys(lists))('%s holds only acts that were on offer at that moment', (name) => {
    const missing = replayed(name).steps.filter(({ before, entry }) => {
      if (onForms.has(entry.act.act)) return false;
      const sent = canonicalJson(entry.act);
      return !possibleActs(before).some(({ act }) => canonicalJson(act) === sent);
    });
    expect(missing.map(({ entry }) => entry.act)).toEqual([]);
  });

  it('careful exposes nobody at any step and closes out', () => {
    const { steps, end } = replayed('careful');
    const exposed = steps.flatMap(({ entry, exposures }) =>
      exposures.map(({ hazard, failed }) => ({ entry: entry.act, hazard, failed })),
    );
    expect(exposed).toEqual([]);
    expect(end.ended).toBe('closed-out');
  });

  it('hasty meets a potentially fatal hazard with volts and amperes from the solution', () => {
    const fatal = replayed('hasty').steps.flatMap(({ exposures }) =>
      exposures.filter(({ potentiallyFatal }) => potentiallyFatal),
    );
    const units = new Set(fatal.flatMap(({ quantities }) => quantities.map(({ unit }) => unit)));
    expect(fatal.length).toBeGreaterThan(0);
    expect([...units]).toEqual(expect.arrayContaining(['V', 'A']));
  });

  it('stuck exposes nobody and hands over', () => {
    const { steps, end } = replayed('stuck');
    expect(steps.flatMap(({ exposures }) => exposures)).toEqual([]);
    expect(end.ended).toBe('handed-over');
  });
});
