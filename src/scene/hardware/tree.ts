/**
 * Tree: trunk with forks and sprays of leaves. Origin: ground at the trunk. Variants: `broadleaf`, `conifer`, `bush`; state
 * `bare`: its leaves are shed and its twigs show (a conifer keeps its needles). Size: height, spread of the crown (diameter).
 */
import { Matrix4, PlaneGeometry, Quaternion, Vector3 } from 'three';
import { stream } from '../materials/noise.ts';
import { type Assembly, builder } from './assembly.ts';
import { wire } from './wire.ts';

/** A spray of leaves; `out`: away from the crown's middle, which is how it takes the light. */
const spray = (a: Assembly, at: Vector3, width: number, out: Vector3, next: () => number): void => {
  const turn = new Matrix4()
    .makeRotationZ(next() * Math.PI * 2)
    .multiply(new Matrix4().makeRotationX((next() - 0.5) * 2.2))
    .setPosition(at);
  const g = new PlaneGeometry(width, width);
  const n = g.getAttribute('normal');
  const { x, y, z } = out.clone().transformDirection(turn.clone().invert());
  for (let i = 0; i < n.count; i++) n.setXYZ(i, x, y, z);
  a.within(turn, () => a.add('leaves', g));
};

/** A conifer's branch: a hanging spray from the trunk outward. */
const branch = (a: Assembly, z: number, azimuth: number, reach: number): void => {
  const g = new PlaneGeometry(reach * 0.95, reach, 1, 2).translate(0, reach / 2, 0);
  const p = g.getAttribute('position');
  const n = g.getAttribute('normal');
  for (let i = 0; i < p.count; i++) {
    const t = p.getY(i) / reach;
    p.setZ(i, -0.32 * reach * t * t - 0.25 * Math.abs(p.getX(i)));
    n.setXYZ(i, p.getX(i) * 0.6, 0.5, 0.75);
  }
  const turn = new Matrix4().makeRotationZ(azimuth).setPosition(0, 0, z);
  a.within(turn, () => a.add('needles', g));
};

/** A spray of twigs from its foot on. */
const twigs = (a: Assembly, foot: Vector3, way: Vector3, width: number, next: () => number): void => {
  const g = new PlaneGeometry(width, width).translate(0, width / 2, 0).rotateY(next() * Math.PI);
  const turn = new Matrix4()
    .makeRotationFromQuaternion(new Quaternion().setFromUnitVectors(new Vector3(0, 1, 0), way))
    .setPosition(foot);
  a.within(turn, () => a.add('twigs', g));
};

/** What shows of a limb that has no leaves: branches off it, and sprays of twigs along these. */
const branches = (a: Assembly, knee: Vector3, tip: Vector3, long: number, next: () => number): void => {
  const on = tip.clone().sub(knee).normalize();
  for (let i = 0; i < 5; i++) {
    const aside = new Vector3(next() - 0.5, next() - 0.5, next() - 0.3).multiplyScalar(1.9);
    const way = on.clone().add(aside).normalize();
    const from = knee.clone().lerp(tip, 0.25 + 0.18 * i);
    const end = from.clone().addScaledVector(way, long * (0.6 + 0.5 * next()));
    a.add(
      'bark',
      wire([from, end], (k) => long * 0.03 * (1 - 0.7 * k), 4, 1),
    );
    for (let k = 0; k < 3; k++) {
      const lean = way
        .clone()
        .add(new Vector3(next() - 0.5, next() - 0.5, next() - 0.4))
        .normalize();
      twigs(a, from.clone().lerp(end, 0.4 + 0.3 * k), lean, long * (0.75 + 0.35 * next()), next);
    }
  }
};

export const tree = builder({
  kind: 'tree',
  states: ['whole', 'bare'],
  variants: ['broadleaf', 'conifer', 'bush'],
  size: { height: 9, spread: 5 },
  build: (a, s, part) => {
    const next = stream(part.seed * 13 + 5);
    const r = s.spread / 2;
    if (part.variant === 'conifer') {
      a.add(
        'bark',
        wire(
          [new Vector3(0, 0, -0.1), new Vector3(0.05, 0, s.height * 0.5), new Vector3(0, 0, s.height)],
          (t) => 0.02 + s.height * 0.016 * (1 - t),
          9,
          0.8,
        ),
      );
      for (let i = 0; i < 260; i++) {
        const h = 0.07 + 0.93 * (i / 260) ** 0.9;
        const reach = (r * (1.04 - h) + 0.1) * (0.75 + 0.35 * next());
        branch(a, s.height * h, i * 2.4 + next(), reach);
      }
      return;
    }
    const bush = part.variant === 'bush';
    const fork = bush ? 0.02 : s.height * (0.28 + 0.1 * next());
    if (!bush)
      a.add(
        'bark',
        wire(
          [new Vector3(0, 0, -0.1), new Vector3(0.06, 0.04, fork * 0.5), new Vector3(0, 0, fork)],
          (t) => s.height * (0.024 - 0.009 * t),
          10,
          1,
        ),
      );
    const limbs = 7;
    const bare = part.state === 'bare';
    for (let i = 0; i < limbs; i++) {
      const t = ((i + next() * 0.6) / limbs) * 2 * Math.PI;
      const reach = r * (0.35 + 0.4 * next()) * (i === 0 ? 0.2 : 1);
      const z = s.height * (0.6 + 0.25 * next());
      const tip = new Vector3(reach * Math.cos(t), reach * Math.sin(t), z);
      const knee = new Vector3(tip.x * 0.45, tip.y * 0.45, fork + (z - fork) * 0.45);
      a.add(
        'bark',
        wire(
          [new Vector3(0, 0, fork * 0.92), knee, tip],
          (k) => s.height * (bush ? 0.006 : 0.012) * (1 - 0.75 * k),
          7,
          1,
        ),
      );
      if (bare) branches(a, knee, tip, s.height * (bush ? 0.32 : 0.2), next);
    }
    if (bare) return;
    const count = bush ? 70 : 230;
    const low = bush ? 0.05 : 0.36;
    const middle = (s.height * (1 + low)) / 2;
    for (let i = 0; i < count; i++) {
      const u = next() * 2 - 1;
      const t = next() * 2 * Math.PI;
      const shell = 0.55 + 0.45 * Math.sqrt(next());
      const ring = Math.sqrt(1 - u * u) * r * shell * (0.82 + 0.3 * Math.sin(3 * t + part.seed));
      const z = s.height * (low + (1 - low) * (0.5 + 0.5 * u * shell));
      const at = new Vector3(ring * Math.cos(t), ring * Math.sin(t), z);
      const out = new Vector3(at.x / r, at.y / r, (2.2 * (z - middle)) / (s.height - middle) + 0.35);
      spray(a, at, r * (0.5 + 0.25 * next()), out, next);
    }
  },
});
