/**
 * Pin insulator of brown glazed porcelain on its steel pin. Origin: centre of the pole's roof (`pole-top`, a channel
 * bolted to the face of the pole at azimuth `side`), top of the arm (`arm`, short bolt pin; `arm-steel`, long pin clamped
 * round the arm) or face of the pole (`armless`, a bracket that carries the pin out). `bare`
 * stands on a ridge pin, which is a kind of its own. The conductor runs along the groove,
 * across `side` at right angles. State `broken`: the porcelain gone from its pin but for pieces. Size: groove above the origin, diameter of the pole's top.
 */
import { type BufferGeometry, CylinderGeometry, Matrix4, Vector3 } from 'three';
import { step } from '../materials/noise.ts';
import { type Assembly, builder } from './assembly.ts';
import { profileOf, turnedOf } from './profiles.ts';
import { along, bar, block, bolt, type Profile, plate, rod } from './shapes.ts';

/** Height of the insulator over its base and of the conductor's centre in the top groove, m. */
const crown = 0.127;
const seat = 0.1196;

/** Presses a smooth saddle into the crown along local y; normals below the crown stay as turned. */
const grooved = (g: BufferGeometry): BufferGeometry => {
  const p = g.getAttribute('position');
  const was = g.getAttribute('normal').clone();
  const z = Array.from({ length: p.count }, (_, i) => p.getZ(i));
  z.forEach((h, i) => {
    p.setZ(i, h - 0.0125 * step(0.096, 0.117, h) * Math.exp(-((p.getX(i) / 0.0125) ** 2)));
  });
  g.computeVertexNormals();
  const now = g.getAttribute('normal');
  z.forEach((h, i) => {
    if (h < 0.096) now.setXYZ(i, was.getX(i), was.getY(i), was.getZ(i));
  });
  return g;
};

/** The skirt from its rim up: what lies there does not show from the other side, under the rim. */
const fromRim = (profile: Profile): Profile => {
  const rim = profile.reduce((best, [r], i) => (r > (profile[best]?.[0] ?? 0) ? i : best), 0);
  return profile.slice(Math.max(0, rim - 2));
};

const poleTopPin = (a: Assembly, base: number, radius: number): void => {
  const face = radius + 0.004;
  a.add('zinc', bar([face, 0, -0.44], [face, 0, -0.02], 0.05, 0.007, [1, 0, 0]));
  for (const y of [-0.024, 0.024])
    a.add('zinc', bar([face - 0.008, y, -0.44], [face - 0.008, y, -0.02], 0.018, 0.005, [0, 1, 0]));
  const web = plate(
    [
      [face - 0.004, -0.06],
      [face + 0.004, -0.06],
      [face + 0.004, 0.0],
      [0.016, base - 0.085],
      [0.014, base - 0.06],
      [0.014, base - 0.045],
      [-0.014, base - 0.045],
      [-0.014, base - 0.075],
      [0.004, base - 0.1],
      [face - 0.022, -0.01],
      [face - 0.004, -0.03],
    ],
    0.03,
    0.004,
  );
  a.add('zinc', web.rotateX(Math.PI / 2).translate(0, 0.015, 0));
  for (const z of [-0.12, -0.37]) {
    a.add('zinc', bolt([face + 0.003, 0, z], [1, 0, 0]));
    a.add('zinc', bolt([-radius - 0.001, 0, z], [-1, 0, 0]));
  }
};

/** What stays on a pin whose porcelain has come off: the cemented core with a rag of skirt on one side, raw where it broke. */
const shards = (a: Assembly): void => {
  const core = turnedOf('pinInsulator');
  const p = core.getAttribute('position');
  const index = core.getIndex()?.array ?? [];
  const keep: number[] = [];
  for (let i = 0; i < index.length; i += 3) {
    const corners = [0, 1, 2].map((k) => index[i + k] as number);
    const mean = (of: (i: number) => number): number => corners.reduce((sum, k) => sum + of(k), 0) / 3;
    const [x, y, z] = [mean((k) => p.getX(k)), mean((k) => p.getY(k)), mean((k) => p.getZ(k))];
    const t = Math.atan2(y, x);
    if (z < 0.052 + 0.01 * Math.sin(3 * t + 1) && Math.abs(t - 0.6) < 0.75 + 0.15 * Math.sin(z * 190))
      keep.push(...corners);
  }
  core.setIndex(keep);
  a.add('porcelainBrown', core);
  a.add('bisque', rod([0, 0, 0.008], [0.001, 0.002, 0.047], 0.0225, 9, 0.0185));
  for (const [t, z, r] of [
    [2.4, 0.03, 0.024],
    [-2.1, 0.02, 0.027],
    [-0.6, 0.036, 0.022],
  ] as const)
    a.add('bisque', block([r * Math.cos(t), r * Math.sin(t), z], [0.012, 0.015, 0.02], 0.3));
  a.add('zinc', rod([0, 0, 0.04], [0, 0, 0.084], 0.0115, 12, 0.0105));
};

