/**
 * Distribution arrester, housing of polymer or porcelain (`porcelain`), on its insulating hanger. Origin: face of the bracket or tank at the hanger's
 * bolt; it stands off along `side`, axis upright. States: `whole`, `disconnected` (the disconnector has blown off, the
 * ground lead hangs free), `no-ground` (no lead on the stud), `burst` (housing torn open on the outer side, black). Size: reach of the hanger, drop of the ground lead.
 */
import { type BufferGeometry, CylinderGeometry, Matrix4, PlaneGeometry } from 'three';
import { noise } from '../materials/noise.ts';
import { type Assembly, builder } from './assembly.ts';
import { outerOf, profileOf, turnedOf } from './profiles.ts';
import { bar, block, bolt, curve, rod } from './shapes.ts';
import { wire } from './wire.ts';

const disconnector = (a: Assembly): void => {
  a.add('polymerBlack', new CylinderGeometry(0.021, 0.0235, 0.05, 20).rotateX(Math.PI / 2).translate(0, 0, -0.047));
  a.add('polymerBlack', new CylinderGeometry(0.017, 0.021, 0.01, 20).rotateX(Math.PI / 2).translate(0, 0, -0.077));
  a.add('tinned', rod([0, 0, -0.08], [0, 0, -0.105], 0.005, 8), bolt([0, 0, -0.082], [0, 0, -1], 0.016, 0));
};

/** Leaves out the faces that look outward, along a ragged line from top to foot. */
const torn = (g: BufferGeometry): BufferGeometry => {
  const p = g.getAttribute('position');
  const index = g.getIndex()?.array ?? [];
  const keep: number[] = [];
  for (let i = 0; i < index.length; i += 3) {
    const [j, k, l] = [index[i] as number, index[i + 1] as number, index[i + 2] as number];
    const x = p.getX(j) + p.getX(k) + p.getX(l);
    const y = p.getY(j) + p.getY(k) + p.getY(l);
    const z = (p.getZ(j) + p.getZ(k) + p.getZ(l)) / 3;
    const ragged = 1 + 0.45 * noise(z * 60, 1.5, 5, 997, 9);
    if (Math.abs(Math.atan2(y, x)) > ragged || z < 0.014 || z > 0.2) keep.push(j, k, l);
  }
  g.setIndex(keep);
  return g;
};

/** A strip of housing torn loose and curled outward, its edge ragged, its inner side black. */
const flap = (at: number, from: number, reach: number): readonly [outer: BufferGeometry, inner: BufferGeometry] => {
  const [long, wide] = [10, 5];
  const skin = (off: number): BufferGeometry => {
    const g = new PlaneGeometry(1, 1, wide, long);
    const p = g.getAttribute('position');
    for (let i = 0; i < p.count; i++) {
      const [u, v] = [p.getX(i) * 2, 0.5 - p.getY(i)];
      const ragged = (0.011 + 0.004 * Math.sin(v * 23 + at * 7)) * (1 - 0.55 * v) + 0.003 * Math.sin(v * 61 + u * 3);
      const bend = v * 1.9;
      const r = 0.024 + off + reach * (1 - Math.cos(bend)) * 0.62 - 0.1 * ragged * u * u;
      const z = from - reach * Math.sin(bend) * 0.8;
      const t = at + (u * ragged) / 0.024;
      p.setXYZ(i, r * Math.cos(t), r * Math.sin(t), z);
    }
    g.computeVertexNormals();
    return g;
  };
  const inner = skin(0);
  const index = Array.from(inner.getIndex()?.array ?? []);
  const turned: number[] = [];
  for (let i = 0; i < index.length; i += 3)
    turned.push(index[i] as number, index[i + 2] as number, index[i + 1] as number);
  inner.setIndex(turned);
  inner.computeVertexNormals();
  return [skin(0.0025), inner];
};

