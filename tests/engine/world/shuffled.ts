import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parse as parseYaml, stringify } from 'yaml';
import { parse } from '../../../src/engine/scenario/parse.ts';
import { build } from '../../../src/engine/world/build.ts';
import type { World } from '../../../src/engine/world/types.ts';

export const yaml = readFileSync(
  fileURLToPath(new URL('../../../scenarios/quarry-road-fog.yaml', import.meta.url)),
  'utf8',
);

/** The World of a scenario's text. */
export const built = (text: string): World => {
  const parsed = parse(text, 'shuffled.yaml');
  if (!parsed.ok) throw new Error(parsed.problems.map(({ message }) => message).join('\n'));
  return build(parsed.scenario, parsed.hash, 1);
};

/** Lists whose order has no meaning; that of the ticket's history and the weather is told by the file itself. */
const unordered = ['poles', 'spans', 'equipment', 'premises', 'tools', 'faults', 'look-alikes'] as const;

type Written = Record<string, unknown> & { job: { restores: string[] } };

/** The scenario on Quarry Road with its lists in another order. */
export const shuffled = (order: (list: readonly unknown[]) => readonly unknown[]): string => {
  const written = parseYaml(yaml) as Written;
  for (const name of unordered) written[name] = order(written[name] as unknown[]);
  written.job.restores = [...order(written.job.restores)] as string[];
  return stringify(written);
};
