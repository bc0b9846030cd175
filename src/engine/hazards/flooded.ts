/**
 * Standing in water beside a pole ground that is alive: the water joins the electrode to whoever stands in it, so that its
 * whole voltage to remote earth drives current from foot to foot or through a hand on dry metal. Body of the 5th
 * percentile at those volts (IEC 479-1), 5 s; nothing is taken off for the water or the way to remote earth, which makes it
 * a worst case. Left out: how the voltage falls off with distance in water, salt, sloping ground.
 */
import { componentKind } from '../catalogue/components.ts';
import { distance } from '../math/vec3.ts';
import { fibrillationThreshold, letGo } from '../standards/bodyCurrent.ts';
import { bodyImpedance } from '../standards/bodyImpedance.ts';
import type { Metres, Seconds, Volts } from '../units/quantities.ts';
import { pointAt } from '../world/edit.ts';
import type { PointId, World } from '../world/types.ts';
import type { Meeting } from './meeting.ts';
import { liveIn, type Moment } from './moment.ts';
import type { Reach } from './types.ts';

const NEAR: Metres = 3;
const FIFTY: Volts = 50;
const LONGEST: Seconds = 5;
const PERCENTILE = 5;
/** Bare metal lower than this stands in the water. */
const IN_WATER: Metres = 0.6;

const kept = new WeakMap<World['parts'], readonly PointId[]>();

/** Bare points at the ground line. */
function lowPoints(world: World): readonly PointId[] {
  const found =
    kept.get(world.parts) ??
    world.parts.flatMap((part) =>
      Object.keys(componentKind(part.kind).points)
        .sort()
        .map((terminal) => `${part.id}/${terminal}`)
        .filter((point) => (pointAt(world, point)?.[2] ?? IN_WATER) < IN_WATER),
    );
  kept.set(world.parts, found);
  return found;
}

/** Shocks through the water. */
export function flooded(reach: Reach, moment: Moment): readonly Meeting[] {
  const { world } = moment;
  if (!world.site.flooded || reach.aloft) return [];
  return lowPoints(world).flatMap((point) => {
    const at = pointAt(world, point);
    if (at === null || distance(at, reach.at) > NEAR) return [];
    const worst = liveIn(moment, point, FIFTY);
    if (worst === null) return [];
    const amperes = worst.volts / bodyImpedance(worst.volts, PERCENTILE);
    if (amperes < letGo.women) return [];
    const fatal = amperes >= fibrillationThreshold(LONGEST);
    const present = moment.present.point(point);
    const now = present.live ? present.volts : 0;
    const [part = point] = point.split('/');
    const quantities = (volts: Volts) => [
      { name: 'voltage to remote earth', value: volts, unit: 'V' },
      {
        name: 'current through the body, worst case',
        value: volts / bodyImpedance(Math.max(volts, 25), PERCENTILE),
        unit: 'A',
      },
      { name: 'distance', value: distance(at, reach.at), unit: 'm' },
    ];
    return [
      {
        hazard: `contact:${point}@water`,
        mechanism: 'contact',
        part,
        point,
        who: reach.who,
        severity: fatal ? 'fatal' : 'serious',
        potentiallyFatal: fatal,
        quantities: quantities(worst.volts),
        now: quantities(now),
        strikes: false,
        failed: ['dry-ground'],
        limit: '116/√t mA over t seconds: possible fibrillation',
        source: 'Dalziel and Lee 1968; IEC 479-1:1994 Table 1; worst case, no published model used',
        measure: worst.volts,
        measureNow: now,
        words: 'Water round a live ground joins it to whoever stands in it.',
      },
    ];
  });
}
