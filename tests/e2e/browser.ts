/** Opens the built app in a real Chromium and keeps what the page complained about. */
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { inject } from 'vitest';
import { browserArgs, findBrowser } from '../../src/setup/browser.mjs';

/** A Chromium with the arguments of all browser tests; the caller closes it. */
export const launchBrowser = (): Promise<Browser> =>
  chromium.launch({ executablePath: findBrowser() ?? undefined, chromiumSandbox: false, args: browserArgs });

/** An opened app: its page, and every console error, uncaught error and failed request since it was opened. */
export type OpenApp = {
  readonly page: Page;
  readonly complaints: readonly string[];
  readonly close: () => Promise<void>;
};

/** Opens the served app, at 1280×720 with reduced motion unless the options say otherwise. */
export const openApp = async (browser: Browser, options: BrowserContextOptions = {}, path = ''): Promise<OpenApp> => {
  const context = await browser.newContext({
    viewport: { width: 1280, height: 720 },
    reducedMotion: 'reduce',
    ...options,
  });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('requestfailed', (request) => complaints.push(`${request.url()}: ${request.failure()?.errorText}`));
  await page.goto(new URL(path, inject('appUrl')).href);
  return { page, complaints, close: () => context.close() };
};
