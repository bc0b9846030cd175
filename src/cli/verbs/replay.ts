/** `replay`: plays a log again from the scenario it was made for and prints the score. */
import type { Command } from 'commander';
import { logLimits, parseLog } from '../../engine/acts/logForm.ts';
import { replay as play } from '../../engine/acts/replay.ts';
import { debriefText } from '../../engine/debrief/debriefText.ts';
import { explain } from '../../engine/debrief/explain.ts';
import { score } from '../../engine/score/score.ts';
import { usualWeights, type Weights } from '../../engine/score/weights.ts';
import { longestWeights, parseWeights } from '../../engine/score/weightsForm.ts';
import { build } from '../../engine/world/build.ts';
import { BadUse, type Io, type Register, writeJson } from '../io.ts';
import { readScenario } from '../readScenario.ts';
import { replayReportSchema } from '../schemas/replayReport.ts';

interface Options {
  readonly json?: boolean;
  readonly metric?: boolean;
  readonly weights?: string;
}

/** The usual weights, or those of an instructor's file; throws BadUse with everything that is wrong with it. */
export function readWeights(io: Io, file: string | undefined): Weights {
  if (file === undefined) return usualWeights;
  const read = parseWeights(io.readFile(file, 4 * longestWeights));
  if (read.ok) return read.weights;
  throw new BadUse(`${file} cannot be used as weights:\n${read.problems.map((line) => `  ${line}`).join('\n')}`);
}

function replay(io: Io, file: string, logFile: string, options: Options): void {
  const weights = readWeights(io, options.weights);
  const { scenario, hash } = readScenario(io, file);
  const read = parseLog(io.readFile(logFile, 4 * logLimits.characters));
  if (!read.ok) throw new BadUse(`${logFile} is no log:\n${read.problems.map((line) => `  ${line}`).join('\n')}`);
  const played = play(build(scenario, hash, read.log.seed), read.log);
  if (!played.ok) {
    io.stderr(`${logFile} does not replay: ${played.problem.words}\n`);
    io.checkFailed();
    return;
  }
  const scored = score(played.replay, weights);
  if (options.json) writeJson(io, replayReportSchema.parse(scored));
  else io.stdout(debriefText(explain(played.replay, scored, options.metric ? 'metric' : 'us')));
}

/** Adds `replay <scenario> <log>` to the program. */
export const register: Register = (program: Command, io: Io): void => {
  program
    .command('replay <scenario> <log>')
    .description('Plays a saved log again and prints its score, with every exposure in volts, amperes and metres.')
    .option('--json', 'print JSON only, in SI units')
    .option('--weights <file>', "judge by an instructor's weights (JSON) instead of the usual ones")
    .option('--metric', 'print metres instead of feet')
    .addHelpText(
      'after',
      '\nExit code 1: the log does not replay to the worlds that it names. The verdict does not change the exit code.',
    )
    .action((file: string, log: string, options: Options) => replay(io, file, log, options));
};
