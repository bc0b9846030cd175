/** What the printer makes of a drill: the debrief on two pages at most, the job briefing on one sheet, nothing cut off at an edge. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchBrowser, openApp } from './browser.ts';
import { printed } from './printed.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

const log = (scenario: string, name: string): string =>
  fileURLToPath(new URL(`../logs/${scenario}/${name}.json`, import.meta.url));

test.each([
  ['quarry-road-fog', 'careful'],
  ['frost-hill-ice', 'ties-it-in-alive'],
])('the debrief of %s, %s, is two pages at most, whole and with its caution', async (scenario, name) => {
  const { page, complaints, close } = await openApp(browser);
  await page.getByLabel('Log file').setInputFiles(log(scenario, name));
  await page.locator('article.debrief').waitFor();
  const { pages, cut } = await printed(page, 'Letter');
  expect(cut).toEqual([]);
  expect(pages).toBeLessThanOrEqual(2);
  expect((await page.locator('.debrief .fine').allTextContents()).join(' ')).toMatch(/authorises nobody to work/);
  expect(complaints).toEqual([]);
  await close();
});

test('the job briefing is one sheet with what stands under each subject, lines to sign and the caution', async () => {
  const { page, close } = await openApp(browser);
  await page.evaluate(() => {
    window.print = () => undefined;
  });
  const whole = JSON.parse(readFileSync(log('quarry-road-fog', 'careful'), 'utf8')) as {
    entries: { act: { act: string } }[];
  };
  const held = whole.entries.findIndex(({ act }) => act.act === 'brief') + 1;
  const text = JSON.stringify({ ...whole, entries: whole.entries.slice(0, held) });
  await page
    .getByLabel('Log file')
    .setInputFiles({ name: 'briefed.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await page.locator('#tab-briefing').click();
  await page.getByRole('button', { name: 'Print this sheet' }).click();
  const sheet = page.locator('.print-host');
  expect(await sheet.locator('.signatures p').count()).toBe(4);
  const words = (await sheet.textContent()) ?? '';
  expect(words).toMatch(/Energy source controls.*Open, tag, test dead and ground the line/);
  expect(words).toMatch(/authorises nobody to work/);
  const { pages, cut } = await printed(page, 'Letter');
  expect(cut).toEqual([]);
  expect(pages).toBe(1);
  await close();
});
