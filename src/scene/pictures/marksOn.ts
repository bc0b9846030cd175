/** Marks that a laid fault or look-alike leaves on the surface of its part, in true size, on its side. */
import { sin } from '../../engine/math/elementary.ts';
import { splitPoint } from '../../engine/world/edit.ts';
import type { LaidFault, Part } from '../../engine/world/types.ts';
import type { Mark } from '../hardware/marks.ts';
import { stream } from '../materials/noise.ts';
import { seedOf } from './shared.ts';
import type { Around } from './types.ts';

const azimuths: Readonly<Record<string, number>> = { road: -Math.PI / 2, field: Math.PI / 2, source: Math.PI, load: 0 };

const sideOf = (fault: LaidFault): number => azimuths[fault.side] ?? Math.PI / 2;

type Spot = readonly [azimuth: number, z: number];
type Step = readonly [Spot, Spot];

/** A branching course from one spot of a pole to another: a walk drawn to its end, with side branches that lose themselves. */
export const burnCourse = (from: Spot, to: Spot, seed: number): readonly Step[] => {
  const next = stream(seed);
  const out: Step[] = [];
  const pieces = Math.max(8, Math.ceil(Math.abs(to[1] - from[1]) / 0.035));
  const branch = (start: Spot, left: number, lean: number): void => {
    let at = start;
    for (let i = 0; i < left; i++) {
      const then: Spot = [at[0] + lean * 0.1 + (next() - 0.5) * 0.16, at[1] - 0.012 - 0.03 * next()];
      out.push([at, then]);
      if (next() < 0.18) branch(then, Math.floor(left / 2), -lean);
      at = then;
    }
  };
  let at = from;
  for (let i = 1; i <= pieces; i++) {
    const t = i / pieces;
    const straight = from[0] + (to[0] - from[0]) * t;
    const loose = sin(Math.PI * t);
    const then: Spot = [
      straight + loose * ((next() - 0.5) * 0.22 + 0.16 * sin(9 * t)),
      from[1] + (to[1] - from[1]) * t,
    ];
    out.push([at, then]);
    if (next() < 0.3) branch(then, 3 + Math.floor(next() * 6), next() < 0.5 ? -1 : 1);
    at = then;
  }
  return out;
};

type MarkOf = (part: Part, fault: LaidFault, around: Around) => Mark;

/** Height under the roof where the lowest bolt of a pole-top pin sits. */
const PIN_FOOT = 0.46;

const burn: MarkOf = (part, fault, around) => {
  const height = part.values.heightM ?? 10.36;
  const goal = around.world.parts.find(({ id }) => id === (fault.to === null ? null : splitPoint(fault.to)?.[0]));
  const bond = around.on(part.pole, 'ground-bond');
  const end: Spot =
    goal === undefined
      ? [sideOf(fault), height - PIN_FOOT - 1.4]
      : [Math.atan2(goal.at[1] - part.at[1], goal.at[0] - part.at[0]) + 0.08, (bond?.at[2] ?? height - 1.6) - 0.12];
  const start: Spot = [sideOf(fault), height - PIN_FOOT];
  return {
    kind: 'burn',
    azimuth: sideOf(fault),
    z: end[1],
    length: start[1] - end[1],
    width: 0.011,
    seed: seedOf(fault.id),
    segments: burnCourse(start, end, seedOf(fault.id)),
  };
};

const marks: Readonly<Record<string, MarkOf>> = {
  'pin-insulator-cracked': (_part, fault) => ({
    kind: 'crack',
    azimuth: sideOf(fault) - 0.75,
    z: 0.17,
    length: 0.26,
    width: 0.0012,
    seed: seedOf(fault.id),
  }),
  'pole-burned-by-tracking': burn,
  'water-stain': (part, fault) => ({
    kind: 'stain',
    azimuth: sideOf(fault) + 0.2,
    z: (part.values.heightM ?? 10.36) - 1.75,
    length: 1.2,
    width: 0.09,
    contrast: 0.75,
    seed: seedOf(fault.id),
  }),
  'old-scar': (_part, fault) => ({
    kind: 'scar',
    azimuth: sideOf(fault),
    z: 4.7,
    length: 0.6,
    width: 0.07,
    contrast: 0.8,
    seed: seedOf(fault.id),
  }),
};

/** Marks of a part's faults; a fault without a mark shows in its part's state or not at all. */
export const marksOn = (part: Part, around: Around): readonly Mark[] =>
  part.faults.flatMap((fault) => {
    const of = marks[fault.kind];
    return of === undefined ? [] : [of(part, fault, around)];
  });
