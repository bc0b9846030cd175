/**
 * Marks of faults and of age on a built part: thin ribbons and patches that follow its turned surface on the side where
 * the sign is. Kinds: `crack` (hairline), `chip` (bite out of a rim), `burn` (branching char), `flash` (smoky glaze),
 * `stain` (water), `scar` (old, bleached), `rust`, `oil` (dark gloss run down), `crust` (pale dirt all over), `hole` (of a
 * woodpecker), `split` (an opened check), `decay` (dark, crumbled).
 */
import { type Group, type Mesh, Vector3 } from 'three';
import type { Materials } from '../materials/materials.ts';
import { noise, step, stream } from '../materials/noise.ts';
import { burn } from './burn.ts';
import { chip } from './chip.ts';
import { Film, type Rgba } from './film.ts';
import { type FilmMark, type Mark, type SolidMark, solidMarks, type Work } from './mark.ts';
import { azimuthOf, lengthAt, localAzimuth, nearestOn, runOf, spotAt } from './markSurface.ts';
import { sightMarks } from './sightMarks.ts';
import { solidMark } from './solidMarks.ts';
import type { PartData } from './types.ts';
import { woodMarks } from './woodMarks.ts';

export type { Mark, MarkKind } from './mark.ts';

const crackCourse = (w: Work, azimuth: number, from: number, length: number, drift: number): [number, number][] => {
  const pieces = Math.max(6, Math.ceil(length / 0.004));
  let lean = 0;
  let a = azimuth;
  return Array.from({ length: pieces + 1 }, (_, i) => {
    const s = Math.min(w.film.total, from + (length * i) / pieces);
    lean = 0.72 * lean + (w.next() - 0.5) * 0.9 + drift * 0.2;
    a += (lean * (length / pieces)) / Math.max(0.012, w.film.radius(s));
    return [a, s];
  });
};

const crack = (w: Work): void => {
  const dark: Rgba = [0.012, 0.01, 0.008, 0.35 + 0.65 * w.contrast];
  const halo: Rgba = [0.12, 0.09, 0.06, 0.3 * w.contrast];
  const main = crackCourse(w, w.azimuth, w.from, w.mark.length, 0);
  const half = w.mark.width / 2;
  const taper = (t: number): number => half * (0.35 + 0.65 * step(0, 0.2, t) * step(1, 0.7, t));
  w.film.ribbon(main, (t) => taper(t) * 3.4, halo, 0.9);
  w.film.ribbon(main, taper, dark, 0.3);
  for (const share of [0.3, 0.62]) {
    const [a, s] = main[Math.floor(main.length * share)] as [number, number];
    const branch = crackCourse(w, a, s, w.mark.length * 0.3, share < 0.5 ? 1.6 : -1.6);
    w.film.ribbon(branch, (t) => half * 0.6 * (1 - 0.7 * t), dark, 0.3);
  }
};

/** Blotch with a ragged outline, drawn out along the surface; `lens` narrows it toward its ends. */
const cloud = (
  w: Work,
  c: (n: number) => readonly [number, number, number],
  strength: number,
  streaky: number,
  lens = 0,
): void => {
  w.film.patch(w.azimuth, w.from, w.mark.width, w.mark.length, (u, v) => {
    const n =
      noise((u + 1) * 5, v * 6 * streaky, w.seed, 97, 97) * 0.6 +
      noise((u + 1) * 13, v * 14 * streaky, w.seed + 1, 97, 97) * 0.4;
    const narrow = 1 - lens + lens * Math.sqrt(Math.max(0.0004, 4 * v * (1 - v)));
    const edge =
      step(1, 0.35 + 0.3 * n, Math.min(1, Math.abs(u) / narrow)) *
      step(0, 0.12 + 0.2 * n, v) *
      step(1, 0.88 - 0.3 * n, v);
    const [r, g, b] = c(n);
    return [r, g, b, Math.min(1, edge * (0.3 + 0.9 * n) * strength * w.contrast)];
  });
};

