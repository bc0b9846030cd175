/** What calling everything gains, what over-control costs, and what working without a test does to the control part, by a few trainees. */
import { describe, expect, it } from 'vitest';
import { score } from '../../../src/engine/score/score.ts';
import type { Score } from '../../../src/engine/score/types.ts';
import { habitOf } from '../../../src/engine/trainees/habits.ts';
import { takeDrill } from '../../../src/engine/trainees/takeDrill.ts';
import { trial } from '../../../src/engine/trainees/trial.ts';
import type { HabitId } from '../../../src/engine/trainees/types.ts';
import { launchWorld } from '../../logs/committed.ts';
import { value } from '../score/logs.ts';

const street = launchWorld('high-street-bucket');
const lane = launchWorld('mill-lane-refuse');

const names = ['recognition', 'order', 'control', 'exposure', 'service'] as const;
const takes = (habit: HabitId, luck: string): Score => {
  const replay = takeDrill(street, habitOf(habit), luck);
  const { scenarioHash, engine } = replay.log;
  const par = { minutes: 60, customerMinutes: 0, scenarioHash, engine };
  return score({ ...replay, log: { ...replay.log, par } });
};
const careful = takes('careful', '1/1');

describe('on High Street', () => {
  it('the careful one holds the traffic off, puts the fuse back and closes the call out', () => {
    expect([careful.verdict, careful.end, careful.exposures]).toEqual(['pass', 'closed-out', []]);
    expect(value(careful, 'control')).toBeGreaterThan(0.75);
    expect(careful.controls.filter(({ worked }) => worked).map(({ control }) => control)).toContain('hot-stick-only');
  });

  it('calling everything loses recognition and gains in no part', () => {
    const everything = takes('calls-everything', '1/1');
    for (const name of names) expect(value(everything, name)).toBeLessThanOrEqual(value(careful, name));
    expect(value(everything, 'recognition')).toBeLessThan(0.1);
    expect(everything.verdict).not.toBe('pass');
  });

  it('over-control loses service and nothing else', () => {
    const over = takes('over-controls', '1/1');
    expect(value(over, 'service')).toBeLessThan(value(careful, 'service'));
    for (const name of names.filter((each) => each !== 'service')) expect(value(over, name)).toBe(value(careful, name));
    expect(over.verdict).toBe(careful.verdict);
  });
});

it('every pair that should differ in control has a number where a fuse is to be put back', () => {
  const { pairs } = trial([lane], { trainees: 8, seed: 3 });
  const control = pairs.filter(({ part, expected }) => part === 'control' && expected === 'differs');
  expect(control.map(({ against, auc, compared }) => [against, auc, compared])).toEqual([
    ['rushes-obvious', 1, 1],
    ['never-tests', 1, 1],
  ]);
});
