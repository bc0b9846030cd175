/** `sheet`: the instructor's sheet of a scenario, to be printed; it gives everything away. */
import type { Command } from 'commander';
import { instructorSheet } from '../../engine/debrief/instructorSheet.ts';
import { sheetText } from '../../engine/debrief/sheetText.ts';
import { build } from '../../engine/world/build.ts';
import { type Io, type Register, writeJson } from '../io.ts';
import { readScenario } from '../readScenario.ts';
import { sheetReportSchema } from '../schemas/sheetReport.ts';

/** Adds the verb. */
export const register: Register = (program: Command, io: Io): void => {
  program
    .command('sheet <scenario>')
    .description(
      "Prints the instructor's sheet: causes, where each sign can be found, what holds it, what to talk about.",
    )
    .option('--json', 'print a JSON object with the same')
    .option('--metric', 'metres instead of feet')
    .action((file: string, { json, metric }: { readonly json?: true; readonly metric?: true }) => {
      const { scenario, hash } = readScenario(io, file);
      const sheet = instructorSheet(scenario, build(scenario, hash), metric ? 'metric' : 'us');
      if (json) writeJson(io, sheetReportSchema.parse(sheet));
      else io.stdout(sheetText(sheet));
    });
};
