/** Where things are: common single-phase framing on a 40 ft pole (common practice, each utility has its own standard). */
import { describe, expect, it } from 'vitest';
import { distance, type Vec3 } from '../../../src/engine/math/vec3.ts';
import { partById, pointAt, pointsOf, standById } from '../../../src/engine/world/edit.ts';
import { turned } from '../../../src/engine/world/points.ts';
import { start } from '../acts/scene.ts';

const world = start();
const at = (point: string): Vec3 => {
  const found = pointAt(world, point);
  if (found === null) throw new Error(`no point ${point}`);
  return found;
};
const z = (point: string): number => at(point)[2];
const phase = z('p2.insulator/conductor');
const below = (point: string): number => phase - z(point);

describe('pole p2', () => {
  it('stands 34 ft out of the ground, the setting of a 40 ft pole being 6 ft (ANSI O5.1)', () => {
    expect(partById(world, 'p2.pole').values.heightM).toBeCloseTo(34 * 0.3048, 2);
  });

  it('carries the groove of its pin insulator 0.25 to 0.35 m above the roof', () => {
    const over = phase - (partById(world, 'p2.pole').values.heightM ?? 0);
    expect(over).toBeGreaterThanOrEqual(0.25);
    expect(over).toBeLessThanOrEqual(0.35);
  });

  it('has from the top down: phase, cutout, transformer bushing, neutral, service; each where the trade puts it', () => {
    const cutout = phase - partById(world, 'p2.cutout').at[2];
    expect(cutout).toBeGreaterThanOrEqual(0.6);
    expect(cutout).toBeLessThanOrEqual(1.0);
    expect(below('p2.neutral-spool/neutral')).toBeGreaterThanOrEqual(1.2);
    expect(below('p2.neutral-spool/neutral')).toBeLessThanOrEqual(1.8);
    const down = [
      'p2.clamp/line',
      'p2.cutout/top',
      'p2.cutout/bottom',
      'p2.transformer/h1',
      'p2.transformer/x2',
      'a.drop/x2',
    ];
    expect(down.map(z)).toEqual(down.map(z).sort((a, b) => b - a));
    expect(z('p2.neutral-spool/neutral')).toBeGreaterThan(z('a.drop/x2'));
    expect(z('p2.neutral-spool/neutral')).toBeLessThan(z('p2.transformer/h1'));
  });

  it('has the line side of the cutout up, beside it the arrester, at its foot the ground lead', () => {
    expect(z('p2.cutout/top')).toBeGreaterThan(z('p2.cutout/bottom'));
    expect(distance(at('p2.arrester/line'), at('p2.cutout/top'))).toBeLessThan(1);
    expect(z('p2.arrester/foot')).toBeLessThan(z('p2.arrester/line'));
    expect(at('p2.cutout/top')[0]).toBeLessThan(at('p2.cutout/bottom')[0] + 0.2);
  });

  it('has the lead of the hot-line clamp end within a hand of the top of its cutout', () => {
    expect(distance(at('p2.clamp/lead'), at('p2.cutout/top'))).toBeLessThan(0.25);
  });

  it('straps the tank to the neutral, both ends where these are', () => {
    expect(distance(at('p2.tank-strap/neutral'), at('p2.neutral-spool/neutral'))).toBeLessThan(0.25);
    const [tx, ty] = partById(world, 'p2.transformer').at;
    const [sx, sy] = at('p2.tank-strap/tank');
    expect(Math.hypot(sx - tx, sy - ty)).toBeLessThan(0.3);
  });

  it('leads copper from the upper lead by the bond to the rod without a jump of more than an arm', () => {
    const way = ['p2.upper-lead/upper', 'p2.ground-bond/upper', 'p2.ground-bond/lead', 'p2.ground-lead/top'];
    for (const [i, point] of way.slice(1).entries()) expect(distance(at(way[i] ?? ''), at(point))).toBeLessThan(0.35);
    expect(distance(at('p2.ground-lead/foot'), at('p2.ground-rod/rod'))).toBeLessThan(0.6);
  });

  it('keeps the solids of what hangs on it apart', () => {
    const hung = ['p2.cutout', 'p2.arrester', 'p2.transformer'].map((id) => partById(world, id));
    for (const [i, a] of hung.entries()) {
      for (const b of hung.slice(i + 1)) expect(distance(a.at, b.at)).toBeGreaterThan(0.45);
    }
  });
});

