/** Backdrop of a works: a shed of profiled sheet with doors for lorries, and a length of woven-wire fence. */
import { Matrix4, PlaneGeometry } from 'three';
import { builder } from '../hardware/assembly.ts';
import { block, plate, rod } from '../hardware/shapes.ts';

/** Origin: ground under the middle of the front, which faces +x of its frame and has the ridge along it. */
export const shed = builder({
  kind: 'shed',
  states: ['dark', 'lit'],
  size: { length: 36, depth: 18, eaves: 6, rise: 2.2 },
  build: (a, s, part) => {
    const half = s.length / 2;
    const outline = [
      [0, 0],
      [0, s.eaves],
      [-s.depth / 2, s.eaves + s.rise],
      [-s.depth, s.eaves],
      [-s.depth, 0],
    ] as const;
    for (const e of [-1, 1])
      a.add(
        'cladding',
        plate(outline, 0.02, 0)
          .rotateX(Math.PI / 2)
          .translate(0, e * half + 0.01, 0),
      );
    const face = (width: number, height: number): PlaneGeometry => {
      const g = new PlaneGeometry(width, height).rotateY(Math.PI / 2).rotateX(Math.PI / 2);
      const uv = g.getAttribute('uv');
      for (let i = 0; i < uv.count; i++) uv.setX(i, (uv.getX(i) * width) / 3);
      return g.translate(0, 0, height / 2);
    };
    a.add('cladding', face(s.length, s.eaves));
    const slope = Math.hypot(s.depth / 2, s.rise);
    const pitch = Math.atan2(s.rise, s.depth / 2);
    a.within(
      new Matrix4().makeTranslation(0.15, 0, s.eaves - 0.03).multiply(new Matrix4().makeRotationY(pitch - Math.PI / 2)),
      () => a.add('cladding', face(s.length + 0.4, slope + 0.2)),
    );
    a.add('concrete', block([0.02, 0, 0.35], [0.16, s.length, 0.7], 0.05));
    a.add('zinc', block([0.12, 0, s.eaves - 0.05], [0.2, s.length, 0.16], 0.2));
    for (const e of [-1, 1]) a.add('zinc', rod([0.1, e * (half - 0.2), 0], [0.1, e * (half - 0.2), s.eaves], 0.05));
    for (const y of [-half * 0.62, 0, half * 0.62]) {
      a.add('steelDark', block([0.06, y, 2.1], [0.14, 4.3, 4.3], 0.03));
      for (let i = 0; i < 12; i++) a.add('boxPaint', block([0.1, y, 0.2 + i * 0.34], [0.14, 4, 0.31], 0.2));
    }
    for (let i = 0; i < 9; i++) {
      const y = half * (i / 4 - 1) * 0.93;
      a.add(
        part.state === 'lit' && i % 3 !== 1 ? 'windowLit' : 'windowDark',
        block([0.03, y, s.eaves - 0.85], [0.08, 2.3, 0.75], 0),
      );
    }
    a.add('green', block([0.08, half * 0.32, 1.1], [0.12, 1, 2.15], 0.03));
  },
});

/** Runs along y of its frame from the origin both ways; posts three metres apart, a rail on top. */
export const wireFence = builder({
  kind: 'wire-fence',
  size: { length: 30, height: 2 },
  build: (a, s) => {
    const half = s.length / 2;
    const many = Math.round(s.length / 3);
    for (let i = 0; i <= many; i++) {
      const y = -half + (i * s.length) / many;
      a.add('zinc', rod([0, y, -0.2], [0, y, s.height + 0.05], 0.03, 8));
    }
    a.add('zinc', rod([0, -half, s.height], [0, half, s.height], 0.02, 6));
    const g = new PlaneGeometry(s.length, s.height).rotateY(Math.PI / 2).rotateX(Math.PI / 2);
    const uv = g.getAttribute('uv');
    for (let i = 0; i < uv.count; i++) uv.setXY(i, uv.getX(i) * s.length * 3, uv.getY(i) * s.height * 3);
    a.add('wireMesh', g.translate(0, 0, s.height / 2));
  },
});
