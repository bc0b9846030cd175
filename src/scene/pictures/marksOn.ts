/** Marks that a laid fault or look-alike leaves on the surface of its part, in true size, on its side. */
import { faultKind } from '../../engine/catalogue/faults.ts';
import { type Spot, type TrackStep, trackCourse, trackEnd } from '../../engine/mechanics/trackCourse.ts';
import { type Face, facesOf } from '../../engine/senses/faces.ts';
import { lieOf } from '../../engine/senses/signsFrom.ts';
import type { LaidFault, Part } from '../../engine/world/types.ts';
import type { Mark, MarkKind } from '../hardware/marks.ts';
import type { PartData, Point } from '../hardware/types.ts';
import { seedOf } from './shared.ts';
import { shownOf } from './showsAs.ts';
import type { Around } from './types.ts';

const azimuths: Readonly<Record<string, number>> = { road: -Math.PI / 2, field: Math.PI / 2, source: Math.PI, load: 0 };

const sideOf = (fault: LaidFault): number => azimuths[fault.side] ?? Math.PI / 2;

type MarkOf = (part: Part, fault: LaidFault, around: Around) => Mark;

/** Height under the roof where the lowest bolt of a pole-top pin sits. */
const PIN_FOOT = 0.46;

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
    azimuth: sideOf(fault) - 0.3,
    z: 0.19,
    length: 0.15,
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

/** How much closer together than lengthwise a track's ways lie across the grain of wood, which leads it. */
const GRAIN = 2.5;

/** A track over a face that the engine gives: grown from one of its ends to the other, metres aside and along from its middle. */
const trackOn = (part: Part, fault: LaidFault, { long, wide }: Face, around: Around): readonly TrackStep[] => {
  const grain = woods.includes(part.kind) ? GRAIN : 1;
  const radius = 0.45 * wide * grain;
  const seed = `${around.world.scenarioHash} ${fault.id}`;
  const key = `${seed} ${long} ${radius}`;
  const grown = courses.get(key) ?? trackCourse([0, long / 2], [0, -long / 2], radius, seed);
  courses.set(key, grown);
  const lay = ([turn, along]: Spot): Spot => [(turn * radius) / grain, along];
  return grown.map(([p, q]) => [lay(p), lay(q)]);
};

/** Kinds of wood. */
const woods: readonly string[] = ['pole', 'crossarm'];

/** Marks of a fault that has no place of its own: of the kind its conditions say, on the faces on which the engine looks for its sign. */
const usual = (part: Part, fault: LaidFault, data: PartData, origin: Point, around: Around): readonly Mark[] => {
  const shown = shownOf(fault);
  const sign = faultKind(fault.kind).signs.find(({ sense }) => sense === 'see');
  if (shown === null || sign === undefined) return [];
  const form = sign.form ?? 'mark';
  if (form !== 'mark' && !outlined.includes(shown.mark)) return [];
  const stated = shown.states?.includes(data.state);
  const plain = shown.mark === undefined && shown.states === undefined && shown.adds === undefined && !shown.gone;
  const kind = shown.mark ?? (plain ? (sign.shape === 'line' ? 'crack' : 'stain') : undefined);
  const bare = data.surface === null && Object.keys(data.surfaces).length === 0;
  if (kind === undefined || stated || bare) return [];
  const size = sign.size ?? 0.01;
  return facesOf(part, { ...lieOf(part, fault, sign), form: 'mark' }).flatMap((face, round) => {
    const { at, out, long, wide } = face;
    const [x, y, z] = [at[0] - origin[0], at[1] - origin[1], at[2] - origin[2]];
    const top = z + long / 2;
    const up = standing.includes(kind);
    return Array.from(
      { length: shown.count ?? 1 },
      (_, i): Mark => ({
        kind,
        azimuth: Math.atan2(out?.[1] ?? 0, out?.[0] ?? 0),
        z,
        middle: [x, y, up ? top / 2 : z + APART * i],
        length: up ? top : long,
        out: out ?? [0, 0, 1],
        width: widthOf(kind, size, long, wide),
        ...(faint.includes(kind) ? { contrast: Math.min(1, 0.4 + (sign.contrast ?? 0.5)) } : {}),
        ...(kind === 'burn' ? { segments: trackOn(part, fault, face, around) } : {}),
        seed: seedOf(fault.id) + i + 7 * round,
      }),
    );
  });
};

/** Marks that change the outline of their part. */
const outlined: readonly (MarkKind | undefined)[] = ['chip', 'heave'];

/** Metres from one to the next where there are several. */
const APART = 0.4;

/** Marks that come up out of the ground. */
const standing: readonly MarkKind[] = ['soil', 'moss'];

/** Marks as plain as their sign is. */
const faint: readonly MarkKind[] = ['stain', 'scar', 'pale', 'faded', 'band', 'bloom', 'wet'];

/** Beyond this the charred line itself is no wider; what it scorches is. */
const WIDEST_CHAR = 0.016;

/** Width of a mark by its kind: a crack's is its opening; what is chipped or holed is as wide as its sign. */
const widthOf = (kind: MarkKind, size: number, long: number, wide: number): number => {
  if (kind === 'crack' || kind === 'girdle') return Math.min(WIDEST_CRACK, Math.max(0.0009, size * 3));
  if (kind === 'burn') return Math.min(WIDEST_CHAR, Math.max(0.008, 1.4 * size));
  if (kind === 'split' || kind === 'seam' || kind === 'bore' || kind === 'cut') return size;
  if (kind === 'band' || kind === 'soil') return 1.7 * wide;
  if (kind === 'web') return 0.6 * wide;
  return kind === 'chip' || kind === 'hole' ? Math.max(size, long * 0.8) : wide;
};

/** Marks of a part's faults on its built body, whose origin stands there; a fault without a mark shows in its part's state or not at all. */
export const marksOn = (part: Part, around: Around, data: PartData, origin: Point): readonly Mark[] =>
  part.faults.flatMap((fault) => {
    const of = marks[fault.kind];
    if (of === undefined) return usual(part, fault, data, origin, around);
    if (data.surface === null) return [];
    const sides = fault.side === 'any' ? (['road', 'field', 'source', 'load'] as const) : [fault.side];
    return sides.map((side) => of(part, { ...fault, side }, around));
  });
