/**
 * Pole ground: copper wire stapled down the pole at azimuth `side`, under a moulding near the ground. Origin: groundline
 * on the pole's axis. Size: the pole's, top of the wire, top of the moulding (0: none), wire radius, and where it is
 * parted (`partedFrom` below `partedTo`; equal: nowhere). States: `whole`, `cut`, `burned`, saying how the ends look. Variants: its metal, bright or green.
 */
import { CylinderGeometry, Vector3 } from 'three';
import { noise } from '../materials/noise.ts';
import { type Assembly, builder } from './assembly.ts';
import { partedEnd } from './lead.ts';
import { poleRadius } from './poleShape.ts';
import { curve } from './shapes.ts';
import { wire } from './wire.ts';

interface GroundSize {
  readonly height: number;
  readonly topDiameter: number;
  readonly groundDiameter: number;
  readonly radius: number;
}

type Metal = 'copper' | 'verdigris';

const run = (a: Assembly, size: GroundSize, seed: number, from: number, to: number, metal: Metal): Vector3[] => {
  const pieces = Math.max(4, Math.ceil((to - from) * 7));
  const line = Array.from({ length: pieces + 1 }, (_, i) => {
    const z = from + ((to - from) * i) / pieces;
    const wave = 0.009 * (noise(z * 1.6 + 40, 3.5, seed, 997, 9) - 0.5);
    return new Vector3(
      poleRadius(size, z) + size.radius + 0.0012 + 0.003 * noise(z * 3 + 60, 7.5, seed, 997, 9),
      wave,
      z,
    );
  });
  for (let z = Math.ceil(from / 0.6) * 0.6 + 0.15; z < to - 0.05; z += 0.6) {
    const r = poleRadius(size, z);
    const y = 0.009 * (noise(z * 1.6 + 40, 3.5, seed, 997, 9) - 0.5);
    const staple = curve(
      [
        [r - 0.004, y - 0.008, z],
        [r + size.radius * 2, y - 0.0075, z],
        [r + size.radius * 2 + 0.004, y, z],
        [r + size.radius * 2, y + 0.0075, z],
        [r - 0.004, y + 0.008, z],
      ],
      10,
    );
    a.add(metal, wire(staple, 0.0018, 5));
  }
  return line;
};

export const poleGround = builder({
  kind: 'pole-ground',
  states: ['whole', 'cut', 'burned'],
  variants: ['copper', 'verdigris'],
  size: {
    height: 10.36,
    topDiameter: 0.2,
    groundDiameter: 0.29,
    top: 8.6,
    moulding: 2.4,
    radius: 0.0026,
    partedFrom: 0,
    partedTo: 0,
  },
  build: (a, size, part) => {
    const burned = part.state === 'burned';
    const metal = part.variant as Metal;
    const parted = size.partedTo > size.partedFrom;
    if (parted === (part.state === 'whole'))
      throw new RangeError('pole-ground: partedFrom, partedTo and state disagree');
    const lower = run(a, size, part.seed, -0.2, parted ? size.partedFrom : size.top, metal);
    if (parted) {
      const upper = run(a, size, part.seed, size.partedTo, size.top, metal);
      const end = upper[0] as Vector3;
      const bent = new Vector3(end.x + 0.03, end.y + 0.02, end.z - 0.03);
      a.add(metal, wire([bent, ...upper], size.radius, 7));
      partedEnd(a, bent, new Vector3(0.7, 0.3, -0.6).normalize(), size.radius, burned);
      const stub = lower[lower.length - 1] as Vector3;
      const tip = new Vector3(stub.x + 0.022, stub.y - 0.012, stub.z + 0.035);
      lower.push(tip);
      partedEnd(a, tip, new Vector3(0.5, -0.3, 0.8).normalize(), size.radius, burned);
      a.name('upperEnd', [bent.x, bent.y, bent.z]);
      a.name('lowerEnd', [tip.x, tip.y, tip.z]);
    }
    a.add(metal, wire(lower, size.radius, 7));
    const cover = parted ? Math.min(size.moulding, size.partedFrom - 0.1) : size.moulding;
    if (cover > 0.1) {
      const half = new CylinderGeometry(0.013, 0.013, cover, 10, 6, false, -0.2, Math.PI + 0.4).rotateX(Math.PI / 2);
      half.translate(0, 0, cover / 2);
      const p = half.getAttribute('position');
      for (let i = 0; i < p.count; i++) p.setX(i, p.getX(i) + poleRadius(size, p.getZ(i)) - 0.001);
      a.add('moulding', half);
    }
    a.name('top', [poleRadius(size, size.top), 0, size.top]);
  },
});
