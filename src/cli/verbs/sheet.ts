/** `sheet`: the instructor's sheet of a scenario, to be printed; it gives everything away. */
import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Command } from 'commander';
import { instructorSheet } from '../../engine/debrief/instructorSheet.ts';
import { sheetText } from '../../engine/debrief/sheetText.ts';
import { type ParFile, parFor, parForm } from '../../engine/proof/parForm.ts';
import { build } from '../../engine/world/build.ts';
import { BadUse, type Io, type Register, writeJson } from '../io.ts';
import { readScenario } from '../readScenario.ts';
import { sheetReportSchema } from '../schemas/sheetReport.ts';

/** The par of a scenario in a folder; null where there is none, or it was made for another version. */
function provenIn(io: Io, folder: string, id: string, hash: string): ParFile | null {
  const file = join(folder, `${id}.json`);
  if (!existsSync(file)) return null;
  let read: unknown;
  try {
    read = JSON.parse(io.readFile(file));
  } catch (error) {
    if (error instanceof SyntaxError) throw new BadUse(`${file} is no JSON`);
    throw error;
  }
  const par = parForm.safeParse(read);
  if (!par.success) throw new BadUse(`${file} holds no par`);
  return parFor(par.data, hash) === null ? null : par.data;
}

interface Options {
  readonly json?: true;
  readonly metric?: true;
  readonly par?: string;
}

/** Adds the verb. */
export const register: Register = (program: Command, io: Io): void => {
  program
    .command('sheet <scenario>')
    .description(
      "Prints the instructor's sheet: causes, where each sign can be found, what holds it, what to talk about.",
    )
    .option('--json', 'print a JSON object with the same')
    .option('--metric', 'metres instead of feet')
    .option('--par <folder>', "where the scenario's par lies; else the folder `par` beside it")
    .action((file: string, { json, metric, par = join(dirname(file), 'par') }: Options) => {
      const { scenario, hash } = readScenario(io, file);
      const proven = provenIn(io, par, scenario.id, hash);
      const world = build(scenario, hash, proven?.seed ?? 1);
      const sheet = instructorSheet(scenario, world, metric ? 'metric' : 'us', proven);
      if (json) writeJson(io, sheetReportSchema.parse(sheet));
      else io.stdout(sheetText(sheet));
    });
};
