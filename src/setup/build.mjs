// @ts-check
/**
 * Builds the app into dist/ and the command line into .cache/, each only when stale. Both are built aside and moved
 * into place, so a build that fails or is cut short leaves the old one whole and two at a time do no harm.
 * Only Node built-ins; vite runs as a child.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { run, SetupError, say } from './run.mjs';
import { hashOf } from './stamp.mjs';

const shared = ['src', 'shared', 'vite.config.ts', 'tsconfig.json', 'package.json', 'package-lock.json'];
const appInputs = [...shared, 'assets', 'scenarios'];
const cliInputs = shared;

/** @param {string} root @param {string[]} args @param {string} outDir */
const vite = (root, args, outDir) => {
  mkdirSync(join(root, '.cache'), { recursive: true });
  const bin = join(root, 'node_modules', 'vite', 'bin', 'vite.js');
  const built = run(root, process.execPath, [
    bin,
    'build',
    ...args,
    '--outDir',
    outDir,
    '--emptyOutDir',
    '--logLevel',
    'warn',
  ]);
  if (built) return;
  rmSync(outDir, { recursive: true, force: true });
  throw new SetupError('the build failed, see above');
};

/** Moves a folder to a place that another process may fill or empty at the same moment. @param {string} from @param {string} to */
const moveInto = (from, to) => {
  for (let tries = 5; ; tries -= 1) {
    const old = `${from}.old`;
    if (existsSync(to)) renameSync(to, old);
    try {
      renameSync(from, to);
      rmSync(old, { recursive: true, force: true });
      return;
    } catch (error) {
      if (tries === 0) throw error;
      rmSync(old, { recursive: true, force: true });
    }
  }
};

/** Builds the app into dist/ if stale; tells whether it did. @param {string} root */
export const buildApp = (root) => {
  const stamp = join(root, '.cache', 'app.stamp');
  const dist = join(root, 'dist');
  const want = hashOf(root, appInputs);
  const have = existsSync(stamp) && existsSync(join(dist, 'index.html')) ? readFileSync(stamp, 'utf8') : '';
  if (have === want) return false;
  if (!existsSync(join(root, 'src', 'index.html'))) throw new SetupError('src/index.html is missing, nothing to build');
  say('building the app');
  const aside = join(root, '.cache', `app-${process.pid}`);
  vite(root, [], aside);
  rmSync(stamp, { force: true });
  moveInto(aside, dist);
  writeFileSync(stamp, want);
  return true;
};

/** Builds the command line if stale; answers the path of the file to run. @param {string} root */
export const buildCli = (root) => {
  const cache = join(root, '.cache');
  const name = `cli-${hashOf(root, cliInputs)}`;
  const entry = join(cache, name, 'main.mjs');
  if (existsSync(entry)) return entry;
  say('building the command line');
  const aside = join(cache, `${name}.${process.pid}`);
  vite(root, ['--config', join(root, 'src', 'setup', 'cli.vite.mjs')], aside);
  try {
    renameSync(aside, join(cache, name));
  } catch (error) {
    rmSync(aside, { recursive: true, force: true });
    if (!existsSync(entry)) throw error;
  }
  for (const other of readdirSync(cache)) {
    // Another process may still be reading a younger one.
    const folder = join(cache, other);
    const isOld = /^cli-/.test(other) && other !== name && Date.now() - statSync(folder).mtimeMs > 3_600_000;
    if (isOld) rmSync(folder, { recursive: true, force: true });
  }
  return entry;
};
