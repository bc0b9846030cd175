/** Every sheet in a real browser at three sizes: nothing that axe objects to, nothing cut off, nothing beyond the edge. */
import axe from 'axe-core';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, test } from 'vitest';
import { page } from 'vitest/browser';
import '../../src/screens/styles/screens.css';
import type { MountScene } from '../../src/drill/sceneTypes.ts';
import type { SceneState } from '../../src/screens/types.ts';
import { makeDesk, memoryStore } from '../app/makeDesk.ts';
import { quarryRoad } from '../app/quarryRoad.ts';
import { button, doing, press, show } from './show.tsx';

const sizes = [
  [1280, 720],
  [1920, 1080],
  [390, 844],
] as const;

/** Buttons and fields whose words do not fit, and whatever reaches beyond the window. */
const cutOff = (): string[] => {
  const found: string[] = [];
  const root = document.documentElement;
  if (root.scrollWidth > root.clientWidth) found.push(`page is ${root.scrollWidth} wide in ${root.clientWidth}`);
  for (const el of document.querySelectorAll<HTMLElement>(
    'button, p, h1, h2, h3, dd, dt, li, summary, [role="option"]',
  )) {
    if (el.closest('.sr-only') || el.offsetParent === null) continue;
    if (el.scrollWidth > el.clientWidth + 1 && getComputedStyle(el).display !== 'inline') {
      found.push(`${el.tagName} "${el.textContent?.slice(0, 40)}" ${el.scrollWidth} in ${el.clientWidth}`);
    }
  }
  return found;
};

/** Things to press that are smaller than 24 × 24 pixels. */
const tooSmall = (): string[] =>
  [...document.querySelectorAll<HTMLElement>('button, summary, input, select, [role="treeitem"]')]
    .filter((el) => el.offsetParent !== null && !el.closest('.sr-only') && !el.classList.contains('sr-only'))
    .filter((el) => {
      const box = (el.closest('label') ?? el).getBoundingClientRect();
      return box.width < 24 || box.height < 24;
    })
    .map((el) => el.outerHTML.slice(0, 80));

