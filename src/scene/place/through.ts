/** Where the scene's line leaves it: conductors that go on past a pole, and what holds them there. */
import type { Part, World } from '../../engine/world/types.ts';
import type { Point } from '../hardware/types.ts';

/** A conductor that goes on from a place at a pole. */
export interface Wire {
  readonly at: Point;
  readonly sag: number;
}

/** A line that goes on from a pole at an azimuth, carried as it is there. */
export interface Through {
  readonly pole: Part;
  readonly azimuth: number;
  /** Metres from pole to pole. */
  readonly span: number;
  readonly wires: readonly Wire[];
  /** Bodies that hold them, and arms, to be put on each pole again. */
  readonly carried: readonly Part[];
}

const near = (a: Point, b: Point, by: number): boolean =>
  Math.abs(a[0] - b[0]) < by && Math.abs(a[1] - b[1]) < by && Math.abs(a[2] - b[2]) < by;

const carriers: ReadonlySet<string> = new Set([
  'crossarm',
  'pin-insulator',
  'post-insulator',
  'ridge-pin',
  'suspension-string',
  'suspension-clamp',
  'tie',
  'neutral-spool',
]);

interface Leaving {
  readonly at: Point;
  readonly azimuth: number;
  readonly span: number;
  readonly sag: number;
}

/** Conductors made up at a pole, each with the way on past it. */
const leaving = (world: World, pole: Part): readonly Leaving[] =>
  world.parts.flatMap((part): Leaving[] => {
    const { at, end } = part;
    if (end === null || part.pole !== null || part.premises !== null || part.values.sagM === undefined) return [];
    const span = Math.hypot(end[0] - at[0], end[1] - at[1]);
    const sag = part.values.sagM;
    const on = (here: Point, other: Point): Leaving[] =>
      Math.hypot(here[0] - pole.at[0], here[1] - pole.at[1]) < 2
        ? [{ at: here, azimuth: Math.atan2(here[1] - other[1], here[0] - other[0]), span, sag }]
        : [];
    return [...on(at, end), ...on(end, at)];
  });

/**
 * Lines that go on: from poles to which all conductors come from one side and of which at least one is held in a groove along its way.
 * Where all are made up dead the line ends.
 */
export const throughIn = (world: World): readonly Through[] =>
  world.parts.flatMap((pole): Through[] => {
    if (pole.id !== `${pole.pole}.pole`) return [];
    const [first, ...rest] = leaving(world, pole);
    if (first === undefined || rest.some(({ azimuth }) => Math.cos(azimuth - first.azimuth) < 0.9)) return [];
    const here = world.parts.filter((part) => part.pole === pole.pole);
    const grooves = here.filter(
      ({ kind, azimuth }) =>
        kind === 'neutral-spool' || (kind === 'tie' && Math.abs(Math.cos(azimuth - first.azimuth)) > 0.9),
    );
    const hung = here.filter(({ kind }) => kind === 'suspension-clamp');
    const wires = [first, ...rest].filter(({ at }) =>
      [...grooves, ...hung].some((holder) => near(holder.at, at, holder.kind === 'neutral-spool' ? 0.35 : 0.12)),
    );
    const held =
      hung.length > 0 || grooves.some(({ kind, at }) => kind === 'tie' && wires.some((w) => near(w.at, at, 0.12)));
    if (!held) return [];
    return [
      {
        pole,
        azimuth: first.azimuth,
        span: first.span,
        wires,
        carried: here.filter(({ kind }) => carriers.has(kind)),
      },
    ];
  });
