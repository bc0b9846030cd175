/** `check`: reads scenario files and prints every problem with its place. */
import type { Command } from 'commander';
import { limits } from '../../engine/scenario/limits.ts';
import { parse } from '../../engine/scenario/parse.ts';
import { build } from '../../engine/world/build.ts';
import { type Io, type Register, writeJson } from '../io.ts';
import type { CheckReport } from '../schemas/checkReport.ts';

type CheckedFile = CheckReport[number];

/** Characters beyond ASCII take up to four bytes. */
const largestFile = 4 * limits.fileLength;

const checkFile = (file: string, io: Io): CheckedFile => {
  const parsed = parse(io.readFile(file, largestFile), file, { parts: (scenario) => build(scenario, '').parts });
  return parsed.ok ? { file, ok: true, problems: [] } : { file, ok: false, problems: [...parsed.problems] };
};

const print = ({ file, ok, problems }: CheckedFile, io: Io): void => {
  if (ok) io.stdout(`${file}: ok\n`);
  for (const { line, column, message } of problems) io.stdout(`${file}:${line}:${column}: ${message}\n`);
};

/** Adds the verb. */
export const register: Register = (program: Command, io: Io): void => {
  program
    .command('check <files...>')
    .description('Reads scenario files and prints every problem as file:line:column: message.')
    .option('--json', 'print a JSON array with one object a file: file, ok, problems')
    .action((files: readonly string[], { json }: { readonly json?: true }) => {
      const checked = files.map((file) => checkFile(file, io));
      if (json) writeJson(io, checked);
      else for (const each of checked) print(each, io);
      if (checked.some(({ ok }) => !ok)) io.checkFailed();
    });
};
