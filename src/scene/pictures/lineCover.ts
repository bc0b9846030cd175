/** Orange rubber hose over a conductor, split below, with lips at both ends. Two points in the frame of the parent. */
import { builder } from '../hardware/assembly.ts';
import { rod } from '../hardware/shapes.ts';
import type { Point } from '../hardware/types.ts';

export const lineCover = builder({
  kind: 'line-cover',
  size: { radius: 0.03 },
  build: (a, size, part) => {
    const [p, q] = part.points;
    if (!p || !q) throw new RangeError('line-cover: two points');
    const at = (t: number): Point => [p[0] + (q[0] - p[0]) * t, p[1] + (q[1] - p[1]) * t, p[2] + (q[2] - p[2]) * t];
    a.add('safetyOrange', rod(p, q, size.radius, 16));
    for (const t of [0, 0.5, 1]) {
      a.add('safetyOrange', rod(at(Math.max(0, t - 0.02)), at(Math.min(1, t + 0.02)), size.radius * 1.45, 16));
    }
  },
});
