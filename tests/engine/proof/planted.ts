/** Proofs of Mill Lane with something planted, or with a rule altered. */
import { plainStep, type Step } from '../../../src/engine/proof/peek.ts';
import { prove } from '../../../src/engine/proof/prove.ts';
import type { Claim, Proof } from '../../../src/engine/proof/types.ts';
import type { World } from '../../../src/engine/world/types.ts';

const none = 'faults: []';
/** Lays a fault in the scene's text. */
export const lay = (fault: string): readonly [string, string] => [none, `faults:\n  - ${fault}`];
/** An arrester hanging on its line lead. */
export const disconnector = lay('{ id: spent, kind: arrester-disconnector-operated, on: p2.arrester }');

/** A short proof, of this engine or an altered one. */
export const proved = (world: World, step: Partial<Step> = {}): Proof =>
  prove(world, { seed: 1, tries: 40, step: { ...plainStep, ...step } });

/** The claim, which must be there. */
export const claim = (proof: Proof, id: string): Claim => {
  const found = proof.claims.find((each) => each.id === id);
  if (found === undefined) throw new Error(`no claim ${id}: ${proof.claims.map((each) => each.id).join(' ')}`);
  return found;
};
