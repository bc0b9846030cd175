/** Debriefs of the three committed logs, as text under test (UPDATE=1 rewrites it), and what any of them must keep to. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { debriefText } from '../../../src/engine/debrief/debriefText.ts';
import { explain } from '../../../src/engine/debrief/explain.ts';
import { actWords } from '../../../src/engine/debrief/timeline.ts';
import { lackingWords } from '../../../src/engine/debrief/words.ts';
import { preconditions } from '../../../src/engine/hazards/preconditions.ts';
import { score } from '../../../src/engine/score/score.ts';
import { find, look } from '../../logs/quarry-road-fog/shorthand.ts';
import { committed, goOn, played } from '../score/logs.ts';

const names = ['careful', 'hasty', 'stuck'] as const;
const drills = names.map((name) => {
  const replay = committed(name);
  const scored = score(replay);
  return { name, replay, scored, debrief: explain(replay, scored) };
});
const debriefOf = (name: (typeof names)[number]) => {
  const found = drills.find((drill) => drill.name === name);
  if (found === undefined) throw new Error(name);
  return found.debrief;
};

describe.each(drills)('the debrief of $name', ({ name, replay, scored, debrief }) => {
  const text = debriefText(debrief);

  it('reads as it lies beside this test', () => {
    const file = fileURLToPath(new URL(`./${name}.debrief.txt`, import.meta.url));
    if (process.env.UPDATE === '1' || !existsSync(file)) writeFileSync(file, text);
    expect(text).toBe(readFileSync(file, 'utf8'));
  });

  it('consists of sentences without ids, gaps or bare values', () => {
    const sentences = [
      ...debrief.reasons,
      ...debrief.didWell,
      debrief.takeAlong,
      ...debrief.lookAlikes,
      ...debrief.parts.flatMap(({ says }) => says),
      ...debrief.exposures.flatMap(({ lines }) => lines),
      ...debrief.hazards.flatMap(({ when, wouldDo, controls }) => [when, ...wouldDo, ...controls]),
    ];
    for (const each of sentences) expect(each).toMatch(/^[A-Z1-9].*[.”]$/s);
    for (const line of text.split('\n')) {
      expect(line).not.toMatch(/undefined|NaN|null|\[object| {2}\S.* {3}|\(\)|\bp[0-9]\.|\b[ab]\.[a-z]|\.\.|,,| ,|;$/);
    }
  });

  it('is sober: it addresses the trainee, praises and scolds nobody, and speaks of no points', () => {
    const mine = text.split('\nTIMELINE')[0] ?? '';
    expect(mine).not.toMatch(
      /!|\b(great|awesome|stupid|excellent|wrong answer|points?|level up|congratulations|oops)\b/i,
    );
    expect(text.trimEnd().endsWith('authorises nobody to work.')).toBe(true);
  });

  it('has one card a cause and the first three reasons at most', () => {
    expect(debrief.hazards.map(({ cause }) => cause).sort()).toEqual(scored.causes.map(({ cause }) => cause).sort());
    expect(debrief.reasons.length).toBeLessThanOrEqual(3);
    expect(debrief.timeline.length).toBeGreaterThanOrEqual(replay.steps.length);
  });

  it('names at most one aid a stand from where a cause could be made out', () => {
    for (const { couldBeSeen } of debrief.hazards) {
      const places = couldBeSeen.map((line) => line.replace(/, (by|with|on) .*$/s, ''));
      expect(new Set(places).size).toBe(places.length);
      expect(couldBeSeen.length).toBeGreaterThan(0);
    }
  });

  it('tells time in order', () => {
    const steps = debrief.timeline.map(({ step }) => step);
    expect(steps).toEqual([...steps].sort((a, b) => a - b));
  });
});

it('hasty is told volts and milliamps, at the worst and as it stood', () => {
  const lines = debriefOf('hasty').exposures.flatMap((exposure) => exposure.lines);
  expect(
    lines.some((line) => /\(\d\d:\d\d\): .*kV open-circuit, .*fibrillation possible from \d.* mA/.test(line)),
  ).toBe(true);
  expect(lines.some((line) => /; as it stood then, .* mA/.test(line))).toBe(true);
  expect(debriefOf('hasty').takeAlong).toMatch(/^At \d\d:\d\d: current through the body/);
});

it('stuck is told what to look for again and from where', () => {
  expect(debriefOf('stuck').takeAlong).toMatch(/^Look again for this: .* by eye: /);
});

it('reads in feet or in metres, the same otherwise', () => {
  const [drill] = drills;
  if (drill === undefined) throw new Error('no drill');
  const metric = debriefText(explain(drill.replay, drill.scored, 'metric'));
  expect(metric).toContain('minimum approach distance 0.65 m');
  expect(metric).not.toMatch(/(distance|rest) [\d.]+ (ft|in)\b/);
  expect(debriefText(drill.debrief)).toContain('minimum approach distance 2.13 ft');
});

it('a look-alike that was called is said so', () => {
  const replay = goOn(
    played({ act: 'acknowledge' }, { act: 'park', at: 'clear' }),
    ...look('glass', 'p2.pole'),
    find('p2.pole', 'old-scar'),
  );
  const { lookAlikes, verdictWords } = explain(replay, score(replay));
  expect(lookAlikes.find((line) => line.startsWith('Water stain'))).toContain(
    'you called something that was not there',
  );
  expect(verdictWords).toBe('Passed with remarks');
});

it('every act of the logs has words of its own, and every precondition too', () => {
  for (const { replay } of drills) {
    for (const step of replay.steps) expect(actWords(step)).toMatch(/^[a-z].{3,}/);
  }
  for (const id of preconditions) expect(lackingWords(id)).not.toBe(id.replaceAll('-', ' '));
});

it('praises stopping only when nothing was owed at the hand-over', () => {
  const praise = 'You knew when to stop.';
  const left = played({ act: 'acknowledge' }, { act: 'park', at: 'clear' }, { act: 'hand-over' });
  expect(explain(left, score(left)).didWell).not.toContain(praise);
  expect(debriefOf('stuck').didWell).toContain(praise);
});
