/** The written form as plain data: read from the text of a good scenario, written back as YAML. */
import { parse as parseYaml, stringify } from 'yaml';

export type Value = string | number | boolean | null | readonly Value[] | { readonly [key: string]: Value };
export type Group = { readonly [key: string]: Value };

export const isGroup = (value: Value | undefined): value is Group =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** A group's group, empty if it is not there. */
export const groupAt = (from: Group, key: string): Group => {
  const value = from[key];
  return isGroup(value) ? value : {};
};

/** A group's list of groups, empty if it is not there. */
export const rowsAt = (from: Group, key: string): readonly Group[] => {
  const value = from[key];
  return Array.isArray(value) ? (value as readonly Value[]).filter(isGroup) : [];
};

/** Plain data of a scenario's text that `parse` found good; throws on other text. */
export function readWritten(text: string): Group {
  const value = parseYaml(text) as Value;
  if (!isGroup(value)) throw new Error('no group of keys');
  return value;
}

/** The text; the same for the same data. */
export const writeYaml = (written: Group, head: string): string =>
  `${head
    .split('\n')
    .map((line) => `# ${line}\n`)
    .join('')}${stringify(written, { lineWidth: 120, aliasDuplicateObjects: false })}`;
