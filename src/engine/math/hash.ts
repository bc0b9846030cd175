/**
 * One text for one value, and its fingerprint: JSON with keys in code-unit order (as RFC 8785 orders them), then
 * SHA-256 (FIPS 180-4) over its UTF-8 bytes.
 */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

type Path = (string | number)[];

/** Texts of the members of top-level lists, by object, for values of which those never change. */
export type KeptTexts = WeakMap<object, string>;

/** Steps of the path to a member of a top-level list. */
const MEMBER = 2;

function refuse(path: Path, what: string): never {
  const where = path.map((step) => (typeof step === 'number' ? `[${step}]` : `.${step}`)).join('');
  throw new TypeError(`not plain data at $${where}: ${what}`);
}

function writeArray(value: readonly unknown[], path: Path, holders: Set<object>, kept?: KeptTexts): string {
  const parts: string[] = [];
  for (let i = 0; i < value.length; i++) {
    path.push(i);
    parts.push(write(value[i], path, holders, kept));
    path.pop();
  }
  return `[${parts.join(',')}]`;
}

function writeObject(value: object, path: Path, holders: Set<object>, kept?: KeptTexts): string {
  const prototype: unknown = Object.getPrototypeOf(value);
  if (prototype !== Object.prototype && prototype !== null) refuse(path, 'an object of a class');
  if (Object.getOwnPropertySymbols(value).length > 0) refuse(path, 'a key that is a symbol');
  const record = value as Readonly<Record<string, unknown>>;
  const parts: string[] = [];
  for (const key of Object.keys(record).sort()) {
    path.push(key);
    parts.push(`${JSON.stringify(key)}:${write(record[key], path, holders, kept)}`);
    path.pop();
  }
  return `{${parts.join(',')}}`;
}

function write(value: unknown, path: Path, holders: Set<object>, kept?: KeptTexts): string {
  if (value === null) return 'null';
  if (typeof value === 'string' || typeof value === 'boolean') return JSON.stringify(value);
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) refuse(path, `the number ${value}`);
    return JSON.stringify(value);
  }
  if (typeof value !== 'object') refuse(path, typeof value);
  if (holders.has(value)) refuse(path, 'a value that holds itself');
  const isKept = kept !== undefined && path.length === MEMBER;
  const known = isKept ? kept.get(value) : undefined;
  if (known !== undefined) return known;
  holders.add(value);
  const text = Array.isArray(value) ? writeArray(value, path, holders, kept) : writeObject(value, path, holders, kept);
  holders.delete(value);
  if (isKept) kept.set(value, text);
  return text;
}

/** Canonical JSON of plain data (-0 becomes 0); throws a TypeError that names the path of anything else. */
export const canonicalJson = (value: unknown, kept?: KeptTexts): string => write(value, [], new Set(), kept);

/** SHA-256 of the canonical JSON, 64 hex digits. */
export const hashOf = (value: unknown, kept?: KeptTexts): string =>
  bytesToHex(sha256(utf8ToBytes(canonicalJson(value, kept))));

/** First 16 hex digits of hashOf. */
export const shortHash = (value: unknown, kept?: KeptTexts): string => hashOf(value, kept).slice(0, 16);
