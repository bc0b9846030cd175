/**
 * Weather at work. Lightning: hands on the line or aloft within 30 minutes of the last thunder (OSHA and NOAA advice; a
 * stroke travels along a line from far off, and grounds do not hold it). Wind: aloft above the limit of the lift or the
 * employer. Ice: hooks on an iced pole. Emergency restoration is an exception of 1910.269(q)(4)(iv) for towers; employers
 * differ. Force of the wind on a body: 0.5 rho v2 CdA with CdA 0.7 m2 (estimate). Left out: heat, cold and sun on the
 * worker, gusts beyond the wind given.
 */
import type { World } from '../world/types.ts';
import type { Meeting } from './meeting.ts';
import type { Moment } from './moment.ts';
import type { Reach } from './types.ts';

/** Minutes after the last thunder. */
export const stormOver = 30;
const AIR = 1.2;
const DRAG_AREA = 0.7;

/** Whether a thunderstorm is near or was within the half hour. */
export const isStormy = ({ site, clock }: World): boolean =>
  site.thunderAt !== null && clock.minute - site.thunderAt < stormOver;

type Form = Omit<Meeting, 'who' | 'point' | 'now' | 'strikes' | 'part'>;

const meeting = (reach: Reach, form: Form, part: string): Meeting => ({
  ...form,
  part,
  who: reach.who,
  point: null,
  now: form.quantities,
  strikes: false,
});

const onLine = (reach: Reach): boolean => reach.aloft || reach.touches.length > 0 || reach.switches !== null;

function lightning(reach: Reach, world: World): readonly Meeting[] {
  if (!isStormy(world) || !onLine(reach)) return [];
  const since = world.clock.minute - (world.site.thunderAt ?? 0);
  return [
    meeting(
      reach,
      {
        hazard: 'lightning:site',
        mechanism: 'lightning',
        severity: 'fatal',
        potentiallyFatal: true,
        quantities: [{ name: 'time since the last thunder', value: since * 60, unit: 's' }],
        failed: ['storm-over'],
        limit: '30 minutes after the last thunder',
        source: 'OSHA/NOAA fact sheet on lightning; common practice',
        measure: 1,
        measureNow: 1,
        words: 'A stroke anywhere on the line comes along it to whoever has hands on it.',
      },
      'site',
    ),
  ];
}

function wind(reach: Reach, { site }: World): readonly Meeting[] {
  if (reach.climbs === null || site.windMs <= site.windLimitMs) return [];
  return [
    meeting(
      reach,
      {
        hazard: 'fall:wind',
        mechanism: 'fall',
        severity: 'fatal',
        potentiallyFatal: true,
        quantities: [
          { name: 'wind', value: site.windMs, unit: 'm/s' },
          { name: 'limit for going aloft', value: site.windLimitMs, unit: 'm/s' },
          { name: 'push on a person', value: 0.5 * AIR * site.windMs * site.windMs * DRAG_AREA, unit: 'N' },
        ],
        failed: ['wind-within-limit'],
        limit: 'limit of the lift or the employer’s rule',
        source: '29 CFR 1910.67 (lift within its maker’s limits); common practice',
        measure: site.windMs,
        measureNow: site.windMs,
        words: 'Wind above the limit tips, swings and blows off.',
      },
      'site',
    ),
  ];
}

function ice(reach: Reach, { site }: World): readonly Meeting[] {
  if (reach.climbs?.by !== 'hooks' || site.precipitation !== 'ice') return [];
  return [
    meeting(
      reach,
      {
        hazard: 'fall:ice',
        mechanism: 'fall',
        severity: 'fatal',
        potentiallyFatal: true,
        quantities: [{ name: 'height', value: reach.at[2], unit: 'm' }],
        failed: ['no-ice'],
        limit: 'no hooks on an iced pole',
        source: '29 CFR 1910.269(g)(2), (q)(1); common practice',
        measure: reach.at[2],
        measureNow: reach.at[2],
        words: 'Gaffs cut out of an iced pole.',
      },
      'site',
    ),
  ];
}

/** What the weather can do to whoever reaches so. */
export const weather = (reach: Reach, { world }: Moment): readonly Meeting[] => [
  ...lightning(reach, world),
  ...wind(reach, world),
  ...ice(reach, world),
];
