/**
 * Connectors that join a tap to a run. Origin: centre of the run, which lies along `side`; the tap lies beside it, above.
 * `split-bolt`: slotted bronze bolt with a nut. `squeeze-connector`: aluminium H pressed over both. States: `whole`, `burned`
 * (sooty, its wires discoloured), `loose` (nut backed off, wires apart), `patina` (green). Size: radius of the run and of the tap.
 */
import { CylinderGeometry, Matrix4 } from 'three';
import { type Assembly, builder } from './assembly.ts';
import { block, rod } from './shapes.ts';

interface Pair {
  readonly run: number;
  readonly tap: number;
}

const stubs = (
  a: Assembly,
  s: Pair,
  apart: number,
  metal: 'black' | 'aluminiumStrand',
  tap: 'black' | 'copper' | 'verdigris',
): void => {
  a.add(metal, rod([-0.05, 0, 0], [0.05, 0, 0], s.run * 1.03, 10));
  a.add(tap, rod([-0.045, 0, s.run + s.tap + apart], [0.045, 0, s.run + s.tap + apart], s.tap * 1.03, 10));
};

export const splitBolt = builder({
  kind: 'split-bolt',
  states: ['whole', 'burned', 'loose', 'patina'],
  size: { run: 0.0032, tap: 0.0026 },
  build: (a, s, part) => {
    const apart = part.state === 'loose' ? 0.006 : 0.0022;
    const burned = part.state === 'burned';
    stubs(
      a,
      s,
      apart,
      burned ? 'black' : 'aluminiumStrand',
      burned ? 'black' : part.state === 'patina' ? 'verdigris' : 'copper',
    );
    const metal = burned ? 'steelDark' : part.state === 'patina' ? 'verdigris' : 'bronze';
    const half = Math.max(s.run, s.tap) + 0.0035;
    const top = s.run + 2 * s.tap + apart;
    for (const y of [-half, half]) a.add(metal, block([0, y, top * 0.5 + 0.006], [0.014, 0.005, top + 0.032], 0.2));
    a.add(metal, new CylinderGeometry(0.0115, 0.0115, 0.009, 6).rotateX(Math.PI / 2).translate(0, 0, -s.run - 0.0065));
    a.add(
      metal,
      block([0, 0, s.run + apart * 0.5], [0.016, half * 1.7, 0.0024], 0.2),
      block([0, 0, top + 0.004], [0.016, half * 1.8, 0.005], 0.2),
    );
    const nut = top + (part.state === 'loose' ? 0.024 : 0.013);
    a.add(metal, new CylinderGeometry(0.013, 0.013, 0.012, 6).rotateX(Math.PI / 2).translate(0, 0, nut));
    a.name('run', [0, 0, 0]);
    a.name('tap', [0, 0, s.run + s.tap + apart]);
  },
});

export const squeezeConnector = builder({
  kind: 'squeeze-connector',
  states: ['whole', 'burned'],
  size: { run: 0.0032, tap: 0.0026 },
  build: (a, s, part) => {
    const burned = part.state === 'burned';
    stubs(a, s, 0.003, burned ? 'black' : 'aluminiumStrand', burned ? 'black' : 'copper');
    const metal = burned ? 'steelDark' : 'aluminium';
    for (const [z, r] of [
      [0, s.run],
      [s.run + s.tap + 0.003, s.tap],
    ] as const)
      a.add(metal, rod([-0.032, 0, z], [0.032, 0, z], r + 0.0042, 14));
    a.add(metal, block([0, 0, (s.run + s.tap) / 2], [0.06, 0.007, s.run + s.tap], 0.2));
    for (let i = 0; i < 3; i++) {
      a.within(new Matrix4().makeTranslation(-0.02 + i * 0.02, 0, 0), () =>
        a.add(metal, block([0, 0, (s.run + s.tap) / 2], [0.006, s.run * 2 + 0.012, s.run + s.tap + 0.002], 0.3)),
      );
    }
    a.name('run', [0, 0, 0]);
    a.name('tap', [0, 0, s.run + s.tap + 0.003]);
  },
});
