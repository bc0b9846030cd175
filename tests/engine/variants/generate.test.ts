/** Variants of Mill Lane: the same seed gives the same text, and what comes out is a good scene by every rule it was drawn by. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { hazardsIn } from '../../../src/engine/hazards/hazardsIn.ts';
import { parse } from '../../../src/engine/scenario/parse.ts';
import { generate } from '../../../src/engine/variants/generate.ts';
import { plainBounds } from '../../../src/engine/variants/types.ts';
import { build } from '../../../src/engine/world/build.ts';
import { root } from '../../../src/setup/run.mjs';

const base = readFileSync(join(root, 'scenarios/mill-lane-refuse.yaml'), 'utf8');
const bounds = { ...plainBounds, faults: [1, 1], lookAlikes: [1, 2] } as const;
const options = { seed: 3, count: 1, bounds, most: 12 };
const { variants, draws, rejected } = generate(base, options);
const [first] = variants;

describe('generate', () => {
  it('gives the same text for the same seed, and another for another', () => {
    expect(generate(base, options).variants.map(({ yaml }) => yaml)).toEqual(variants.map(({ yaml }) => yaml));
    expect(first?.yaml).not.toBe(generate(base, { ...options, seed: 4 }).variants[0]?.yaml);
  });

  it('says of every draw what became of it', () => {
    expect(variants).toHaveLength(1);
    expect(Object.values(rejected).reduce((sum, each) => sum + each, variants.length)).toBe(draws);
  });

  it('keeps to the bounds, and to what the file itself says', () => {
    if (first === undefined) throw new Error('no variant');
    const parsed = parse(first.yaml, 'variant', { parts: (scenario) => build(scenario, '').parts });
    if (!parsed.ok) throw new Error(parsed.problems.map(({ message }) => message).join('\n'));
    expect(parsed.scenario).toEqual(first.scenario);
    expect(parsed.scenario.grade).toBe(first.difficulty.grade);
    expect(parsed.scenario.faults).toHaveLength(1);
    expect(parsed.scenario.lookAlikes.length).toBeGreaterThanOrEqual(1);
    const feet = parsed.scenario.poles.map(({ lengthM }) => Math.round(lengthM / 0.3048));
    expect(feet.every((each) => bounds.poleFeet.includes(each))).toBe(true);
    const causes = hazardsIn(build(parsed.scenario, parsed.hash, 1)).flatMap((hazard) => hazard.causes);
    expect(causes).toContain(parsed.scenario.faults[0]?.id);
  });

  it('lets none through whose proof fails or that has no par', () => {
    expect(first?.proof.claims.filter(({ outcome }) => outcome === 'fails')).toEqual([]);
    expect(first?.proof.par?.minutes).toBeGreaterThan(0);
  });

  it('gives up when the draws run out, rather than give what was not asked for', () => {
    const none = generate(base, {
      ...options,
      bounds: { ...bounds, faults: [0, 0], lookAlikes: [0, 0] },
      grade: 3,
      most: 1,
    });
    expect(none.variants).toEqual([]);
    expect(none.rejected.grade).toBe(1);
  });
});
