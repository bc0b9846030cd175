/**
 * Debriefs of committed logs of eight scenarios, a careful and a careless one of each, as text to be reviewed as a diff.
 * UPDATE=1 npx vitest run --project node tests/engine/debrief rewrites them.
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { debriefText } from '../../../src/engine/debrief/debriefText.ts';
import { explain } from '../../../src/engine/debrief/explain.ts';
import { score } from '../../../src/engine/score/score.ts';
import { launchReplay } from '../../logs/committed.ts';

const logs = [
  ['church-close-dim', 'careful'],
  ['church-close-dim', 'takes-the-neutral-for-dead'],
  ['frost-hill-ice', 'ties-it-in-alive'],
  ['heath-road-butt', 'careful'],
  ['heath-road-butt', 'climbs-on-trust'],
  ['high-street-bucket', 'careful'],
  ['high-street-bucket', 'cones-only'],
  ['hill-road-gloves', 'careful'],
  ['hill-road-gloves', 'gloves-as-on-the-old-line'],
  ['low-meadow-flood', 'careful'],
  ['low-meadow-flood', 'picks-it-up'],
  ['mill-lane-refuse', 'calls-everything'],
  ['orchard-lane-set', 'blames-the-set'],
  ['sunny-bank-plant', 'careful'],
  ['sunny-bank-plant', 'closes-at-once'],
] as const;

const at = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/** What was done minute by minute is long and is the log again; what was made of it is under test. */
const withoutTimeline = (text: string): string => text.replace(/\nTIMELINE\n[\s\S]*?\n\n/, '\n');

describe.each(logs)('%s, %s', (scenario, name) => {
  const replay = launchReplay(scenario, name);
  const whole = debriefText(explain(replay, score(replay)));

  it('is debriefed as pinned', () => {
    const file = at(`./golden/${scenario}.${name}.txt`);
    const text = withoutTimeline(whole);
    if (process.env.UPDATE === '1') {
      mkdirSync(at('./golden'), { recursive: true });
      writeFileSync(file, text);
    }
    expect(existsSync(file)).toBe(true);
    expect(text).toBe(readFileSync(file, 'utf8'));
  });

  it('is told without ids, gaps or bare values', () => {
    for (const line of whole.split('\n')) {
      expect(line).not.toMatch(
        /undefined|NaN|null|\[object|\(\)|\bp[0-9]\.|\b[ab]\.[a-z]|\.\.|,,| ,|;$|\((line|load)[12]\)|\(x[123]\)/,
      );
    }
  });
});
