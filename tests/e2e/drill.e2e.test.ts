/** The drill from the call to the debrief by mouse, by keys alone and by touch; the saved log replays to the score shown. */
import { readFileSync } from 'node:fs';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { worldHash } from '../../src/engine/acts/log.ts';
import type { Act } from '../../src/engine/acts/types.ts';
import { launchBrowser, openApp } from './browser.ts';
import { type Hand, keyboard, mouse, touch } from './hands.ts';
import { actsOf, scoreOfText } from './mirror.ts';
import { keptLog, play } from './play.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

const verdicts: Readonly<Record<string, string>> = {
  Passed: 'pass',
  'Passed with remarks': 'remarks',
  'Not passed': 'fail',
};

const drillBy = async (
  handOf: (page: Page) => Hand,
  acts: readonly Act[],
  options: BrowserContextOptions = {},
): Promise<void> => {
  const { page, complaints, close } = await openApp(browser, { acceptDownloads: true, ...options });
  const hand = handOf(page);
  const drill = await play(hand, acts);
  await page.locator('.debrief').waitFor();
  const { entries } = (await keptLog(page)) ?? { entries: [] };
  const apart = drill.snapshot().log.entries.findIndex(({ hash }, index) => hash !== entries[index]?.hash);
  expect(entries[apart]).toEqual(drill.snapshot().log.entries[apart]);
  const shown = (await page.locator('.stamp.big').textContent()) ?? '';
  expect(verdicts[shown]).toBe(drill.snapshot().score?.verdict);
  expect(await page.locator('.debrief code').first().textContent()).toBe(worldHash(drill.snapshot().world));
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    hand.press(page.getByRole('button', { name: 'Save the log' })),
  ]);
  const score = scoreOfText(readFileSync(await download.path(), 'utf8'));
  expect(score).toEqual(drill.snapshot().score);
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
  expect(complaints).toEqual([]);
  await close();
};

describe('the drill, played from the call to its debrief', () => {
  test('passes by mouse, done as a careful crew does it', () => drillBy(mouse, actsOf('careful')), 240_000);

  test('is played by keys alone', () => drillBy(keyboard, actsOf('stuck')), 180_000);

  test('is played by touch at 390×844', () =>
    drillBy(touch, actsOf('hasty'), { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true }));
});
