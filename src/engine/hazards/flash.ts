/**
 * Making and breaking contact by hand or stick. Making: volts across the gap in every credible state and the current
 * once joined; two sources that are not in step, or a current that operates a device, is a flash; so is a clamp of a
 * ground or short that joins what is alive, however weak its source (29 CFR 1910.269(n)(5): tested first). Breaking: on
 * primary more than a plain contact breaks (29 CFR 1910.269(l)(12); limit and length of the arc: standards/drawnArc.ts, common
 * practice and estimate); on the low side a live socket without a face shield. Energy at the face:
 * estimateArcEnergy above 1 kV, beside it the class of the rule's Table 6 where that has one; Lee's equation below, until devices leave no more than a plain contact breaks, at most 2 s (common
 * practice); against bare skin, or 8 cal/cm2 with shield (common practice). Left out: inrush, expulsion of the fuse,
 * three-phase arcs, fire and burns at the customer's set.
 */

import { componentKind } from '../catalogue/components.ts';
import { branchesOf } from '../circuit/elementsOf.ts';
import { operatingTime } from '../circuit/operatingTime.ts';
import { distance } from '../math/vec3.ts';
import { arcClothingFrom, burnFrom, estimateArcEnergy, leeArcEnergy, tabledArcEnergy } from '../standards/arcEnergy.ts';
import { drawnArc, plainBreak } from '../standards/drawnArc.ts';
import type { Amperes, CaloriesPerCm2, Metres, Seconds, Volts } from '../units/quantities.ts';
import { partById, pointAt } from '../world/edit.ts';
import { bareTerminals } from '../world/points.ts';
import type { PointId } from '../world/types.ts';
import { ratingFor } from './barrier.ts';
import { clearingTime, operatesWithin } from './clearing.ts';
import type { Meeting } from './meeting.ts';
import type { Moment, SolvedState } from './moment.ts';
import { eyeOf } from './personSpace.ts';
import { failing, precondition } from './readiness.ts';
import type { Quantity, Reach } from './types.ts';

const LIVE: Volts = 50;
const PRIMARY: Volts = 600;
const LONGEST: Seconds = 2;
/** A joint, or an arc that is next to none. */
const JOINED = 0.01;
/** Longest wait for a device that a fault would operate. */
const FAULT: Seconds = 60;
/** Working distance by hand, 1910.269 App. E Table 6. */
const BY_HAND: Metres = 0.38;
const SHIELD: CaloriesPerCm2 = 8;

interface Flash {
  readonly volts: Volts;
  readonly amperes: Amperes;
  readonly calories: CaloriesPerCm2;
  /** Class of Table 6; null where the table has no answer. */
  readonly tabled: CaloriesPerCm2 | null;
  readonly what: 'not-in-step' | 'fault' | 'shorted' | 'load' | 'live-socket';
}

function caloriesAt(volts: Volts, amperes: Amperes, seconds: Seconds, away: Metres): CaloriesPerCm2 {
  if (volts < 1000) return leeArcEnergy(volts, amperes, seconds, away).calories;
  // Out of step the gap stands at up to twice the system's volts; the table's highest range is then taken.
  return estimateArcEnergy(Math.min(ratingFor(volts), 46000), amperes, seconds, away)?.calories ?? 0;
}

const energyAt = (
  volts: Volts,
  amperes: Amperes,
  seconds: Seconds,
  away: Metres,
): Pick<Flash, 'calories' | 'tabled'> => ({
  calories: caloriesAt(volts, amperes, seconds, away),
  tabled: tabledArcEnergy(ratingFor(volts), amperes, seconds)?.calories ?? null,
});

const faceDistance = (reach: Reach, moment: Moment, point: PointId): Metres => {
  const at = pointAt(moment.world, point);
  if (at === null || reach.switches?.through.stick === null) return BY_HAND;
  return Math.max(BY_HAND, distance(eyeOf(reach), at));
};

const notInStep = (a: readonly string[], b: readonly string[]): boolean =>
  a.length > 0 && b.length > 0 && (a.some((group) => !b.includes(group)) || b.some((group) => !a.includes(group)));

const timeOf = (moment: Moment, state: SolvedState, from: PointId, to: PointId): Seconds =>
  moment.steps ? clearingTime(state, { from, to, ohms: JOINED }, plainBreak, LONGEST) : LONGEST;

