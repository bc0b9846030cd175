/**
 * Other people while one works: beneath the work (what falls), where a loose conductor can come, at a truck whose lift is
 * near live metal. Judged when somebody works, strikes or climbs: then it is the crew's doing. A dropped tool of 1 kg
 * carries m g h; a hard hat is tested with about 54 J (ANSI Z89.1: 8 lb from 5 ft, from memory). Radius of the fall: 3 m and
 * a tenth of the height (estimate; rules of thumb differ). Crew wear hats, the public wears none. Left out: pieces
 * that roll or glance off.
 */
import { distance } from '../math/vec3.ts';
import { fallEnergy, helmetJoules } from '../standards/droppedObject.ts';
import type { Metres } from '../units/quantities.ts';
import { standById } from '../world/edit.ts';
import type { Person, World } from '../world/types.ts';
import { drop } from './drop.ts';
import type { Meeting } from './meeting.ts';
import type { Moment } from './moment.ts';
import { isTruckHeld, truckVolts } from './truckTouch.ts';
import type { Reach } from './types.ts';

const TOOL_KG = 1;
/** Half a truck of 8 m and an arm, from its middle (estimate). */
const AT_TRUCK: Metres = 4.75;
const crew: readonly Person['role'][] = ['trainee', 'second', 'foreman', 'flagger'];

const isPublic = ({ role }: Person): boolean => !crew.includes(role);

/** The other's own reach: only being there. */
const beingThere = (world: World, person: Person): Reach | null => {
  const stand = person.at === null ? null : standById(world, person.at);
  if (stand === null) return null;
  return {
    who: person.id,
    stand: stand.id,
    at: stand.feet,
    aloft: stand.aloft !== null,
    touches: [],
    switches: null,
    disturbs: null,
    climbs: null,
    works: false,
    seconds: 60,
  };
};

const acrossTo = ([x, y]: Reach['at'], other: Reach): Metres => distance([x, y, 0], [other.at[0], other.at[1], 0]);

function beneath(reach: Reach, other: Reach, person: Person): readonly Meeting[] {
  const height = reach.at[2] + 1 - other.at[2];
  if (!reach.works || !reach.aloft || other.aloft || acrossTo(reach.at, other) > 3 + height / 10) return [];
  const joules = fallEnergy(TOOL_KG, height);
  const fatal = isPublic(person) && joules >= helmetJoules;
  const quantities = [
    { name: 'height of fall', value: height, unit: 'm' },
    { name: 'energy of a tool of 1 kg', value: joules, unit: 'J' },
    { name: 'distance from beneath the work', value: acrossTo(reach.at, other), unit: 'm' },
  ];
  return [
    {
      hazard: `struck-by:work@${person.id}`,
      mechanism: 'struck-by',
      part: person.id,
      point: null,
      who: person.id,
      severity: fatal ? 'fatal' : 'serious',
      potentiallyFatal: fatal,
      quantities,
      now: quantities,
      strikes: false,
      failed: ['zone-clear'],
      limit: 'nobody beneath the work; a hard hat is tested with about 54 J',
      source: 'ANSI Z89.1 (from memory); common practice',
      measure: joules,
      measureNow: joules,
      words: 'What falls from the work hits whoever is beneath.',
    },
  ];
}

/** What the worker shakes loose comes where the other stands. */
const loose = (other: Reach, person: Person, moment: Moment): readonly Meeting[] =>
  drop(other, moment).map((meeting) => ({
    ...meeting,
    hazard: `${meeting.hazard}@${person.id}`,
    failed: ['zone-clear'],
  }));

function atTruck(reach: Reach, other: Reach, person: Person, moment: Moment): readonly Meeting[] {
  const { world } = moment;
  if (reach.climbs?.by !== 'bucket' || !reach.works || isTruckHeld(world)) return [];
  if (acrossTo(world.truck.at, other) > AT_TRUCK) return [];
  const { worst, now } = truckVolts(reach, moment);
  if (worst === 0) return [];
  const quantities = (volts: number) => [{ name: 'voltage to ground', value: volts, unit: 'V' }];
  return [
    {
      hazard: `contact:truck@${person.id}`,
      mechanism: 'contact',
      part: person.id,
      point: null,
      who: person.id,
      severity: 'fatal',
      potentiallyFatal: true,
      quantities: quantities(worst),
      now: quantities(now),
      strikes: false,
      failed: ['truck-held'],
      limit: 'truck grounded, or barricaded, while its lift is near live metal',
      source: '29 CFR 1910.269(p)(4)(iii); FACE 86-46',
      measure: worst,
      measureNow: now,
      words: 'A lift that meets the line makes its truck alive for whoever touches it.',
    },
  ];
}

/** Meetings of everybody else there with what the worker does. */
export function others(reach: Reach, moment: Moment): readonly Meeting[] {
  if (!reach.works && reach.disturbs === null && reach.climbs === null) return [];
  return moment.world.people.flatMap((person) => {
    if (person.id === reach.who) return [];
    const other = beingThere(moment.world, person);
    if (other === null) return [];
    return [
      ...beneath(reach, other, person),
      ...(other.aloft ? [] : loose(other, person, moment)),
      ...atTruck(reach, other, person, moment),
    ];
  });
}