describe('spans and services', () => {
  it('are clear of the ground by 5 m and more along their sag', () => {
    for (const id of ['s1.phase', 's2.phase', 's1.neutral', 's2.neutral', 'a.drop', 'b.drop']) {
      const { at: from, end, values } = partById(world, id);
      for (let t = 0; t <= 1; t += 0.05) {
        const straight = from[2] + ((end?.[2] ?? 0) - from[2]) * t;
        expect(straight - (values.sagM ?? 0) * 4 * t * (1 - t)).toBeGreaterThanOrEqual(5 - 1e-9);
      }
    }
  });

  it('end where the insulators hold them', () => {
    expect(distance(at('s1.phase/b'), at('p2.insulator/conductor'))).toBeLessThan(0.7);
    expect(distance(at('s1.phase/a'), at('p1.deadend/conductor'))).toBeLessThan(0.4);
    expect(distance(at('s2.phase/b'), at('p3.deadend/conductor'))).toBeLessThan(0.4);
  });

  it('anchor the dead end by a guy on the side away from the pull', () => {
    const { at: top, end } = partById(world, 'p3.guy');
    expect(end?.[0]).toBeGreaterThan(top[0]);
    expect(end?.[2]).toBe(0);
  });
});

describe('points', () => {
  it('turn with their part: a front of −y looks to the load after a quarter turn', () => {
    const quarter = turned([0, -1, 0.5], Math.PI / 2);
    expect(quarter.map((v) => Math.round(v * 1e9) / 1e9 + 0)).toEqual([1, 0, 0.5]);
    const [x, y] = at('p2.cutout/top');
    const hung = partById(world, 'p2.cutout').at;
    expect(x - hung[0]).toBeCloseTo(-0.12, 9);
    expect(y - hung[1]).toBeCloseTo(0, 9);
  });

  it('exist for every terminal with bare metal, above the ground, and for nothing else', () => {
    for (const point of pointsOf(world)) expect(z(point)).toBeGreaterThanOrEqual(0);
    for (const none of ['', '/', 'p2.cutout', 'p2.cutout/', 'p2.cutout/x', 'nobody/top', 'a.drop/x1']) {
      expect(pointAt(world, none)).toBeNull();
    }
  });
});

describe('stands', () => {
  it('lie on the ground or within reach of the pole that they are up', () => {
    for (const { feet, aloft, near } of world.stands) {
      if (aloft === null) expect(feet[2]).toBe(0);
      else {
        const pole = partById(world, `${aloft.pole}.pole`);
        expect(Math.hypot(feet[0] - pole.at[0], feet[1] - pole.at[1])).toBeLessThan(0.75);
        expect(feet[2]).toBeLessThan(pole.values.heightM ?? 0);
      }
      expect(near).not.toBeNull();
    }
  });

  it('have the road on one side of the line and the field on the other', () => {
    expect(standById(world, 'p2.road')?.feet[1]).toBeLessThan(-5);
    expect(standById(world, 'p2.field')?.feet[1]).toBeGreaterThan(5);
  });

  it('below the work are outside the minimum approach distance of 0.65 m (29 CFR 1910.269 Table R-6) to the phase', () => {
    const feet = standById(world, 'p2.aloft')?.feet;
    const overhead = (feet?.[2] ?? 0) + 1.9;
    expect(z('p2.cutout/bottom') - overhead).toBeGreaterThan(0.65);
  });
});
