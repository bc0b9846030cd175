/** What is wrong in a scenario file and where; problems are values, never thrown. */
import { nearestWord } from '../units/nearestWord.ts';

/** One problem: where it stands, what was found, what was expected, and the nearest word that is allowed. */
export interface Problem {
  readonly file: string;
  /** Both count from 1. */
  readonly line: number;
  readonly column: number;
  /** `poles[1].length`; empty for the file as a whole. */
  readonly path: string;
  readonly found: string;
  readonly expected: string;
  readonly nearest?: string;
  readonly message: string;
}

/** Keys and list positions from the top of the file. */
export type Path = readonly (string | number)[];

/** A problem before its place in the file is known. */
export interface Refusal {
  readonly path: Path;
  /** The key is at fault, not its value. */
  readonly atKey?: boolean;
  readonly found: string;
  readonly expected: string;
  readonly nearest?: string;
}

const longestShown = 48;

/** Characters that steer a terminal or the reading direction, or are not seen, instead of being read. */
export const unseen = /(?![\t\n\r])[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/u;

/** A value as a message shows it: short, on one line, with every unusual character written out. */
export const shown = (value: unknown): string => {
  if (value === undefined) return 'nothing';
  if (value === null) return 'an empty value';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object') return 'a group of keys';
  const text = typeof value === 'string' ? value : String(value);
  const cut = text.length > longestShown ? `${text.slice(0, longestShown)}…` : text;
  return (typeof value === 'string' ? JSON.stringify(cut) : cut).replace(
    new RegExp(unseen, 'gu'),
    (letter) => `\\u{${(letter.codePointAt(0) ?? 0).toString(16)}}`,
  );
};

/** `['poles', 1, 'length']` as `poles[1].length`. */
export const pathText = (path: Path): string =>
  path.map((step, at) => (typeof step === 'number' ? `[${step}]` : `${at === 0 ? '' : '.'}${step}`)).join('');

/** `one of a, b or c`, and the nearest of them to what was found. */
export const oneOf = (words: readonly string[], found: unknown): { expected: string; nearest?: string } => {
  const expected = words.length === 1 ? `${words[0]}` : `one of ${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;
  // In one or two letters anything is near anything.
  const nearest = typeof found === 'string' && found.length > 2 ? nearestWord(found, words) : undefined;
  return nearest === undefined ? { expected } : { expected, nearest };
};

/** The one sentence that is printed. */
export const messageOf = (path: Path, { found, expected, nearest }: Omit<Refusal, 'path'>): string => {
  const where = path.length === 0 ? '' : `${pathText(path)}: `;
  const hint = nearest === undefined ? '' : `; did you mean ${JSON.stringify(nearest)}?`;
  return `${where}found ${found}; expected ${expected}${hint}`;
};
