/**
 * Conductors and leads that can come at somebody. One whose ties are lost and that nothing else holds can be anywhere in
 * the ellipsoid that its length allows between the next supports that hold (mechanics/looseRuns.ts); a lead, or a piece of
 * a parted conductor, that hangs from one end anywhere within its length of that end (mechanics/hangingLead.ts). A knock, a
 * climber or a pull sets it going, and it may go by itself. Fatal when a whole conductor can strike the body, or when what
 * moves, alive in a credible state, can come nearer than the minimum approach distance to body or moving hands. A piece
 * that lies on the ground stays there: step.ts and approach.ts ask about it. Left out: what it catches on, slip at the
 * dead ends, other people.
 */
import { faultKind } from '../catalogue/faults.ts';
import type { Vec3 } from '../math/vec3.ts';
import { distanceToLead, type HangingLead, restingEnd } from '../mechanics/hangingLead.ts';
import { distanceToLoose, restHeight } from '../mechanics/looseConductor.ts';
import { type LooseRun, looseRuns } from '../mechanics/looseRuns.ts';
import type { Metres, Volts } from '../units/quantities.ts';
import { piecesOf } from '../world/lying.ts';
import { barePlace, bareTerminals } from '../world/points.ts';
import type { Part, PointId, World } from '../world/types.ts';
import { approachDistance, farthestApproach } from './approach.ts';
import type { Meeting } from './meeting.ts';
import { liveIn, type Moment } from './moment.ts';
import { bodyGapBy, handsReach, shoulderOf } from './personSpace.ts';
import { failing } from './readiness.ts';
import type { Quantity, Reach } from './types.ts';

/** Something that can move, whatever holds it. */
interface Moving {
  /** Part that has let go. */
  readonly part: Part;
  /** Points of its metal, for volts. */
  readonly points: readonly PointId[];
  readonly distanceTo: (place: Vec3) => Metres;
  /** Height of where it hangs, or of its free end. */
  readonly rest: Metres;
  /** Strikes by its weight, alive or not. */
  readonly strikes: boolean;
  readonly words: string;
}

const metalOf = (part: Part): readonly PointId[] => bareTerminals(part).map((terminal) => `${part.id}/${terminal}`);

const looseOf = ({ tie, over: { conductor }, at, spans }: LooseRun): Moving => ({
  part: tie,
  points: spans.flatMap(metalOf),
  distanceTo: (place) => distanceToLoose(conductor, place),
  rest: Math.max(0, restHeight(conductor, at)),
  strikes: true,
  words: 'It lies loose and can drop or swing.',
});

const hanging = (part: Part, terminal: string, lead: HangingLead): Moving => ({
  part,
  points: [`${part.id}/${terminal}`],
  distanceTo: (place) => distanceToLead(lead, place),
  rest: restingEnd(lead)[2],
  strikes: false,
  words: 'It hangs from one end and can swing.',
});

function leadsOf(part: Part): readonly Moving[] {
  const leads = part.faults.flatMap(({ kind }) => {
    const hangs = faultKind(kind).mechanical?.hangs;
    const held = hangs === undefined ? null : barePlace(part, hangs.from);
    return hangs === undefined || held === null ? [] : [hanging(part, hangs.from, { held, length: hangs.metres })];
  });
  const pieces = piecesOf(part).filter(({ foot, length }) => foot === null && length > 0);
  return [...leads, ...pieces.map(({ terminal, held, length }) => hanging(part, terminal, { held, length }))];
}

const kept = new WeakMap<World['parts'], readonly Moving[]>();

function movingIn(world: World): readonly Moving[] {
  const known = kept.get(world.parts);
  if (known !== undefined) return known;
  const leads = world.parts.flatMap((part) => (part.faults.length === 0 ? [] : leadsOf(part)));
  const found = [...looseRuns(world).map(looseOf), ...leads];
  kept.set(world.parts, found);
  return found;
}

function volts(moment: Moment, { points }: Moving): { readonly worst: Volts; readonly now: Volts } {
  const worst = Math.max(0, ...points.map((point) => liveIn(moment, point)?.volts ?? 0));
  const now = Math.max(0, ...points.map((point) => moment.present.point(point)).map((s) => (s.live ? s.volts : 0)));
  return { worst, now };
}

function meetingWith(reach: Reach, moment: Moment, moving: Moving): readonly Meeting[] {
  const { world } = moment;
  const { part, distanceTo, rest } = moving;
  const body = bodyGapBy(reach, distanceTo);
  const handsMove = reach.works || reach.disturbs !== null;
  const hands = handsMove
    ? Math.max(0, distanceTo(shoulderOf(reach)) - handsReach(world, reach))
    : Number.POSITIVE_INFINITY;
  const gap = Math.min(body, hands);
  const strikesBody = moving.strikes && body <= 0;
  if (!strikesBody && gap >= farthestApproach(world)) return [];
  const { worst, now } = volts(moment, moving);
  const limit = approachDistance(world, worst);
  if (!strikesBody && gap >= limit) return [];
  const quantities = (v: Volts): readonly Quantity[] => [
    { name: 'voltage to ground', value: v, unit: 'V' },
    { name: 'height at rest', value: rest, unit: 'm' },
    { name: 'distance from where it can be', value: gap, unit: 'm' },
    { name: 'minimum approach distance', value: limit, unit: 'm' },
  ];
  return [
    {
      hazard: `drop:${part.id}`,
      mechanism: 'drop',
      part: part.id,
      point: null,
      who: reach.who,
      severity: 'fatal',
      potentiallyFatal: true,
      quantities: quantities(worst),
      now: quantities(now),
      strikes: false,
      failed: failing(world, worst > 0 ? ['grounded', 'second-qualified'] : ['second-qualified'], {
        point: moving.points[0],
      }),
      limit: strikesBody ? 'a conductor that can strike' : 'minimum approach distance to where it can be',
      source: strikesBody ? 'geometry of its length' : '29 CFR 1910.269 Table R-6; geometry of its length',
      measure: 1 + worst,
      measureNow: 1 + now,
      words: moving.words,
    },
  ];
}

/** Loose conductors and hanging leads that can get at the person. */
export const drop = (reach: Reach, moment: Moment): readonly Meeting[] =>
  movingIn(moment.world).flatMap((moving) => meetingWith(reach, moment, moving));
