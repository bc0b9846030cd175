/**
 * Debriefs of twelve drills over six scenarios, as text to be reviewed as a diff: a careful and a hasty simulated trainee in each.
 * UPDATE=1 npx vitest run --project long tests/engine/debrief rewrites them.
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { debriefText } from '../../../src/engine/debrief/debriefText.ts';
import { explain } from '../../../src/engine/debrief/explain.ts';
import { parse } from '../../../src/engine/scenario/parse.ts';
import { score } from '../../../src/engine/score/score.ts';
import { habitOf } from '../../../src/engine/trainees/habits.ts';
import { takeDrill } from '../../../src/engine/trainees/takeDrill.ts';
import { build } from '../../../src/engine/world/build.ts';

const scenarios = [
  'church-close-dim',
  'heath-road-butt',
  'orchard-lane-set',
  'quarry-road-drizzle',
  'station-road-pair',
  'sunny-bank-plant',
] as const;
const habits = ['careful', 'rushes-obvious'] as const;

const at = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

const worldOf = (name: string) => {
  const parsed = parse(readFileSync(at(`../../../scenarios/${name}.yaml`), 'utf8'), name);
  if (!parsed.ok) throw new Error(`${name} cannot be read`);
  return build(parsed.scenario, parsed.hash, 1);
};

/** What was done minute by minute is long and is the log again; what was made of it is under test. */
const withoutTimeline = (text: string): string => text.replace(/\nTIMELINE\n[\s\S]*?\n\n/, '\n');

describe.each(scenarios)('%s', (name) => {
  it.each(habits)('debriefed for a trainee who is %s reads as pinned', (habit) => {
    const replay = takeDrill(worldOf(name), habitOf(habit), 'golden');
    const text = withoutTimeline(debriefText(explain(replay, score(replay))));
    const file = at(`./golden/${name}.${habit}.txt`);
    if (process.env.UPDATE === '1' || !existsSync(file)) {
      mkdirSync(at('./golden'), { recursive: true });
      writeFileSync(file, text);
    }
    expect(text).toBe(readFileSync(file, 'utf8'));
  });

  it.each(habits)('debriefed for a trainee who is %s has sentences without ids, gaps or bare values', (habit) => {
    const text = readFileSync(at(`./golden/${name}.${habit}.txt`), 'utf8');
    for (const line of text.split('\n')) {
      expect(line).not.toMatch(/undefined|NaN|null|\[object|\(\)|\bp[0-9]\.|\b[ab]\.[a-z]|\.\.|,,| ,|;$/);
    }
  });
});
