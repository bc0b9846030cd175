/** The proof page in the real browser: a proof in its worker with progress, cancelling, a file of one's own, and what it shows opened. */
import axe from 'axe-core';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { page } from 'vitest/browser';
import '../../src/screens/styles/screens.css';
import { builtIn } from '../../src/app/library.ts';
import { createProver } from '../../src/app/prover.ts';
import { proverWorker } from '../../src/app/proverWorker.ts';
import type { Desk } from '../../src/screens/types.ts';
import { makeDesk } from '../app/makeDesk.ts';
import { button, doing, show } from './show.tsx';

const library = {
  offered: builtIn().offered.filter(({ scenario }) => scenario.id === 'mill-lane-refuse'),
  problems: [],
};
const text = library.offered[0]?.text ?? '';

let leave = (): void => undefined;
afterEach(() => act(() => leave()));

const open = async () => {
  const made = makeDesk(library);
  const prover = createProver(proverWorker);
  const desk: Desk = { ...made.desk, prover };
  leave = () => {
    prover.cancel();
    made.desk.leave();
  };
  const root = show(desk);
  doing(() => button(root, 'Proof of a scenario').click());
  await vi.waitFor(() => button(root, 'Choose a scenario file'), { timeout: 25_000 });
  return { made, prover, root };
};

const choose = (root: HTMLElement, content: string): void => {
  const field = root.querySelector<HTMLInputElement>('input[type="file"]');
  if (field === null) throw new Error('nowhere to choose a file');
  const files = new DataTransfer();
  files.items.add(new File([content], 'mine.yaml'));
  field.files = files.files;
  doing(() => void field.dispatchEvent(new Event('change', { bubbles: true })));
};

const isFine = async (): Promise<void> => {
  await document.fonts.ready;
  const { violations } = await axe.run(document, { resultTypes: ['violations'] });
  expect(violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 140)}`))).toEqual([]);
  expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(document.documentElement.clientWidth);
};

describe('the proof page', () => {
  test('stops a proof that is cancelled', async () => {
    const { prover, root } = await open();
    doing(() => button(root, /^Prove: /).click());
    expect(root.querySelector('progress')).not.toBeNull();
    doing(() => button(root, 'Cancel').click());
    expect(prover.state.value).toEqual({ is: 'idle' });
    expect(button(root, /^Prove: /)).toBeTruthy();
  });

  test('tells with its line what is wrong with a file of one’s own', async () => {
    const { root } = await open();
    choose(root, text.replace('kind: cutout\n', 'kind: cutuot\n'));
    await vi.waitFor(() =>
      expect(root.querySelector('[role="alert"]')?.textContent).toMatch(/mine\.yaml:\d+:\d+ .*cutuot/),
    );
  });

  test('proves a file of one’s own, tells how far it is, and opens a trap as the drill stands after it', async () => {
    const { made, prover, root } = await open();
    const stages = new Set<string>();
    const stop = prover.state.subscribe((now) => {
      if (now.is === 'running' && now.progress !== null) stages.add(now.progress.stage);
    });
    choose(root, text.replace('title: A bang on Mill Lane', 'title: A bang of my own'));
    await vi.waitFor(() => expect(root.querySelector('#proved')?.textContent).toBe('A bang of my own'), {
      timeout: 55_000,
    });
    stop();
    expect([...stages]).toContain('route');
    expect(root.textContent).toMatch(/\d+ of \d+ claims hold/);
    await page.viewport(390, 844);
    await isFine();
    await page.viewport(1280, 720);
    await isFine();
    const state = prover.state.value;
    if (state.is !== 'done') throw new Error('no proof');
    const [trap] = state.proof.traps;
    doing(() => button(root.querySelector('ol') as HTMLElement, /^See it/).click());
    const { way, snapshot } = made.playing();
    expect(way).toBe('shown');
    expect(snapshot.value.log.entries.map((entry) => entry.act)).toEqual(trap?.acts);
    doing(() => made.playing().send({ act: 'hand-over' }));
    await vi.waitFor(() => expect(root.querySelector('#shown')?.textContent).toBe('The proof showed you this'), {
      timeout: 20_000,
    });
    expect([...root.querySelectorAll('button')].map(({ textContent }) => textContent)).not.toContain('Try again');
    doing(() => button(root, 'Take this one all the same').click());
    expect([made.playing().way, made.playing().snapshot.value.log.entries]).toEqual(['scored', []]);
  });
});
