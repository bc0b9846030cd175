import { describe, expect, test } from 'vitest';
import { exposuresOf } from '../../../src/engine/hazards/exposuresOf.ts';
import type { Exposure, Reach } from '../../../src/engine/hazards/types.ts';
import { withTool } from '../../../src/engine/world/edit.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { fogScene } from '../circuit/scene.ts';
import { at, grounded, mainOpen, ready, setApart, setStopped, tapOut, touching, wearing } from './fog.ts';

const scene = ready(fogScene());
const met = (reach: Reach, world: World): readonly Exposure[] => exposuresOf(reach, world, world);
const contactOf = (world: World, stand: string, point: string, through = {}): Exposure | undefined =>
  met(touching(world, stand, point, { stick: null, gloves: null, ...through }), world).find(
    ({ mechanism }) => mechanism === 'contact',
  );
const value = (exposure: Exposure | undefined, unit: string, list: 'now' | 'quantities' = 'now'): number =>
  exposure?.[list].find((quantity) => quantity.unit === unit)?.value ?? Number.NaN;

describe('the piece of pole ground left hanging', () => {
  const stub = contactOf(scene, 'p2.butt', 'p2.ground-lead/low');

  test('kills whoever touches it from the ground: some 7 kV behind 100 kilohm, divided by the wet wood', () => {
    expect(stub?.severity).toBe('fatal');
    expect(stub?.potentiallyFatal).toBe(true);
    expect(stub?.strikes).toBe(true);
    expect(value(stub, 'V')).toBeGreaterThan(6000);
    // Ohm's law by hand: some 7 kV over 60 + 40 kilohm and a body of 650 ohm, wood in parallel aside.
    expect(value(stub, 'A') / (7070 / 100650)).toBeCloseTo(1, 1);
  });

  test('drives amperes once what leaks has flashed over', () => {
    expect(value(stub, 'A', 'quantities')).toBeGreaterThan(1);
  });

  test('has five causes: crack, burn, burned-off bond, stolen copper, the cord', () => {
    expect(stub?.causes).toEqual(['bond', 'burn', 'copper', 'cord', 'crack']);
  });

  test('hurts nobody who stands beside it and touches nothing', () => {
    expect(met(at(scene, 'p2.butt'), scene)).toEqual([]);
  });

  test('is too near for whoever strikes or works there', () => {
    const near = (reach: Reach) => met(reach, scene).filter(({ part }) => part === 'p2.ground-lead');
    expect(near({ ...at(scene, 'p2.butt'), disturbs: 'p2.pole' }).map(({ mechanism }) => mechanism)).toContain(
      'approach',
    );
    expect(near({ ...at(scene, 'p2.butt'), works: true }).every(({ potentiallyFatal }) => potentiallyFatal)).toBe(true);
  });

  test('is still one re-start away when only the set was stopped, and a closed main away when both were worked', () => {
    for (const world of [setStopped(scene), mainOpen(scene)]) {
      const exposure = contactOf(world, 'p2.butt', 'p2.ground-lead/low');
      expect(exposure?.potentiallyFatal).toBe(true);
      expect(exposure?.strikes).toBe(false);
      expect(value(exposure, 'V')).toBeLessThan(50);
    }
  });

  test('is still one stranger away with the set kept apart and the tap cutout untagged', () => {
    expect(contactOf(setApart(scene), 'p2.butt', 'p2.ground-lead/low')?.potentiallyFatal).toBe(true);
  });

  test('hurts nobody once both sources are kept apart, and grounded', () => {
    expect(contactOf(tapOut(scene), 'p2.butt', 'p2.ground-lead/low')).toBeUndefined();
    expect(contactOf(grounded(scene), 'p2.butt', 'p2.ground-lead/low')).toBeUndefined();
  });
});

describe('a stick on the live tap', () => {
  const tap = (world: World, stick: string) => contactOf(world, 'p1.butt', 'p1.tap-cutout/top', { stick });

  test('holds when rated, in test, wiped and dry', () => {
    expect(tap(scene, 'stick-1')).toBeUndefined();
  });

  test('counts for nothing past its two years, however clean', () => {
    const clean = withTool(scene, 'stick-2', { wet: false, checks: { wipe: { minute: 1, ok: true } } });
    const exposure = tap(clean, 'stick-2');
    expect(exposure?.potentiallyFatal).toBe(true);
    expect(exposure?.failed).toContain('tool-in-test');
    expect(exposure?.failed).not.toContain('tool-clean-dry');
    expect(exposure?.causes).toContain('old-stick');
  });

  test('counts for nothing wet from the fog', () => {
    expect(tap(withTool(scene, 'stick-1', { wet: true }), 'stick-1')?.failed).toContain('tool-clean-dry');
  });

  test('is judged as it was when it was used, not as the fog left it afterwards', () => {
    const reach = touching(scene, 'p1.butt', 'p1.tap-cutout/top', { stick: 'stick-1', gloves: null });
    expect(exposuresOf(reach, scene, withTool(scene, 'stick-1', { wet: true }))).toEqual([]);
  });
});

describe('gloves on a live meter', () => {
  const jaw = (world: World, gloves: string | null) => contactOf(world, 'a.yard', 'a.meter/line1', { gloves });
  const gloved = wearing(scene, 'gloves-1');

  test('120 V through a bare hand is in the fibrillation band', () => {
    const exposure = jaw(scene, null);
    expect(exposure?.severity).toBe('fatal');
    // Some 120 V over 1.13 kilohm (IEC 479-1 Table 1, 5th percentile at 120 V) and the grounds in the way.
    expect(value(exposure, 'A') / (value(exposure, 'V') / 1140)).toBeCloseTo(1, 1);
  });

  test('hold when rated, in test, air-tested and worn', () => {
    expect(jaw(gloved, 'gloves-1')).toBeUndefined();
  });

  test('count for nothing without an air test, past six months, or rated too low', () => {
    expect(jaw(withTool(gloved, 'gloves-1', { checks: {} }), 'gloves-1')?.failed).toContain('gloves-air-tested');
    expect(jaw(withTool(gloved, 'gloves-1', { tested: '2026-03-01' }), 'gloves-1')?.failed).toContain('gloves-in-test');
    expect(jaw(withTool(gloved, 'gloves-1', { ratedVolts: 100 }), 'gloves-1')?.failed).toContain('gloves-rated');
  });
});
