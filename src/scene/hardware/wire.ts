/** Wires: a round section swept along points by parallel transport, with closed ends; helices round a course. */
import { BufferAttribute, BufferGeometry, Vector3 } from 'three';

/** Frames along a course: tangent, and two directions across it that do not twist. */
export const framesOf = (course: readonly Vector3[]): { t: Vector3; n: Vector3; b: Vector3 }[] => {
  const frames: { t: Vector3; n: Vector3; b: Vector3 }[] = [];
  let n = new Vector3();
  course.forEach((_, i) => {
    const before = course[Math.max(0, i - 1)] as Vector3;
    const after = course[Math.min(course.length - 1, i + 1)] as Vector3;
    const t = after.clone().sub(before).normalize();
    if (i === 0) n = Math.abs(t.z) < 0.9 ? new Vector3(0, 0, 1) : new Vector3(1, 0, 0);
    n = n
      .clone()
      .sub(t.clone().multiplyScalar(n.dot(t)))
      .normalize();
    frames.push({ t, n, b: t.clone().cross(n) });
  });
  return frames;
};

/** Swept round wire. `radius` may depend on the share of the way; v of the texture runs `lay` metres a turn. */
export const wire = (
  course: readonly Vector3[],
  radius: number | ((t: number) => number),
  sides = 6,
  lay = 0.12,
): BufferGeometry => {
  const r = typeof radius === 'number' ? () => radius : radius;
  const frames = framesOf(course);
  const rows = course.length;
  const position: number[] = [];
  const normal: number[] = [];
  const uv: number[] = [];
  const index: number[] = [];
  let s = 0;
  course.forEach((p, i) => {
    const f = frames[i] as { t: Vector3; n: Vector3; b: Vector3 };
    if (i > 0) s += p.distanceTo(course[i - 1] as Vector3);
    for (let k = 0; k <= sides; k++) {
      const a = (k / sides) * 2 * Math.PI;
      const d = f.n.clone().multiplyScalar(Math.cos(a)).addScaledVector(f.b, Math.sin(a));
      const q = p.clone().addScaledVector(d, r(i / (rows - 1)));
      position.push(q.x, q.y, q.z);
      normal.push(d.x, d.y, d.z);
      uv.push(k / sides, s / lay);
    }
  });
  const row = sides + 1;
  for (let i = 0; i < rows - 1; i++) {
    for (let k = 0; k < sides; k++) {
      const a = i * row + k;
      index.push(a, a + 1, a + row, a + 1, a + row + 1, a + row);
    }
  }
  for (const end of [0, rows - 1]) {
    const p = course[end] as Vector3;
    const d = (frames[end] as { t: Vector3 }).t.clone().multiplyScalar(end === 0 ? -1 : 1);
    const start = position.length / 3;
    for (let k = 0; k < sides; k++) {
      const o = (end * row + k) * 3;
      position.push(position[o] as number, position[o + 1] as number, position[o + 2] as number);
      normal.push(d.x, d.y, d.z);
      uv.push(0.5, 0.5);
    }
    position.push(p.x, p.y, p.z);
    normal.push(d.x, d.y, d.z);
    uv.push(0.5, 0.5);
    for (let k = 0; k < sides; k++) {
      const next = (k + 1) % sides;
      if (end === 0) index.push(start + next, start + k, start + sides);
      else index.push(start + k, start + next, start + sides);
    }
  }
  const g = new BufferGeometry();
  g.setAttribute('position', new BufferAttribute(new Float32Array(position), 3));
  g.setAttribute('normal', new BufferAttribute(new Float32Array(normal), 3));
  g.setAttribute('uv', new BufferAttribute(new Float32Array(uv), 2));
  g.setIndex(index);
  return g;
};

/** Course of a wire laid round another: `radius` from its centre, `pitch` metres a turn, starting at `phase`. */
export const helix = (
  course: readonly Vector3[],
  radius: number,
  pitch: number,
  phase: number,
  perTurn = 8,
): Vector3[] => {
  const frames = framesOf(course);
  const lengths = [0];
  for (let i = 1; i < course.length; i++) {
    lengths.push((lengths[i - 1] as number) + (course[i] as Vector3).distanceTo(course[i - 1] as Vector3));
  }
  const total = lengths[lengths.length - 1] as number;
  const pieces = Math.max(2, Math.ceil((total / pitch) * perTurn));
  const out: Vector3[] = [];
  let j = 0;
  for (let i = 0; i <= pieces; i++) {
    const s = (total * i) / pieces;
    while (j < course.length - 2 && (lengths[j + 1] as number) < s) j++;
    const l0 = lengths[j] as number;
    const k = (s - l0) / Math.max(1e-9, (lengths[j + 1] as number) - l0);
    const a = phase + (s / pitch) * 2 * Math.PI;
    const f = frames[j] as { n: Vector3; b: Vector3 };
    out.push(
      (course[j] as Vector3)
        .clone()
        .lerp(course[j + 1] as Vector3, k)
        .addScaledVector(f.n, radius * Math.cos(a))
        .addScaledVector(f.b, radius * Math.sin(a)),
    );
  }
  return out;
};
