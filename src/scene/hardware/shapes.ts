/** Geometry of hardware, z up, metres: turned bodies, swept wires, bevelled bars and plates, bolts. */
import {
  type BufferGeometry,
  CatmullRomCurve3,
  CylinderGeometry,
  ExtrudeGeometry,
  LatheGeometry,
  Matrix4,
  Quaternion,
  Shape,
  TorusGeometry,
  Vector2,
  Vector3,
} from 'three';
import { chamferBox } from './chamfer.ts';
import type { Point } from './types.ts';

export type Profile = readonly (readonly [number, number])[];

export const vec = (p: Point): Vector3 => new Vector3(p[0], p[1], p[2]);
export const point = (v: Vector3): Point => [v.x, v.y, v.z];
export const up = new Vector3(0, 0, 1);

/** Cuts the corners of a profile; ends and doubled points stay. */
export const soften = (profile: Profile, times: number): Profile => {
  let line = profile;
  for (let n = 0; n < times; n++) {
    const out: (readonly [number, number])[] = [];
    line.forEach((p, i) => {
      const q = line[i + 1];
      if (i === 0) out.push(p);
      if (!q) {
        out.push(p);
        return;
      }
      if (p[0] === q[0] && p[1] === q[1]) {
        out.push(p, p);
        return;
      }
      out.push([p[0] * 0.75 + q[0] * 0.25, p[1] * 0.75 + q[1] * 0.25]);
      out.push([p[0] * 0.25 + q[0] * 0.75, p[1] * 0.25 + q[1] * 0.75]);
    });
    line = out;
  }
  return line;
};

const same = (p: readonly [number, number], q: readonly [number, number] | undefined): boolean =>
  q !== undefined && p[0] === q[0] && p[1] === q[1];

/** Leaves out triangles without area: at the axis and where doubled points make a sharp edge. */
const withoutSlivers = (g: BufferGeometry): BufferGeometry => {
  const p = g.getAttribute('position');
  const index = g.getIndex()?.array ?? [];
  const keep: number[] = [];
  const [a, b, c] = [new Vector3(), new Vector3(), new Vector3()];
  for (let i = 0; i < index.length; i += 3) {
    const [j, k, l] = [index[i] as number, index[i + 1] as number, index[i + 2] as number];
    a.fromBufferAttribute(p, j);
    b.fromBufferAttribute(p, k).sub(a);
    c.fromBufferAttribute(p, l).sub(a);
    if (b.cross(c).lengthSq() > 1e-22) keep.push(j, k, l);
  }
  g.setIndex(keep);
  return g;
};

/** Body of revolution about z of a profile [radius, z] that runs upward on its outer side; v of the texture by length. */
export const turned = (given: Profile, segments = 32): BufferGeometry => {
  const profile = given.filter(
    (p, i) => !(i === 0 && same(p, given[1])) && !(i === given.length - 1 && same(p, given[i - 1])),
  );
  const g = new LatheGeometry(
    profile.map(([r, z]) => new Vector2(r, z)),
    segments,
  ).rotateX(Math.PI / 2);
  const run = [0];
  profile.forEach((p, i) => {
    const q = profile[i + 1];
    if (q) run.push((run[i] as number) + Math.sqrt((q[0] - p[0]) ** 2 + (q[1] - p[1]) ** 2));
  });
  const uv = g.getAttribute('uv');
  const total = run[run.length - 1] as number;
  for (let i = 0; i < uv.count; i++) uv.setY(i, (run[i % profile.length] as number) / total);
  return withoutSlivers(g);
};

/** Moves z to point from `a` towards `b`, with the origin at `a`. */
export const along = (a: Vector3, b: Vector3): Matrix4 => {
  const d = b.clone().sub(a).normalize();
  return new Matrix4().makeRotationFromQuaternion(new Quaternion().setFromUnitVectors(up, d)).setPosition(a);
};

