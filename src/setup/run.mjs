// @ts-check
/**
 * Runs the set-up's child processes. Their output goes to stderr, so that a command's own stdout stays clean.
 * Only Node built-ins: this runs before node_modules exists.
 */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

/** The folder that holds package.json, with a slash at the end. */
export const root = fileURLToPath(new URL('../..', import.meta.url));

/** A set-up step that failed for a reason the reader can mend: its message is all that is printed. */
export class SetupError extends Error {}

/** Prints one line of set-up news to stderr. @param {string} line */
export const say = (line) => {
  process.stderr.write(`setup: ${line}\n`);
};

/**
 * Runs a command to its end and tells whether it succeeded.
 * @param {string} cwd
 * @param {string} command
 * @param {string[]} args
 * @param {Record<string, string>} [env]
 */
export const run = (cwd, command, args, env = {}) => {
  const shell = process.platform === 'win32' && !command.endsWith('.exe');
  const child = spawnSync(command, args, {
    cwd,
    shell,
    stdio: ['ignore', 2, 2],
    env: { ...process.env, ...env },
  });
  if (child.error) say(`${command}: ${child.error.message}`);
  return child.status === 0;
};

/**
 * Runs a set-up script's body; a SetupError becomes one line and exit code 1.
 * @param {() => Promise<void>} body
 */
export const main = async (body) => {
  try {
    await body();
  } catch (error) {
    if (!(error instanceof SetupError)) throw error;
    say(error.message);
    process.exitCode = 1;
  }
};
