import fc from 'fast-check';
import { BoxGeometry, Mesh } from 'three';
import { describe, expect, it } from 'vitest';
import { hullOf, pointsOf, widened } from '../../src/scene/layer/hull.ts';

const spot = fc.record({ x: fc.integer({ min: -500, max: 500 }), y: fc.integer({ min: -500, max: 500 }) });

describe('the outline of a part', () => {
  it('has every spot inside or on it', () => {
    fc.assert(
      fc.property(fc.array(spot, { minLength: 3, maxLength: 40 }), (spots) => {
        const hull = hullOf(spots);
        fc.pre(hull.length >= 3);
        for (const p of spots) {
          hull.forEach((a, i) => {
            const b = hull[(i + 1) % hull.length] as typeof a;
            expect((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)).toBeGreaterThanOrEqual(0);
          });
        }
      }),
    );
  });

  it('is the four corners of a square with spots inside', () => {
    const corners = [
      { x: 0, y: 0 },
      { x: 4, y: 0 },
      { x: 4, y: 4 },
      { x: 0, y: 4 },
    ];
    expect(hullOf([...corners, { x: 2, y: 2 }, { x: 1, y: 3 }])).toEqual(corners);
  });

  it('stands off from the middle when widened', () => {
    const wide = widened(
      [
        { x: -1, y: 0 },
        { x: 1, y: 0 },
      ],
      4,
    );
    expect(wide).toEqual([
      { x: -5, y: 0 },
      { x: 5, y: 0 },
    ]);
  });

  it('is taken where the object stands', () => {
    const mesh = new Mesh(new BoxGeometry(2, 2, 2));
    mesh.position.set(10, 0, 0);
    const xs = pointsOf([mesh]).map(([x]) => x);
    expect(Math.min(...xs)).toBe(9);
    expect(Math.max(...xs)).toBe(11);
  });
});
