/**
 * Open fused cutout, 15 kV class, grey porcelain. Origin: face of the pole or arm at the bracket's bolt; the tube side
 * looks along `side`. The body leans out at the top so that an opened tube swings down and hangs clear of its hinge.
 * States: `closed`, `open` (tube hanging), `hung-up` (link parted, tube caught part way), `removed`, `loose` (closed on a
 * bracket that has turned on its bolt). Variants: `porcelain`, `polymer`. Size: reach of the
 * bracket, lean.
 */
import { CylinderGeometry, Matrix4 } from 'three';
import { type Assembly, builder } from './assembly.ts';
import { profileOf, turnedOf } from './profiles.ts';
import { bar, block, bolt, curve, plate, ring, rod } from './shapes.ts';
import { wire } from './wire.ts';

/** Offset of tube and hinge in front of the body's axis, and heights of hinge and contact over its middle, m. */
const front = 0.118;
const hinge = -0.188;
const contact = 0.176;

const bracket = (a: Assembly, reach: number): void => {
  a.add('zinc', bar([0.004, 0, -0.055], [0.004, 0, 0.055], 0.045, 0.006, [1, 0, 0]));
  a.add('zinc', bar([0.002, 0, 0.022], [reach - 0.03, 0, 0.022], 0.042, 0.0065));
  a.add('zinc', bar([0.004, 0, -0.045], [reach * 0.45, 0, 0.018], 0.028, 0.006, [0.5, 0, 1]));
  a.add('zinc', bolt([0.008, 0, -0.012], [1, 0, 0], 0.024, 0));
  a.add('zinc', bar([reach - 0.055, 0, 0.022], [reach - 0.038, 0, -0.02], 0.042, 0.0065, [1, 0, 0.4]));
};

const band = (a: Assembly): void => {
  a.add('zinc', new CylinderGeometry(0.0345, 0.0345, 0.04, 24, 1).rotateX(Math.PI / 2));
  a.add('zinc', block([-0.043, 0, 0], [0.022, 0.036, 0.042]));
  a.add('zinc', bolt([-0.03, 0.019, 0], [0, 1, 0], 0.017, 0), bolt([-0.03, -0.019, 0], [0, -1, 0], 0.017, 0));
};

const topFitting = (a: Assembly): void => {
  a.add('zinc', new CylinderGeometry(0.031, 0.031, 0.012, 20).rotateX(Math.PI / 2).translate(0, 0, 0.182));
  a.add('zinc', bar([-0.035, 0, 0.191], [front - 0.018, 0, 0.191], 0.034, 0.006));
  a.add('tinned', bar([front - 0.055, 0, 0.199], [front + 0.016, 0, 0.192], 0.024, 0.0035));
  a.add('tinned', bar([front + 0.012, 0, 0.193], [front + 0.026, 0, contact - 0.004], 0.024, 0.0035, [1, 0, 0]));
  a.add('zinc', bolt([0, 0, 0.194], [0, 0, 1], 0.02, 0));
  for (const s of [-1, 1]) {
    const hook = curve(
      [
        [0.045, s * 0.012, 0.186],
        [0.062, s * 0.038, 0.182],
        [front - 0.012, s * 0.05, 0.172],
        [front + 0.022, s * 0.05, 0.182],
        [front + 0.03, s * 0.05, 0.204],
        [front + 0.016, s * 0.05, 0.219],
      ],
      16,
    );
    a.add('zinc', wire(hook, 0.0045, 7));
  }
  a.add('bronze', block([-0.05, 0, 0.196], [0.034, 0.026, 0.024]), bolt([-0.05, 0.013, 0.196], [0, 1, 0], 0.016, 0));
  a.name('line', [-0.068, 0, 0.198]);
};

