/**
 * Proofs kept in .cache/proofs, which git ignores: by the scenario's hash, the engine's version, the seed and the very
 * build of this program, so that a proof by other code is never taken for one by this.
 */
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { engineVersion } from '../engine/acts/version.ts';
import { type ProveReport, proveReportSchema } from './schemas/proveReport.ts';

export type KeptProof = Omit<ProveReport[number], 'file'>;

export interface ProofCache {
  get(scenarioHash: string, seed: number): KeptProof | null;
  put(proof: KeptProof): void;
}

const keptProof = proveReportSchema.element.omit({ file: true });

/** A cache in a folder; what lies there and is no proof is made anew. */
export function proofCache(folder: string): ProofCache {
  const build = createHash('sha256')
    .update(readFileSync(fileURLToPath(import.meta.url)))
    .digest('hex')
    .slice(0, 12);
  const path = (hash: string, seed: number): string =>
    join(folder, `${hash.slice(0, 16)}-${engineVersion}-${seed}-${build}.json`);
  return {
    get: (hash, seed) => {
      const file = path(hash, seed);
      if (!existsSync(file)) return null;
      const read = keptProof.safeParse(JSON.parse(readFileSync(file, 'utf8')));
      return read.success ? read.data : null;
    },
    put: (proof) => {
      mkdirSync(folder, { recursive: true });
      const file = path(proof.scenarioHash, proof.seed);
      writeFileSync(`${file}.${process.pid}`, JSON.stringify(proof));
      renameSync(`${file}.${process.pid}`, file);
    },
  };
}
