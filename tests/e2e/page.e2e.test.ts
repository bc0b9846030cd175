/** The page itself: what is readable before the picture has arrived, without one, and after a tab was closed. */
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { browserArgs, findBrowser } from '../../src/setup/browser.mjs';
import { launchBrowser, openApp } from './browser.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

const takeCall = async (page: Page): Promise<void> => {
  await page.getByRole('button', { name: /^Take this drill ?: Fog on Quarry Road$/ }).click();
  await page.locator('.ticket').waitFor();
};

const toScene = async (page: Page): Promise<void> => {
  await takeCall(page);
  await page.getByRole('button', { name: 'Acknowledge the call' }).click();
  await page.getByRole('button', { name: 'Park outside the fall line' }).click();
  await page.locator('.on-scene').waitFor();
};

describe('the page', () => {
  test('shows the call and takes acts while the picture is still on its way', async () => {
    const context = await browser.newContext({ viewport: { width: 1280, height: 720 } });
    const page = await context.newPage();
    let letGo = (): void => undefined;
    const held = new Promise<void>((resolve) => {
      letGo = resolve;
    });
    const asked: string[] = [];
    await page.route(/mountScene|phaser|three/, async (route) => {
      asked.push(route.request().url());
      await held;
      await route.continue();
    });
    await page.goto(inject('appUrl'));
    expect(asked).toEqual([]);
    await toScene(page);
    expect(asked.length).toBeGreaterThan(0);
    await page.getByText('The picture is on its way.').waitFor();
    await page.locator('#tab-acts').click();
    // Long lists of acts are folded; the search finds one in any of them.
    await page.getByLabel('Find an act').fill('listen');
    await page.getByRole('button', { name: /Stand still and listen/ }).click();
    expect(await page.locator('.last').textContent()).not.toBe('');
    letGo();
    await page.locator('.picture canvas').first().waitFor({ timeout: 60_000 });
    await context.close();
  });

  test('offers to go on with a drill whose tab was closed, and comes to the same place', async () => {
    const { page, complaints, close } = await openApp(browser);
    await toScene(page);
    const before = await page.evaluate(() => localStorage.getItem('loose-tie.drill'));
    await page.goto('about:blank');
    await page.goto(inject('appUrl'));
    await page.getByText('A drill is still running').waitFor();
    await page.getByRole('button', { name: 'Go on with it' }).click();
    await page.locator('.on-scene').waitFor();
    expect(await page.locator('.walk .value').textContent()).toBe('Road side, pole QR-14');
    expect(await page.evaluate(() => localStorage.getItem('loose-tie.drill'))).toBe(before);
    expect(complaints).toEqual([]);
    await close();
  });

  test('keeps a drill going on a full disk and says so', async () => {
    const { page, complaints, close } = await openApp(browser);
    await page.evaluate(() => {
      Storage.prototype.setItem = () => {
        throw new DOMException('The quota has been exceeded.', 'QuotaExceededError');
      };
    });
    await toScene(page);
    expect(await page.getByRole('alert').textContent()).toContain('cannot be kept on this device');
    await page.getByRole('button', { name: 'Put it away' }).click();
    expect(await page.getByRole('alert').count()).toBe(0);
    expect(complaints).toEqual([]);
    await close();
  });

  test('a click in the picture chooses the part there, and the arrow keys turn the view', async () => {
    const { page, complaints, close } = await openApp(browser);
    await toScene(page);
    await page.locator('.picture canvas').first().waitFor({ timeout: 60_000 });
    const box = await page.locator('#picture').boundingBox();
    if (box === null) throw new Error('the picture has no place');
    // The pole that one stands at is in the middle; somewhere on that line there is a part of it.
    for (let share = 0.2; share < 0.8 && (await page.locator('.part-card').count()) === 0; share += 0.1) {
      await page.mouse.click(box.x + box.width / 2, box.y + box.height * share);
    }
    await page.locator('.part-card .lines li').first().waitFor();
    const log = await page.evaluate(() => JSON.parse(localStorage.getItem('loose-tie.drill') ?? '{}'));
    expect(log.entries.at(-1).act).toMatchObject({ act: 'look', aid: 'eyes', part: expect.stringMatching(/^p2\./) });
    await page.keyboard.press('Escape');
    expect(await page.locator('.part-card').count()).toBe(0);
    const heard = page.locator('.captions li').first();
    const before = await heard.textContent();
    await page.locator('#picture').focus();
    for (let turns = 0; turns < 12; turns += 1) await page.keyboard.press('ArrowLeft');
    await page.waitForFunction((old) => document.querySelector('.captions li')?.textContent !== old, before);
    expect(complaints).toEqual([]);
    await close();
  });

  test('is played from the list where nothing can be drawn in three dimensions', async () => {
    const plain = await chromium.launch({
      executablePath: findBrowser() ?? undefined,
      chromiumSandbox: false,
      args: [...browserArgs, '--disable-3d-apis'],
    });
    const { page, complaints, close } = await openApp(plain);
    await toScene(page);
    await page.getByText('The list stands for it').waitFor();
    await page.locator('[data-id="p2.insulator"] .name').click();
    expect(await page.locator('.part-card .lines li').count()).toBeGreaterThan(0);
    expect(complaints).toEqual([]);
    await close();
    await plain.close();
  });
});
