/** Sleeves with gloves, hard hats below what may fall, and the distance of the rule's own table: read where the rule says so. */
import { describe, expect, test } from 'vitest';
import { approachDistance, tableVolts } from '../../../src/engine/hazards/approach.ts';
import { exposuresOf } from '../../../src/engine/hazards/exposuresOf.ts';
import type { Exposure, Reach } from '../../../src/engine/hazards/types.ts';
import { minimumApproach } from '../../../src/engine/standards/approachDistance.ts';
import { equationApproach } from '../../../src/engine/standards/approachEquation.ts';
import { fallEnergy, helmetJoules, recordableJoules } from '../../../src/engine/standards/droppedObject.ts';
import { partById, withPart, withTool } from '../../../src/engine/world/edit.ts';
import type { Tool, World } from '../../../src/engine/world/types.ts';
import { model, only } from '../circuit/models/scenes.ts';
import { fogScene, laid } from '../circuit/scene.ts';
import { at, ready, touching, wearing } from './fog.ts';

const worn = (id: string, kind: string, more: Partial<Tool> = {}): Tool => ({
  id,
  kind,
  name: kind,
  ratedVolts: null,
  tested: null,
  wet: false,
  checks: {},
  faults: [],
  words: {},
  ...more,
});
const carrying = (world: World, tool: Tool): World => ({ ...world, tools: [...world.tools, tool] });

describe('gloves at a live line, 29 CFR 1910.269(l)(4)(i)', () => {
  const fog = ready(fogScene());
  const sleeves = worn('sleeves-1', 'sleeves', { ratedVolts: 17000, tested: fog.given.crew.today });
  const scene = carrying(fog, sleeves);
  const gloved = wearing(scene, 'gloves-1');
  const sleeved = wearing(scene, 'gloves-1', 'sleeves-1');
  /** Hands at work aloft, the body itself outside the distance: off to the side of the insulator. */
  const aside = (world: World): Reach => {
    const [x, y, z] = partById(world, 'p2.insulator').at;
    return { ...at(world, 'p2.work'), at: [x, y - 1.1, z - 1.6], works: true };
  };
  const near = (world: World, reach = aside(world)): Exposure | undefined =>
    exposuresOf(reach, world, world).find(({ hazard }) => hazard === 'approach:p2.clamp/line');

  test('do not alone let hands near a live part that is not worked on: sleeves are lacking', () => {
    expect(near(gloved)?.failed).toContain('sleeves');
    expect(near(sleeved)).toBeUndefined();
  });

  test('let them at the part that is worked on without', () => {
    const reach = {
      ...aside(gloved),
      touches: touching(gloved, 'p2.work', 'p2.insulator/conductor', { stick: null, gloves: 'gloves-1' }).touches,
    };
    expect(near(gloved, reach)).toBeUndefined();
  });

  test('with sleeves too low, past their year (Table I-5) or torn count as without', () => {
    const torn = [laid('glove-cut', {}, null, 'torn')];
    for (const spoilt of [{ ratedVolts: 1000 }, { tested: '2020-01-01' }, { tested: null }, { faults: torn }]) {
      expect(near(withTool(sleeved, 'sleeves-1', spoilt))?.failed).toContain('sleeves');
    }
  });

  test('nobody asks for sleeves of who wears no gloves that count: those are lacking first', () => {
    const bare = near(wearing(scene, 'sleeves-1'));
    expect(bare?.potentiallyFatal).toBe(true);
    expect(bare?.failed).not.toContain('sleeves');
  });

  test('do not make the body itself welcome, sleeves or not', () => {
    const [x, y, z] = partById(sleeved, 'p2.insulator').at;
    expect(near(sleeved, { ...aside(sleeved), at: [x, y - 0.3, z - 1.6] })).toBeDefined();
  });
});