/** What shows through a burst housing: the stack of its blocks, cracked and black, and rags of the housing about it. */
const burst = (a: Assembly, porcelain: boolean): void => {
  for (let i = 0; i < 6; i++) {
    const z = 0.026 + i * 0.029;
    const off = 0.0016 * Math.sin(i * 4.1);
    a.add(
      i % 2 === 0 ? 'black' : 'steelDark',
      rod([off, off, z], [off, -off, z + 0.0255], 0.0175 - 0.001 * (i % 3), 18),
    );
    a.add('black', block([0.0165, 0.009 * Math.sin(i * 2.3), z + 0.012], [0.005, 0.008, 0.014], 0.3));
  }
  if (porcelain) {
    for (let i = 0; i < 4; i++)
      a.add('bisque', block([0.034, 0.02 * Math.cos(i * 2), 0.004], [0.02, 0.014, 0.008], 0.3));
    return;
  }
  for (const [at, from, reach] of [
    [0.85, 0.15, 0.07],
    [-0.8, 0.1, 0.062],
    [0.35, 0.055, 0.045],
  ] as const) {
    const [outer, inner] = flap(at, from, reach);
    a.add('polymer', outer);
    a.add('black', inner);
  }
};

export const arrester = builder({
  kind: 'arrester',
  states: ['whole', 'disconnected', 'no-ground', 'burst'],
  variants: ['polymer', 'porcelain'],
  size: { reach: 0.13, drop: 0.35 },
  build: (a, size, part) => {
    a.add(
      'zinc',
      bar([0.003, 0, -0.05], [0.003, 0, 0.03], 0.04, 0.006, [1, 0, 0]),
      bolt([0.006, 0, 0.008], [1, 0, 0], 0.02, 0),
    );
    a.add('polymerBlack', bar([0.004, 0, -0.012], [size.reach + 0.03, 0, -0.012], 0.042, 0.016));
    a.add('polymerBlack', bar([0.01, 0, -0.045], [size.reach * 0.6, 0, -0.016], 0.014, 0.014, [0, 1, 0]));
    a.within(new Matrix4().makeTranslation(size.reach, 0, 0), () => {
      a.add('zinc', new CylinderGeometry(0.026, 0.026, 0.008, 20).rotateX(Math.PI / 2).translate(0, 0, 0));
      a.within(new Matrix4().makeTranslation(0, 0, 0.003), () => {
        const shape = part.variant === 'porcelain' ? 'arresterPorcelain' : 'arrester';
        const body = turnedOf(shape);
        a.add(part.variant === 'porcelain' ? 'porcelainBrown' : 'polymer', part.state === 'burst' ? torn(body) : body);
        if (part.state === 'burst') burst(a, part.variant === 'porcelain');
        a.markable(outerOf(profileOf(shape)));
      });
      a.add('tinned', rod([0, 0, 0.212], [0, 0, 0.262], 0.006, 10));
      a.add('tinned', bolt([0, 0, 0.219], [0, 0, 1], 0.018, 0), block([0, 0, 0.245], [0.026, 0.02, 0.014]));
      a.add('polymerBlack', new CylinderGeometry(0.02, 0.024, 0.006, 18).rotateX(Math.PI / 2).translate(0, 0, 0.219));
      a.name('line', [0, 0, 0.246]);
      if (part.state === 'disconnected') {
        a.add('tinned', rod([0, 0, -0.004], [0, 0, -0.032], 0.0055, 8), bolt([0, 0, -0.006], [0, 0, -1], 0.018, 0));
        a.add('steelDark', new CylinderGeometry(0.01, 0.014, 0.006, 14).rotateX(Math.PI / 2).translate(0, 0, -0.03));
        const free = curve(
          [
            [0.004, 0, -size.drop * 0.52],
            [-0.012, 0.01, -size.drop * 0.62],
            [-0.02, 0.014, -size.drop * 0.8],
            [-0.05, 0.01, -size.drop * 0.98],
            [-0.085, 0.004, -size.drop * 1.04],
            [-size.reach + 0.02, 0, -size.drop],
          ],
          18,
        );
        a.add('copper', wire(free, 0.0027, 7));
        a.within(new Matrix4().makeTranslation(0.004, 0, -size.drop * 0.52 + 0.09), () => disconnector(a));
        a.name('ground', [-size.reach + 0.02, 0, -size.drop]);
        return;
      }
      disconnector(a);
      if (part.state === 'whole' || part.state === 'burst') {
        const lead = curve(
          [
            [0, 0, -0.098],
            [-0.004, 0.004, -0.15],
            [-0.03, 0.008, -size.drop * 0.7],
            [-size.reach + 0.02, 0, -size.drop],
          ],
          16,
        );
        a.add('copper', wire(lead, 0.0027, 7));
        a.name('ground', [-size.reach + 0.02, 0, -size.drop]);
      }
      a.name('foot', [0, 0, -0.1]);
    });
  },
});
