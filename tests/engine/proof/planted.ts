/** Proofs of Mill Lane with something planted, or with a rule altered. */
import { met } from '../../../src/engine/hazards/exposuresOf.ts';
import { plainStep, type Step } from '../../../src/engine/proof/peek.ts';
import { prove } from '../../../src/engine/proof/prove.ts';
import type { Claim, Proof } from '../../../src/engine/proof/types.ts';
import type { World } from '../../../src/engine/world/types.ts';

const none = 'faults: []';
/** Lays a fault in the scene's text. */
export const lay = (fault: string): readonly [string, string] => [none, `faults:\n  - ${fault}`];
/** An arrester hanging on its line lead. */
export const disconnector = lay('{ id: spent, kind: arrester-disconnector-operated, on: p2.arrester }');

/** Once a device is open, nobody on the ground is out of reach of something. */
export const stuckOnceOpen: Step['met'] = (reach, before, after) => {
  const found = met(reach, before, after);
  const touched = { ...reach, touches: [{ point: 'p1.tap-cutout/top', through: { stick: null, gloves: null } }] };
  const [like] = met(touched, before, after);
  const isOpen = before.parts.some(({ id, state }) => id === 'p1.tap-cutout' && state.position === 'open');
  return isOpen && like !== undefined ? [...found, { ...like, hazard: 'approach:everywhere' }] : found;
};

/** A short proof, of this engine or an altered one. */
export const proved = (world: World, step: Partial<Step> = {}, runs = 300): Proof =>
  prove(world, { seed: 1, tries: 40, runs, step: { ...plainStep, ...step } });

/** The claim, which must be there. */
export const claim = (proof: Pick<Proof, 'claims'>, id: string): Claim => {
  const found = proof.claims.find((each) => each.id === id);
  if (found === undefined) throw new Error(`no claim ${id}: ${proof.claims.map((each) => each.id).join(' ')}`);
  return found;
};