const objections = async (): Promise<string[]> => {
  const { violations } = await axe.run(document, { resultTypes: ['violations'] });
  return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 140)}`));
};

const isFine = async (): Promise<void> => {
  await document.fonts.ready;
  expect(cutOff()).toEqual([]);
  expect(tooSmall()).toEqual([]);
  expect(await objections()).toEqual([]);
};

/** Holds the place of the picture and draws nothing. */
const blank: MountScene = () => ({
  update: () => undefined,
  lookToward: () => undefined,
  turn: () => undefined,
  yaw: () => 0,
  photograph: () => null,
  dispose: () => undefined,
  supported: true,
});

let leave = (): void => undefined;
afterEach(() => act(() => leave()));

describe.each(sizes)('at %i×%i', (width, height) => {
  const open = async (scene?: SceneState) => {
    await page.viewport(width, height);
    const made = makeDesk(quarryRoad, memoryStore(), scene);
    const root = show(made.desk);
    leave = () => made.desk.leave();
    return { made, root };
  };
  const onScene = async (scene?: SceneState) => {
    const { made, root } = await open(scene);
    doing(() => void made.take());
    const playing = made.playing();
    doing(() => playing.send({ act: 'acknowledge' }));
    doing(() => playing.send({ act: 'park', at: 'clear' }));
    return { root, playing };
  };

  test('the start sheet is fine', async () => {
    await open();
    await isFine();
  });

  test('the call is read from its top, however far down the start sheet was', async () => {
    const { root } = await open();
    window.scrollTo(0, document.body.scrollHeight);
    expect(window.scrollY).toBeGreaterThan(0);
    doing(() => button(root, /^Take this drill/).click());
    expect(window.scrollY).toBe(0);
  });

  test('the call is fine before and after it is acknowledged', async () => {
    const { made } = await open();
    doing(() => void made.take());
    await isFine();
    doing(() => made.playing().send({ act: 'acknowledge' }));
    await isFine();
  });

  test.each(['findings', 'briefing', 'acts', 'call'] as const)('the page %s is fine', async (name) => {
    const { playing } = await onScene();
    doing(() => {
      playing.send({ act: 'call-finding', on: 'p2.insulator', condition: 'cracked' });
      playing.send({ act: 'plan', finding: 'f1', control: 'deenergize-ground', by: 'trainee' });
      playing.page.value = name;
      playing.sheetOpen.value = true;
    });
    for (const fold of document.querySelectorAll('details')) fold.open = true;
    await isFine();
  });

  test('a part with its lines and the form of a finding is fine', async () => {
    const { root, playing } = await onScene();
    doing(() => playing.choose('p2.ground-bond'));
    await isFine();
    doing(() => button(root.querySelector('.part-card') as HTMLElement, 'Call a finding').click());
    const field = root.querySelector('.part-card input') as HTMLInputElement;
    doing(() => {
      field.value = 'bon';
      field.dispatchEvent(new Event('input', { bubbles: true }));
    });
    expect(root.querySelectorAll('.part-card [role="option"]').length).toBeGreaterThan(0);
    await isFine();
  });

  test('the longest name of what is pointed at lies over no button of the picture', async () => {
    const { root, playing } = await onScene({ is: 'ready', mount: blank });
    const parts = playing.snapshot.value.world.parts;
    const longest = parts.reduce((a, b) => (b.name.length > a.name.length ? b : a));
    doing(() => {
      playing.hovered.value = longest.id;
    });
    const name = root.querySelector('.over') as HTMLElement;
    expect(name.textContent).toBe(longest.name);
    const box = name.getBoundingClientRect();
    const over = [...root.querySelectorAll('.view-tools button, .arrows button, .below *')].filter((el) => {
      const b = el.getBoundingClientRect();
      return b.width > 0 && b.left < box.right && b.right > box.left && b.top < box.bottom && b.bottom > box.top;
    });
    expect(over.map((el) => el.textContent)).toEqual([]);
    await isFine();
  });

  test('a refused act, the walk menu, the keys and the end slip are fine', async () => {
    const { root, playing } = await onScene();
    doing(() => playing.send({ act: 'engine', on: true }));
    doing(() => root.querySelector<HTMLElement>('.walk button')?.click());
    await isFine();
    press(root.querySelector('[role="menu"]') as HTMLElement, 'Escape');
    for (const dialog of ['keys', 'close-out'] as const) {
      doing(() => {
        playing.dialog.value = dialog;
      });
      await isFine();
      doing(() => {
        playing.dialog.value = null;
      });
    }
  });

  test('the debrief is fine, unfolded', async () => {
    const { playing } = await onScene();
    doing(() => playing.send({ act: 'go', to: 'p2.butt' }));
    doing(() => playing.send({ act: 'touch', point: 'p2.ground-lead/low' }));
    if (playing.snapshot.value.stage !== 'debrief') doing(() => playing.send({ act: 'hand-over' }));
    for (const fold of document.querySelectorAll('details')) fold.open = true;
    await isFine();
  });
});

test('the focus ring stands out from paper and from the night by more than 3 to 1', async () => {
  const made = makeDesk(quarryRoad);
  show(made.desk);
  leave = () => made.desk.leave();
  doing(() => void made.take());
  doing(() => made.playing().send({ act: 'acknowledge' }));
  doing(() => made.playing().send({ act: 'park', at: 'clear' }));
  const luminance = (color: string): number => {
    const [r = 0, g = 0, b = 0] = (color.match(/[\d.]+/g) ?? []).map((part) => {
      const share = Number(part) / 255;
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const ratio = (a: string, b: string): number => {
    const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number];
    return (high + 0.05) / (low + 0.05);
  };
  const solid = (el: Element | null): string => {
    for (let at = el; at !== null; at = at.parentElement) {
      const { backgroundColor } = getComputedStyle(at);
      if (!/, 0\)$/.test(backgroundColor) && backgroundColor !== 'transparent') return backgroundColor;
    }
    return 'rgb(255, 255, 255)';
  };
  for (const id of ['tab-acts', 'list-first']) {
    const el = document.getElementById(id) as HTMLElement;
    press(document.body, 'Tab');
    el.focus({ focusVisible: true } as FocusOptions);
    const { outlineColor, outlineStyle } = getComputedStyle(el);
    expect(outlineStyle).toBe('solid');
    expect(ratio(outlineColor, solid(el.parentElement))).toBeGreaterThan(3);
  }
});
