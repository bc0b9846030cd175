/**
 * Being aloft. Unattached above 4 ft on a pole, or in a lift at all, is potentially fatal (29 CFR
 * 1910.269(g)(2)(iv)(C)). A pole that is climbed must be found able to carry (q)(1): unchecked is an order matter
 * while the computed strength suffices (mechanics/poleBending.ts: pull that no guy takes, wind of the site, climber,
 * decay), potentially fatal when it does not. Aloft alone there is nobody to see, and nobody to help: (l)(2)(i) asks for
 * two at lines above 600 V, counted as alive until deenergized and grounded, and rescue must be ready (b)(1). Left out:
 * slips, gaffs cutting out, the lift's own stability; a pole that fails without anybody on it is struckBy.ts.
 */
import { poleBending } from '../mechanics/poleBending.ts';
import type { Metres } from '../units/quantities.ts';
import type { Part, World } from '../world/types.ts';
import type { Meeting } from './meeting.ts';
import type { Moment } from './moment.ts';
import { failing } from './readiness.ts';
import type { Reach } from './types.ts';

/** 4 ft. */
const RULE_HEIGHT: Metres = 1.2192;

const bodyOf = (world: World, pole: string): Part | null => world.parts.find(({ id }) => id === `${pole}.pole`) ?? null;

/** Falls that the reach makes possible. */
export function fall(reach: Reach, moment: Moment): readonly Meeting[] {
  const { climbs } = reach;
  if (climbs === null) return [];
  const { world } = moment;
  const part = bodyOf(world, climbs.pole);
  if (part === null) return [];
  const height = reach.at[2];
  const onPole = climbs.by === 'hooks';
  const pole = poleBending(world, climbs.pole, { wind: world.site.windMs, climber: onPole });
  const unattached = failing(world, ['fall-gear'], { who: reach.who }).length > 0 && (!onPole || height > RULE_HEIGHT);
  const weak = onPole && !pole.holds;
  const failed = [
    ...(unattached ? ['fall-gear'] : []),
    ...(onPole ? failing(world, ['pole-checked'], { part: part.id }) : []),
    ...failing(world, ['second-qualified', 'briefed', 'rescue-ready']),
  ].sort();
  if (failed.length === 0 && !weak) return [];
  const fatal = unattached || weak;
  const quantities = [
    { name: 'height', value: height, unit: 'm' },
    { name: 'bending the pole withstands', value: pole.capacity, unit: 'N m' },
    { name: 'bending asked of it', value: pole.demand, unit: 'N m' },
    { name: 'of that, pull that nothing takes', value: pole.unbalanced, unit: 'N m' },
  ];
  return [
    {
      hazard: `fall:${part.id}`,
      mechanism: 'fall',
      part: part.id,
      point: null,
      who: reach.who,
      severity: fatal ? 'fatal' : 'serious',
      potentiallyFatal: fatal,
      quantities,
      now: quantities,
      strikes: onPole && pole.capacity < pole.demand,
      failed,
      limit: fatal
        ? weak
          ? 'strength of the pole'
          : 'attached above 4 ft, and in a lift'
        : 'checked, briefed, and not alone',
      source: '29 CFR 1910.269(g)(2)(iv)(C), (l)(2)(i), (q)(1)(i)',
      measure: height * (weak ? 2 : 1),
      measureNow: height * (weak ? 2 : 1),
      words: 'Whoever is up there can fall.',
    },
  ];
}
