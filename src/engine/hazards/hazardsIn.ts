/**
 * The hazards of a World: what probing it without controls meets (probes.ts), the tools that would fail whoever
 * trusts them, each with its causes by counterfactual (causes.ts). A line in ordinary service is a hazard without
 * causes. The same for any order of lists.
 */
import { circuitKey } from '../circuit/circuitKey.ts';
import { Memo } from '../circuit/memo.ts';
import { shortHash } from '../math/hash.ts';
import type { World } from '../world/types.ts';
import { approach } from './approach.ts';
import { barrierLosses } from './barrier.ts';
import { causesBy } from './causes.ts';
import { contact } from './contact.ts';
import { crewLosses } from './crew.ts';
import { drop } from './drop.ts';
import { fall } from './fall.ts';
import { flash } from './flash.ts';
import { type Meeting, worstOf } from './meeting.ts';
import { type Moment, momentOf } from './moment.ts';
import { type Probes, probesOf, unprotected } from './probes.ts';
import { step } from './step.ts';
import { struckBy } from './struckBy.ts';
import { surroundings } from './surroundings.ts';
import type { Hazard, Reach } from './types.ts';

/** Mechanisms that meet whoever is there. */
const ofBeing: readonly ((reach: Reach, moment: Moment) => readonly Meeting[])[] = [
  approach,
  step,
  drop,
  fall,
  struckBy,
];

/** What a World without controls meets; tools that fail are asked apart. */
function physical(
  world: World,
  { touching, being, switching }: Probes,
  trusted?: ReadonlySet<string>,
): readonly Meeting[] {
  const moment = momentOf(unprotected(world), false, trusted);
  return worstOf([
    ...touching.flatMap((reach) => contact(reach, moment)),
    ...being.flatMap((reach) => ofBeing.flatMap((mechanism) => mechanism(reach, moment))),
    ...switching.flatMap((reach) => flash(reach, moment)),
  ]);
}

/** What devices end sooner or later, with the devices stepped. */
function timed(world: World, { touching, switching }: Probes, trusted: ReadonlySet<string>): readonly Meeting[] {
  const moment = momentOf(unprotected(world), true, trusted);
  return worstOf([
    ...touching.flatMap((reach) => contact(reach, moment)),
    ...switching.flatMap((reach) => flash(reach, moment)),
  ]);
}

/** What is round the line; it hangs on people, site and guards as well, so that it is not kept by the parts. */
function around(world: World, { touching, being }: Probes, trusted?: ReadonlySet<string>): readonly Meeting[] {
  const moment = momentOf(unprotected(world), false, trusted);
  const [touch] = touching;
  const reaches = [...being, ...atWork(being), ...(touch ? [touch] : [])];
  return worstOf(reaches.flatMap((reach) => surroundings.flatMap((mechanism) => mechanism(reach, moment))));
}

/** Working at each place on the ground, for as long as that takes. */
const atWork = (being: Probes['being']): Probes['being'] =>
  being.filter(({ aloft }) => !aloft).map((reach) => ({ ...reach, works: true, seconds: 600 }));

const hazardOf = (meeting: Meeting, causes: readonly string[]): Hazard => ({
  id: meeting.hazard,
  mechanism: meeting.mechanism,
  part: meeting.part,
  point: meeting.point,
  severity: meeting.severity,
  potentiallyFatal: meeting.potentiallyFatal,
  quantities: meeting.quantities,
  causes,
  words: meeting.words,
});

function derive(world: World): readonly Hazard[] {
  // Faults move no metal, so the same reaches are asked in every World that is compared.
  const probes = probesOf(unprotected(world));
  const known = new Map<World['parts'], readonly Meeting[]>();
  const meetings = (each: World, trusted?: ReadonlySet<string>): readonly Meeting[] => {
    const found = known.get(each.parts) ?? physical(each, probes, trusted);
    known.set(each.parts, found);
    return worstOf([...found, ...around(each, probes, trusted), ...barrierLosses(each), ...crewLosses(each)]);
  };
  const met = meetings(world);
  const causes = causesBy(
    [world, world],
    met,
    ([each], trusted) => meetings(each, trusted),
    ([each], trusted) => timed(each, probes, trusted),
  );
  return met.map((meeting) => hazardOf(meeting, causes.get(meeting.hazard) ?? []));
}

/** What else than the circuit hazards depend on. */
const keyOf = (world: World): string =>
  `${circuitKey(world)}|${shortHash({
    parts: world.parts.map(({ id, faults, tags, supported }) => ({ id, faults, tags, supported })),
    tools: world.tools,
    stands: world.stands,
    clearance: world.orders.clearance,
    people: world.people.map(({ id, role, at, qualified, task, faults }) => ({
      id,
      role,
      at,
      qualified,
      task,
      faults,
    })),
    site: world.site,
    minute: world.site.thunderAt === null ? null : world.clock.minute,
    guards: world.guards,
    truck: world.truck,
    today: world.given.crew.today,
  })}`;

const derived = new Memo<readonly Hazard[]>(64);

/** Hazards sorted by id. */
export const hazardsIn = (world: World): readonly Hazard[] => derived.get(keyOf(world), () => derive(world));
