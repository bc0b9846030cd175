/** Drills drawn at random, walked by `act` and by the learned transitions side by side. */
import { act, carryOut } from '../../../../src/engine/acts/act.ts';
import { possibleActs } from '../../../../src/engine/acts/possibleActs.ts';
import type { Act } from '../../../../src/engine/acts/types.ts';
import { exposuresOf } from '../../../../src/engine/hazards/exposuresOf.ts';
import { canonicalJson, hashOf } from '../../../../src/engine/math/hash.ts';
import { nextInteger, seedFrom } from '../../../../src/engine/math/random.ts';
import type { Judge } from '../../../../src/engine/proof/learned/engineParts.ts';
import { calm, reduced } from '../../../../src/engine/proof/learned/reduced.ts';
import { type Taken, Transitions } from '../../../../src/engine/proof/learned/transitions.ts';
import { SIZE } from '../../../../src/engine/proof/learned/tuples.ts';
import type { World } from '../../../../src/engine/world/types.ts';

/** Paper is ignored by the proof; the ends would end the walk. */
const left = new Set<Act['act']>([
  'call-finding',
  'withdraw-finding',
  'plan',
  'withdraw-plan',
  'hand-over',
  'close-out',
]);

const actsIn = (world: World): readonly Act[] =>
  possibleActs(world)
    .map((offer) => offer.act)
    .filter((each) => !left.has(each.act));

interface Walks {
  readonly seed: number;
  readonly walks: number;
  readonly steps: number;
  readonly judge?: Judge;
  /** The same judge for the walk by `act`; absent: its own exposures. */
  readonly plainly?: Judge;
}

/** What differed between the two, in words; empty when nothing did. */
export function differences(
  start: World,
  { seed, walks, steps, judge = exposuresOf, plainly }: Walks,
): readonly string[] {
  const found: string[] = [];
  const called = act(start, { act: 'acknowledge' }).world;
  const transitions = new Transitions(called, judge);
  const taken: Taken = { minutes: 0, judged: [], reach: [] };
  let random = seedFrom(seed);
  for (let walk = 0; walk < walks; walk++) {
    let world: World = { ...called, chance: calm };
    let tuple = transitions.tupleOf(world);
    for (let step = 0; step < steps; step++) {
      const acts = actsIn(world);
      const [drawn, next] = nextInteger(random, 0, acts.length - 1);
      random = next;
      const each = acts[drawn] as Act;
      const to = new Int32Array(SIZE);
      const plain = act(world, each);
      if (!transitions.take(tuple, transitions.numberOf(each), to, taken) || !plain.ok) {
        found.push(`${JSON.stringify(each)} is impossible for one of them`);
        break;
      }
      const { passed, settled } = carryOut(world, each);
      const exposures = plainly ? plain.reach.flatMap((reach) => plainly(reach, passed, settled)) : plain.exposures;
      const where = `walk ${walk}, step ${step}, ${JSON.stringify(each)}`;
      world = { ...plain.world, chance: calm };
      const once = reduced(world, transitions.timing);
      const reducedHash = hashOf(once);
      if (hashOf(reduced(once, transitions.timing)) !== reducedHash) found.push(`${where}: reduced twice is not once`);
      if (reducedHash !== hashOf(transitions.worldOf(to))) found.push(`${where}: another World`);
      const meetings = taken.judged.flatMap((judged) => judged.meetings);
      if (canonicalJson(exposures) !== canonicalJson(meetings)) found.push(`${where}: other exposures`);
      if (world.ended !== null || found.length > 0) break;
      tuple = to;
    }
    if (found.length > 0) break;
  }
  return found;
}
