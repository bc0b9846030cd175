// @ts-check
/**
 * Tells whether a build is stale: a hash over the names and contents of what went into it.
 * Only Node built-ins: this runs before node_modules exists.
 */
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** @param {string} root @param {string} path @returns {string[]} */
const filesUnder = (root, path) => {
  const full = join(root, path);
  if (!existsSync(full)) return [];
  if (!statSync(full).isDirectory()) return [path];
  return readdirSync(full)
    .sort()
    .flatMap((name) => filesUnder(root, `${path}/${name}`));
};

/** Hash of the files under the given paths; a path that is not there counts as empty. @param {string} root @param {readonly string[]} paths */
export const hashOf = (root, paths) => {
  const hash = createHash('sha256');
  for (const file of paths.flatMap((path) => filesUnder(root, path))) {
    const content = readFileSync(join(root, file));
    hash.update(`${file}\0${content.length}\0`).update(content);
  }
  return hash.digest('hex').slice(0, 16);
};
