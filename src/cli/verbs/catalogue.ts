/** `catalogue`: every kind that a scenario can be made of, how many of each, and where what is said of it comes from. */
import type { Command } from 'commander';
import { componentKinds } from '../../engine/catalogue/components.ts';
import { conditions } from '../../engine/catalogue/conditions.ts';
import { controlKinds } from '../../engine/catalogue/controls.ts';
import { faultKinds } from '../../engine/catalogue/faults.ts';
import { jobKinds } from '../../engine/catalogue/jobs.ts';
import { repairKinds } from '../../engine/catalogue/repairs.ts';
import { toolKinds } from '../../engine/catalogue/tools.ts';
import { equipmentKinds } from '../../engine/scenario/checkKinds.ts';
import { type Io, type Register, writeJson } from '../io.ts';
import type { CatalogueReport } from '../schemas/catalogueReport.ts';

type Listed = CatalogueReport['lists'][number]['kinds'][number];

const sourced = (kinds: readonly { readonly id: string; readonly name: string; readonly source: string }[]): Listed[] =>
  kinds.map(({ id, name, source }) => ({ id, name, source }));

/** Everything listed, in the catalogue's own order. */
const report = (): CatalogueReport => {
  const list = (name: string, kinds: readonly Listed[]) => ({ name, count: kinds.length, kinds: [...kinds] });
  const named = repairKinds.map(({ id, label, source }) => ({ id, name: label, source }));
  const onPoles = componentKinds.filter(({ id }) => equipmentKinds.includes(id));
  return {
    lists: [
      list('components', sourced(componentKinds)),
      list('equipment that a scenario may list on a pole', sourced(onPoles)),
      list('faults', sourced(faultKinds.filter(({ benign }) => !benign))),
      list('look-alikes', sourced(faultKinds.filter(({ benign }) => benign))),
      list(
        'conditions',
        conditions.map(({ id, label }) => ({ id, name: label, source: 'the words of the trade' })),
      ),
      list(
        'controls',
        controlKinds.map(({ id, name, rule }) => ({ id, name, source: rule })),
      ),
      list('tools', sourced(toolKinds)),
      list('repairs', named),
      list('jobs', sourced(jobKinds)),
    ],
  };
};

const print = ({ lists }: CatalogueReport, io: Io): void => {
  for (const { name, count, kinds } of lists) {
    io.stdout(`${name}: ${count}\n`);
    const wide = Math.max(...kinds.map(({ id }) => id.length));
    for (const kind of kinds) io.stdout(`  ${kind.id.padEnd(wide)}  ${kind.name}  [${kind.source}]\n`);
    io.stdout('\n');
  }
};

/** Adds the verb. */
export const register: Register = (program: Command, io: Io): void => {
  program
    .command('catalogue')
    .description(
      'Lists every kind of component, fault, look-alike, condition, control, tool, repair and job, with its source.',
    )
    .option('--json', 'print a JSON object: lists, each with name, count and kinds')
    .action(({ json }: { readonly json?: true }) => {
      const listed = report();
      if (json) writeJson(io, listed);
      else print(listed, io);
    });
};
