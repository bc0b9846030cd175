/**
 * YAML text to plain data, with the place of every key and value. Refuses on the way what no scenario needs: merge keys,
 * names of object prototypes, keys twice, lists without end, markup in text.
 */
import { isAlias, isMap, isScalar, isSeq, LineCounter, type Node, type Pair, parseDocument } from 'yaml';
import { limits } from './limits.ts';
import { type Path, type Refusal, shown, unseen } from './problem.ts';
import { scanText } from './scanText.ts';

/** Line and column, from 1. */
export interface Place {
  readonly line: number;
  readonly column: number;
}

/** A refusal with the place where it stands. */
export interface PlacedRefusal extends Refusal {
  readonly place: Place;
}

/** The file as plain data; `value` is undefined when it could not be read at all. */
export interface Tree {
  readonly value: unknown;
  readonly refusals: readonly PlacedRefusal[];
  /** Place of a value, or of its key; of the nearest group around it if the value is missing. */
  placeOf(path: Path, atKey?: boolean): Place;
}

const prototypeNames = ['__proto__', 'constructor', 'prototype'];
const markup = /<[^<>]*>|<[a-z/!?]|&(?:#\d+|#x[\da-f]+|[a-z][a-z\d]*);/i;

interface Reading {
  readonly values: Map<string, number>;
  readonly keys: Map<string, number>;
  readonly refusals: (Refusal & { readonly offset: number })[];
}

const nameOf = (path: Path): string => JSON.stringify(path);
const offsetOf = (node: unknown): number | undefined => (node as Node | null)?.range?.[0];

const readText = (text: string, path: Path, offset: number, reading: Reading): string => {
  const refuse = (found: string, expected: string) => reading.refusals.push({ path, offset, found, expected });
  if (text.length > limits.text) refuse(`a text of ${text.length} characters`, `at most ${limits.text}`);
  const control = unseen.exec(text)?.[0];
  if (control !== undefined) refuse(`the control character ${shown(control)}`, 'plain text');
  const tag = markup.exec(text)?.[0];
  if (tag !== undefined) refuse(`the markup ${shown(tag)}`, 'plain text without markup');
  return text;
};

const readKey = (pair: Pair, path: Path, taken: Set<string>, reading: Reading): string | undefined => {
  const offset = offsetOf(pair.key) ?? 0;
  const key: unknown = isScalar(pair.key) ? pair.key.value : undefined;
  const refuse = (found: string, expected: string) => {
    reading.refusals.push({ path, offset, found, expected });
    return undefined;
  };
  if (typeof key !== 'string')
    return refuse(`the key ${isScalar(pair.key) ? shown(key) : 'of several parts'}`, 'a word');
  if (key === '<<') return refuse('a merge key', 'every value written out');
  if (prototypeNames.includes(key)) return refuse(`the key ${shown(key)}`, 'a key of the form');
  if (taken.has(key)) return refuse(`the key ${shown(key)} twice`, 'each key once');
  readText(key, path, offset, reading);
  taken.add(key);
  reading.keys.set(nameOf([...path, key]), offset);
  return key;
};

const readNode = (node: unknown, path: Path, reading: Reading, around: number): unknown => {
  const offset = offsetOf(node) ?? around;
  reading.values.set(nameOf(path), offset);
  if (node === null || node === undefined) return null;
  if (isScalar(node)) {
    const { value } = node;
    return typeof value === 'string' ? readText(value, path, offset, reading) : value;
  }
  if (isAlias(node)) throw new Error('the token scan lets no alias through');
  if (!isMap(node) && !isSeq(node)) throw new Error('YAML knows maps, lists, scalars and aliases only');
  const length = node.items.length;
  if (length > limits.entries || path.length >= limits.depth) {
    const many = length > limits.entries;
    const found = many ? `${length} entries` : 'deep nesting';
    const expected = many ? `at most ${limits.entries}` : `at most ${limits.depth} levels`;
    reading.refusals.push({ path, offset, found, expected });
    return undefined;
  }
  if (isSeq(node)) return node.items.map((item, at) => readNode(item, [...path, at], reading, offset));
  const taken = new Set<string>();
  const group: Record<string, unknown> = {};
  for (const pair of node.items) {
    const key = readKey(pair, path, taken, reading);
    if (key !== undefined) group[key] = readNode(pair.value, [...path, key], reading, offsetOf(pair.key) ?? offset);
  }
  return group;
};

const placesIn = (lines: LineCounter, reading: Reading) => {
  const at = (offset: number): Place => {
    const { line, col } = lines.linePos(offset);
    return { line: Math.max(1, line), column: Math.max(1, col) };
  };
  const placeOf = (path: Path, atKey = false): Place => {
    const name = nameOf(path);
    const offset = (atKey ? reading.keys.get(name) : undefined) ?? reading.values.get(name);
    if (offset !== undefined) return at(offset);
    return path.length === 0 ? { line: 1, column: 1 } : placeOf(path.slice(0, -1), true);
  };
  return { at, placeOf };
};

const syntaxWords = (message: string): string => message.replace(/\s+/g, ' ').replace(/\.$/, '').slice(0, 160);

/** Reads YAML 1.2 (core schema) into plain data; never throws on any text. */
export const readTree = (text: string): Tree => {
  const lines = new LineCounter();
  const reading: Reading = { values: new Map(), keys: new Map(), refusals: [] };
  const { at, placeOf } = placesIn(lines, reading);
  const give = (value: unknown): Tree => ({
    value,
    refusals: reading.refusals.map(({ offset, ...refusal }) => ({ ...refusal, place: at(offset) })),
    placeOf,
  });
  const scanned = scanText(text);
  if (scanned.length > 0) {
    for (let from = text.indexOf('\n'); from >= 0; from = text.indexOf('\n', from + 1)) lines.addNewLine(from + 1);
    lines.lineStarts.unshift(0);
    reading.refusals.push(...scanned.map((refusal) => ({ ...refusal, path: [] })));
    return give(undefined);
  }
  const document = parseDocument(text, {
    version: '1.2',
    schema: 'core',
    merge: false,
    uniqueKeys: false,
    prettyErrors: false,
    // Quieter levels leave a second document unmentioned.
    logLevel: 'error',
    lineCounter: lines,
  });
  for (const error of document.errors) {
    const found = error.code === 'MULTIPLE_DOCS' ? 'a second document' : `broken YAML (${syntaxWords(error.message)})`;
    const expected =
      error.code === 'MULTIPLE_DOCS' ? 'one scenario a file' : 'keys and values as in a shipped scenario';
    reading.refusals.push({ path: [], offset: error.pos[0], found, expected });
  }
  if (document.errors.length > 0) return give(undefined);
  return give(readNode(document.contents, [], reading, 0));
};
