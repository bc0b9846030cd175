/** Which hazards the control part is about: those of a fault and those of the work itself, held or not, with hands on or not. */
import { describe, expect, it } from 'vitest';
import { score } from '../../../src/engine/score/score.ts';
import type { Part } from '../../../src/engine/score/types.ts';
import { launchReplay, launchWorld } from '../../logs/committed.ts';
import { acknowledge, byStick, check, go, park } from '../../logs/shorthand.ts';
import { committed, fresh, goOn } from './logs.ts';

const controlOf = (scenario: string, name: string) => {
  const scored = score(launchReplay(scenario, name));
  const part = scored.parts.find((each) => each.name === 'control') as Part;
  return { scored, part };
};

describe('the control part', () => {
  it('is nothing where gloves of too low a class were all that stood between, though no fault was met', () => {
    const { scored, part } = controlOf('hill-road-gloves', 'gloves-as-on-the-old-line');
    expect(scored.exposures.every(({ causes }) => causes.length === 0)).toBe(true);
    const failed = scored.controls.filter(({ worked }) => !worked);
    expect(failed.some(({ failed: lacks }) => lacks.includes('gloves-rated'))).toBe(true);
    expect(part.value).toBeLessThan(0.2);
  });

  it('counts what held a live contact that somebody worked by stick, where nothing was wrong', () => {
    const { scored, part } = controlOf('mill-lane-refuse', 'careful');
    expect(scored.causes).toEqual([]);
    const held = scored.controls.filter(({ worked, control }) => worked && control === 'hot-stick-only');
    expect(held.length).toBeGreaterThan(0);
    expect(held.every(({ planned }) => planned)).toBe(true);
    expect(part.value).toBeGreaterThan(0.8);
  });

  it('counts what reached somebody who only stood there', () => {
    const { scored } = controlOf('low-meadow-flood', 'picks-it-up');
    const unheld = new Set(scored.controls.filter(({ worked }) => !worked).map(({ hazard }) => hazard));
    expect(scored.exposures.filter(({ hazard }) => !unheld.has(hazard))).toEqual([]);
    expect(scored.exposures.some(({ act }) => act === 'go')).toBe(true);
  });

  it('tells counts, intervals and the rank of what held', () => {
    const { numbers, says } = score(committed('careful')).parts.find(({ name }) => name === 'control') as Part;
    const { hazardsMet, held, heldLow, heldHigh, planned, improvised } = numbers;
    expect([held, heldHigh]).toEqual([hazardsMet, 1]);
    // Wilson for n of n: n / (n + z²), z = 1.959964.
    const n = hazardsMet ?? 0;
    expect(heldLow).toBeCloseTo(n / (n + 3.841459), 6);
    const levels = ['elimination', 'substitution', 'engineering', 'administrative', 'ppe'].map(
      (each) => numbers[each] ?? 0,
    );
    expect(levels.reduce((sum, each) => sum + each, 0)).toBe((planned ?? 0) + (improvised ?? 0));
    expect(says.join(' ')).toMatch(
      /from the top of the hierarchy down: \d+ by elimination, .*; \d+ planned in the briefing/,
    );
  });
});

it('a device that was opened and closed again owes no tag at the hand-over, one left open does', () => {
  const lane = launchWorld('mill-lane-refuse');
  const before = goOn(fresh(lane), acknowledge, park('clear'), check('stick-1', 'wipe'), go('p2.butt'));
  const closing = [
    byStick('p2.cutout', 'remove-tube'),
    { act: 'repair', part: 'p2.cutout', repair: 'fit-link' },
    byStick('p2.cutout', 'hang-tube'),
    byStick('p2.cutout', 'close'),
  ] as const;
  const reasons = (...acts: Parameters<typeof goOn>[1][]): string =>
    score(goOn(before, ...acts, { act: 'hand-over' })).reasons.join(' ');
  expect(reasons(...closing)).not.toMatch(/without a tag/);
  expect(reasons(go('p1.butt'), byStick('p1.tap-cutout', 'open'))).toMatch(/without a tag: fused cutout/);
});

it('an apprentice who came upon no look-alike is not told that it was let be', () => {
  const scored = score(launchReplay('frost-hill-ice', 'ties-it-in-alive'));
  expect(scored.lookAlikes.map(({ called, perceived }) => [called, perceived])).toEqual([
    [false, false],
    [false, false],
  ]);
  expect(scored.parts[0]?.says.join(' ')).not.toMatch(/let be|only looked wrong/);
  expect(scored.parts[0]?.numbers.lookAlikesNotMet).toBe(2);
});

it('calling everybody clear is no look at the place', () => {
  const scored = score(launchReplay('high-street-bucket', 'cones-only'));
  expect(scored.causes.find(({ on }) => on === 'site')?.missedBy).toBe('never-looked');
});