function making(reach: Reach, moment: Moment, state: SolvedState, [a, b]: readonly [PointId, PointId]): Flash | null {
  const { solution } = state;
  const volts = solution.between(a, b);
  if (volts < LIVE) return null;
  const outOfStep = notInStep(solution.point(a).sources, solution.point(b).sources);
  const bridge = { from: a, to: b, ohms: JOINED };
  const amperes = solution.bodyCurrent(a, b, JOINED);
  if (reach.switches?.clamps !== undefined) {
    if (amperes <= plainBreak) return null;
    return {
      volts,
      amperes,
      ...energyAt(volts, amperes, timeOf(moment, state, a, b), faceDistance(reach, moment, b)),
      what: 'shorted',
    };
  }
  const own = ownTime(reach, moment, amperes);
  if (!outOfStep && !operatesWithin(state, bridge, FAULT) && own > FAULT) return null;
  const seconds = moment.steps ? Math.min(own, timeOf(moment, state, a, b)) : LONGEST;
  const energy = energyAt(volts, amperes, seconds, faceDistance(reach, moment, a));
  return { volts, amperes, ...energy, what: outOfStep ? 'not-in-step' : 'fault' };
}

/** Seconds until the device that is being closed operates by itself, its link in the arc's path; Infinity where it does not. */
function ownTime(reach: Reach, moment: Moment, amperes: Amperes): Seconds {
  const { switches } = reach;
  if (switches?.makes == null) return Number.POSITIVE_INFINITY;
  const part = partById(moment.world, switches.part);
  const [from, to] = switches.makes.map((point) => point.slice(part.id.length + 1));
  const closing = componentKind(part.kind).operations.find(({ makes }) => makes?.[0] === from && makes?.[1] === to);
  const closed = { ...part, state: { ...part.state, ...closing?.to } };
  const times = branchesOf(closed).flatMap((branch) =>
    branch.type === 'series' && branch.protects !== undefined ? [operatingTime(part.id, branch.protects, amperes)] : [],
  );
  return Math.min(Number.POSITIVE_INFINITY, ...times);
}

function breaking(reach: Reach, moment: Moment, state: SolvedState, [a, b]: readonly [PointId, PointId]): Flash | null {
  const { solution } = state;
  const part = partById(moment.world, reach.switches?.part ?? '');
  const carried = branchesOf(partById(state.world, part.id)).flatMap((branch) =>
    branch.type === 'series' ? [solution.branchCurrent(part.id, branch.name)] : [],
  );
  const load = Math.max(0, ...carried);
  const volts = Math.max(solution.point(a).volts, solution.point(b).volts);
  if (volts >= PRIMARY) {
    if (load <= plainBreak) return null;
    const calories = caloriesAt(volts, load, LONGEST, faceDistance(reach, moment, a));
    return { volts, amperes: load, calories, tabled: null, what: 'load' };
  }
  if (volts < LIVE) return null;
  const [x, y] = worstPair(part.id, moment, state);
  const across = solution.between(x, y);
  const fault = solution.bodyCurrent(x, y, JOINED);
  const calories = caloriesAt(across, fault, timeOf(moment, state, x, y), faceDistance(reach, moment, a));
  return { volts: across, amperes: fault, calories, tabled: null, what: 'live-socket' };
}

/** The two bare points of the part with the highest volts between them. */
function worstPair(part: string, moment: Moment, { solution }: SolvedState): readonly [PointId, PointId] {
  const points = [...bareTerminals(partById(moment.world, part))].sort().map((terminal) => `${part}/${terminal}`);
  const pairs = points.flatMap((x, i) => points.slice(i + 1).map((y) => [x, y] as const));
  return pairs.reduce((worst, pair) =>
    solution.between(pair[0], pair[1]) > solution.between(worst[0], worst[1]) ? pair : worst,
  );
}

/** Volts and current together: what decides whether one flash is less than another. */
const sizeOf = (flash: Flash | null): number => (flash === null ? 0 : flash.volts * (1 + flash.amperes));

