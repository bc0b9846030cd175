// @ts-check
/** Finds the Chromium that the browser tests run in. Only Node built-ins: this runs before node_modules exists. */
import { accessSync, constants } from 'node:fs';

/** @param {string} path */
const usable = (path) => {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
};

const places = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome-stable',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

/** Path of a Chromium-family browser, or null. CHROMIUM_PATH, where set, is the only candidate. */
export const findBrowser = (named = process.env.CHROMIUM_PATH, candidates = places) =>
  (named ? [named] : candidates).find(usable) ?? null;

/** What every browser test starts Chromium with. Mesa's llvmpipe where installed; else Chromium falls back by itself. */
export const browserArgs = [
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-quic',
  '--use-gl=angle',
  '--use-angle=gl-egl',
  '--ignore-gpu-blocklist',
  '--autoplay-policy=no-user-gesture-required',
  '--mute-audio',
];
