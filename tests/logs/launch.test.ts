import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import type { Log } from '../../src/engine/acts/types.ts';
import { score } from '../../src/engine/score/score.ts';
import type { Score } from '../../src/engine/score/types.ts';
import { launchIds, launchWorld } from './committed.ts';
import type { Drills } from './drills.ts';
import { playDrill } from './playDrill.ts';

const seed = 1;
const at = (path: string): string => fileURLToPath(new URL(path, import.meta.url));
const folders = import.meta.glob<{ drills: Drills }>('./*/drills.ts', { eager: true });

const text = (log: Log): string =>
  `${JSON.stringify({ ...log, entries: [] }, null, 2).replace('"entries": []', () => `"entries": [\n${log.entries.map((entry) => `    ${JSON.stringify(entry)}`).join(',\n')}\n  ]`)}\n`;

/** Writes the file when asked to, and answers whether it holds that text. */
function isCommitted(file: string, made: string): boolean {
  if (process.env.UPDATE) writeFileSync(file, made);
  return existsSync(file) && readFileSync(file, 'utf8') === made;
}

/** How it exposes somebody, what it leaves uncalled, what it calls that is not there. */
const outcomeOf = ({ exposures, causes, findings }: Score) => ({
  meets: [...new Set(exposures.map(({ hazard }) => hazard))].sort(),
  fatal: exposures.some(({ potentiallyFatal }) => potentiallyFatal),
  misses: causes.filter(({ found }) => !found).map(({ cause }) => cause),
  falselyCalls: findings.filter(({ outcome }) => outcome === 'false-call').map(({ on }) => on),
});

describe.each(launchIds)('%s', (id) => {
  const drills = folders[`./${id}/drills.ts`]?.drills ?? {};

  it('has a careful drill and at least three careless ones', () => {
    expect(Object.keys(drills)).toContain('careful');
    expect(Object.keys(drills).length).toBeGreaterThanOrEqual(4);
  });

  it('gives each of them its verdict, by the log and the outcome that are committed (UPDATE=1 writes them)', () => {
    const outcomes: Record<string, ReturnType<typeof outcomeOf>> = {};
    for (const [name, { acts, verdict, end }] of Object.entries(drills)) {
      const played = playDrill(launchWorld(id, seed), acts, seed);
      expect(isCommitted(at(`./${id}/${name}.json`), text(played.log)), `the log ${name}`).toBe(true);
      const scored = score(played);
      expect({ name, verdict: scored.verdict, end: scored.end }).toEqual({ name, verdict, end });
      outcomes[name] = outcomeOf(scored);
    }
    expect(outcomes.careful).toMatchObject({ meets: [], misses: [], falselyCalls: [] });
    const made = `${JSON.stringify(outcomes, null, 2)}\n`;
    expect(isCommitted(at(`./${id}/outcomes.json`), made), 'outcomes.json').toBe(true);
  });
});
