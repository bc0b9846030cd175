/** What the printer makes: each reference card on one sheet, the bench and the report whole, nothing cut off at an edge. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launchBrowser, openApp } from './browser.ts';
import { MARGIN, papers, printed } from './printed.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

const open = async (name: string) => {
  const app = await openApp(browser);
  await app.page.getByRole('button', { name }).click();
  return app;
};

describe('printed', () => {
  test.each(Object.keys(papers) as (keyof typeof papers)[])('each reference card is one sheet of %s', async (paper) => {
    const { page, complaints, close } = await open('Reference cards');
    await page.locator('.ref-card').waitFor();
    const names = await page.locator('nav[aria-label="Cards"] button').allTextContents();
    expect(names.length).toBe(8);
    for (const name of names) {
      await page.locator('nav[aria-label="Cards"] button', { hasText: name }).click();
      const { pages, cut } = await printed(page, paper);
      expect({ name, pages, cut }).toEqual({ name, pages: 1, cut: [] });
      expect(await page.locator('.ref-card .whence li').count(), name).toBeGreaterThan(0);
      expect(await page.locator('.ref-card .caution').count(), name).toBe(1);
    }
    expect(complaints).toEqual([]);
    await close();
  });

  /** Letters of the drawings in points, and the foot of each drawing in pages. */
  const drawings = (page: Page, down: number) =>
    page.evaluate(
      (height) =>
        [...document.querySelectorAll<SVGSVGElement>('.diagram-wide svg, .diagram-narrow svg')].flatMap((svg) => {
          const { width, bottom } = svg.getBoundingClientRect();
          return width === 0
            ? []
            : [{ points: (12 * width * 0.75) / svg.viewBox.baseVal.width, foot: bottom / height }];
        }),
      down,
    );

  test.each([
    ['A bang on Mill Lane', 'the first one'],
    ['Two transformers on Station Road', 'a wide one'],
    ['The bank on Works Road', 'a bank on three phases, a sheet a pole'],
  ])('the bench lays %s, %s, on two sheets at most, in letters that can be read', async (title) => {
    const { page, complaints, close } = await open('One-line bench');
    await page.locator('.bench svg').first().waitFor();
    await page.getByLabel('Scenario').selectOption({ label: title });
    await page.waitForTimeout(100);
    const { pages, cut } = await printed(page, 'Letter', { landscape: true });
    expect(cut).toEqual([]);
    expect(pages).toBeLessThanOrEqual(2);
    await page.emulateMedia({ media: 'print' });
    await page.setViewportSize({ width: Math.floor(papers.Letter[1] - 2 * MARGIN), height: 740 });
    const drawn = await drawings(page, papers.Letter[0] - 2 * MARGIN);
    expect(drawn.length).toBeGreaterThan(0);
    for (const { points } of drawn) expect(points).toBeGreaterThan(5);
    expect(complaints).toEqual([]);
    await close();
  });

  test('the instructor’s sheet is told whole on a few sheets, nothing cut off, without what is pressed', async () => {
    const { page, complaints, close } = await open('Instructor’s sheet');
    await page.locator('.choice select').selectOption({ label: 'Two transformers on Station Road' });
    await page.getByRole('button', { name: 'Go to its sheet' }).click();
    await page.getByRole('button', { name: 'I instruct, show the answers' }).click();
    await page.locator('.told').waitFor();
    const { pages, cut } = await printed(page, 'Letter');
    expect(cut).toEqual([]);
    expect(pages).toBeLessThanOrEqual(4);
    await page.emulateMedia({ media: 'print' });
    expect(await page.getByRole('button').count()).toBe(0);
    expect(complaints).toEqual([]);
    await close();
  });
});
