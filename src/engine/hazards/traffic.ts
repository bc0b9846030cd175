/**
 * Being hit by a vehicle: work, or more than a short stay, on the road or within a lane's drift of its edge while traffic
 * passes. Held by signs and cones set a stopping distance ahead (29 CFR 1910.269(w)(6)); where traffic is heavy they stop
 * nobody who does not look, so that a barrier vehicle or a flagger is asked besides; faster than 45 mph nothing but a barrier
 * holds (a car drove through signs and past a flagger: FACE 00WA040). Limits of speed and drift: common practice, estimates. A
 * lift stands or falls with its truck. Left out: wet or iced roads,
 * pedestrians struck by the crew’s truck.
 */
import { deathRisk, stoppingDistance } from '../standards/stoppingDistance.ts';
import type { Metres } from '../units/quantities.ts';
import { roadEdges } from '../world/road.ts';
import type { World } from '../world/types.ts';
import type { Meeting } from './meeting.ts';
import type { Moment } from './moment.ts';
import type { Reach } from './types.ts';

/** How far a vehicle leaves its lane before it is caught (estimate). */
const DRIFT: Metres = 2;
/** A look through the glass or setting cones takes no longer. */
const SHORT_STAY = 120;
/** 45 mph. */
const FAST = 20.1;
const FATAL_RISK = 0.1;

const isBeside = (y: number): boolean => y <= roadEdges.near + DRIFT && y >= roadEdges.far - DRIFT;
const isOn = (y: number): boolean => y <= roadEdges.near && y >= roadEdges.far;

const busy = (reach: Reach): boolean =>
  reach.works || reach.touches.length > 0 || reach.switches !== null || reach.disturbs !== null;

/** Whether the reach puts somebody, or the truck that carries them, where a car can come. */
function isExposed({ truck }: World, reach: Reach): boolean {
  if (reach.climbs?.by === 'bucket') return isBeside(truck.at[1]);
  if (reach.aloft) return false;
  const y = reach.at[1];
  return busy(reach) ? isBeside(y) : isOn(y) && reach.seconds > SHORT_STAY;
}

/** Whether the traffic there is held off the work. */
export function isTrafficHeld({ site, guards, people }: World): boolean {
  if (!guards.cones) return false;
  if (guards.barrier) return true;
  if (site.trafficMs > FAST) return false;
  return site.traffic !== 'heavy' || people.some(({ task, at }) => task === 'flag' && at !== null);
}

/** Vehicles that can hit whoever reaches there. */
export function traffic(reach: Reach, { world }: Moment): readonly Meeting[] {
  const { traffic: passes, trafficMs } = world.site;
  if (passes === 'none' || isTrafficHeld(world) || !isExposed(world, reach)) return [];
  const risk = deathRisk(trafficMs);
  const fatal = risk >= FATAL_RISK;
  const quantities = [
    { name: 'speed of the traffic', value: trafficMs, unit: 'm/s' },
    { name: 'distance in which it stops', value: stoppingDistance(trafficMs), unit: 'm' },
    { name: 'share of people struck who die', value: risk, unit: '' },
  ];
  return [
    {
      hazard: 'struck-by:traffic',
      mechanism: 'struck-by',
      part: 'site',
      point: null,
      who: reach.who,
      severity: fatal ? 'fatal' : 'serious',
      potentiallyFatal: fatal,
      quantities,
      now: quantities,
      strikes: false,
      failed: ['traffic-held'],
      limit:
        'signs and cones a stopping distance ahead; a flagger or a barrier where it is heavy, a barrier where it is fast',
      source: '29 CFR 1910.269(w)(6); stopping sight distance, AASHTO; Tefft 2011',
      measure: trafficMs,
      measureNow: trafficMs,
      words: 'A car that leaves its lane hits whoever works at the road.',
    },
  ];
}
