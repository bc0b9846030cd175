/** What lies on a small screen at once: the sheet or the list, never both. */
import { signal } from '@preact/signals';
import { expect, test } from 'vitest';
import { createDrill } from '../../src/drill/createDrill.ts';
import { createPlaying } from '../../src/screens/playing.ts';
import type { Playing } from '../../src/screens/types.ts';
import { start } from '../engine/acts/scene.ts';

const playingOn = (narrow: boolean): Playing => {
  const created = createDrill({ world: start(), seed: 1 });
  if (!created.ok) throw new Error(created.problem.words);
  return createPlaying(created.drill, {
    captions: signal([]),
    narrow: () => narrow,
    onDefect: (error) => {
      throw error;
    },
  });
};

test.each([
  ['folds away on a small screen', true, false],
  ['stays open beside the list where there is room', false, true],
])('the sheet %s when the list is opened', (_words, narrow, stays) => {
  const playing = playingOn(narrow);
  playing.sheetOpen.value = true;
  playing.listOpen.value = true;
  expect(playing.sheetOpen.value).toBe(stays);
});