const quantitiesOf = (flash: Flash | null, away: Metres): readonly Quantity[] =>
  flash === null
    ? []
    : [
        { name: flash.what === 'load' ? 'voltage to ground' : 'voltage across', value: flash.volts, unit: 'V' },
        { name: 'current', value: flash.amperes, unit: 'A' },
        { name: 'incident energy at the face, estimate', value: flash.calories, unit: 'cal/cm2' },
        ...(flash.tabled === null
          ? []
          : [{ name: 'class of the rule’s table at 0.38 m', value: flash.tabled, unit: 'cal/cm2' } as const]),
        ...(flash.what === 'load'
          ? [{ name: 'arc drawn, estimate', value: drawnArc(flash.volts, flash.amperes), unit: 'm' } as const]
          : []),
        { name: 'distance', value: away, unit: 'm' },
      ];

const words: Readonly<Record<Flash['what'], string>> = {
  'not-in-step': 'Two sources that are not in step are joined.',
  fault: 'It closes onto a fault.',
  shorted: 'A clamp goes onto what is alive.',
  load: 'It opens more current than a plain contact breaks.',
  'live-socket': 'A live socket can flash over as the jaws part.',
};

/** Flashes of the contact that is made or broken. */
export function flash(reach: Reach, moment: Moment): readonly Meeting[] {
  const { switches } = reach;
  if (switches === null) return [];
  const { makes, breaks } = switches;
  const point = makes?.[0] ?? breaks?.[0];
  if (point === undefined) return [];
  const [first, ...others] = switches.clamps ?? [];
  const joins = first === undefined ? [makes ?? []] : others.map((each) => [first, each]);
  const flashIn = (state: SolvedState): Flash | null =>
    joins.reduce<Flash | null>((most, [a, b]) => {
      const flash = a === undefined || b === undefined ? null : making(reach, moment, state, [a, b]);
      return sizeOf(flash) > sizeOf(most) ? flash : most;
    }, null) ||
    (breaks && breaking(reach, moment, state, breaks));
  const shield = precondition(moment.world, 'face-shield', { who: reach.who });
  const rated = shield ? SHIELD : burnFrom;
  const flashes = moment.states.map(flashIn);
  const worst = flashes.reduce((a, b) => (b !== null && (a === null || b.calories > a.calories) ? b : a), null);
  if (worst === null) return [];
  const fatal = worst.calories >= rated;
  if (worst.what === 'live-socket' && shield && !fatal) return [];
  const away = faceDistance(reach, moment, point);
  const [now = null] = flashes;
  return [
    {
      hazard: `flash:${switches.part}`,
      mechanism: 'flash',
      part: switches.part,
      point,
      who: reach.who,
      severity: fatal ? 'fatal' : 'serious',
      potentiallyFatal: fatal,
      quantities: quantitiesOf(worst, away),
      now: quantitiesOf(now, away),
      strikes: now !== null && now.what !== 'live-socket' && now.calories >= rated,
      failed: [
        ...failing(moment.world, ['face-shield'], { who: reach.who }),
        ...(worst.what === 'not-in-step'
          ? failing(moment.world, ['source-known', 'tested-dead'], { point: makes?.[1] })
          : []),
        ...(worst.what === 'shorted' ? failing(moment.world, ['tested-dead'], { point: makes?.[1] }) : []),
      ].sort(),
      limit: limits[worst.what],
      source: sources[worst.what],
      measure: Math.max(...flashes.map(sizeOf)),
      measureNow: sizeOf(now),
      timed: worst.calories,
      words: words[worst.what],
    },
  ];
}

const limits: Readonly<Record<Flash['what'], string>> = {
  'not-in-step': 'no two sources out of step are joined',
  fault: 'no closing onto a fault',
  shorted: 'tested before grounding',
  load: `${plainBreak} A for a contact that is no load-break`,
  'live-socket': `${burnFrom} cal/cm2 burns bare skin; above ${arcClothingFrom} cal/cm2 arc-rated wear`,
};

const sources: Readonly<Record<Flash['what'], string>> = {
  'not-in-step': '29 CFR 1910.269(m)(3), every known source; common practice',
  fault: '29 CFR 1910.269(l)(12); common practice',
  shorted: '29 CFR 1910.269(n)(5)',
  load: '29 CFR 1910.269(l)(12); limit estimated',
  'live-socket': '29 CFR 1910.269(l)(8), App. E III.B; common practice',
};
