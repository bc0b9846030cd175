/** An instructor's file of weights, opened in the app: it judges, says so, is kept, and can be put away. */
import { describe, expect, test } from 'vitest';
import type { TextStore } from '../../src/app/kept.ts';
import { makeDesk, memoryStore } from './makeDesk.ts';
import { quarryRoad } from './quarryRoad.ts';

const file = (content: unknown): File => new File([JSON.stringify(content)], 'north.json');
const north = { format: 'loose-tie-weights', version: 1, name: 'north yard', weights: { improvised: 0.6 } };

const judged = async (given: unknown, store: TextStore = memoryStore()) => {
  const made = makeDesk(quarryRoad, store);
  if (given !== null) await made.desk.openWeights(file(given));
  const playing = made.take();
  playing.send({ act: 'acknowledge' });
  playing.send({ act: 'hand-over' });
  return { desk: made.desk, by: made.playing().snapshot.value.score?.weights };
};

describe('a file of weights', () => {
  test('judges the next drill, and the score says which it was judged by', async () => {
    expect((await judged(null)).by).toEqual({ name: 'usual', changed: {} });
    expect((await judged(north)).by).toEqual({ name: 'north yard', changed: { improvised: 0.6 } });
  });

  test('is kept on the device until the usual weights are asked for', async () => {
    const store = memoryStore();
    await judged(north, store);
    const { desk, by } = await judged(null, store);
    expect(by?.name).toBe('north yard');
    desk.usualWeights();
    expect(desk.weights.value).toEqual({ name: 'usual', isUsual: true });
    expect((await judged(null, store)).by?.name).toBe('usual');
  });

  test('beyond the limits is refused with what was expected, and nothing changes', async () => {
    const { desk, by } = await judged({ ...north, weights: { improvised: 2 } });
    expect(by?.name).toBe('usual');
    await desk.openWeights(file({ ...north, weights: { improvised: 2 } }));
    expect(desk.problem.value).toContain('weights.improvised: goes from 0.5 to 1, found 2');
  });
});
