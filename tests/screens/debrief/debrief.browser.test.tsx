/** A debrief in a real browser: scrub, jump and look, go on from a moment, save the picture; the worked survey; an exam. */
import axe from 'axe-core';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { page } from 'vitest/browser';
import '../../../src/screens/styles/screens.css';
import { pngOf } from '../../../src/screens/debrief/savePng.ts';
import { makeDesk } from '../../app/makeDesk.ts';
import { quarryRoad } from '../../app/quarryRoad.ts';
import { button, doing, show } from '../show.tsx';

const objections = async (): Promise<string[]> => {
  await document.fonts.ready;
  const { violations } = await axe.run(document, { resultTypes: ['violations'] });
  return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 140)}`));
};
const tooWide = (): boolean => document.documentElement.scrollWidth > document.documentElement.clientWidth;

let leave = (): void => undefined;
afterEach(() => act(() => leave()));

const open = () => {
  const made = makeDesk(quarryRoad);
  const root = show(made.desk);
  leave = () => made.desk.leave();
  return { made, root };
};

/** Finds one thing, then lays a hand where it should not. */
const endedDrill = () => {
  const { made, root } = open();
  doing(() => void made.take());
  const playing = made.playing();
  for (const each of [
    { act: 'acknowledge' },
    { act: 'park', at: 'clear' },
    { act: 'go', to: 'p2.field' },
    { act: 'look', part: 'p2.tie', aid: 'glass' },
    { act: 'call-finding', on: 'p2.tie', condition: 'tie-broken' },
    { act: 'go', to: 'p2.butt' },
    { act: 'touch', point: 'p2.ground-lead/low' },
  ] as const)
    doing(() => playing.send(each));
  if (playing.snapshot.value.stage !== 'debrief') doing(() => playing.send({ act: 'hand-over' }));
  return { made, root };
};

const scrub = (root: HTMLElement, to: number): void =>
  doing(() => {
    const slider = root.querySelector('.scrub input') as HTMLInputElement;
    slider.value = String(to);
    slider.dispatchEvent(new Event('input', { bubbles: true }));
  });

describe('the drill again', () => {
  test('scrubbed, findings, exposures and the one-line move together', async () => {
    const { root } = endedDrill();
    scrub(root, 3);
    await vi.waitFor(() => expect(root.querySelector('.replay-line svg')).not.toBeNull(), { timeout: 20_000 });
    expect(root.querySelector('.then')?.textContent).toContain('Nothing yet.');
    expect(root.querySelector('.moment')?.textContent).toContain('Moved: field side');
    scrub(root, 7);
    expect(root.querySelector('.then')?.textContent).toContain('tie broken or leg missing');
    expect(root.querySelectorAll('.then li.now').length).toBeGreaterThan(0);
    expect(root.querySelector('.replay-line')?.textContent).toMatch(/kV/);
    expect(await objections()).toEqual([]);
  });

  test('played, it goes on by itself and stops at the end', async () => {
    const { root } = endedDrill();
    scrub(root, 6);
    doing(() => button(root, 'Play').click());
    await vi.waitFor(() => expect(button(root, 'Play').disabled).toBe(false), { timeout: 10_000 });
    await vi.waitFor(() => expect((root.querySelector('.scrub input') as HTMLInputElement).value).toBe('7'), {
      timeout: 10_000,
    });
  });

  test('a hazard’s card jumps to where its sign can be made out, and tells it', () => {
    const { root } = endedDrill();
    const card = [...root.querySelectorAll<HTMLDetailsElement>('details.card')].find((each) =>
      each.textContent?.startsWith('Missed Danger Cracked pin insulator'),
    );
    if (!card) throw new Error('no card of the insulator');
    doing(() => {
      card.open = true;
    });
    doing(() => button(card, /^Go there and look: Field side/).click());
    expect(root.querySelector('.looked-from')?.textContent).toContain('a fine dark line');
    expect(document.activeElement?.id).toBe('explore');
  });

  test('one goes on from a moment as practice, and the scored drill is kept', () => {
    const { made, root } = endedDrill();
    const scored = made.playing().snapshot.value.log;
    scrub(root, 6);
    doing(() => button(root, 'Go on from this moment, as practice').click());
    expect([made.playing().way, made.playing().snapshot.value.log.entries.length]).toEqual(['practice', 6]);
    doing(() => made.playing().send({ act: 'guard', with: 'keep-out' }));
    doing(() => made.playing().send({ act: 'hand-over' }));
    expect(root.textContent).toContain('Debrief of a practice run');
    expect(made.desk.keptDrill.value?.acts).toBe(scored.entries.length);
    doing(() => button(root, 'Back to the scored drill').click());
    expect(made.playing().snapshot.value.log).toEqual(scored);
  });
});

test('the picture of order is a PNG of twice its size', async () => {
  const { root } = endedDrill();
  const drawing = root.querySelector<SVGSVGElement>('.order-wide');
  if (!drawing) throw new Error('nothing is drawn');
  const blob = await pngOf(drawing);
  const image = await createImageBitmap(blob);
  expect([blob.type, image.width]).toEqual(['image/png', 2 * drawing.width.baseVal.value]);
});

test.each([
  [1280, 720],
  [390, 844],
] as const)('at %i×%i the worked survey asks first, then shows, and is fine', async (width, height) => {
  await page.viewport(width, height);
  const { root } = open();
  doing(() => button(root, 'Worked survey').click());
  await vi.waitFor(() => expect(root.querySelector('#stop')).not.toBeNull(), { timeout: 25_000 });
  expect(button(root, 'Go on').disabled).toBe(true);
  expect(root.querySelectorAll('.worked li')).toHaveLength(0);
  doing(() => button(root, 'Show what is to be found here').click());
  expect(root.querySelectorAll('.worked li').length).toBeGreaterThan(0);
  doing(() => button(root, 'Go on').click());
  expect(root.querySelector('#stop')?.textContent).toMatch(/^Stop 2 of /);
  expect(await objections()).toEqual([]);
  expect(tooWide()).toBe(false);
});

test('an exam has its luck and its time set, ends when that is over, and offers no way back', () => {
  const { made, root } = open();
  doing(() => {
    (root.querySelector('.exam') as HTMLDetailsElement).open = true;
  });
  const [seed, minutes] = root.querySelectorAll<HTMLInputElement>('.exam input');
  for (const [field, text] of [
    [seed, '42'],
    [minutes, '15'],
  ] as const)
    doing(() => {
      if (!field) throw new Error('no field');
      field.value = text;
      field.dispatchEvent(new Event('input', { bubbles: true }));
    });
  doing(() => button(root, 'Begin the exam').click());
  const playing = made.playing();
  expect([playing.way, playing.until, playing.snapshot.value.log.seed]).toEqual(['exam', 15, 42]);
  doing(() => playing.send({ act: 'acknowledge' }));
  doing(() => playing.send({ act: 'park', at: 'clear' }));
  doing(() => playing.send({ act: 'wait', minutes: 15 }));
  expect(playing.snapshot.value.world.ended).toBe('handed-over');
  expect(made.desk.problem.value).toMatch(/^Time is up/);
  expect(root.textContent).toContain('Debrief of an exam');
  expect(root.textContent).not.toContain('Go on from this moment');
});
