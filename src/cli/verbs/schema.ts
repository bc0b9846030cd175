/** `schema`: prints a JSON Schema, so that editors and other tools can check what they write or read. */
import { type Command, Option } from 'commander';
import { BadUse, type Io, type Register, writeJson } from '../io.ts';
import { schemas } from '../schemas.ts';

const names = Object.keys(schemas);

/** Adds the verb. */
export const register: Register = (program: Command, io: Io): void => {
  program
    .command('schema')
    .description(`Prints a JSON Schema (2020-12) of: ${names.join(', ')}.`)
    .argument('[name]', 'of what', 'scenario')
    .addOption(new Option('--json', 'print JSON, which this verb always does').hideHelp())
    .action((name: string) => {
      const schema = Object.hasOwn(schemas, name) ? schemas[name] : undefined;
      if (schema === undefined) throw new BadUse(`no schema ${JSON.stringify(name)}; there is ${names.join(', ')}`);
      writeJson(io, schema());
    });
};
