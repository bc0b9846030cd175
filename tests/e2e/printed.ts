/** A page as the printer lays it out: how many sheets, and what is cut off. */
import type { Page } from 'playwright-core';

/** Margin that a browser leaves when the page asks for none, CSS pixels at 96 to an inch. */
export const MARGIN = 0.4 * 96;

/** Width and height in CSS pixels, upright. */
export const papers = { Letter: [8.5 * 96, 11 * 96], A4: [(210 / 25.4) * 96, (297 / 25.4) * 96] } as const;

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

/** Pages of the print, and what of it is cut. */
export async function printed(
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
