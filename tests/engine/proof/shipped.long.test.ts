/** Every shipped scenario proved whole: no claim fails, par is what lies in scenarios/par, the same again. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parFile } from '../../../src/engine/proof/parForm.ts';
import { prove } from '../../../src/engine/proof/prove.ts';
import { root } from '../../../src/setup/run.mjs';
import { sceneOf, shipped } from './scenes.ts';

describe.each(shipped)('the proof of %s', (name) => {
  const proof = prove(sceneOf(name), { seed: 1 });

  it('has no claim that fails', () => {
    expect(proof.claims.filter(({ outcome }) => outcome === 'fails').map(({ words }) => words)).toEqual([]);
  });

  it('finds a par that is not worse than the one committed', () => {
    const kept = JSON.parse(readFileSync(join(root, 'scenarios/par', `${name}.json`), 'utf8')) as { minutes: number };
    expect(parFile(proof)?.minutes).toBeLessThanOrEqual(kept.minutes);
  });
});
