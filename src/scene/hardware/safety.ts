/**
 * Things the crew puts out: traffic cone, wheel chock, barrier tape, warning sign, number tag, protective ground set.
 * Origins: ground under the centre (cone, chock, sign); face of the pole (tag); tape and ground set run through points in
 * the frame of their parent.
 */
import { BoxGeometry, CylinderGeometry, Matrix4, Vector3 } from 'three';
import { type Assembly, builder } from './assembly.ts';
import { lettering } from './lettering.ts';
import { bar, block, bolt, curve, plate, rod, turned, vec } from './shapes.ts';
import { framesOf, wire } from './wire.ts';

export const cone = builder({
  kind: 'cone',
  size: { height: 0.71 },
  build: (a, { height: h }) => {
    const r = (z: number): number => 0.125 - (0.125 - 0.028) * (z / h);
    a.add('rubber', block([0, 0, 0.018], [0.36, 0.36, 0.036], 0.3));
    a.add('safetyOrange', rod([0, 0, 0.03], [0, 0, h], r(0.03), 24, r(h)));
    a.add('rubber', rod([0, 0, h - 0.004], [0, 0, h + 0.002], 0.018, 14));
    for (const [z0, z1] of [
      [h - 0.27, h - 0.12],
      [h - 0.43, h - 0.33],
    ] as const) {
      a.add(
        'reflective',
        new CylinderGeometry(r(z1) + 0.0015, r(z0) + 0.0015, z1 - z0, 24, 1, true)
          .rotateX(Math.PI / 2)
          .translate(0, 0, (z0 + z1) / 2),
      );
    }
  },
});

export const wheelChock = builder({
  kind: 'wheel-chock',
  size: { length: 0.3, width: 0.2, height: 0.2 },
  build: (a, s) => {
    const wedge = plate(
      [
        [0, 0],
        [s.length, 0],
        [s.length, s.height * 0.2],
        [s.length * 0.72, s.height * 0.85],
        [s.length * 0.62, s.height],
        [s.length * 0.5, s.height * 0.85],
        [s.length * 0.3, s.height * 0.38],
        [0, s.height * 0.12],
      ],
      s.width,
      0.006,
    );
    a.add('yellow', wedge.rotateX(Math.PI / 2).translate(-s.length / 2, s.width / 2, 0.006));
    for (let i = 0; i < 4; i++) {
      a.add(
        'black',
        bar(
          [-s.length * 0.42 + i * 0.032, -s.width / 2 + 0.02, s.height * (0.2 + i * 0.11)],
          [-s.length * 0.42 + i * 0.032, s.width / 2 - 0.02, s.height * (0.2 + i * 0.11)],
          0.014,
          0.01,
        ),
      );
    }
    a.add('zinc', rod([s.length / 2, 0, 0.05], [s.length / 2 + 0.05, 0, 0.03], 0.006, 8));
  },
});

export const barrierTape = builder({
  kind: 'barrier-tape',
  size: { width: 0.075, sag: 0.06 },
  build: (a, size, part) => {
    part.points.slice(1).forEach((q, i) => {
      const from = vec(part.points[i] as typeof q);
      const to = vec(q);
      const pieces = Math.max(4, Math.min(60, Math.round(from.distanceTo(to) / 0.16)));
      for (let k = 0; k < pieces; k++) {
        const at = (t: number): Vector3 =>
          from
            .clone()
            .lerp(to, t)
            .add(new Vector3(0, 0, -4 * size.sag * t * (1 - t)));
        const p = at(k / pieces);
        const r = at((k + 1) / pieces);
        const d = r.clone().sub(p);
        const strip = new BoxGeometry(d.length(), 0.001, size.width);
        const x = d.normalize();
        const y = new Vector3(0, 0, 1).cross(x).normalize();
        strip.applyMatrix4(new Matrix4().makeBasis(x, y, x.clone().cross(y)).setPosition(p.add(r).multiplyScalar(0.5)));
        a.add(k % 2 ? 'black' : 'yellow', strip);
      }
    });
  },
});

export const sign = builder({
  kind: 'sign',
  size: { width: 0.76, height: 1.2 },
  build: (a, size, part) => {
    const w = size.width / 2;
    a.within(
      new Matrix4().makeTranslation(0, 0, size.height).multiply(new Matrix4().makeRotationX(Math.PI / 4)),
      () => {
        a.add('safetyOrange', block([0, 0, 0], [0.006, w * 1.5, w * 1.5], 0.4));
      },
    );
    const lines = (part.text || 'UTILITY|WORK|AHEAD').split('|');
    lines.forEach((line, i) => {
      for (const g of lettering(line, 0.095, 0.001))
        a.add('black', g.translate(0.004, 0, size.height + ((lines.length - 1) / 2 - i) * 0.15));
    });
    for (const y of [-0.3, 0.3])
      a.add(
        'zinc',
        rod([-0.25, y, 0.01], [-0.02, y * 0.3, size.height * 0.75], 0.012, 8),
        rod([0.25, y, 0.01], [-0.02, y * 0.3, size.height * 0.7], 0.012, 8),
      );
    a.add('zinc', rod([-0.015, 0, size.height * 0.3], [-0.015, 0, size.height + w * 0.8], 0.012, 8));
  },
});

