/** The command line's entry: the list of verbs, standard streams and files, the exit code. */
import { type Register, readTextFile } from './io.ts';
import { run } from './run.ts';
import { register as catalogue } from './verbs/catalogue.ts';
import { register as check } from './verbs/check.ts';
import { register as circuit } from './verbs/circuit.ts';
import { register as generate } from './verbs/generate.ts';
import { register as prove } from './verbs/prove.ts';
import { register as qualify } from './verbs/qualify.ts';
import { register as replay } from './verbs/replay.ts';
import { register as schema } from './verbs/schema.ts';
import { register as sheet } from './verbs/sheet.ts';
import { register as trial } from './verbs/trial.ts';

const verbs: readonly Register[] = [check, catalogue, replay, circuit, qualify, trial, schema, sheet, prove, generate];

// A reader that stops early, such as `head`, is no error.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

process.exitCode = await run(process.argv.slice(2), verbs, {
  stdout: (text) => process.stdout.write(text),
  stderr: (text) => process.stderr.write(text),
  readFile: readTextFile,
});
