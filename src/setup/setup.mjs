// @ts-check
/**
 * Brings a fresh clone to a state in which npm's scripts run: packages, then what the arguments ask for.
 * --browser provides a Chromium, --app builds the app. Each step does nothing when its work is already there.
 */
import { buildApp } from './build.mjs';
import { install } from './install.mjs';
import { provideBrowser } from './provideBrowser.mjs';
import { main, root } from './run.mjs';

await main(async () => {
  install(root);
  if (process.argv.includes('--browser')) provideBrowser();
  if (process.argv.includes('--app')) buildApp(root);
});
