/** `replay`: plays a log again from the scenario it was made for and prints the score. */
import type { Command } from 'commander';
import { logLimits, parseLog } from '../../engine/acts/logForm.ts';
import { replay as play } from '../../engine/acts/replay.ts';
import { debriefText } from '../../engine/debrief/debriefText.ts';
import { explain } from '../../engine/debrief/explain.ts';
import { score } from '../../engine/score/score.ts';
import { build } from '../../engine/world/build.ts';
import { BadUse, type Io, type Register, writeJson } from '../io.ts';
import { readScenario } from '../readScenario.ts';
import { replayReportSchema } from '../schemas/replayReport.ts';

interface Options {
  readonly json?: boolean;
  readonly metric?: boolean;
}

function replay(io: Io, file: string, logFile: string, options: Options): void {
  const { scenario, hash } = readScenario(io, file);
  const read = parseLog(io.readFile(logFile, 4 * logLimits.characters));
  if (!read.ok) throw new BadUse(`${logFile} is no log:\n${read.problems.map((line) => `  ${line}`).join('\n')}`);
  const played = play(build(scenario, hash, read.log.seed), read.log);
  if (!played.ok) {
    io.stderr(`${logFile} does not replay: ${played.problem.words}\n`);
    io.checkFailed();
    return;
  }
  const scored = score(played.replay);
  if (options.json) writeJson(io, replayReportSchema.parse(scored));
  else io.stdout(debriefText(explain(played.replay, scored, options.metric ? 'metric' : 'us')));
}

/** Adds `replay <scenario> <log>` to the program. */
export const register: Register = (program: Command, io: Io): void => {
  program
    .command('replay <scenario> <log>')
    .description('Plays a saved log again and prints its score, with every exposure in volts, amperes and metres.')
    .option('--json', 'print JSON only, in SI units')
    .option('--metric', 'print metres instead of feet')
    .addHelpText(
      'after',
      '\nExit code 1: the log does not replay to the worlds that it names. The verdict does not change the exit code.',
    )
    .action((file: string, log: string, options: Options) => replay(io, file, log, options));
};
