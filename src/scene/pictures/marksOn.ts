/** Marks that a laid fault or look-alike leaves on the surface of its part, in true size, on its side. */
import { faultKind } from '../../engine/catalogue/faults.ts';
import { type Spot, type TrackStep, trackCourse, trackEnd } from '../../engine/mechanics/trackCourse.ts';
import type { LaidFault, Part } from '../../engine/world/types.ts';
import { runOf } from '../hardware/markSurface.ts';
import type { Mark, MarkKind } from '../hardware/marks.ts';
import type { PartData } from '../hardware/types.ts';
import { seedOf } from './shared.ts';
import { shownOf } from './showsAs.ts';
import type { Around } from './types.ts';

const azimuths: Readonly<Record<string, number>> = { road: -Math.PI / 2, field: Math.PI / 2, source: Math.PI, load: 0 };

const sideOf = (fault: LaidFault): number => azimuths[fault.side] ?? Math.PI / 2;

/** A mark laid on no side in particular is seen from any stand, so it lies on all four. */
const allRound = [-Math.PI / 2, Math.PI / 2, 0, Math.PI];

type MarkOf = (part: Part, fault: LaidFault, around: Around) => Mark;

/** Height under the roof where the lowest bolt of a pole-top pin sits. */
const PIN_FOOT = 0.46;

/** Share of a narrow mark's width that its fading edges leave. */
const FADES = 0.72;

/** Beyond this a crack would be drawn as a blot. */
const WIDEST_CRACK = 0.005;

// A course follows from fault and scenario alone, and grows slowly.
const courses = new Map<string, readonly TrackStep[]>();

const burn: MarkOf = (part, fault, around) => {
  const { world } = around;
  const height = part.values.heightM ?? 10.36;
  const start: Spot = [sideOf(fault), height - PIN_FOOT];
  const named = trackEnd(world, part, fault);
  const end: Spot =
    named === null ? [sideOf(fault), start[1] - 1.4] : [named[0] + 0.08, Math.min(named[1], start[1] - 0.3)];
  const seed = `${world.scenarioHash} ${fault.id}`;
  const key = `${seed} ${start.join()} ${end.join()}`;
  const segments = courses.get(key) ?? trackCourse(start, end, part.values.topRadiusM ?? 0.1, seed);
  courses.set(key, segments);
  return {
    kind: 'burn',
    azimuth: sideOf(fault),
    z: end[1],
    length: start[1] - end[1],
    width: 0.011,
    seed: seedOf(fault.id),
    segments,
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

/** Marks of a fault that has no place of its own: of the kind its conditions say, in the true size of its sign. */
const usual = (fault: LaidFault, data: PartData): readonly Mark[] => {
  const shown = shownOf(fault);
  const sign = faultKind(fault.kind).signs.find(({ sense }) => sense === 'see');
  if (shown === null || sign === undefined) return [];
  const stated = shown.states?.includes(data.state);
  const plain = shown.mark === undefined && shown.states === undefined && shown.adds === undefined && !shown.gone;
  const kind = shown.mark ?? (plain ? (sign.shape === 'line' ? 'crack' : 'stain') : undefined);
  if (kind === undefined || stated) return [];
  const on = [shown.on, sign.feature].find((name) => name !== undefined && name in data.surfaces);
  const surface = on === undefined ? data.surface : data.surfaces[on];
  if (!surface) return [];
  const whole = runOf(surface).at(-1) ?? 0;
  const size = sign.size ?? 0.01;
  const extent = Math.min(whole * 0.6, sign.extent ?? 0.1);
  const wide =
    kind === 'crack'
      ? Math.min(WIDEST_CRACK, Math.max(0.0009, size * 3))
      : kind === 'burn'
        ? Math.max(0.008, size)
        : shown.narrow
          ? FADES * size
          : widths(kind, size, extent, fault.side === 'any');
  const count = shown.count ?? 1;
  const sides = fault.side === 'any' && kind !== 'crust' ? allRound : [sideOf(fault)];
  return sides.flatMap((side, round) =>
    Array.from(
      { length: count },
      (_, i): Mark => ({
        kind,
        azimuth: side + (kind === 'crust' ? 0 : 0.25 * (i - (count - 1) / 2)),
        z: 0,
        share: Math.min(0.96 - extent / whole, (shown.share ?? 0.3) + 0.09 * i),
        length: extent,
        width: wide,
        ...(on === undefined ? {} : { on }),
        ...(kind === 'stain' || kind === 'scar' ? { contrast: Math.min(1, 0.4 + (sign.contrast ?? 0.5)) } : {}),
        seed: seedOf(fault.id) + i + 7 * round,
      }),
    ),
  );
};

/** Width of a patch by its kind: what is chipped or holed is as wide as its sign; dirt on no side in particular goes round the body. */
const widths = (kind: MarkKind, size: number, extent: number, round: boolean): number => {
  if (kind === 'crust') return round ? 0.3 : 0.12;
  if (kind === 'chip' || kind === 'hole') return Math.max(size, extent * 0.8);
  return Math.max(size, 0.35 * extent);
};

/** Marks of a part's faults on its built body; a fault without a mark shows in its part's state or not at all. */
export const marksOn = (part: Part, around: Around, data: PartData): readonly Mark[] =>
  part.faults.flatMap((fault) => {
    const of = marks[fault.kind];
    if (of === undefined) return usual(fault, data);
    if (data.surface === null) return [];
    const sides = fault.side === 'any' ? (['road', 'field', 'source', 'load'] as const) : [fault.side];
    return sides.map((side) => of(part, { ...fault, side }, around));
  });