/** Steel bracket on the face of the pole that holds the pin upright beside it. */
const armless = (a: Assembly, base: number, out: number): void => {
  a.add('zinc', bar([0.004, 0, -0.24], [0.004, 0, 0.06], 0.075, 0.008, [1, 0, 0]));
  for (const z of [-0.2, 0.025]) a.add('zinc', bolt([0.008, 0, z], [1, 0, 0]));
  a.add('zinc', bar([0, 0, 0.02], [out + 0.04, 0, 0.02], 0.07, 0.012));
  for (const y of [-0.03, 0.03]) a.add('zinc', bar([0, y, 0.002], [out + 0.03, y, 0.002], 0.008, 0.036));
  a.add('zinc', bar([0.012, 0, -0.2], [out - 0.03, 0, 0.008], 0.034, 0.008, [0.5, 0, 1]));
  a.add(
    'zinc',
    rod([out, 0, -0.04], [out, 0, base + 0.03], 0.0115, 12),
    bolt([out, 0, -0.004], [0, 0, -1], 0.03, 0.05),
  );
};

/** Long steel pin, clamped round the arm by a yoke. */
const steelPin = (a: Assembly, base: number, depth: number): void => {
  a.add(
    'zinc',
    rod([0, 0, 0.006], [0, 0, base + 0.03], 0.0135, 12, 0.0115),
    block([0, 0, 0.008], [0.13, 0.075, 0.014]),
  );
  for (const x of [-0.056, 0.056]) a.add('zinc', rod([x, 0, 0.03], [x, 0, -depth - 0.04], 0.006, 8));
  a.add('zinc', bar([-0.07, 0, -depth - 0.012], [0.07, 0, -depth - 0.012], 0.05, 0.01));
  for (const x of [-0.056, 0.056]) a.add('zinc', bolt([x, 0, -depth - 0.017], [0, 0, -1], 0.02, 0));
};

export const pinInsulator = builder({
  kind: 'pin-insulator',
  states: ['whole', 'loose-pin', 'broken'],
  variants: ['pole-top', 'arm', 'arm-steel', 'armless', 'bare'],
  size: { groove: 0.3, poleDiameter: 0.2, armDepth: 0.115, out: 0.3 },
  build: (a, size, part) => {
    const base = size.groove - seat;
    const out = part.variant === 'armless' ? size.out : 0;
    if (part.variant === 'pole-top') poleTopPin(a, base, size.poleDiameter / 2);
    else if (part.variant === 'armless') armless(a, base, size.out);
    else if (part.variant === 'arm-steel') steelPin(a, base, size.armDepth);
    else if (part.variant === 'arm') {
      a.add('zinc', rod([0, 0, 0.008], [0, 0, base + 0.03], 0.0125, 12, 0.011));
      a.add('zinc', new CylinderGeometry(0.025, 0.034, 0.016, 20).rotateX(Math.PI / 2).translate(0, 0, 0.008));
      a.add('zinc', bolt([0, 0, -size.armDepth], [0, 0, -1]));
    }
    const lean = part.state === 'loose-pin' ? 0.2 : 0;
    const seated = new Matrix4()
      .makeTranslation(out, 0, base - 0.07)
      .multiply(new Matrix4().makeRotationY(lean))
      .multiply(new Matrix4().makeTranslation(0, 0, 0.07));
    a.within(seated, () => {
      a.add('zinc', rod([0, 0, -0.07], [0, 0, 0.07], 0.0115, 12));
      a.add('steelDark', rod([0, 0, 0.012], [0, 0, 0.07], 0.0145, 12));
      if (part.state === 'broken') shards(a);
      else a.add('porcelainBrown', grooved(turnedOf('pinInsulator')));
      a.markable(fromRim(profileOf('pinInsulator')));
      a.name('groove', [0, 0, seat]);
      a.name('crown', [0, 0, crown]);
      a.name('pin', [0, 0, -0.03]);
    });
  },
});

/** The channel and shank of a pole-top pin, alone; origin: centre of the pole's roof. */
export const ridgePin = builder({
  kind: 'ridge-pin',
  states: ['whole', 'loose'],
  size: { groove: 0.3, poleDiameter: 0.2 },
  build: (a, size, part) => {
    const tilt = new Matrix4().makeRotationX(part.state === 'loose' ? 0.16 : 0);
    a.within(tilt, () => poleTopPin(a, size.groove - seat, size.poleDiameter / 2));
    const face = size.poleDiameter / 2 + 0.008;
    a.within(new Matrix4().makeTranslation(face, 0, -0.44), () =>
      a.markable(
        [
          [1, 0],
          [1, 0.42],
        ],
        0.0015,
        undefined,
        [0.005, 0.026],
      ),
    );
    const [foot, head] = [new Vector3(face, 0, -0.02), new Vector3(0, 0, size.groove - seat - 0.05)];
    a.within(along(foot, head), () =>
      a.markable(
        [
          [0.0205, 0],
          [0.0205, foot.distanceTo(head)],
        ],
        0.0015,
        'shank',
      ),
    );
  },
});
