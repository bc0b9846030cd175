/**
 * What a reach met: all mechanisms over it, in the World before the act and the one after, since an act may change
 * something while hands are on it. The credible worst is judged; the present is told beside it. Causes by
 * counterfactual (causes.ts).
 */
import type { World } from '../world/types.ts';
import { approach } from './approach.ts';
import { type Again, causesBy } from './causes.ts';
import { contact } from './contact.ts';
import { drop } from './drop.ts';
import { fall } from './fall.ts';
import { flash } from './flash.ts';
import { type Meeting, worstOf } from './meeting.ts';
import { type Moment, momentOf } from './moment.ts';
import { step } from './step.ts';
import { struckBy } from './struckBy.ts';
import { surroundings } from './surroundings.ts';
import type { Exposure, Reach } from './types.ts';

const mechanisms = [contact, approach, flash, step, drop, fall, struckBy, ...surroundings] as const;

/** All mechanisms at one moment, one meeting a hazard. */
export const meetingsAt = (reach: Reach, moment: Moment): readonly Meeting[] =>
  worstOf(mechanisms.flatMap((mechanism) => mechanism(reach, moment)));

/** Each mechanism by itself, as a function of a reach and one World. */
export const eachAt: readonly ((reach: Reach, world: World) => readonly Meeting[])[] = mechanisms.map(
  (mechanism) => (reach, world) => worstOf(mechanism(reach, momentOf(world))),
);

/** A contact is made or broken once, in the World before. */
export const withoutSwitching = (reach: Reach): Reach =>
  reach.switches === null ? reach : { ...reach, switches: null };

/** People and tools as they were when the hands went on; what the act changed is metal. The World before itself where it changed none. */
export const withMetalOf = (before: World, { parts, jumpers }: World): World =>
  before.parts === parts && before.jumpers === jumpers ? before : { ...before, parts, jumpers };

function meetings(
  reach: Reach,
  before: World,
  after: World,
  trusted?: ReadonlySet<string>,
  steps = true,
): readonly Meeting[] {
  const first = meetingsAt(reach, momentOf(before, steps, trusted));
  const changed = withMetalOf(before, after);
  if (changed === before) return first;
  return worstOf([...first, ...meetingsAt(withoutSwitching(reach), momentOf(changed, steps, trusted))]);
}

const exposureOf = (
  { point, measure, measureNow, timed, words, ...exposure }: Meeting,
  causes: readonly string[],
): Exposure => ({
  ...exposure,
  causes,
});

/** Causes of each hazard that the reach met; of one fault only where it is named. */
function causesOf(
  reach: Reach,
  before: World,
  after: World,
  found: readonly Meeting[],
  only?: string,
): ReadonlyMap<string, readonly string[]> {
  const again =
    (steps: boolean): Again =>
    ([was, became], trusted) =>
      meetings(reach, was, became, trusted, steps);
  return causesBy([before, after], found, again(false), again(true), only);
}

/** Exposures of a reach, sorted by hazard, each with the laid faults that made it or made it worse. */
export function exposuresOf(reach: Reach, before: World, after: World): readonly Exposure[] {
  const found = met(reach, before, after);
  if (found.length === 0) return [];
  const causes = causesOf(reach, before, after, found);
  return found.map((meeting) => exposureOf(meeting, causes.get(meeting.hazard) ?? []));
}

/** Ids of the hazards that the reach met by reason of one laid fault. */
export function metBecauseOf(fault: string, reach: Reach, before: World, after: World): readonly string[] {
  const causes = causesOf(reach, before, after, met(reach, before, after), fault);
  return [...causes].filter(([, ids]) => ids.length > 0).map(([hazard]) => hazard);
}

/** What a reach met, without the causes. */
export const met = (reach: Reach, before: World, after: World): readonly Meeting[] => meetings(reach, before, after);

/** Ids of the hazards met, for whoever needs neither durations nor causes. */
export const hazardsMet = (reach: Reach, before: World, after: World): readonly string[] =>
  meetings(reach, before, after, undefined, false).map(({ hazard }) => hazard);
