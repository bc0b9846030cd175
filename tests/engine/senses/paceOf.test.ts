import { describe, expect, it } from 'vitest';
import { paceOf } from '../../../src/engine/senses/paceOf.ts';
import { speedUnderLoad } from '../../../src/engine/standards/generator.ts';
import { withPart } from '../../../src/engine/world/edit.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { start } from '../acts/scene.ts';

/** The set of the first house, cabled into its panel, with so much switched on. */
const loaded = (watts: number): World => {
  const world = start();
  const load = world.parts.find(({ kind, premises }) => kind === 'household-load' && premises === 'a');
  if (load === undefined) throw new Error('the first house has no load');
  return withPart(world, load.id, { values: { ...load.values, leg1W: watts / 2, leg2W: watts / 2, bothW: 0 } });
};

describe('the note of an engine set', () => {
  it('sags as more is switched on in the house that it feeds', () => {
    const [light, heavy] = [paceOf(loaded(200), 'a.generator'), paceOf(loaded(5000), 'a.generator')];
    expect(light).toBeGreaterThan(heavy + 0.02);
  });

  it('is three per cent sharp with nothing on it, and never under nine tenths', () => {
    expect(speedUnderLoad(0)).toBeCloseTo(1.03, 6);
    expect(speedUnderLoad(1)).toBeCloseTo(0.98, 6);
    expect(speedUnderLoad(9)).toBe(0.9);
  });

  it('of anything else stays as it is', () => {
    expect(paceOf(start(), 'p2.insulator')).toBe(1);
    expect(paceOf(start(), 'nobody')).toBe(1);
  });
});
