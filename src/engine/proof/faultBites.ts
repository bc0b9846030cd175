/**
 * Where a fault bites that is behind no hazard by probing alone: what it does shows only in what an act makes of the scene,
 * a clamp on a live low side that too large a link feeds on and on. Every act on offer that meets a hazard of the kind the
 * fault can make is a candidate, soonest first; the fault bites where it is a cause of what is met, by the same
 * counterfactual as everywhere (hazards/causes.ts). Of candidates that meet one hazard only the first few are asked.
 */
import { faultKind } from '../catalogue/faults.ts';
import type { Mechanism } from '../catalogue/types.ts';
import { metBecauseOf } from '../hazards/exposuresOf.ts';
import type { Means } from './peek.ts';
import type { Laid } from './survey.ts';
import { type Bite, placesFrom, type Reached, type Try, triesFrom } from './traps.ts';

/** Acts asked about for one hazard. */
const FEW = 3;

/** The soonest act found of which the fault is a cause; null where none is. */
export function faultBite(means: Means, arrived: Reached, { fault }: Laid): Bite | null {
  const mechanisms: readonly Mechanism[] = faultKind(fault.kind).mechanisms;
  const asked = new Map<string, number>();
  const isAsked = (hazard: string): boolean => {
    const times = (asked.get(hazard) ?? 0) + 1;
    asked.set(hazard, times);
    return times <= FEW && mechanisms.some((name) => hazard.startsWith(`${name}:`));
  };
  const bitten = ({ from: { world, acts }, offer, minutes }: Try): Bite | null => {
    const { obstacles } = means.peek(world, offer.act);
    const met = obstacles.filter(({ is, id }) => is === 'exposed' && isAsked(id)).map(({ id }) => id);
    if (met.length === 0) return null;
    const { passed, settled, reach } = means.step.carry(world, offer.act);
    const caused = reach.flatMap((each) => metBecauseOf(fault.id, each, passed, settled));
    const hazard = met.find((id) => caused.includes(id));
    return hazard === undefined
      ? null
      : { hazard, minutes, acts: [...acts, offer.act], label: offer.label, failed: [] };
  };
  const tries = placesFrom(means, arrived)
    .flatMap((place) => triesFrom(place))
    .sort((a, b) => a.minutes - b.minutes || a.from.acts.length - b.from.acts.length);
  for (const each of tries) {
    const bite = bitten(each);
    if (bite !== null) return bite;
  }
  return null;
}
