/**
 * A touch: hand to feet through the earth where somebody stands, hand to hand between two things touched, aloft hand
 * to the grounded metal of the pole within reach. Current: the circuit seen from both places, through a body of the
 * 5th percentile at the open-circuit volts (IEC 479-1:1994 Table 1). Duration: 5 s, the end of Dalziel's range, once
 * the hand cannot let go, or less if a device clears it; else 1 s. Fatal at 116/sqrt(t) mA and above (Dalziel and Lee
 * 1968), serious from let-go, minor from 1 mA with 50 V (29 CFR 1910.269 Table R-6, App. C III.D.1). Left out: shoes,
 * the soil under the feet, wet skin, wood as a path, metal without bare points; of several grounded nets aloft only
 * the first is looked at, they stand at nearly one voltage.
 */
import type { Severity } from '../catalogue/types.ts';
import { netAt, partAt } from '../circuit/elementsOf.ts';
import { effectBand, fibrillationThreshold, letGo } from '../standards/bodyCurrent.ts';
import { bodyImpedance } from '../standards/bodyImpedance.ts';
import type { Amperes, Seconds, Volts } from '../units/quantities.ts';
import { bareTerminals } from '../world/points.ts';
import type { PointId, World } from '../world/types.ts';
import { bareMetal } from './bareMetal.ts';
import { barrierOf, mayHold } from './barrier.ts';
import { clearingTime } from './clearing.ts';
import type { Meeting } from './meeting.ts';
import type { Moment, SolvedState } from './moment.ts';
import { handsGap, isFarFrom } from './personSpace.ts';
import { failing } from './readiness.ts';
import { groundedNets } from './section.ts';
import type { Quantity, Reach } from './types.ts';

const LONGEST: Seconds = 5;
const SHORT: Seconds = 1;
const AVOID: Volts = 50;
const PERCENTILE = 5;
/** Below this the weakest body lets no 6 mA pass. */
const NEGLIGIBLE: Volts = 10;

interface Shock {
  readonly volts: Volts;
  readonly amperes: Amperes;
  readonly seconds: Seconds;
}

const none: Shock = { volts: 0, amperes: 0, seconds: SHORT };

type End = PointId | 'earth';

/** Shock between two places in a state; the duration is found when devices are stepped. */
function shockBetween(moment: Moment, state: SolvedState, from: PointId, to: End): Shock {
  const volts = state.solution.between(from, to);
  if (volts < NEGLIGIBLE) return none;
  const ohms = bodyImpedance(volts, PERCENTILE);
  const amperes = state.solution.bodyCurrent(from, to, ohms);
  if (amperes < letGo.women) return { volts, amperes, seconds: SHORT };
  const couldClear = amperes >= fibrillationThreshold(LONGEST);
  const seconds = moment.steps && couldClear ? clearingTime(state, { from, to, ohms }, letGo.women, LONGEST) : LONGEST;
  return { volts, amperes, seconds };
}

/** Part of the fibrillation threshold: what decides between states. */
const dose = ({ amperes, seconds }: Shock): number => amperes / fibrillationThreshold(seconds);

const harms = ({ volts, amperes }: Shock): boolean =>
  amperes >= letGo.women || (volts >= AVOID && effectBand(amperes, SHORT).band === 'startle');

const severityOf = (shock: Shock): Severity => {
  if (dose(shock) >= 1) return 'fatal';
  return shock.amperes >= letGo.women ? 'serious' : 'minor';
};

/** Grounded metal within reach of the hands that is not the touched net; the first by id. */
function groundWithin(moment: Moment, reach: Reach, touched: string): PointId | null {
  const { world } = moment;
  const grounded = groundedNets(world);
  let first: PointId | null = null;
  for (const { point, path, ends } of bareMetal(world)) {
    const net = ends[0]?.net ?? touched;
    if (net === touched || !grounded.has(net) || (first !== null && first <= point)) continue;
    if (!isFarFrom(world, reach, path, 0) && handsGap(world, reach, path) <= 0) first = point;
  }
  return first;
}

/** Where the current could leave the body. */
function endsOf(moment: Moment, reach: Reach, touched: PointId, others: readonly PointId[]): readonly End[] {
  const net = netAt(moment.world, touched);
  const hands = others.filter((other) => netAt(moment.world, other) !== net);
  if (!reach.aloft) return ['earth', ...hands];
  const ground = groundWithin(moment, reach, net);
  return ground === null ? hands : [...hands, ground];
}

function worstShock(shocks: readonly Shock[]): Shock {
  return shocks.reduce((worst, shock) => (dose(shock) > dose(worst) ? shock : worst), none);
}

const quantitiesOf = ({ volts, amperes, seconds }: Shock): readonly Quantity[] => [
  { name: 'open-circuit voltage', value: volts, unit: 'V' },
  { name: 'current through the body', value: amperes, unit: 'A' },
  { name: 'duration', value: seconds, unit: 's' },
  { name: 'fibrillation threshold', value: fibrillationThreshold(seconds), unit: 'A' },
];

const limitOf = (severity: Severity): string => {
  if (severity === 'fatal') return '116/√t mA over t seconds: possible fibrillation';
  return severity === 'serious' ? '6 mA: may not let go' : '1 mA at 50 V or more: involuntary reaction';
};

/** A piece on the ground, a limb in reach: bare metal that is there only while the fault is. */
function isThere(world: World, point: PointId): boolean {
  const [part, terminal] = partAt(world, point);
  return Object.hasOwn(part.nets, terminal) || bareTerminals(part).includes(terminal);
}

/** Shocks by what is touched and not held back. */
export function contact(reach: Reach, moment: Moment): readonly Meeting[] {
  const { world } = moment;
  const touches = reach.touches
    .filter(({ point }) => isThere(world, point))
    .map(({ point, through }) => {
      const isBare = through.stick === null && through.gloves === null;
      const volts = isBare ? 0 : Math.max(...moment.states.map(({ solution }) => solution.between(point, 'earth')));
      const barrier = barrierOf(world, reach.who, through, volts);
      return { point, barrier, lucky: mayHold(world, reach.who, through, volts) };
    });
  const bare = touches.filter(({ barrier }) => !barrier.holds);
  return bare.flatMap(({ point, barrier, lucky }) => {
    const others = bare.map((other) => other.point).filter((other) => other !== point);
    const ends = endsOf(moment, reach, point, others);
    const shocks = moment.states.map((state) => worstShock(ends.map((end) => shockBetween(moment, state, point, end))));
    const worst = worstShock(shocks);
    if (!harms(worst)) return [];
    const present = shocks[0] ?? none;
    const severity = severityOf(worst);
    const [part = point] = point.split('/');
    return [
      {
        hazard: `contact:${point}`,
        mechanism: 'contact',
        part,
        point,
        who: reach.who,
        severity,
        potentiallyFatal: severity === 'fatal',
        quantities: quantitiesOf(worst),
        now: quantitiesOf(present),
        strikes: dose(present) >= 1 && !lucky,
        failed: [
          ...new Set([...barrier.failed, ...failing(world, ['tested-dead', 'detector-proved', 'grounded'], { point })]),
        ].sort(),
        limit: limitOf(severity),
        source: 'Dalziel and Lee 1968; 29 CFR 1910.269 App. C III.D.1; body of IEC 479-1:1994 Table 1, 5th percentile',
        measure: worst.amperes,
        measureNow: present.amperes,
        timed: dose(worst),
        words: 'Whoever touches it becomes part of the circuit.',
      },
    ];
  });
}
