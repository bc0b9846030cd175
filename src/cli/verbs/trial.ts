/** `trial`: simulated trainees with named habits take the scenarios; prints whether the score tells them apart. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { type Command, InvalidArgumentError } from 'commander';
import { habits } from '../../engine/trainees/habits.ts';
import { isAsExpected, partNames, trial as run, type Trial } from '../../engine/trainees/trial.ts';
import { build } from '../../engine/world/build.ts';
import { root } from '../../setup/run.mjs';
import { type Io, type Register, writeJson } from '../io.ts';
import { readScenario } from '../readScenario.ts';
import { trialReportSchema } from '../schemas/trialReport.ts';
import { readWeights } from './replay.ts';

interface Options {
  readonly trainees: number;
  readonly seed: number;
  readonly json?: boolean;
  readonly weights?: string;
}

const mostTrainees = 100_000;

const whole =
  (least: number, most: number) =>
  (text: string): number => {
    const value = Number(text);
    if (Number.isInteger(value) && value >= least && value <= most) return value;
    throw new InvalidArgumentError(`a whole number from ${least} to ${most} is expected.`);
  };

const shipped = (): readonly string[] =>
  readdirSync(join(root, 'scenarios'))
    .filter((name) => name.endsWith('.yaml'))
    .sort()
    .map((name) => join(root, 'scenarios', name));

const hundredths = (value: number | null): string => (value === null ? '   -' : value.toFixed(2));

const wanted = { differs: 'told apart', same: 'left alone', 'no-gain': 'not gained' } as const;

/** The trial as text: a line a habit, a line a pair. */
export function printTrial(report: Trial, seconds: number): string {
  const lines = report.habits.flatMap(({ habit, words, parts, trainees, passed }) => [
    `${habit}: ${words}`,
    ...partNames.map((name) => {
      const { judged, mean, low, high } = parts[name];
      return `    ${name.padEnd(12)} ${hundredths(mean)}  ${hundredths(low)} to ${hundredths(high)}  (${judged} judged)`;
    }),
    `    passed       ${passed.count} of ${trainees}  (${hundredths(passed.low)} to ${hundredths(passed.high)})`,
  ]);
  const pairs = report.pairs.map((pair) => {
    const { habit, against, part, expected, where, scenes, compared, auc, low, high } = pair;
    const want = wanted[expected];
    const mark = auc === null ? '-   ' : isAsExpected(pair) ? 'ok  ' : 'FAIL';
    return `${mark} ${habit} against ${against}, ${part} ${want}: ${hundredths(auc)} (${hundredths(low)} to ${hundredths(high)}), ${where.replaceAll('-', ' ')}, ${scenes.length} of ${report.scenes.length} scenes, ${compared} pairs`;
  });
  return `${[...lines, '', 'Area under the ROC curve, pairs within a scene', ...pairs, '', `${report.trainees} trainees, ${report.scenes.length} scenes, weights: ${report.weights}, ${seconds.toFixed(1)} s`].join('\n')}\n`;
}

function trial(io: Io, files: readonly string[], { trainees, seed, json, weights: file }: Options): void {
  const weights = readWeights(io, file);
  const worlds = (files.length > 0 ? files : shipped()).map((name) => {
    const { scenario, hash } = readScenario(io, name);
    return build(scenario, hash, 1);
  });
  const from = performance.now();
  const report = run(worlds, { trainees, seed, weights });
  const seconds = (performance.now() - from) / 1000;
  if (json) writeJson(io, trialReportSchema.parse({ ...report, seconds }));
  else io.stdout(printTrial(report, seconds));
  if (!report.pairs.every(isAsExpected)) io.checkFailed();
}

/** Adds `trial` to the program. */
export const register: Register = (program: Command, io: Io): void => {
  program
    .command('trial [scenarios...]')
    .description(
      'Lets simulated trainees with named habits take the scenarios, and prints whether the score tells them apart.',
    )
    .option('--trainees <count>', 'how many in all', whole(habits.length, mostTrainees), 400)
    .option('--seed <number>', 'their luck', whole(0, 2 ** 31), 1)
    .option('--weights <file>', "judge by an instructor's weights (JSON) instead of the usual ones")
    .option('--json', 'print JSON only')
    .addHelpText(
      'after',
      '\nWithout files it takes every scenario of the project. Exit code 1: a habit is not told apart where it should be, or is where it should not.',
    )
    .action((files: readonly string[], options: Options) => trial(io, files, options));
};