/** Round rod from `a` to `b`. */
export const rod = (a: Point, b: Point, radius: number, sides = 10, radiusB = radius): BufferGeometry => {
  const va = vec(a);
  const vb = vec(b);
  const l = va.distanceTo(vb);
  return new CylinderGeometry(radiusB, radius, l, sides)
    .rotateX(Math.PI / 2)
    .translate(0, 0, l / 2)
    .applyMatrix4(along(va, vb));
};

/** Bevelled box about its centre. */
export const block = (centre: Point, size: Point, bevel = 0.15): BufferGeometry =>
  chamferBox(size[0], size[1], size[2], Math.min(...size) * Math.max(0.01, bevel)).translate(...centre);

/** Bevelled flat bar from `a` to `b`, `width` across, `thick` in the direction nearest `face`. */
export const bar = (a: Point, b: Point, width: number, thick: number, face: Point = [0, 0, 1]): BufferGeometry => {
  const va = vec(a);
  const vb = vec(b);
  const l = va.distanceTo(vb);
  const x = vb.clone().sub(va).normalize();
  const f = Math.abs(vec(face).normalize().dot(x)) > 0.999 ? new Vector3(x.y, x.z, x.x) : vec(face);
  const z = f.sub(x.clone().multiplyScalar(f.dot(x))).normalize();
  const y = z.clone().cross(x);
  return chamferBox(l, width, thick, Math.min(width, thick, l) * 0.22).applyMatrix4(
    new Matrix4().makeBasis(x, y, z).setPosition(va.add(vb).multiplyScalar(0.5)),
  );
};

/** Plate cut to an outline in x, y and `thick` in z, from z = 0, edges broken. */
export const plate = (outline: readonly (readonly [number, number])[], thick: number, bevel = 0.0015): BufferGeometry =>
  new ExtrudeGeometry(new Shape(outline.map(([x, y]) => new Vector2(x, y))), {
    depth: thick,
    bevelEnabled: bevel > 0,
    bevelSize: bevel,
    bevelThickness: bevel,
    bevelSegments: 1,
    curveSegments: 6,
  });

export const ring = (centre: Point, axis: Point, radius: number, wire: number, arc = Math.PI * 2): BufferGeometry =>
  new TorusGeometry(radius, wire, 7, Math.max(8, Math.round(arc * (radius > 0.06 ? 6 : 2.9))), arc).applyMatrix4(
    along(vec(centre), vec(centre).add(vec(axis))),
  );

/** Hex head or nut with a square washer, seat at `at`, standing off along `out`. */
export const bolt = (at: Point, out: Point, across = 0.027, washer = 0.057): BufferGeometry[] => {
  const a = vec(at);
  const m = along(a, a.clone().add(vec(out)));
  const seat = washer > 0 ? 0.005 : 0;
  const head = new CylinderGeometry(across * 0.54, across * 0.58, across * 0.62, 6)
    .rotateX(Math.PI / 2)
    .translate(0, 0, seat + across * 0.31);
  const tail = new CylinderGeometry(across * 0.29, across * 0.29, across * 0.5, 6)
    .rotateX(Math.PI / 2)
    .translate(0, 0, seat + across * 0.8);
  const parts: BufferGeometry[] = [head.applyMatrix4(m), tail.applyMatrix4(m)];
  if (washer > 0) parts.push(block([0, 0, 0.0025], [washer, washer, 0.005]).applyMatrix4(m));
  return parts;
};

/** Evenly spaced points of a smooth curve through `points`. */
export const curve = (points: readonly Point[], pieces: number): Vector3[] =>
  new CatmullRomCurve3(points.map(vec), false, 'centripetal').getSpacedPoints(pieces);

/** Points of the parabola that stands for a catenary of `sag` between two supports. */
export const hanging = (a: Point, b: Point, sag: number, pieces: number): Vector3[] =>
  Array.from({ length: pieces + 1 }, (_, i) => {
    const t = i / pieces;
    const p = vec(a).lerp(vec(b), t);
    p.z -= 4 * sag * t * (1 - t);
    return p;
  });