const makers: Readonly<Record<FilmMark, (w: Work) => void>> = {
  crack,
  burn,
  flash: (w) => {
    cloud(w, (n) => (n > 0.5 ? [0.36, 0.33, 0.29] : [0.02, 0.018, 0.016]), 0.95, 0.7);
    const core = {
      ...w,
      from: w.from + w.mark.length * 0.2,
      mark: { ...w.mark, width: w.mark.width * 0.45, length: w.mark.length * 0.6 },
    };
    cloud({ ...core, seed: w.seed + 9 }, () => [0.012, 0.011, 0.01], 0.9, 0.7);
  },
  stain: (w) => cloud(w, (n) => [0.045 + 0.03 * n, 0.036 + 0.025 * n, 0.028 + 0.02 * n], 0.72, 0.3, 0.5),
  scar: (w) => {
    const rim = { ...w, mark: { ...w.mark, width: w.mark.width * 1.2 } };
    cloud(rim, () => [0.085, 0.072, 0.06], 1.3, 0.25, 0.7);
    const dent = { ...w, from: w.from + 0.03 * w.mark.length, mark: { ...w.mark, length: w.mark.length * 0.94 } };
    cloud({ ...dent, seed: w.seed + 5 }, (n) => [0.54 + 0.12 * n, 0.49 + 0.11 * n, 0.42 + 0.1 * n], 1.5, 0.12, 0.75);
    // The upper lip throws its shadow into the dent.
    const lip = w.from + w.mark.length * 0.9;
    w.film.blot(
      w.azimuth,
      lip,
      [w.mark.width * 0.26, w.mark.length * 0.06],
      [0.05, 0.04, 0.03, 0.7 * w.contrast],
      0.3,
      w.next,
    );
  },
  oil: (w) => {
    cloud(w, (n) => [0.022 + 0.02 * n, 0.018 + 0.014 * n, 0.012 + 0.008 * n], 0.85, 0.22, 0.75);
    for (const share of [-0.28, 0.03, 0.24]) {
      const a = w.azimuth + (share * w.mark.width) / Math.max(0.01, w.film.radius(w.from));
      const reach = w.mark.length * (0.75 + 0.25 * w.next());
      const run = Array.from({ length: 13 }, (_, i): [number, number] => [
        a + 0.012 * Math.sin(i * 0.9 + share * 20),
        w.from + w.mark.length - (reach * i) / 12,
      ]);
      w.film.ribbon(run, (t) => 0.016 - 0.008 * t, [0.02, 0.016, 0.011, 0.5 * w.contrast], 0.95);
    }
  },
  crust: (w) => {
    cloud(w, (n) => [0.4 + 0.16 * n, 0.38 + 0.15 * n, 0.34 + 0.13 * n], 1.5, 0.8);
    for (let i = 0; i < 40; i++) {
      const s = w.from + w.mark.length * (0.08 + 0.84 * w.next());
      const x = (w.next() - 0.5) * w.mark.width * 0.8;
      const r = 0.0015 + 0.003 * w.next();
      const g = 0.7 + 0.5 * w.next();
      w.film.blot(w.film.aside(w.azimuth, s, x), s, [r, r], [0.42 * g, 0.39 * g, 0.34 * g, w.contrast], 0.5, w.next);
    }
  },
  ...woodMarks,
  ...sightMarks,
  // Thin brown over a patch, darker where it has sat longest: in spots, and run down from them.
  rust: (w) => {
    cloud(w, (n) => [0.15 + 0.1 * n, 0.062 + 0.045 * n, 0.025 + 0.018 * n], 1.3, 0.4, 0.6);
    for (let i = 0; i < 18; i++) {
      const s = w.from + w.mark.length * (0.2 + 0.6 * w.next());
      const x = (w.next() - 0.5) * w.mark.width * 0.6;
      const r = (0.05 + 0.09 * w.next()) * w.mark.width;
      w.film.blot(
        w.film.aside(w.azimuth, s, x),
        s,
        [r, r * 2.4],
        [0.075, 0.028, 0.014, 0.7 * w.contrast],
        0.35,
        w.next,
      );
    }
  },
};

/**
 * Puts a mark on a part built by the registry and returns what it added. Throws RangeError if the part has no turned
 * surface to carry marks.
 */
export const addMark = (part: Group, mark: Mark, set: Materials): Mesh => {
  const { kind, surfaces, ...data } = part.userData as PartData;
  const { middle, out } = mark;
  const all = [data.surface, ...Object.values(surfaces)].filter((each) => each !== null);
  const laid = all.map((surface) => {
    const azimuth = out === undefined ? localAzimuth(surface, mark.azimuth) : azimuthOf(surface, out);
    return { surface, azimuth, near: middle === undefined ? null : nearestOn(surface, azimuth, middle) };
  });
  const [on] =
    middle === undefined
      ? laid.filter(({ surface }) => surface === data.surface)
      : laid.sort((a, b) => (a.near?.away ?? 0) - (b.near?.away ?? 0));
  if (on === undefined) throw new RangeError(`${kind}: no surface for a ${mark.kind}`);
  const { surface, azimuth, near } = on;
  const seed = mark.seed ?? 1;
  const film = new Film(surface);
  const about = (at: number): number => Math.max(0, Math.min(film.total - mark.length, at - mark.length / 2));
  const from = near === null ? lengthAt(surface, mark.azimuth, mark.z) : about(near.length);
  const { kind: sort } = mark;
  if (sort === 'chip') {
    const bitten = chip(part, surface, mark, set);
    part.add(bitten);
    return bitten;
  }
  if (isSolid(sort)) {
    const run = runOf(surface);
    const middleAt = Math.min(film.total, from + mark.length / 2);
    const spot = spotAt(surface, azimuth, middleAt, run);
    const beyond = spotAt(surface, azimuth, Math.min(film.total, middleAt + 0.01), run).at;
    const before = spotAt(surface, azimuth, Math.max(0, middleAt - 0.01), run).at;
    const seat = { spot, along: beyond.sub(before).normalize() };
    const width = sort === 'heave' ? 2 * spot.radius : mark.width;
    return solidMark(part, sort, { ...mark, width }, seat, -spot.at.z, set)[0] as Mesh;
  }
  const work: Work = {
    film,
    mark,
    azimuth,
    from,
    contrast: mark.contrast ?? 1,
    next: stream(seed * 17 + 3),
    seed,
    surface,
  };
  makers[sort](work);
  const mesh = work.film.mesh(`mark-${sort}`, set);
  part.add(mesh);
  return mesh;
};

const isSolid = (kind: FilmMark | SolidMark): kind is Exclude<SolidMark, 'chip'> =>
  (solidMarks as readonly string[]).includes(kind) && kind !== 'chip';

/** Middle of a mark in its part's frame, for aiming a view at it. */
export const middleOf = (mesh: Mesh): Vector3 => {
  mesh.geometry.computeBoundingBox();
  return mesh.geometry.boundingBox?.getCenter(new Vector3()) ?? new Vector3();
};
