/** Stencilled and stamped characters as thin geometry: strokes on a grid of 4 by 6, no font file. */
import { BoxGeometry, type BufferGeometry } from 'three';

const glyphs: Readonly<Record<string, string>> = {
  0: '1636 3645 4541 4130 3010 1001 0105 0516',
  1: '1030 2026 2614',
  2: '0516 1636 3645 4544 4400 0040',
  3: '0516 1636 3645 4544 4433 3323 3342 4241 4130 3010 1001',
  '4': '0603 0343 4640',
  5: '4606 0603 0333 3342 4241 4130 3010 1001',
  6: '3616 1605 0501 0110 1030 3041 4142 4233 3303',
  '7': '0646 4620',
  8: '1636 3645 4544 4433 3313 1304 0405 0516 1302 0201 0110 1030 3041 4142 4233',
  9: '1030 3041 4145 4536 3616 1605 0504 0413 1343',
  A: '0005 0516 1636 3645 4540 0343',
  B: '0006 0636 3645 4544 4433 3303 3342 4241 4130 3000',
  C: '4606 0600 0040',
  D: '0006 0636 3644 4442 4230 3000',
  E: '4606 0600 0040 0333',
  F: '4606 0600 0333',
  G: '4606 0600 0040 4043 4323',
  H: '0006 4046 0343',
  I: '2026 1636 1030',
  J: '4641 4130 3010 1001',
  K: '0006 0246 1340',
  L: '0600 0040',
  M: '0006 0623 2346 4640',
  N: '0006 0640 4046',
  O: '0006 0646 4640 4000',
  P: '0006 0646 4643 4303',
  Q: '0006 0646 4640 4000 2140',
  R: '0006 0646 4643 4303 2340',
  S: '4606 0603 0343 4340 4000',
  T: '0646 2620',
  U: '0600 0040 4046',
  V: '0620 2046',
  W: '0610 1023 2330 3046',
  X: '0046 0640',
  Y: '0623 4623 2320',
  Z: '0646 4600 0040',
  '-': '1333',
};

/**
 * Characters as raised strokes in the plane y, z, read when looked at from +x, centred on the origin.
 * `height` of a character, m; unknown characters leave a gap. `pieces` a stroke, to be bent.
 */
export const lettering = (text: string, height: number, thick = 0.0006, pieces = 1): BufferGeometry[] => {
  const unit = height / 6;
  const pitch = 5.6 * unit;
  const left = -((text.length - 1) * pitch + 4 * unit) / 2;
  const shapes: BufferGeometry[] = [];
  [...text.toUpperCase()].forEach((c, i) => {
    for (const s of (glyphs[c] ?? '').split(' ').filter(Boolean)) {
      const [y0 = 0, z0 = 0, y1 = 0, z1 = 0] = [...s].map(Number);
      const dy = (y1 - y0) * unit;
      const dz = (z1 - z0) * unit;
      const g = new BoxGeometry(thick, Math.sqrt(dy * dy + dz * dz) + 0.8 * unit, 0.85 * unit, 1, pieces, 1);
      g.rotateX(Math.atan2(dz, dy));
      g.translate(thick / 2, left + i * pitch + ((y0 + y1) / 2) * unit, ((z0 + z1) / 2 - 3) * unit);
      shapes.push(g);
    }
  });
  return shapes;
};

/** Lays strokes of the plane y, z on a round of the given radius about z. */
export const wrapped = (g: BufferGeometry, radius: number): BufferGeometry => {
  const p = g.getAttribute('position');
  for (let i = 0; i < p.count; i++) p.setX(i, p.getX(i) + Math.sqrt(Math.max(0, radius * radius - p.getY(i) ** 2)));
  return g;
};
