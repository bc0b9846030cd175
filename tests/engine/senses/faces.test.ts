/** Where signs lie on their parts, and how much of them is in view. */
import { describe, expect, it } from 'vitest';
import { componentKind } from '../../../src/engine/catalogue/components.ts';
import { add, distance, dot, normalise, sub, type Vec3 } from '../../../src/engine/math/vec3.ts';
import { facesOf, type Lie } from '../../../src/engine/senses/faces.ts';
import { viewOf } from '../../../src/engine/senses/inView.ts';
import { eyeAt, seenOn } from '../../../src/engine/senses/signsFrom.ts';
import { partById, withPart } from '../../../src/engine/world/edit.ts';
import type { LaidFault, Part } from '../../../src/engine/world/types.ts';
import { start } from '../acts/scene.ts';

const world = start();
const pole = partById(world, 'p2.pole');
const lieOn = (part: Part, feature: string, more: Partial<Lie>): Lie => {
  const found = componentKind(part.kind).features.find(({ id }) => id === feature);
  if (found === undefined) throw new Error(`no feature ${feature}`);
  return { feature: found, side: 'any', size: 0.02, extent: 0.4, ...more };
};

describe('a mark', () => {
  it('lies on the surface of the solid, on its side, as long as its sign', () => {
    const [face, ...others] = facesOf(pole, lieOn(pole, 'body', { side: 'field' }));
    expect(others).toEqual([]);
    const { heightM = 0, topRadiusM = 0, buttRadiusM = 0 } = pole.values;
    for (const { at, out } of face?.spots ?? []) {
      const [x, y, z] = sub(at, pole.at);
      expect(Math.hypot(x, y)).toBeCloseTo(buttRadiusM + ((topRadiusM - buttRadiusM) * z) / heightM, 9);
      expect(dot(out ?? [0, 0, 0], [0, 1, 0])).toBeGreaterThan(0.8);
    }
    const heights = (face?.spots ?? []).map(({ at }) => at[2]);
    expect(Math.max(...heights) - Math.min(...heights)).toBeCloseTo(0.84 * 0.4, 9);
  });

  it('that is a strip is as wide as its sign, where a patch grows with its length', () => {
    const widths = [{ strip: true } as const, {}].map(
      (more) => facesOf(pole, lieOn(pole, 'body', { side: 'field', ...more }))[0]?.wide ?? 0,
    );
    expect(widths[0]).toBeCloseTo(0.02, 9);
    expect(widths[1]).toBeGreaterThan(0.1);
  });

  it('on no side in particular lies on four', () => {
    const outs = facesOf(pole, lieOn(pole, 'body', {})).map(({ out }) => out);
    expect(outs).toHaveLength(4);
  });

  it('on a lying body whose side looks along it lies all round the half toward that side', () => {
    const string = partById(world, 'p3.deadend');
    const faces = facesOf(string, lieOn(string, 'body', { side: 'source', extent: 0.05 }));
    const middle = facesOf(string, lieOn(string, 'body', { extent: 0.05 }));
    expect(faces).toHaveLength(4);
    for (const [i, { at, out }] of faces.entries()) {
      expect(Math.abs(out?.[0] ?? 1)).toBeLessThan(1e-9);
      expect(at[0]).toBeLessThan(middle[i]?.at[0] ?? 0);
    }
  });
});

describe('in view', () => {
  const eye = eyeAt(world, 'p2.field');
  const lie = lieOn(pole, 'body', { side: 'field' });
  const faces = facesOf(pole, lie);
  const shareWith = (tank: Vec3 | null): number => {
    const where = tank === null ? world : withPart(world, 'p2.transformer', { at: tank });
    return viewOf(where, pole, faces, eye, true).share;
  };
  const at = faces[0]?.at ?? pole.at;
  const before = add(at, [0.5 * normalise(sub(eye, at))[0], 0.5 * normalise(sub(eye, at))[1], 0]);

  it('is all of a bare mark as it is turned, part of a half covered one, none of a covered one', () => {
    const bare = shareWith(null);
    expect(bare).toBeGreaterThan(0.6);
    // The tank hangs before the mark, its lid at the middle of it.
    const half = shareWith([before[0], before[1], at[2] - 0.6]);
    expect(half).toBeGreaterThan(0);
    expect(half).toBeLessThan(0.9 * bare);
    expect(shareWith([before[0], before[1], at[2] - 0.3])).toBe(0);
  });

  it('is nothing of a mark on the far side, which the part itself covers', () => {
    const view = viewOf(world, pole, facesOf(pole, { ...lie, side: 'road' }), eye, true);
    expect([view.faces, view.share]).toEqual([false, 0]);
  });

  it('a changed outline shows from every side, a piece behind the body does not', () => {
    const tank = partById(world, 'p2.transformer');
    const place: Vec3 = [0, -0.26, 0];
    const seen = (form: Lie['form']) =>
      viewOf(world, tank, facesOf(tank, lieOn(tank, 'tank', { form, place, extent: 0.05 })), eye, form !== 'outline');
    const alone = withPart(world, 'p2.pole', { at: [0, 0, -900] });
    const share = (form: Lie['form']) =>
      viewOf(alone, tank, facesOf(tank, lieOn(tank, 'tank', { form, place, extent: 0.05 })), eye, form !== 'outline')
        .share;
    expect(share('outline')).toBeCloseTo(1, 9);
    expect(share('piece')).toBe(0);
    expect(seen('piece').share).toBe(0);
  });

  it('the less of a patch is seen, the worse it is made out', () => {
    const fault: LaidFault = { id: 'f', kind: 'old-scar', side: 'field', to: null, values: {} };
    const faulty = withPart(world, 'p2.pole', { faults: [fault] });
    const part = partById(faulty, 'p2.pole');
    const [sign] = seenOn(faulty, part, 'p2.field', 'eyes');
    if (sign === undefined) throw new Error('no sign');
    const way = normalise(sub(eye, sign.at));
    const hung = (by: number): number => {
      const where = withPart(faulty, 'p2.transformer', {
        at: add(sign.at, [0.5 * way[0], 0.5 * way[1], by]),
      });
      return seenOn(where, part, 'p2.field', 'eyes')[0]?.margin ?? 0;
    };
    const bare = sign.margin;
    // From far below to just short of all of it.
    const margins = [-2, -0.55, -0.5].map(hung);
    expect(margins[0]).toBeCloseTo(bare, 6);
    expect(margins[2]).toBeLessThan(bare);
    expect(distance(eye, sign.at)).toBeGreaterThan(5);
  });
});