describe('a hard hat below what may fall, 29 CFR 1910.135(a)(1)', () => {
  const hung = withPart(only(model('wye-bank')), 'p2.cutout-b', { faults: [laid('fuse-tube-hung', {}, null, 'hung')] });
  const listed = carrying(hung, worn('hat-1', 'hard-hat'));
  const helmeted = wearing(listed, 'hat-1');
  const tube = (world: World, joules: number): Exposure | undefined => {
    const cutout = partById(world, 'p2.cutout-b');
    const reach: Reach = { ...at(world, 'p2.butt'), at: [1, 0, cutout.at[2] - joules / fallEnergy(1.5, 1)] };
    return exposuresOf(reach, world, world).find(({ mechanism }) => mechanism === 'struck-by');
  };
  const middle = (helmetJoules + recordableJoules) / 2;

  test('makes between 40 J and its test energy serious what would be fatal bareheaded', () => {
    expect(tube(helmeted, middle)).toMatchObject({ severity: 'serious', potentiallyFatal: false });
    expect(tube(listed, middle)).toMatchObject({ severity: 'fatal', potentiallyFatal: true });
    expect(tube(listed, middle)?.failed).toContain('hard-hat');
    expect(tube(helmeted, middle)?.failed).not.toContain('hard-hat');
  });

  test('makes minor what hurts bareheaded, and holds nothing beyond what it is tested with', () => {
    expect([tube(helmeted, 20)?.severity, tube(listed, 20)?.severity]).toEqual(['minor', 'serious']);
    expect([tube(helmeted, 60)?.severity, tube(listed, 60)?.severity]).toEqual(['fatal', 'fatal']);
  });

  test('that is damaged is none; where the scene lists none the crew wear theirs', () => {
    const cracked = { faults: [laid('cover-damaged', {}, null, 'cracked')] };
    expect(tube(withTool(helmeted, 'hat-1', cracked), middle)?.severity).toBe('fatal');
    expect(tube(hung, middle)?.severity).toBe('serious');
  });
});

describe('the distance that a hazard takes, 29 CFR 1910.269 Tables R-5 and R-6', () => {
  const fog = fogScene();
  const high = (altitudeM: number): World => ({ ...fog, site: { ...fog.site, altitudeM } });

  test.each([
    [480 / Math.sqrt(3), 0, 0],
    [480, 0, 0.33],
    [7200, 900, 0.65],
    [7200, 901, 0.65 * 1.02],
    [7200, 2000, 0.65 * 1.11],
    [14400, 3000, 0.77 * 1.2],
    [19920, 0, 0.77],
  ])('%f V to ground at %d m: %f m', (volts, altitude, metres) => {
    expect(approachDistance(high(altitude), volts)).toBeCloseTo(metres, 9);
  });

  test('is the one of card and report, and never shorter than the equation’s', () => {
    for (const volts of [2400, 7200, 7620, 7970, 14400, 19920]) {
      for (const altitude of [0, 1500, 4000]) {
        const taken = approachDistance(high(altitude), volts);
        expect(taken).toBe(minimumApproach(tableVolts(volts), 'phase-to-ground', altitude).metres);
        expect(taken).toBeGreaterThanOrEqual(equationApproach(tableVolts(volts), 'phase-to-ground', altitude) - 1e-9);
      }
    }
  });

  test('is said with its table, and with Table R-5 where that counts', () => {
    const scene = ready(high(2000));
    const reach: Reach = { ...at(scene, 'p2.work'), works: true };
    const found = exposuresOf(reach, scene, scene).find(({ mechanism }) => mechanism === 'approach');
    expect(found?.source).toBe('29 CFR 1910.269 Table R-6 with Table R-5');
    expect(found?.quantities.find(({ name }) => name === 'minimum approach distance')?.value).toBeCloseTo(0.7215, 9);
  });

  test('480 V between phases is 277 V to ground, for which the rule asks to avoid contact only', () => {
    expect(minimumApproach(480 / Math.sqrt(3), 'phase-to-ground').avoidContact).toBe(true);
  });
});
