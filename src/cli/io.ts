/** What a verb may do to the outside: write, read a file, report a failed check. Tests hand in their own. */
import { readFileSync, statSync } from 'node:fs';
import type { Command } from 'commander';

/** Bad use or a bad file: the command ends with exit code 2 and this message on stderr. */
export class BadUse extends Error {
  override name = 'BadUse';
}

/** The outside as a verb sees it. */
export type Io = {
  /** Writes text to standard output as it is. */
  readonly stdout: (text: string) => void;
  /** Writes text to standard error as it is. */
  readonly stderr: (text: string) => void;
  /** Reads a UTF-8 file; throws BadUse if it is missing, longer than the limit in bytes, or not UTF-8. */
  readonly readFile: (path: string, limit?: number) => string;
  /** Says that a check failed: the command will end with exit code 1. */
  readonly checkFailed: () => void;
};

/** What a verb's file exports as `register`: it adds itself with `program.command(…)`. */
export type Register = (program: Command, io: Io) => void;

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'no such file',
  EISDIR: 'is a folder',
  EACCES: 'may not be read',
};

const bytesOf = (path: string, limit: number): Uint8Array => {
  try {
    const { size } = statSync(path);
    if (size > limit) throw new BadUse(`${path}: ${size} bytes, at most ${limit} are read`);
    return readFileSync(path);
  } catch (error) {
    if (error instanceof BadUse) throw error;
    const { code = '' } = error as NodeJS.ErrnoException;
    throw new BadUse(`${path}: ${reasons[code] ?? `cannot be read (${code})`}`);
  }
};

/** Reads a UTF-8 file from disk; the default limit is 16 MiB. */
export const readTextFile = (path: string, limit = 16 * 1024 * 1024): string => {
  const bytes = bytesOf(path, limit);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new BadUse(`${path}: is not UTF-8 text`);
  }
};

/** Writes a value as the only JSON document on standard output. */
export const writeJson = (io: Io, value: unknown): void => io.stdout(`${JSON.stringify(value, null, 2)}\n`);
