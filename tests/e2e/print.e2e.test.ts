/** What the printer makes: each reference card on one sheet, the bench and the report whole, nothing cut off at an edge. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launchBrowser, openApp } from './browser.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

/** Margin that a browser leaves when the page asks for none, CSS pixels at 96 to an inch. */
const MARGIN = 0.4 * 96;

/** Width and height in CSS pixels, upright. */
const papers = { Letter: [8.5 * 96, 11 * 96], A4: [(210 / 25.4) * 96, (297 / 25.4) * 96] } as const;

/** Page objects of a PDF; the tree that holds them is no page. */
const pagesOf = (pdf: Buffer): number => pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;

/** What reaches beyond the paper or is cut off in its own box, as the printer lays it out. */
const clipped = (page: Page, width: number): Promise<string[]> =>
  page.evaluate((edge) => {
    const found: string[] = [];
    for (const el of document.querySelectorAll<HTMLElement>('body *')) {
      if (el.closest('.sr-only') || el.closest('svg') !== null) continue;
      const box = el.getBoundingClientRect();
      if (box.width === 0 || box.height === 0) continue;
      const name = `${el.tagName}.${el.className} "${(el.textContent ?? '').slice(0, 30)}"`;
      if (box.right > edge + 1 || box.left < -1) found.push(`${name} from ${box.left} to ${box.right} of ${edge}`);
      const { overflowX, overflowY, display } = getComputedStyle(el);
      if (display === 'inline') continue;
      if (overflowX !== 'visible' && el.scrollWidth > el.clientWidth + 1) found.push(`${name} is cut at its side`);
      if (overflowY !== 'visible' && el.scrollHeight > el.clientHeight + 1) found.push(`${name} is cut at its foot`);
    }
    return found;
  }, width);

async function printed(
  page: Page,
  format: keyof typeof papers,
  { landscape = false } = {},
): Promise<{ pages: number; cut: string[] }> {
  const [across, down] = landscape ? [papers[format][1], papers[format][0]] : papers[format];
  const width = Math.floor(across - 2 * MARGIN);
  const before = page.viewportSize();
  await page.emulateMedia({ media: 'print' });
  await page.setViewportSize({ width, height: Math.floor(down - 2 * MARGIN) });
  const cut = await clipped(page, width);
  const margin = `${MARGIN}px`;
  const pdf = await page.pdf({
    format,
    landscape,
    margin: { top: margin, right: margin, bottom: margin, left: margin },
  });
  await page.emulateMedia({ media: 'screen' });
  if (before) await page.setViewportSize(before);
  return { pages: pagesOf(pdf), cut };
}

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
});
