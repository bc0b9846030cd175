/**
 * A conductor whose tie is lost and that nothing else holds. It can be anywhere in the ellipsoid that its length
 * allows between the next supports (mechanics/looseConductor.ts); a knock, a climber or a pull sets it going, and it
 * may go by itself. Fatal when it can strike the body, or, alive in a credible state, come nearer than the minimum
 * approach distance to body or moving hands. Who is beyond that is not exposed. Left out: what the conductor catches
 * on, slip at the dead ends, other people.
 */
import { componentKind } from '../catalogue/components.ts';
import { faultKind } from '../catalogue/faults.ts';
import { distance, type Vec3 } from '../math/vec3.ts';
import {
  distanceToLoose,
  type HungSpan,
  type LooseConductor,
  looseConductor,
  restHeight,
} from '../mechanics/looseConductor.ts';
import type { Metres, Volts } from '../units/quantities.ts';
import { pointAt } from '../world/edit.ts';
import type { Part, PointId, World } from '../world/types.ts';
import { approachDistance, farthestApproach } from './approach.ts';
import type { Meeting } from './meeting.ts';
import { liveIn, type Moment } from './moment.ts';
import { bodyGapBy, handsReach, shoulderOf } from './personSpace.ts';
import { failing } from './readiness.ts';
import type { Quantity, Reach } from './types.ts';

/** How near a span's end is to the tie that holds it. */
const AT_TIE: Metres = 1;

interface Loose {
  readonly tie: Part;
  readonly conductor: LooseConductor;
  /** Points of the spans, for volts. */
  readonly points: readonly PointId[];
}

const isLost = (part: Part): boolean => part.faults.some(({ kind }) => faultKind(kind).mechanical?.supports === 'lost');

/** The span seen from the tie, or null when it does not hang there. */
function hungAt(tie: Vec3, part: Part): HungSpan | null {
  const { sagM } = part.values;
  if (part.end === null || sagM === undefined || componentKind(part.kind).endPoints.length === 0) return null;
  if (distance(part.end, tie) <= AT_TIE) return { far: part.at, near: part.end, sag: sagM };
  return distance(part.at, tie) <= AT_TIE ? { far: part.end, near: part.at, sag: sagM } : null;
}

function looseAt(world: World, tie: Part): Loose | null {
  const spans = world.parts.flatMap((part) => {
    const hung = hungAt(tie.at, part);
    return hung === null ? [] : [{ part, hung }];
  });
  const [one, other] = spans;
  if (one === undefined || other === undefined || spans.every(({ part }) => part.supported)) return null;
  const points = spans.flatMap(({ part }) =>
    Object.keys(componentKind(part.kind).points).map((terminal) => `${part.id}/${terminal}`),
  );
  return { tie, conductor: looseConductor(one.hung, other.hung), points: points.filter((id) => pointAt(world, id)) };
}

function volts(moment: Moment, { points }: Loose): { readonly worst: Volts; readonly now: Volts } {
  const worst = Math.max(0, ...points.map((point) => liveIn(moment, point)?.volts ?? 0));
  const now = Math.max(0, ...points.map((point) => moment.present.point(point)).map((s) => (s.live ? s.volts : 0)));
  return { worst, now };
}

function meetingWith(reach: Reach, moment: Moment, loose: Loose): readonly Meeting[] {
  const { world } = moment;
  const { tie, conductor } = loose;
  const gapTo = (place: Vec3): Metres => distanceToLoose(conductor, place);
  const body = bodyGapBy(reach, gapTo);
  const moving = reach.works || reach.disturbs !== null;
  const hands = moving ? Math.max(0, gapTo(shoulderOf(reach)) - handsReach(world, reach)) : Number.POSITIVE_INFINITY;
  const gap = Math.min(body, hands);
  if (body > 0 && gap >= farthestApproach(world)) return [];
  const { worst, now } = volts(moment, loose);
  const limit = approachDistance(world, worst);
  const strikesBody = body <= 0;
  if (!strikesBody && gap >= limit) return [];
  const quantities = (v: Volts): readonly Quantity[] => [
    { name: 'voltage to ground', value: v, unit: 'V' },
    { name: 'height at rest', value: restHeight(conductor, conductor.lostAt), unit: 'm' },
    { name: 'distance from where it can be', value: gap, unit: 'm' },
    { name: 'minimum approach distance', value: limit, unit: 'm' },
  ];
  return [
    {
      hazard: `drop:${tie.id}`,
      mechanism: 'drop',
      part: tie.id,
      point: null,
      who: reach.who,
      severity: 'fatal',
      potentiallyFatal: true,
      quantities: quantities(worst),
      now: quantities(now),
      strikes: false,
      failed: failing(world, worst > 0 ? ['grounded', 'second-qualified'] : ['second-qualified'], {
        point: loose.points[0],
      }),
      limit: strikesBody ? 'a conductor that can strike' : 'minimum approach distance to where it can be',
      source: strikesBody ? 'geometry of its length' : '29 CFR 1910.269 Table R-6; geometry of its length',
      measure: 1 + worst,
      measureNow: 1 + now,
      words: 'It lies loose and can drop or swing.',
    },
  ];
}

const looseKept = new WeakMap<World['parts'], readonly Loose[]>();

function looseIn(world: World): readonly Loose[] {
  const found = looseKept.get(world.parts) ?? world.parts.filter(isLost).flatMap((tie) => looseAt(world, tie) ?? []);
  looseKept.set(world.parts, found);
  return found;
}

/** Loose conductors that can get at the person. */
export const drop = (reach: Reach, moment: Moment): readonly Meeting[] =>
  looseIn(moment.world).flatMap((loose) => meetingWith(reach, moment, loose));
