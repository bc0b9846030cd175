/**
 * Marks of faults and of age on a built part: thin ribbons and patches that follow its turned surface on the side where
 * the sign is. Kinds: `crack` (hairline), `chip` (bite out of a rim), `burn` (branching char), `flash` (smoky glaze),
 * `stain` (water), `scar` (old, bleached), `rust`.
 */
import { BufferAttribute, BufferGeometry, type Group, Mesh, Vector3 } from 'three';
import type { Materials } from '../materials/materials.ts';
import { noise, step, stream } from '../materials/noise.ts';
import { chip } from './chip.ts';
import { lengthAt, localAzimuth, runOf, spotAt } from './markSurface.ts';
import type { MarkSurface, PartData } from './types.ts';

export const markKinds = ['crack', 'chip', 'burn', 'flash', 'stain', 'scar', 'rust'] as const;
export type MarkKind = (typeof markKinds)[number];

export interface Mark {
  readonly kind: MarkKind;
  /** Side of the part, radians, 0 = +x, counter-clockwise seen from above; π/2 is the field side. */
  readonly azimuth: number;
  /** Height of its lower end over the part's origin, m (along a tilted body: where its surface has that height). */
  readonly z: number;
  /** Length along the surface upward and width, m. */
  readonly length: number;
  readonly width: number;
  readonly seed?: number;
  /** 0 hardly to be seen, 1 plain. */
  readonly contrast?: number;
  /** A burn's course as the engine grew it, instead of one from the seed: pairs of [azimuth, z], radians and m. */
  readonly segments?: readonly (readonly [readonly [number, number], readonly [number, number]])[];
}

type Rgba = readonly [number, number, number, number];

/** Collects coloured, partly transparent triangles on a surface. */
class Film {
  readonly position: number[] = [];
  readonly normal: number[] = [];
  readonly colour: number[] = [];
  readonly index: number[] = [];
  private readonly run: number[];
  private readonly surface: MarkSurface;

  constructor(surface: MarkSurface) {
    this.surface = surface;
    this.run = runOf(surface);
  }

  get total(): number {
    return this.run[this.run.length - 1] as number;
  }

  radius(s: number): number {
    return spotAt(this.surface, 0, s, this.run).radius;
  }

  put(azimuth: number, s: number, c: Rgba): void {
    const spot = spotAt(this.surface, azimuth, s, this.run);
    this.position.push(spot.at.x, spot.at.y, spot.at.z);
    this.normal.push(spot.normal.x, spot.normal.y, spot.normal.z);
    this.colour.push(...c);
  }

  /** Ribbon of the given half width along a course of [azimuth, length], dark in the middle and soft at the edges. */
  ribbon(course: readonly (readonly [number, number])[], half: (t: number) => number, c: Rgba, soft: number): void {
    const start = this.position.length / 3;
    const across = [-1, -(1 - soft), 1 - soft, 1];
    course.forEach(([a, s], i) => {
      const [a0, s0] = course[Math.max(0, i - 1)] as readonly [number, number];
      const [a1, s1] = course[Math.min(course.length - 1, i + 1)] as readonly [number, number];
      const r = Math.max(0.004, this.radius(s));
      let dx = (a1 - a0) * r;
      let dy = s1 - s0;
      const l = Math.max(1e-9, Math.sqrt(dx * dx + dy * dy));
      dx /= l;
      dy /= l;
      const w = half(i / (course.length - 1));
      across.forEach((k, n) => {
        const edge = n === 0 || n === 3;
        this.put(a - (dy * k * w) / r, s + dx * k * w, [c[0], c[1], c[2], edge ? 0 : c[3]]);
      });
    });
    for (let i = 0; i < course.length - 1; i++) {
      for (let k = 0; k < 3; k++) {
        const p = start + i * 4 + k;
        this.index.push(p, p + 1, p + 4, p + 1, p + 5, p + 4);
      }
    }
  }

