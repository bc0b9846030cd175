/** A small church for a village: nave, tower with a spire, tall windows. Origin: ground under the tower, the nave goes along +y. */
import { ConeGeometry, Matrix4, PlaneGeometry } from 'three';
import { builder } from '../hardware/assembly.ts';
import { block } from '../hardware/shapes.ts';
import { gableEnd } from '../hardware/walls.ts';

export const church = builder({
  kind: 'church',
  size: { nave: 16, width: 8, eaves: 5, rise: 3.6, tower: 12, spire: 8 },
  build: (a, s) => {
    const w = s.width / 2;
    const begin = 2;
    for (const y of [begin, begin + s.nave]) a.add('plaster', gableEnd(w, s.eaves, s.rise, 0.05).translate(0, y, 0));
    a.add('plaster', block([0, begin + s.nave / 2, s.eaves / 2], [s.width, s.nave, s.eaves], 0));
    const slope = Math.hypot(w, s.rise);
    for (const e of [0, Math.PI]) {
      const lay = new Matrix4()
        .makeTranslation(0, begin + s.nave / 2, s.eaves + s.rise)
        .multiply(new Matrix4().makeRotationZ(e))
        .multiply(new Matrix4().makeRotationY(Math.atan2(s.rise, w)));
      a.within(lay, () => {
        const roof = new PlaneGeometry(slope + 0.5, s.nave + 0.6);
        const uv = roof.getAttribute('uv');
        for (let i = 0; i < uv.count; i++) uv.setXY(i, uv.getX(i) * 3, uv.getY(i) * 10);
        a.add('shingles', roof.translate((slope + 0.5) / 2, 0, 0.02));
      });
    }
    a.add('plaster', block([0, 0, s.tower / 2], [4.2, 4.2, s.tower], 0.01));
    a.add('concrete', block([0, 0, s.tower], [4.5, 4.5, 0.3], 0.1), block([0, 0, 0.3], [4.4, 4.4, 0.6], 0.05));
    a.add(
      'shingles',
      new ConeGeometry(3, s.spire, 4, 1)
        .rotateX(Math.PI / 2)
        .rotateZ(Math.PI / 4)
        .translate(0, 0, s.tower + 0.15 + s.spire / 2),
    );
    a.add('sidingDark', block([0, -2.12, 1.4], [1.6, 0.06, 2.8], 0.02));
    for (const quarter of [0, 1, 2, 3])
      a.within(new Matrix4().makeRotationZ((quarter * Math.PI) / 2), () =>
        a.add('black', block([2.11, 0, s.tower - 1.8], [0.05, 1.1, 1.9], 0)),
      );
    for (let i = 0; i < 4; i++)
      for (const e of [-1, 1])
        a.add('windowDark', block([e * (w + 0.01), begin + s.nave * ((i + 0.6) / 4.2), 2.7], [0.05, 0.9, 2.4], 0));
  },
});