const bottomFitting = (a: Assembly): void => {
  a.add('zinc', new CylinderGeometry(0.031, 0.031, 0.012, 20).rotateX(Math.PI / 2).translate(0, 0, -0.182));
  a.add('zinc', bar([-0.035, 0, -0.191], [front - 0.03, 0, -0.191], 0.034, 0.006));
  const cheek = plate(
    [
      [-0.045, -0.012],
      [0.004, -0.022],
      [0.018, -0.012],
      [0.018, 0.004],
      [0.01, 0.006],
      [0.006, -0.004],
      [-0.006, -0.004],
      [-0.012, 0.008],
      [-0.045, 0.004],
    ],
    0.005,
    0.001,
  );
  for (const y of [-0.026, 0.021]) {
    a.add(
      'bronze',
      cheek
        .clone()
        .rotateX(Math.PI / 2)
        .translate(front, y + 0.005, hinge),
    );
  }
  a.add('bronze', block([front - 0.042, 0, -0.192], [0.018, 0.052, 0.018]));
  a.add('zinc', bolt([0, 0, -0.194], [0, 0, -1], 0.02, 0));
  a.add('bronze', block([-0.05, 0, -0.197], [0.034, 0.026, 0.024]), bolt([-0.05, 0.013, -0.197], [0, 1, 0], 0.016, 0));
  a.name('load', [-0.068, 0, -0.199]);
};

/** Tube in its own frame: hinge pin at the origin, tube upward. `parted` shows the link's leader gone. */
const tube = (a: Assembly, parted: boolean): void => {
  const top = contact - hinge;
  a.add('bronze', rod([0, -0.034, 0], [0, 0.034, 0], 0.0065, 10));
  a.add('bronze', block([0, 0, 0.002], [0.03, 0.034, 0.036], 0.25));
  a.add('bronze', new CylinderGeometry(0.0185, 0.0185, 0.04, 18).rotateX(Math.PI / 2).translate(0, 0, 0.03));
  a.add('tube', rod([0, 0, -0.012], [0, 0, top - 0.024], 0.0145, 18));
  a.add('bronze', new CylinderGeometry(0.0185, 0.0185, 0.046, 18).rotateX(Math.PI / 2).translate(0, 0, top - 0.03));
  a.add('bronze', new CylinderGeometry(0.0135, 0.0175, 0.014, 18).rotateX(Math.PI / 2).translate(0, 0, top - 0.001));
  a.add('bronze', rod([0.012, 0, top - 0.028], [0.03, 0, top - 0.028], 0.006, 8));
  a.add('bronze', ring([0.05, 0, top - 0.026], [0, 1, 0], 0.022, 0.0046));
  a.add('tinned', bar([0.012, 0, -0.006], [0.034, 0, -0.03], 0.016, 0.0025, [1, 0, 1]));
  if (parted) return;
  const leader = curve(
    [
      [0, 0, -0.01],
      [0.002, 0.004, -0.034],
      [0.018, 0.006, -0.05],
      [0.034, 0.004, -0.036],
      [0.036, 0.001, -0.02],
    ],
    12,
  );
  a.add('tinned', wire(leader, 0.0016, 5));
};

/** How far the tube has swung from the closed position, degrees. */
const swing: Readonly<Record<string, number>> = { closed: 0, loose: 0, open: 168, 'hung-up': 5 };

export const cutout = builder({
  kind: 'cutout',
  states: ['closed', 'open', 'hung-up', 'removed', 'loose'],
  variants: ['porcelain', 'polymer'],
  size: { reach: 0.24, lean: 0.3 },
  build: (a, size, part) => {
    const turn = new Matrix4().makeRotationX(part.state === 'loose' ? 0.36 : 0);
    a.within(turn, () => bracket(a, size.reach));
    const lean = turn
      .multiply(new Matrix4().makeTranslation(size.reach, 0, 0))
      .multiply(new Matrix4().makeRotationY(size.lean));
    a.within(lean, () => {
      const shape = part.variant === 'polymer' ? 'cutoutPolymer' : 'cutoutBody';
      a.add(part.variant === 'polymer' ? 'polymer' : 'porcelainGrey', turnedOf(shape));
      a.markable(profileOf(shape));
      band(a);
      topFitting(a);
      bottomFitting(a);
      const degrees = swing[part.state];
      if (degrees === undefined) return;
      const at = new Matrix4()
        .makeTranslation(front, 0, hinge)
        .multiply(new Matrix4().makeRotationY((degrees * Math.PI) / 180));
      a.within(at, () => {
        tube(a, part.state !== 'closed' && part.state !== 'loose');
        a.name('ring', [0.05, 0, contact - hinge - 0.026]);
      });
    });
  },
});
