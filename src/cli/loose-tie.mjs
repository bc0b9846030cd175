#!/usr/bin/env node
// @ts-check
/** The `loose-tie` command: installs and builds when stale (news of that on stderr), then runs the built command line. */
import { pathToFileURL } from 'node:url';
import { buildCli } from '../setup/build.mjs';
import { install } from '../setup/install.mjs';
import { root, SetupError, say } from '../setup/run.mjs';

try {
  install(root);
  await import(pathToFileURL(buildCli(root)).href);
} catch (error) {
  if (!(error instanceof SetupError)) throw error;
  say(error.message);
  process.exitCode = 2;
}
