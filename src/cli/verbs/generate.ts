/** `generate`: variants of a scenario, drawn by a seed, each checked and proved in short, written as scenario files. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Command, InvalidArgumentError } from 'commander';
import { limits } from '../../engine/scenario/limits.ts';
import { generate } from '../../engine/variants/generate.ts';
import type { Difficulty } from '../../engine/variants/types.ts';
import { root } from '../../setup/run.mjs';
import type { Io, Register } from '../io.ts';
import { readScenario } from '../readScenario.ts';

interface Options {
  readonly seed: number;
  readonly count: number;
  readonly grade?: Difficulty['grade'];
  readonly out: string;
  readonly from: string;
}

const whole =
  (least: number, most: number) =>
  (text: string): number => {
    const number = Number(text);
    if (text.trim() === '' || !Number.isInteger(number) || number < least || number > most) {
      throw new InvalidArgumentError(`a whole number from ${least} to ${most}.`);
    }
    return number;
  };

/** Adds the verb. */
export const register: Register = (program: Command, io: Io): void => {
  program
    .command('generate')
    .description('Draws variants of a scenario by a seed, proves each in short and writes them as scenario files.')
    .requiredOption('--seed <n>', 'the same seed gives the same files', whole(0, 2 ** 31))
    .requiredOption('--out <folder>', 'where the files go')
    .option('--count <n>', 'how many', whole(1, 1000), 1)
    .option('--grade <n>', 'only variants of this difficulty, 1 to 3', whole(1, 3))
    .option('--from <file>', 'the scenario to vary', join(root, 'scenarios/mill-lane-refuse.yaml'))
    .addHelpText('after', '\nExit code 1: fewer than asked for were found.')
    .action(({ seed, count, grade, out, from }: Options) => {
      readScenario(io, from);
      const tell = process.stderr.isTTY
        ? (draws: number, made: number) => io.stderr(`\r\x1b[K${made} of ${count}, ${draws} drawn`)
        : undefined;
      const asked = { seed, count, ...(grade === undefined ? {} : { grade }), ...(tell ? { tell } : {}) };
      const { variants, draws, rejected } = generate(io.readFile(from, 4 * limits.fileLength), asked);
      if (tell) io.stderr('\r\x1b[K');
      mkdirSync(out, { recursive: true });
      for (const { id, yaml, difficulty, proof } of variants) {
        const file = join(out, `${id}.yaml`);
        writeFileSync(file, yaml);
        const { grade: is, points, margin, hazards, lookAlikes, acts } = difficulty;
        io.stdout(
          `${file}: grade ${is} (${points} points: least margin ${margin}, ${hazards} ways to harm, ${lookAlikes} look-alikes, ${acts} acts), par ${proof.par?.minutes} minutes\n`,
        );
      }
      const why = Object.entries(rejected).filter(([, times]) => times > 0);
      io.stdout(
        `${variants.length} of ${draws} draws kept; rejected: ${why.map(([name, times]) => `${name} ${times}`).join(', ') || 'none'}\n`,
      );
      if (variants.length < count) io.checkFailed();
    });
};