  /** Patch about [azimuth, length]; `shade` gives colour and opacity by share across (-1 to 1) and along (0 to 1). */
  patch(azimuth: number, from: number, width: number, length: number, shade: (u: number, v: number) => Rgba): void {
    const start = this.position.length / 3;
    const nu = 14;
    const nv = Math.max(10, Math.min(40, Math.round(length / 0.02)));
    for (let j = 0; j <= nv; j++) {
      for (let i = 0; i <= nu; i++) {
        const u = (i / nu) * 2 - 1;
        const s = from + (length * j) / nv;
        this.put(azimuth + (u * width) / 2 / Math.max(0.01, this.radius(s)), s, shade(u, j / nv));
      }
    }
    for (let j = 0; j < nv; j++) {
      for (let i = 0; i < nu; i++) {
        const p = start + j * (nu + 1) + i;
        this.index.push(p, p + 1, p + nu + 1, p + 1, p + nu + 2, p + nu + 1);
      }
    }
  }

  mesh(name: string, set: Materials): Mesh {
    const g = new BufferGeometry();
    g.setAttribute('position', new BufferAttribute(new Float32Array(this.position), 3));
    g.setAttribute('normal', new BufferAttribute(new Float32Array(this.normal), 3));
    g.setAttribute('color', new BufferAttribute(new Float32Array(this.colour), 4));
    g.setAttribute('uv', new BufferAttribute(new Float32Array((this.position.length / 3) * 2), 2));
    g.setIndex(this.index);
    const mesh = new Mesh(g, set.mark);
    mesh.name = name;
    mesh.receiveShadow = true;
    mesh.renderOrder = 1;
    return mesh;
  }
}

interface Work {
  readonly film: Film;
  readonly mark: Mark;
  readonly azimuth: number;
  readonly from: number;
  readonly contrast: number;
  readonly next: () => number;
  readonly seed: number;
  readonly surface: MarkSurface;
}

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

/** Branching course from the lower end upward, when the engine gives none. */
const grown = (w: Work): [[number, number], [number, number]][] => {
  const out: [[number, number], [number, number]][] = [];
  const pieces = Math.max(8, Math.ceil(w.mark.length / 0.035));
  const rise = w.mark.length / pieces;
  let a = w.azimuth;
  let s = w.from;
  const grow = (a0: number, s0: number, left: number, depth: number): void => {
    let b = a0;
    let t = s0;
    const turn = (w.next() - 0.5) * 2;
    for (let i = 0; i < left; i++) {
      const r = Math.max(0.02, w.film.radius(t));
      const c = b + ((turn * 0.6 + w.next() - 0.5) * rise * 0.9) / r;
      const u = t + rise * (0.35 + 0.5 * w.next());
      out.push([
        [b, t],
        [c, u],
      ]);
      if (depth < 2 && w.next() < 0.16) grow(c, u, Math.floor(left / 2), depth + 1);
      b = c;
      t = u;
    }
  };
  for (let i = 0; i < pieces; i++) {
    const r = Math.max(0.02, w.film.radius(s));
    const c = a + ((w.next() - 0.5) * rise * 0.8) / r + (w.azimuth - a) * 0.25;
    out.push([
      [a, s],
      [c, s + rise],
    ]);
    a = c;
    s += rise;
    if (w.next() < 0.38) grow(a, s, 3 + Math.floor(w.next() * 4), 0);
  }
  return out;
};

