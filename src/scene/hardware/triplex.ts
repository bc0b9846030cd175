/**
 * Triplex: two insulated legs twisted round a bare messenger, hung between the given points (frame of the parent), and
 * the wedge clamp that holds the messenger. Size: sag, radius of leg and messenger, pitch of the twist. The wedge clamp's
 * origin is the hook it hangs on. States: `messenger-off` (the messenger ends short of its clamp, tail hanging), `worn` (a
 * leg's jacket gone). The clamp points toward the span along `side`.
 */
import { Vector3 } from 'three';
import { builder } from './assembly.ts';
import { bar, curve, hanging, plate, ring } from './shapes.ts';
import { helix, wire } from './wire.ts';

/** Metres from its clamp at which a leg has lost its jacket. */
const WORN = 0.35;

export const triplex = builder({
  kind: 'triplex',
  states: ['whole', 'messenger-off', 'worn'],
  size: { sag: 0.5, leg: 0.0068, messenger: 0.0042, pitch: 0.62 },
  build: (a, size, part) => {
    const [p, q] = part.points;
    if (!p || !q) throw new RangeError('triplex: two points at least');
    const line = part.points.length === 2 ? hanging(p, q, size.sag, 40) : curve(part.points, part.points.length * 10);
    let length = 0;
    for (let i = 1; i < line.length; i++) length += (line[i] as Vector3).distanceTo(line[i - 1] as Vector3);
    const turns = length / size.pitch;
    const perTurn = Math.max(4, Math.min(9, Math.floor(240 / turns)));
    const bare = part.state === 'messenger-off' ? line.slice(1) : line;
    a.add('aluminiumStrand', wire(bare, size.messenger, 5, 0.1));
    if (part.state === 'messenger-off') {
      const [end, next] = bare as [Vector3, Vector3];
      const back = end.clone().sub(next).normalize();
      const free = [end, end.clone().addScaledVector(back, 0.12), end.clone().addScaledVector(back, 0.16)];
      free.slice(1).forEach((v, i) => {
        v.z -= 0.05 + 0.16 * i;
      });
      a.add('aluminiumStrand', wire(free, size.messenger, 6, 0.1));
    }
    if (part.state === 'worn') {
      const [start, next] = line as [Vector3, Vector3];
      const on = next.clone().sub(start).normalize();
      const at = start.clone().addScaledVector(on, WORN);
      const up = new Vector3(0, 0, size.messenger + size.leg);
      const ends = [0, 0.07, 0.14].map((s) => at.clone().addScaledVector(on, s).add(up));
      a.add('aluminiumStrand', wire(ends, size.leg * 1.12, 8, 0.1));
    }
    for (const phase of [0, Math.PI * 0.8]) {
      const leg = helix(line, size.messenger + size.leg, size.pitch, phase, perTurn);
      a.add('insulation', wire(leg, size.leg, 5));
    }
    a.name('start', p);
    a.name('end', part.points[part.points.length - 1] ?? q);
  },
});

export const wedgeClamp = builder({
  kind: 'wedge-clamp',
  size: { messenger: 0.0042 },
  build: (a, size) => {
    const bail = curve(
      [
        [0.15, 0.014, -0.004],
        [0.06, 0.011, 0],
        [0.012, 0.009, 0],
        [-0.006, 0, 0],
        [0.012, -0.009, 0],
        [0.06, -0.011, 0],
        [0.15, -0.014, -0.004],
      ],
      24,
    );
    a.add('zinc', wire(bail, 0.003, 7));
    const body = plate(
      [
        [0.1, -0.026],
        [0.225, -0.018],
        [0.225, 0.01],
        [0.1, 0.018],
      ],
      0.026,
      0.003,
    );
    a.add('aluminium', body.rotateX(Math.PI / 2).translate(0, 0.013, 0));
    a.add('zinc', bar([0.085, 0, 0.004], [0.235, 0, 0.002], 0.014, 0.008));
    a.add('zinc', ring([0.082, 0, 0.004], [0, 1, 0], 0.008, 0.002));
    a.add(
      'aluminiumStrand',
      wire(
        [new Vector3(0.05, 0, -0.01), new Vector3(0.15, 0, -0.004), new Vector3(0.28, 0, -0.004)],
        size.messenger,
        7,
      ),
    );
    a.name('span', [0.28, 0, -0.004]);
    a.name('tail', [0.05, 0, -0.01]);
  },
});
