/**
 * Coming near what is alive at more than 300 V: the gap between body or hands and bare metal against the minimum
 * approach distance of 29 CFR 1910.269 Table R-6 (phase to ground). The volts of the table are phase to phase: to
 * ground times sqrt(3), up to 750 V as they are (note 2). Hands may be inside with rubber gloves that count
 * ((l)(3)(iii)(A)); a cover counts when rated. Hands move anywhere within reach while somebody works or strikes, else
 * the body stands still. Left out: conductive things held, other people, movement by surprise beyond what the table
 * includes. The rule asks for sleeves as well as gloves unless other live parts in reach are covered ((l)(4)(i)): so gloves alone let
 * hands be near what they work on, which is a touch and contact.ts asks about it, and not near another live part. The table
 * may be used to 72.5 kV; above 900 m its distance is multiplied by Table R-5, and not only the electrical part of it.
 */

import { toolKind } from '../catalogue/tools.ts';
import { netAt } from '../circuit/elementsOf.ts';
import { distance } from '../math/vec3.ts';
import { minimumApproach } from '../standards/approachDistance.ts';
import type { Metres, Volts } from '../units/quantities.ts';
import { personById, toolById } from '../world/edit.ts';
import type { PointId, World } from '../world/types.ts';
import { type BareMetal, metalOn, representativeOf } from './bareMetal.ts';
import { barrierOf, ratingFor } from './barrier.ts';
import type { Meeting } from './meeting.ts';
import { liveIn, type Moment } from './moment.ts';
import { bodyGap, handsGap, handsReach, isFarFrom, shoulderOf } from './personSpace.ts';
import { failing, precondition } from './readiness.ts';
import type { Quantity, Reach } from './types.ts';

/** Up to here the rule keeps no distance, only contact is avoided. */
const NO_DISTANCE: Volts = 300;
/** Phase to phase: the last row of Table R-6. Two sources of 34.5Y/19.92 kV out of step stay below it. */
const HIGHEST: Volts = 72500;
const SINGLE_PHASE: Volts = 750;
const TWO_WORKERS: Volts = 600;

/** Volts to enter the table with. */
export const tableVolts = (toGround: Volts): Volts => (toGround <= SINGLE_PHASE ? toGround : ratingFor(toGround));

/** Minimum approach distance to a part at so many volts to ground; zero up to 300 V. */
export const approachDistance = (world: World, toGround: Volts): Metres =>
  toGround <= NO_DISTANCE ? 0 : minimumApproach(tableVolts(toGround), 'phase-to-ground', world.site.altitudeM).metres;

/** Farther than this from bare metal nobody is too near, whatever a distribution line carries. */
export const farthestApproach = (world: World): Metres =>
  minimumApproach(HIGHEST, 'phase-to-ground', world.site.altitudeM).metres;

const glovesOf = (world: World, who: string): string | null =>
  personById(world, who)?.wearing.find((id) => {
    const tool = toolById(world, id);
    return tool !== null && toolKind(tool.kind).barrier === 'gloves';
  }) ?? null;

const isCovered = (world: World, part: string, volts: Volts): boolean =>
  precondition(world, 'cover-rated', { part, volts: ratingFor(volts) });

/** The end of a wire that is nearer to the person. */
const nearestEnd = (reach: Reach, { point, ends }: BareMetal): PointId =>
  ends.reduce(
    (near, end) => {
      const away = distance(shoulderOf(reach), end.at);
      return away < near.away ? { point: end.point, away } : near;
    },
    { point, away: Number.POSITIVE_INFINITY },
  ).point;

interface Near {
  readonly metal: BareMetal;
  readonly gap: Metres;
  readonly limit: Metres;
  readonly volts: Volts;
  readonly node: string;
  readonly failed: readonly string[];
}

function near(
  reach: Reach,
  moment: Moment,
  metal: BareMetal,
  touched: () => ReadonlySet<string>,
  farthest: Metres,
): Near | null {
  const { world } = moment;
  const body = bodyGap(reach, metal.path);
  const hands = reach.works || reach.disturbs !== null ? handsGap(world, reach, metal.path) : Number.POSITIVE_INFINITY;
  if (Math.min(body, hands) >= farthest) return null;
  const end = nearestEnd(reach, metal);
  const live = liveIn(moment, end, NO_DISTANCE);
  if (live === null || metal.ends.some(({ net }) => touched().has(net))) return null;
  const gloves = glovesOf(world, reach.who);
  const barrier = barrierOf(world, reach.who, { stick: null, gloves }, live.volts);
  const sleeves = barrier.holds ? failing(world, ['sleeves'], { who: reach.who, volts: ratingFor(live.volts) }) : [];
  const gap = barrier.holds && sleeves.length === 0 ? body : Math.min(body, hands);
  const limit = approachDistance(world, live.volts);
  if (gap >= limit || isCovered(world, metal.part, live.volts)) return null;
  const covered = world.covers.some(({ part }) => part === metal.part) ? ['cover-rated'] : [];
  return { metal, gap, limit, volts: live.volts, node: live.node, failed: [...barrier.failed, ...sleeves, ...covered] };
}