export const tag = builder({
  kind: 'tag',
  variants: ['number', 'warning'],
  size: { width: 0.075, height: 0.15 },
  build: (a, size, part) => {
    const warning = part.variant === 'warning';
    a.add(warning ? 'red' : 'aluminium', block([0.003, 0, 0], [0.0016, size.width, size.height], 0.02));
    if (warning)
      a.add('white', block([0.0042, 0, -size.height * 0.12], [0.001, size.width * 0.88, size.height * 0.64], 0));
    const rows = (part.text || '0').split('|');
    const letter = Math.min(
      0.05,
      (size.height * 0.8) / rows.length,
      (size.width * 1.05) / Math.max(...rows.map((r) => r.length)),
    );
    rows.forEach((row, i) => {
      for (const g of lettering(row, letter, 0.0008))
        a.add('black', g.translate(warning ? 0.0048 : 0.0038, 0, ((rows.length - 1) / 2 - i) * letter * 1.4));
    });
    for (const z of [-1, 1])
      a.add(
        'steelDark',
        rod([0.003, 0, z * (size.height / 2 - 0.008)], [0.007, 0, z * (size.height / 2 - 0.008)], 0.003, 8),
      );
  },
});

const groundClamp = (a: Assembly, at: Vector3, toward: Vector3): void => {
  const x = toward.clone().setZ(0);
  if (x.lengthSq() < 1e-6) x.set(1, 0, 0);
  x.normalize();
  const y = new Vector3(0, 0, 1).cross(x);
  a.within(new Matrix4().makeBasis(x, y, new Vector3(0, 0, 1)).setPosition(at), () => {
    const jaw = plate(
      [
        [-0.016, -0.05],
        [0.03, -0.05],
        [0.034, 0.02],
        [0.02, 0.036],
        [-0.012, 0.036],
        [-0.026, 0.02],
        [-0.018, 0.006],
        [-0.008, 0.016],
        [0.01, 0.016],
        [0.014, 0],
        [0.014, -0.03],
        [-0.016, -0.034],
      ],
      0.03,
      0.003,
    );
    a.add('bronze', jaw.rotateX(Math.PI / 2).translate(0, 0.015, 0));
    a.add('bronze', rod([0, 0, -0.012], [0, 0, -0.12], 0.008, 10), block([0, 0, -0.014], [0.03, 0.026, 0.012], 0.25));
    a.add(
      'bronze',
      new CylinderGeometry(0.02, 0.02, 0.01, 16)
        .rotateX(Math.PI / 2)
        .rotateY(Math.PI / 2)
        .translate(0, 0, -0.135),
    );
    a.add(
      'tinned',
      rod([0.03, 0, -0.02], [0.075, 0, -0.045], 0.011, 12),
      bolt([0.03, 0, -0.02], [1, 0, -0.5], 0.018, 0),
    );
  });
};

/** Protective ground: a clamp at each end of a cable through the given points. */
export const groundSet = builder({
  kind: 'ground-set',
  size: { radius: 0.0085 },
  build: (a, size, part) => {
    const points = part.points.map(vec);
    const first = points[0];
    const last = points[points.length - 1];
    if (!first || !last || points.length < 2) throw new RangeError('ground-set: two points at least');
    const line = curve(part.points, Math.min(80, 12 * points.length));
    const frames = framesOf(line);
    groundClamp(a, first, (frames[0] as { t: Vector3 }).t);
    groundClamp(a, last, (frames[frames.length - 1] as { t: Vector3 }).t.clone().negate());
    a.add('safetyOrange', wire(line, size.radius, 8));
  },
});

/** Rounded stud cap, for posts of a barrier. */
export const post = builder({
  kind: 'barrier-post',
  size: { height: 1.0 },
  build: (a, { height }) => {
    a.add('rubber', block([0, 0, 0.03], [0.34, 0.34, 0.06], 0.3));
    a.add('safetyOrange', rod([0, 0, 0.05], [0, 0, height], 0.025, 14));
    a.add(
      'safetyOrange',
      turned(
        [
          [0.025, height],
          [0.03, height + 0.02],
          [0.02, height + 0.05],
          [0, height + 0.055],
        ],
        14,
      ),
    );
    a.name('top', [0, 0, height - 0.05]);
  },
});
