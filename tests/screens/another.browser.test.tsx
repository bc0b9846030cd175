/** Another scene drawn in a worker of the real browser: progress, cancelling, taken, the same again by its number. */
import axe from 'axe-core';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { page } from 'vitest/browser';
import '../../src/screens/styles/screens.css';
import type { WorkerOf } from '../../src/app/beside.ts';
import { createDrawer, type FromDrawer, type ToDrawer } from '../../src/app/drawer.ts';
import { drawWorker } from '../../src/app/drawWorker.ts';
import { builtIn } from '../../src/app/library.ts';
import type { Desk } from '../../src/screens/types.ts';
import { makeDesk } from '../app/makeDesk.ts';
import { button, doing, show, type } from './show.tsx';

const library = {
  offered: builtIn().offered.filter(({ scenario }) => scenario.id === 'mill-lane-refuse'),
  problems: [],
};

let leave = (): void => undefined;
afterEach(() => act(() => leave()));

const text = library.offered[0]?.text ?? '';

/** A worker that answers at once: for how the page looks, not for what is drawn. */
const quick = (): WorkerOf<ToDrawer, FromDrawer> => {
  const worker: WorkerOf<ToDrawer, FromDrawer> = {
    postMessage: () =>
      void setTimeout(() => worker.onmessage?.({ data: { yaml: text, par: null } } as MessageEvent<FromDrawer>), 300),
    terminate: () => undefined,
    onmessage: null,
    onerror: null,
  };
  return worker;
};

const open = (worker: () => WorkerOf<ToDrawer, FromDrawer> | null = drawWorker) => {
  const made = makeDesk(library);
  const drawer = createDrawer({ worker, shelve: made.shelf.add });
  const desk: Desk = { ...made.desk, drawer };
  leave = () => {
    drawer.cancel();
    made.desk.leave();
  };
  const root = show(desk);
  const fold = root.querySelector<HTMLDetailsElement>('details.wide');
  if (fold === null) throw new Error('nothing to draw from');
  fold.open = true;
  return { made, drawer, root, fold };
};

const draw = (fold: HTMLElement, number: string): void => {
  type(fold.querySelector('input') as HTMLInputElement, number);
  doing(() => button(fold, 'Draw another like this').click());
};

const drawn = (fold: HTMLElement): Promise<HTMLButtonElement> =>
  vi.waitFor(() => button(fold, /^Take .*, variant/), { timeout: 50_000 });

const isFine = async (): Promise<void> => {
  await document.fonts.ready;
  const { violations } = await axe.run(document, { resultTypes: ['violations'] });
  expect(violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 140)}`))).toEqual([]);
  expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(document.documentElement.clientWidth);
};

describe('another like this', () => {
  test('says what it does while it draws, and stops when it is cancelled', () => {
    const { drawer, fold } = open();
    draw(fold, '7');
    expect(fold.querySelector('[role="status"]')?.textContent).toContain('Number 7: scene 1 is being drawn');
    doing(() => button(fold, 'Cancel').click());
    expect(drawer.state.value.is).toBe('idle');
    expect(fold.querySelector('progress')).toBeNull();
  });

  test('is taken as a drill whose log names what it was drawn from, saved as a file, and the same by its number', async () => {
    const first = open();
    draw(first.fold, '7');
    await drawn(first.fold);
    const [hash] = first.made.shelf.offered.value.map((each) => each.hash);
    leave();
    const { made, fold } = open();
    draw(fold, '7');
    const take = await drawn(fold);
    expect(made.shelf.offered.value.map((each) => each.hash)).toEqual([hash]);
    doing(() => button(fold, 'Save it as a scenario file').click());
    expect(made.files[0]?.name).toBe('mill-lane-refuse-7-1.yaml');
    expect(made.files[0]?.text).toContain('seed: 7');
    doing(() => take.click());
    const { log } = made.playing().snapshot.value;
    expect(log.variant).toEqual({ of: 'mill-lane-refuse', seed: 7, number: 1 });
    expect(log.par?.scenarioHash).toBe(log.scenarioHash);
  });

  test('refuses what is no number', () => {
    const { fold } = open();
    type(fold.querySelector('input') as HTMLInputElement, 'seven');
    expect(button(fold, 'Draw another like this').disabled).toBe(true);
  });

  test.each([
    [1280, 720],
    [1920, 1080],
    [390, 844],
  ] as const)('at %i×%i the start sheet with a drawn scene is fine', async (width, height) => {
    await page.viewport(width, height);
    const { fold } = open(quick);
    draw(fold, '7');
    await isFine();
    await vi.waitFor(() => button(fold, 'Save it as a scenario file'), { timeout: 10_000 });
    await isFine();
  });
});