const quantitiesOf = ({ gap, limit }: Near, volts: Volts): readonly Quantity[] => [
  { name: 'voltage to ground', value: volts, unit: 'V' },
  { name: 'distance', value: gap, unit: 'm' },
  { name: 'minimum approach distance', value: limit, unit: 'm' },
];

/** Farther inside, else first by id. */
function isNearer(a: Near, b: Near): boolean {
  const deeper = a.gap - a.limit - (b.gap - b.limit);
  return deeper !== 0 ? deeper < 0 : a.metal.point < b.metal.point;
}

/** One a net: the metal that is farthest inside. The hazard is the net's, whatever of it is nearest. */
function nearest(found: readonly Near[]): readonly Near[] {
  const byNet = new Map<string, Near>();
  for (const each of found) {
    const known = byNet.get(each.node);
    if (known === undefined || isNearer(each, known)) byNet.set(each.node, each);
  }
  return [...byNet.values()];
}

const voltsNow = (moment: Moment, point: PointId): Volts => {
  const state = moment.present.point(point);
  return state.live ? state.volts : 0;
};

const none: readonly BareMetal[] = [];
// Metal and stands are frozen geometry: what is within reach of a place stays so.
const onPartKept = new WeakMap<readonly BareMetal[], Map<string, readonly BareMetal[]>>();
const aroundKept = new WeakMap<World['parts'], Map<string, readonly BareMetal[]>>();

/** Metal nearer than `farthest` to the body or to where the hands may get, working or not. */
function metalAround(world: World, reach: Reach, farthest: Metres): readonly BareMetal[] {
  const place = `${reach.at.join(' ')} ${handsReach(world, reach)} ${farthest}`;
  const around = aroundKept.get(world.parts) ?? new Map<string, readonly BareMetal[]>();
  aroundKept.set(world.parts, around);
  const known = around.get(place);
  if (known !== undefined) return known;
  const isAround = ({ path }: BareMetal): boolean =>
    !isFarFrom(world, reach, path, farthest) && Math.min(bodyGap(reach, path), handsGap(world, reach, path)) < farthest;
  const found: BareMetal[] = [];
  for (const part of world.parts) {
    const metal = metalOn(part);
    const places = onPartKept.get(metal) ?? new Map<string, readonly BareMetal[]>();
    onPartKept.set(metal, places);
    let near = places.get(place);
    if (near === undefined) {
      near = metal.some(isAround) ? metal.filter(isAround) : none;
      places.set(place, near);
    }
    found.push(...near);
  }
  around.set(place, found);
  return found;
}

/** Metal inside the minimum distance that nothing covers and no glove is for. */
export function approach(reach: Reach, moment: Moment): readonly Meeting[] {
  const { world } = moment;
  // Asked only where something alive is near: what hands are on is nothing to most of what they come by.
  let nets: ReadonlySet<string> | null = null;
  const touched = (): ReadonlySet<string> => {
    nets ??= new Set(
      reach.touches.filter(({ through }) => through.stick === null).map(({ point }) => netAt(world, point)),
    );
    return nets;
  };
  const farthest = farthestApproach(world);
  const found = metalAround(world, reach, farthest).flatMap(
    (metal) => near(reach, moment, metal, touched, farthest) ?? [],
  );
  return nearest(found).map((each) => {
    const point = representativeOf(world, each.node);
    const { part } = each.metal;
    const now = voltsNow(moment, point);
    const alone = each.volts > TWO_WORKERS && reach.aloft ? failing(world, ['second-qualified']) : [];
    const dead = failing(world, ['tested-dead', 'detector-proved', 'grounded'], { point });
    return {
      hazard: `approach:${point}`,
      mechanism: 'approach',
      part,
      point,
      who: reach.who,
      severity: 'fatal',
      potentiallyFatal: true,
      quantities: quantitiesOf(each, each.volts),
      now: quantitiesOf(each, now),
      strikes: false,
      failed: [...new Set([...each.failed, ...alone, ...dead])].sort(),
      limit: 'minimum approach distance',
      source: minimumApproach(tableVolts(each.volts), 'phase-to-ground', world.site.altitudeM).source,
      measure: each.volts,
      measureNow: now,
      words: 'Whoever comes nearer than the distance can be reached by it without a touch.',
    };
  });
}
