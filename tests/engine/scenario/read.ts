/** Scenario files of the tests. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Parsed, parse } from '../../../src/engine/scenario/parse.ts';
import type { Scenario } from '../../../src/engine/scenario/types.ts';
import { build } from '../../../src/engine/world/build.ts';

export const folder = fileURLToPath(new URL('../../scenarios/', import.meta.url));
export const shippedFolder = fileURLToPath(new URL('../../../scenarios/', import.meta.url));

export const filesIn = (where: string, ending = '.yaml'): string[] =>
  readdirSync(where)
    .filter((name) => name.endsWith(ending))
    .sort();

export const textOf = (where: string, name: string): string => readFileSync(`${where}${name}`, 'utf8');

/** Reads with the parts that the world will really have. */
export const read = (text: unknown, name = 'drill.yaml'): Parsed =>
  parse(text, name, { parts: (scenario: Scenario) => build(scenario, '', 1).parts });

/** The scenario, or a failure that shows the problems. */
export const scenarioIn = (text: unknown): { scenario: Scenario; hash: string } => {
  const parsed = read(text);
  if (!parsed.ok) throw new Error(parsed.problems.map(({ message }) => message).join('\n'));
  return parsed;
};

export const messagesIn = (text: unknown): string[] => {
  const parsed = read(text);
  return parsed.ok ? [] : parsed.problems.map(({ line, column, message }) => `${line}:${column}: ${message}`);
};