const burn = (w: Work): void => {
  const given = w.mark.segments?.map(
    (pair) =>
      pair.map(([a, z]) => [localAzimuth(w.surface, a), lengthAt(w.surface, a, z)] as [number, number]) as [
        [number, number],
        [number, number],
      ],
  );
  const segments = given ?? grown(w);
  const k = w.contrast;
  const half = w.mark.width / 2;
  const jagged = ([p, q]: readonly [readonly [number, number], readonly [number, number]]): [number, number][] =>
    [0, 0.33, 0.66, 1].map((t) => {
      const s = p[1] + (q[1] - p[1]) * t;
      const wobble = t > 0 && t < 1 ? ((w.next() - 0.5) * half * 0.9) / Math.max(0.02, w.film.radius(s)) : 0;
      return [p[0] + (q[0] - p[0]) * t + wobble, s];
    });
  const courses = segments.map(jagged);
  const trunk = Math.max(1, Math.ceil(w.mark.length / 0.035));
  const widthOf = (i: number): number => (given || i < trunk * 2.2 ? 1 : 0.62) * (0.7 + 0.5 * w.next());
  const widths = courses.map((_, i) => widthOf(i));
  const key = ([a, s]: readonly [number, number]): string => `${Math.round(a * 1e4)}:${Math.round(s * 1e4)}`;
  const starts = new Set(segments.map(([p]) => key(p)));
  const taper = segments.map(([, q]) => (starts.has(key(q)) ? 0 : 0.88));
  const wide = (i: number, k: number) => (t: number) =>
    half * k * (widths[i] as number) * (1 - (taper[i] as number) * t);
  courses.forEach((c, i) => {
    w.film.ribbon(c, wide(i, 5), [0.1, 0.058, 0.03, 0.42 * k], 0.97);
  });
  courses.forEach((c, i) => {
    w.film.ribbon(c, wide(i, 1.9), [0.028, 0.02, 0.014, 0.75 * k], 0.85);
  });
  courses.forEach((c, i) => {
    w.film.ribbon(c, wide(i, 0.8), [0.006, 0.005, 0.0045, 0.94 * k], 0.4);
  });
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

const makers: Readonly<Record<Exclude<MarkKind, 'chip'>, (w: Work) => void>> = {
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
    const rim = { ...w, mark: { ...w.mark, width: w.mark.width * 1.25 } };
    cloud(rim, () => [0.13, 0.115, 0.1], 0.6, 0.3, 0.9);
    cloud({ ...w, seed: w.seed + 5 }, (n) => [0.36 + 0.16 * n, 0.34 + 0.15 * n, 0.3 + 0.14 * n], 0.8, 0.5, 0.9);
    for (const share of [-0.22, 0.05, 0.27]) {
      const a = w.azimuth + (share * w.mark.width) / Math.max(0.01, w.film.radius(w.from));
      const grain = crackCourse(w, a, w.from + w.mark.length * 0.15, w.mark.length * 0.6, 0);
      w.film.ribbon(grain, (t) => 0.0016 * (1 - 0.7 * t), [0.1, 0.09, 0.08, 0.55 * w.contrast], 0.6);
    }
  },
  rust: (w) => cloud(w, (n) => [0.2 + 0.16 * n, 0.06 + 0.05 * n, 0.018 + 0.015 * n], 1, 0.4),
};

/**
 * Puts a mark on a part built by the registry and returns what it added. Throws RangeError if the part has no turned
 * surface to carry marks.
 */
export const addMark = (part: Group, mark: Mark, set: Materials): Mesh => {
  const { surface, kind } = part.userData as PartData;
  if (!surface) throw new RangeError(`${kind}: no surface for a ${mark.kind}`);
  const seed = mark.seed ?? 1;
  const work: Work = {
    film: new Film(surface),
    mark,
    azimuth: localAzimuth(surface, mark.azimuth),
    from: lengthAt(surface, mark.azimuth, mark.z),
    contrast: mark.contrast ?? 1,
    next: stream(seed * 17 + 3),
    seed,
    surface,
  };
  let mesh: Mesh;
  if (mark.kind === 'chip') mesh = chip(part, surface, mark, set);
  else {
    makers[mark.kind](work);
    mesh = work.film.mesh(`mark-${mark.kind}`, set);
  }
  part.add(mesh);
  return mesh;
};

/** Middle of a mark in its part's frame, for aiming a view at it. */
export const middleOf = (mesh: Mesh): Vector3 => {
  mesh.geometry.computeBoundingBox();
  return mesh.geometry.boundingBox?.getCenter(new Vector3()) ?? new Vector3();
};
