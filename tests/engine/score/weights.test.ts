/** The weights of judging: what an instructor's file may change, what it is told, and that a score says what it was made with. */
import { describe, expect, it } from 'vitest';
import { score } from '../../../src/engine/score/score.ts';
import { descending, usualWeights, weightIds, weightTable } from '../../../src/engine/score/weights.ts';
import { parseWeights } from '../../../src/engine/score/weightsForm.ts';
import { committed, value } from './logs.ts';

const file = (weights: unknown, more: Readonly<Record<string, unknown>> = {}): string =>
  JSON.stringify({ format: 'loose-tie-weights', version: 1, name: 'north yard', weights, ...more });
const problems = (text: string): readonly string[] => {
  const read = parseWeights(text);
  return read.ok ? [] : read.problems;
};

describe('the table', () => {
  it('gives each weight a usual value within its limits and a reason', () => {
    for (const id of weightIds) {
      const { usual, least, most, why } = weightTable[id];
      expect(usual >= least && usual <= most).toBe(true);
      expect(why).toMatch(/^[A-Z].{20,}\.$/);
    }
  });

  it('is in order where order has a meaning', () => {
    for (const ids of descending) {
      const values = ids.map((id) => usualWeights.values[id]);
      expect(values).toEqual([...values].sort((a, b) => b - a));
    }
  });
});

describe("an instructor's file", () => {
  it('changes what it names and leaves the rest', () => {
    const read = parseWeights(file({ 'miss-fatal': 5 }));
    expect(read.ok && read.weights).toEqual({
      name: 'north yard',
      values: { ...usualWeights.values, 'miss-fatal': 5 },
    });
  });

  it('is told everything that is wrong with it at once, with the nearest word', () => {
    expect(problems(file({ 'miss-fatl': 3, 'level-ppe': 2, improvised: 'all' }, { version: 2, note: 1 }))).toEqual([
      'version: expected 1',
      'file: "note" is not known here',
      'weights: "miss-fatl" is not known here, perhaps "miss-fatal"',
      'weights.level-ppe: goes from 0.3 to 0.8, found 2',
      'weights.improvised: goes from 0.5 to 1, found string',
    ]);
    expect(problems('{')).toEqual(['not a JSON object']);
    expect(problems('[]')).toEqual(['not a JSON object']);
    expect(problems(file({}, { name: 'usual' }))).toHaveLength(1);
    expect(problems(' '.repeat(30_000))).toHaveLength(1);
  });

  it('may not put a lesser thing above a greater one', () => {
    expect(problems(file({ 'miss-serious': 4 }))).toEqual(['weights.miss-serious: may not exceed miss-fatal']);
    expect(problems(file({ 'level-ppe': 0.8 }))).toEqual(['weights.level-ppe: may not exceed level-administrative']);
  });

  it('cannot name a weight that would let a fatal exposure pass', () => {
    const easy = weightIds.map((id) => [id, weightTable[id].most] as const);
    const hasty = committed('hasty');
    const values = { ...usualWeights.values, ...Object.fromEntries(easy) };
    expect(score(hasty, { name: 'easy', values }).verdict).toBe('fail');
    expect(value(score(hasty, { name: 'easy', values }), 'exposure')).toBe(0);
  });
});

describe('a score', () => {
  it('says which weights it was made with, and differs by them', () => {
    const careful = committed('careful');
    const mine = { name: 'north yard', values: { ...usualWeights.values, 'level-ppe': 0.3, improvised: 0.5 } };
    const [usual, other] = [score(careful), score(careful, mine)];
    expect(usual.weights).toEqual({ name: 'usual', changed: {} });
    expect(other.weights).toEqual({ name: 'north yard', changed: { 'level-ppe': 0.3, improvised: 0.5 } });
    expect(value(other, 'control')).toBeLessThan(value(usual, 'control'));
    expect(other.verdict).toBe('pass');
  });
});
