/** Reads a scenario file into a World; a file that is no valid scenario is bad use, with every problem named. */
import { limits } from '../engine/scenario/limits.ts';
import { parse } from '../engine/scenario/parse.ts';
import type { Scenario } from '../engine/scenario/types.ts';
import { build } from '../engine/world/build.ts';
import { BadUse, type Io } from './io.ts';

/** The scenario and its hash; throws BadUse. */
export const readScenario = (io: Io, file: string): { readonly scenario: Scenario; readonly hash: string } => {
  const parsed = parse(io.readFile(file, 4 * limits.fileLength), file, {
    parts: (scenario) => build(scenario, '').parts,
  });
  if (parsed.ok) return parsed;
  const lines = parsed.problems.map((problem) => `  ${file}:${problem.line}:${problem.column} ${problem.message}`);
  throw new BadUse(`${file} is no valid scenario:\n${lines.join('\n')}`);
};
