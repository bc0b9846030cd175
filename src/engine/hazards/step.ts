/**
 * The ground beside metal that has come down: current through the soil makes one foot stand at another voltage than the
 * other. Surface potential of a hemisphere in uniform soil at the nearest place of what lies there (circuit/localEarth.ts),
 * one pace of 1 m straight toward it, or a foot on it, against the tolerable step voltage of IEEE Std 80 for 50 kg at the end of its range,
 * 3 s, for nothing need clear it: beyond that potentially fatal. Told beside it: the distance at which a pace is tolerable
 * again. Common practice keeps everybody 10 m (35 ft) off whatever is computed; employers' rules differ. Left out: shoes,
 * wet crust over dry soil, fences and rails that carry the voltage on, driven rods (a hand on what they ground is
 * contact.ts), who lies or kneels.
 */
import { type Electrode, electrodesOf, nearestOn } from '../circuit/localEarth.ts';
import { add, distance, scale, sub, type Vec3 } from '../math/vec3.ts';
import { pacesApart, tolerableStep } from '../standards/electrode.ts';
import type { Metres, Seconds, Volts } from '../units/quantities.ts';
import type { World } from '../world/types.ts';
import type { Meeting } from './meeting.ts';
import type { Moment, SolvedState } from './moment.ts';
import { failing } from './readiness.ts';
import type { Quantity, Reach } from './types.ts';

const PACE: Metres = 1;
const LONGEST: Seconds = 3;
/** Farther off, no current of a distribution line is felt in a pace. */
const FAR: Metres = 60;
/** Nearer than this somebody stands on it. */
const ON: Metres = 0.05;

interface Feet {
  readonly near: Vec3;
  readonly far: Vec3;
  readonly away: Metres;
}

/** Away from it along the ground: from the nearest place to the feet, or square to it when they are on it. */
function outward({ at, to }: Electrode, place: Vec3, here: Vec3): Vec3 {
  const away = distance(here, place);
  if (away > ON) return scale(sub(here, place), 1 / away);
  const along: Vec3 = to === null ? [0, 1, 0] : sub(to, at);
  const size = distance([along[0], along[1], 0], [0, 0, 0]);
  return size > 0 ? [-along[1] / size, along[0] / size, 0] : [1, 0, 0];
}

/** One foot where somebody stands and the other a pace toward it; within a pace of it, one foot on it. */
function feetOf({ at }: Reach, electrode: Electrode): Feet {
  const here: Vec3 = [at[0], at[1], 0];
  const nearest = nearestOn(electrode, here);
  const place: Vec3 = [nearest[0], nearest[1], 0];
  const away = distance(here, place);
  const out = outward(electrode, place, here);
  const near = Math.max(0, away - PACE);
  return { near: add(place, scale(out, near)), far: add(place, scale(out, near + PACE)), away };
}

const partOf = ({ element }: Electrode): string => element.slice(0, element.lastIndexOf(':'));
const branchOf = ({ element }: Electrode): string => element.slice(element.lastIndexOf(':') + 1);

const lyingIn = (world: World): readonly Electrode[] => electrodesOf(world).filter(({ lies }) => lies);

function meetingWith(reach: Reach, moment: Moment, electrode: Electrode): readonly Meeting[] {
  const { world } = moment;
  const { near, far, away } = feetOf(reach, electrode);
  if (away > FAR) return [];
  const soil = world.site.resistivity;
  const tolerable = tolerableStep({ soil }, LONGEST);
  const voltsIn = ({ solution }: SolvedState): Volts => solution.step(near, far);
  const [present, ...others] = moment.states;
  if (present === undefined) return [];
  const now = voltsIn(present);
  const worst = others.reduce(
    (found, state) => {
      const volts = voltsIn(state);
      return volts > found.volts ? { state, volts } : found;
    },
    { state: present, volts: now },
  );
  if (worst.volts < tolerable) return [];
  const part = partOf(electrode);
  const quantities = (state: SolvedState, volts: Volts): readonly Quantity[] => {
    const amperes = state.solution.branchCurrent(part, branchOf(electrode));
    return [
      { name: 'step voltage', value: volts, unit: 'V' },
      { name: 'current into the ground', value: amperes, unit: 'A' },
      { name: 'tolerable step voltage', value: tolerable, unit: 'V' },
      { name: 'distance from it', value: away, unit: 'm' },
      { name: 'distance where a pace is tolerable', value: pacesApart(soil, amperes, tolerable, PACE), unit: 'm' },
    ];
  };
  return [
    {
      hazard: `step:${part}`,
      mechanism: 'step',
      part,
      point: null,
      who: reach.who,
      severity: 'fatal',
      potentiallyFatal: true,
      quantities: quantities(worst.state, worst.volts),
      now: quantities(present, now),
      strikes: false,
      failed: failing(world, ['barricaded', 'grounded', 'tested-dead'], { part }),
      limit: 'tolerable step voltage, 50 kg, 3 s',
      source: 'IEEE Std 80-2013 eq. 29; 29 CFR 1910.269 App. C; staged tests of downed conductors (from memory)',
      measure: worst.volts,
      measureNow: now,
      words: 'It lies on the ground and can drive current through whoever walks there.',
    },
  ];
}

/** Step voltages beside metal on the ground; aloft nobody paces. */
export const step = (reach: Reach, moment: Moment): readonly Meeting[] =>
  reach.aloft ? [] : lyingIn(moment.world).flatMap((electrode) => meetingWith(reach, moment, electrode));
