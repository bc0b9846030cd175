/** The bench in a real browser at three sizes: words lie on nothing, axe has nothing to say, keys do it all. */
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import '../../../src/screens/styles/screens.css';
import '../../../src/screens/styles/bench.css';
import { BenchPage } from '../../../src/screens/bench/BenchPage.tsx';
import { at, isFine, sizes, textsOutside, textsOverlapping } from './geometry.ts';
import { offered, quarryRoad } from './scene.ts';

let root: HTMLElement;
afterEach(() => {
  act(() => render(null, root));
});

const show = async (size: readonly [number, number], which = offered.indexOf(quarryRoad)): Promise<void> => {
  document.body.innerHTML = '<div id="app"></div>';
  root = document.getElementById('app') as HTMLElement;
  const one = offered[which];
  act(() => render(<BenchPage scenarios={one ? [one] : []} back={() => undefined} />, root));
  await at(size);
};

const drawings = (): SVGSVGElement[] =>
  [...root.querySelectorAll<SVGSVGElement>('.one-line')].filter((svg) => svg.getBoundingClientRect().width > 0);
const drawn = (selector: string): SVGElement => {
  const found = drawings().flatMap((svg) => [...svg.querySelectorAll<SVGElement>(selector)])[0];
  if (!found) throw new Error(`nothing drawn at ${selector}`);
  return found;
};
const click = (el: Element): void => {
  act(() => void el.dispatchEvent(new MouseEvent('click', { bubbles: true })));
};

describe.each(sizes)('the bench at %i×%i', (...size) => {
  test('has no word on another and none beyond its frame, as laid and with everything turned over', async () => {
    for (let which = 0; which < offered.length; which += 1) {
      await show(size, which);
      const check = (): void => {
        for (const svg of drawings()) {
          expect(textsOverlapping(svg)).toEqual([]);
          expect(textsOutside(svg)).toEqual([]);
        }
      };
      check();
      // Turning everything over is slow: the first scene and the small ones that hold every system do for it.
      const one = offered[which];
      if (one !== quarryRoad && !one?.scenario.id.startsWith('model-')) continue;
      const devices = new Set(
        drawings().flatMap((svg) => [...svg.querySelectorAll<SVGElement>('.acts')].map((el) => el.dataset.edge)),
      );
      for (const id of devices) click(drawn(`[data-edge="${id}"]`));
      check();
      act(() => render(null, root));
    }
  }, 90_000);

  test('fits the window and axe objects to nothing, with a bar or a device chosen', async () => {
    document.body.innerHTML = '<div id="app"></div>';
    root = document.getElementById('app') as HTMLElement;
    const scenarios = [quarryRoad, ...offered.filter((each) => each !== quarryRoad)];
    act(() => render(<BenchPage scenarios={scenarios} back={() => undefined} />, root));
    await at(size);
    await isFine();
    click(drawn('[data-bus="p2.x1"]'));
    await isFine();
    click(drawn('[data-part="p2.cutout"]'));
    await isFine();
  });
});

test('by keys alone: to the drawing, along it, a device turned, back out', async () => {
  await show([1280, 720]);
  const first = drawn('[tabindex="0"]');
  for (let k = 0; k < 6 && document.activeElement !== first; k += 1) await userEvent.tab();
  expect(document.activeElement).toBe(first);
  await userEvent.keyboard('{ArrowDown}');
  expect((document.activeElement as SVGElement).dataset.part).toBe('p1.tap-cutout');
  await userEvent.keyboard('{Enter}');
  expect(drawn('[data-part="p1.tap-cutout"]').getAttribute('aria-label')).toContain('closed');
  await userEvent.tab();
  expect(document.activeElement?.closest('.one-line')).toBeNull();
});
