/** What may not be at any size: words over words, a page wider than its window, objections of axe. */
import axe from 'axe-core';
import { expect } from 'vitest';
import { page } from 'vitest/browser';

/** Pairs of texts of a drawing whose boxes share more than a hair. */
export const textsOverlapping = (svg: SVGSVGElement): string[] => {
  const boxes = [...svg.querySelectorAll<SVGGraphicsElement>('text tspan, text:not(:has(tspan))')]
    .filter((el) => (el.textContent ?? '').trim() !== '' && !el.closest('.flag, .symbol'))
    .map((el) => ({ words: el.textContent ?? '', box: (el as SVGTextContentElement).getBoundingClientRect() }));
  return boxes.flatMap((a, at) =>
    boxes.slice(at + 1).flatMap((b) => {
      const wide = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
      // A line box is taller than its letters: a fifth of it may be shared.
      const high = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top);
      return wide > 1 && high > 0.3 * Math.min(a.box.height, b.box.height) ? [`"${a.words}" over "${b.words}"`] : [];
    }),
  );
};

/** Words of a drawing that leave its frame. */
export const textsOutside = (svg: SVGSVGElement): string[] => {
  const frame = svg.getBoundingClientRect();
  return [...svg.querySelectorAll('text')]
    .filter((el) => (el.textContent ?? '').trim() !== '')
    .filter((el) => {
      const box = el.getBoundingClientRect();
      return box.left < frame.left - 1 || box.right > frame.right + 1 || box.bottom > frame.bottom + 1;
    })
    .map((el) => el.textContent ?? '');
};

export const wide = (): string[] => {
  const root = document.documentElement;
  const page = root.scrollWidth > root.clientWidth ? [`page is ${root.scrollWidth} wide in ${root.clientWidth}`] : [];
  const cut = [...document.querySelectorAll<HTMLElement>('button, p, h1, h2, h3, dt, dd, li, td, th, output, label')]
    .filter((el) => el.offsetParent !== null && !el.closest('.sr-only') && getComputedStyle(el).display !== 'inline')
    .filter((el) => el.scrollWidth > el.clientWidth + 1)
    .map((el) => `${el.tagName} "${el.textContent?.slice(0, 40)}" ${el.scrollWidth} in ${el.clientWidth}`);
  return [...page, ...cut];
};

export const objections = async (): Promise<string[]> => {
  const { violations } = await axe.run(document, { resultTypes: ['violations'] });
  return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 140)}`));
};

export const sizes = [
  [1280, 720],
  [1920, 1080],
  [390, 844],
] as const;

export const at = async ([width, height]: readonly [number, number]): Promise<void> => {
  await page.viewport(width, height);
  await document.fonts.ready;
};

export const isFine = async (): Promise<void> => {
  expect(wide()).toEqual([]);
  expect(await objections()).toEqual([]);
};
