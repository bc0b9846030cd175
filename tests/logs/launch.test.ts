import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import type { Log } from '../../src/engine/acts/types.ts';
import { parse } from '../../src/engine/scenario/parse.ts';
import { score } from '../../src/engine/score/score.ts';
import { build } from '../../src/engine/world/build.ts';
import type { Drill, Drills } from './drills.ts';
import { playDrill } from './playDrill.ts';

const seed = 1;
const at = (path: string): string => fileURLToPath(new URL(path, import.meta.url));
const scenarios = readdirSync(at('../../scenarios/'))
  .filter((file) => file.endsWith('.yaml'))
  .map((file) => file.replace('.yaml', ''))
  .sort();
const folders = import.meta.glob<{ drills: Drills }>('./*/drills.ts', { eager: true });

const text = (log: Log): string =>
  `${JSON.stringify({ ...log, entries: [] }, null, 2).replace('"entries": []', () => `"entries": [\n${log.entries.map((entry) => `    ${JSON.stringify(entry)}`).join(',\n')}\n  ]`)}\n`;

/** What a drill came to, in the words of its expectation. */
function cameTo(id: string, name: string, drill: Drill) {
  const parsed = parse(readFileSync(at(`../../scenarios/${id}.yaml`), 'utf8'), `${id}.yaml`);
  if (!parsed.ok) throw new Error(parsed.problems.map(({ message }) => message).join('\n'));
  const played = playDrill(build(parsed.scenario, parsed.hash, seed), drill.acts, seed);
  const file = at(`./${id}/${name}.json`);
  if (process.env.UPDATE) writeFileSync(file, text(played.log));
  const scored = score(played);
  const met = new Set(scored.exposures.map(({ mechanism }) => mechanism));
  return {
    committed: existsSync(file) && readFileSync(file, 'utf8') === text(played.log),
    verdict: scored.verdict,
    end: scored.end,
    meets: [...met].sort(),
    misses: scored.causes.filter(({ found }) => !found).map(({ cause }) => cause),
    falselyCalls: scored.findings.filter(({ outcome }) => outcome === 'false-call').map(({ on }) => on),
  };
}

describe.each(scenarios)('%s', (id) => {
  const drills = folders[`./${id}/drills.ts`]?.drills ?? {};

  it('has a careful drill and at least three careless ones', () => {
    expect(Object.keys(drills)).toContain('careful');
    expect(Object.values(drills).filter(({ verdict }) => verdict !== 'pass').length).toBeGreaterThanOrEqual(3);
  });

  it.each(Object.entries(drills))('%s comes to what it should, as committed (UPDATE=1 writes it)', (name, drill) => {
    const { verdict, end, meets = [], misses = [], falselyCalls = [] } = drill;
    expect(cameTo(id, name, drill)).toEqual({
      committed: true,
      verdict,
      end,
      meets: [...meets].sort(),
      misses: [...misses].sort(),
      falselyCalls: [...falselyCalls],
    });
  });
});
