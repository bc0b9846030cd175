/** The command line's shell: builds the program from its verbs, runs it, turns its end into an exit code. */
import { Command, CommanderError } from 'commander';
import { BadUse, type Io, type Register } from './io.ts';

/** 0 all well, 1 a check failed, 2 bad use or a bad file, 70 a defect of this program. */
export type ExitCode = 0 | 1 | 2 | 70;

const buildProgram = (io: Io, verbs: readonly Register[]): Command => {
  const program = new Command('loose-tie');
  program
    .description('Checks, replays and solves hazard-recognition drills for overhead line crews. A training aid only.')
    .exitOverride()
    .configureOutput({ writeOut: io.stdout, writeErr: io.stderr })
    .showSuggestionAfterError()
    .helpCommand(false)
    .addHelpText('after', '\nExit code: 0 all well, 1 a check failed, 2 bad use or a bad file.');
  for (const register of verbs) register(program, io);
  return program;
};

/** Runs one command; a verb reports a failed check through its Io and bad use by throwing BadUse. */
export const run = async (
  args: readonly string[],
  verbs: readonly Register[],
  outside: Omit<Io, 'checkFailed'>,
): Promise<ExitCode> => {
  let failed = false;
  const io: Io = {
    ...outside,
    checkFailed: () => {
      failed = true;
    },
  };
  try {
    await buildProgram(io, verbs).parseAsync(args, { from: 'user' });
    return failed ? 1 : 0;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2;
    if (error instanceof BadUse) {
      io.stderr(`error: ${error.message}\n`);
      return 2;
    }
    io.stderr(`This is a defect of loose-tie: ${error instanceof Error ? error.stack : String(error)}\n`);
    return 70;
  }
};
