/** The instructor's sheet in the real browser: told only after it is asked whether one wants it, the same words as on paper. */
import axe from 'axe-core';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { page } from 'vitest/browser';
import '../../src/screens/styles/screens.css';
import { instructorSheet } from '../../src/engine/debrief/instructorSheet.ts';
import { sheetText } from '../../src/engine/debrief/sheetText.ts';
import { build } from '../../src/engine/world/build.ts';
import { makeDesk } from '../app/makeDesk.ts';
import { quarryRoad } from '../app/quarryRoad.ts';
import { button, doing, show } from './show.tsx';

let leave = (): void => undefined;
afterEach(() => act(() => leave()));

const [offered] = quarryRoad.offered;
if (offered === undefined) throw new Error('no Quarry Road');
const sheet = instructorSheet(offered.scenario, build(offered.scenario, offered.hash), 'us', offered.route);
const answers = sheet.causes.map(({ tellApart }) => tellApart);

const asked = async (): Promise<HTMLElement> => {
  const { desk } = makeDesk(quarryRoad);
  leave = () => desk.leave();
  const root = show(desk);
  doing(() => button(root, 'Its instructor’s sheet').click());
  await vi.waitFor(() => button(root, 'Leave it closed'), { timeout: 25_000 });
  return root;
};

const words = (text: string): string => text.replace(/[\s-]+/g, ' ').toLowerCase();

describe('the instructor’s sheet', () => {
  test('tells nothing before one has said that one instructs, nor after leaving it closed', async () => {
    const root = await asked();
    for (const each of answers) expect(root.textContent).not.toContain(each);
    doing(() => button(root, 'Leave it closed').click());
    for (const each of answers) expect(root.textContent).not.toContain(each);
    expect(button(root, 'Go to its sheet')).toBeTruthy();
  });

  test('has the focus on its title the moment it is there', async () => {
    const { desk } = makeDesk(quarryRoad);
    leave = () => desk.leave();
    const root = show(desk);
    const focused = new Promise<string | null | undefined>((resolve) => {
      const watch = new MutationObserver(() => {
        if (root.querySelector('.instructor') === null) return;
        watch.disconnect();
        resolve(document.activeElement?.textContent);
      });
      watch.observe(root, { childList: true, subtree: true });
    });
    doing(() => button(root, 'Its instructor’s sheet').click());
    expect(await focused).toBe(offered.scenario.title);
  });

  test('has every line that is printed, and nobody is shut out at any size', async () => {
    const root = await asked();
    doing(() => button(root, 'I instruct, show the answers').click());
    const told = words(root.textContent ?? '');
    const severities = sheet.causes.map(({ severity }) => severity).join('|');
    for (const line of sheetText(sheet).split('\n')) {
      const bare = line.trim().replace(new RegExp(`, (?:${severities})$`), '');
      if (/^INSTRUCTOR|\(grade \d\)$/.test(bare)) continue;
      expect(told).toContain(words(bare.replace(/^- /, '')).trim());
    }
    await document.fonts.ready;
    for (const [width, height] of [
      [1280, 720],
      [1920, 1080],
      [390, 844],
    ] as const) {
      await page.viewport(width, height);
      const { violations } = await axe.run(document, { resultTypes: ['violations'] });
      expect(violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 140)}`))).toEqual(
        [],
      );
      expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(document.documentElement.clientWidth);
    }
  });
});
