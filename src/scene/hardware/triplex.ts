/**
 * Triplex: two insulated legs twisted round a bare messenger, hung between the given points (frame of the parent), and
 * the wedge clamp that holds the messenger. Size: sag, radius of leg and messenger, pitch of the twist. The wedge clamp's
 * origin is the hook it hangs on. States: `messenger-off` (the messenger ends short of its clamp, tail hanging), `slipped` (the messenger slack
 * beside it), `worn` (a leg's jacket gone), `taped` (a leg wrapped). The clamp points toward the span along `side`.
 */
import { Vector3 } from 'three';
import { builder } from './assembly.ts';
import { bar, curve, hanging, plate, ring } from './shapes.ts';
import type { Point } from './types.ts';
import { helix, wire } from './wire.ts';

/** Metres from its clamp at which a leg has lost its jacket. */
const WORN = 0.35;
/** Metres of messenger that hang slack where it has slipped in its wedge. */
const SLACK = 0.9;

/** The part of a course between two lengths along it. */
const stretch = (line: readonly Vector3[], from: number, to: number, pieces = 4): Vector3[] => {
  const out: Vector3[] = [];
  for (let k = 0; k <= pieces; k++) {
    let left = from + ((to - from) * k) / pieces;
    let i = 0;
    while (i < line.length - 2) {
      const piece = (line[i + 1] as Vector3).distanceTo(line[i] as Vector3);
      if (left <= piece) break;
      left -= piece;
      i++;
    }
    const [p, q] = [line[i] as Vector3, line[i + 1] as Vector3];
    out.push(p.clone().lerp(q, Math.min(1, left / Math.max(1e-9, p.distanceTo(q)))));
  }
  return out;
};

export const triplex = builder({
  kind: 'triplex',
  states: ['whole', 'messenger-off', 'slipped', 'worn', 'taped'],
  size: { sag: 0.5, leg: 0.0068, messenger: 0.0042, pitch: 0.62 },
  build: (a, size, part) => {
    const [p, q] = part.points;
    if (!p || !q) throw new RangeError('triplex: two points at least');
    const line = part.points.length === 2 ? hanging(p, q, size.sag, 40) : curve(part.points, part.points.length * 10);
    let length = 0;
    for (let i = 1; i < line.length; i++) length += (line[i] as Vector3).distanceTo(line[i - 1] as Vector3);
    const turns = length / size.pitch;
    const perTurn = Math.max(4, Math.min(9, Math.floor(240 / turns)));
    const legs = [0, Math.PI * 0.8].map((phase) => helix(line, size.messenger + size.leg, size.pitch, phase, perTurn));
    const [leg = []] = legs;
    a.add(
      'insulation',
      legs.map((course) => wire(course, size.leg, 5)),
    );
    const bare = { 'messenger-off': line.slice(1), slipped: stretch(line, SLACK, length, 40) }[part.state] ?? line;
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
    if (part.state === 'slipped') {
      const [start, , , , joins] = stretch(line, 0, SLACK) as [Vector3, Vector3, Vector3, Vector3, Vector3];
      const on = joins.clone().sub(start);
      const loop = [0, 0.1, 0.3, 0.55, 0.8, 1].map((t, i): Point => {
        const at = start.clone().addScaledVector(on, t);
        return [at.x, at.y, at.z - ([0, 0.02, 0.13, 0.16, 0.06, 0][i] ?? 0)];
      });
      a.add('aluminiumStrand', wire(curve(loop, 30), size.messenger, 6, 0.1));
    }
    if (part.state === 'worn') {
      a.add('aluminiumStrand', wire(stretch(leg, WORN, WORN + 0.14), size.leg * 1.08, 9, 0.1));
      for (const s of [WORN, WORN + 0.14])
        a.add('insulation', wire(stretch(leg, s - 0.012, s + 0.012), size.leg * 1.3, 8));
    }
    if (part.state === 'taped') {
      const wrapped = stretch(leg, WORN - 0.05, WORN + 0.16, 48);
      // Each turn of the tape lies half over the one before.
      a.add(
        'rubber',
        wire(wrapped, (t) => size.leg * (1.75 + 0.12 * Math.sin(t * 80)), 9),
      );
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
