/**
 * One text for one value, and its fingerprint: JSON with keys in code-unit order (as RFC 8785 orders them), then
 * SHA-256 (FIPS 180-4) over its UTF-8 bytes.
 */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

type Path = (string | number)[];

function refuse(path: Path, what: string): never {
  const where = path.map((step) => (typeof step === 'number' ? `[${step}]` : `.${step}`)).join('');
  throw new TypeError(`not plain data at $${where}: ${what}`);
}

function writeArray(value: readonly unknown[], path: Path, holders: Set<object>): string {
  const parts: string[] = [];
  for (let i = 0; i < value.length; i++) {
    path.push(i);
    parts.push(write(value[i], path, holders));
    path.pop();
  }
  return `[${parts.join(',')}]`;
}

function writeObject(value: object, path: Path, holders: Set<object>): string {
  const prototype: unknown = Object.getPrototypeOf(value);
  if (prototype !== Object.prototype && prototype !== null) refuse(path, 'an object of a class');
  if (Object.getOwnPropertySymbols(value).length > 0) refuse(path, 'a key that is a symbol');
  const record = value as Readonly<Record<string, unknown>>;
  const parts: string[] = [];
  for (const key of Object.keys(record).sort()) {
    path.push(key);
    parts.push(`${JSON.stringify(key)}:${write(record[key], path, holders)}`);
    path.pop();
  }
  return `{${parts.join(',')}}`;
}

function write(value: unknown, path: Path, holders: Set<object>): string {
  if (value === null) return 'null';
  if (typeof value === 'string' || typeof value === 'boolean') return JSON.stringify(value);
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) refuse(path, `the number ${value}`);
    return JSON.stringify(value);
  }
  if (typeof value !== 'object') refuse(path, typeof value);
  if (holders.has(value)) refuse(path, 'a value that holds itself');
  holders.add(value);
  const text = Array.isArray(value) ? writeArray(value, path, holders) : writeObject(value, path, holders);
  holders.delete(value);
  return text;
}

/** Canonical JSON of plain data (-0 becomes 0); throws a TypeError that names the path of anything else. */
export const canonicalJson = (value: unknown): string => write(value, [], new Set());

/** SHA-256 of the canonical JSON, 64 hex digits. */
export const hashOf = (value: unknown): string => bytesToHex(sha256(utf8ToBytes(canonicalJson(value))));

/** First 16 hex digits of hashOf. */
export const shortHash = (value: unknown): string => hashOf(value).slice(0, 16);
