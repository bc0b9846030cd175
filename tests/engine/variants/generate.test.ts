/** Variants of Mill Lane: the same seed gives the same text in any order, and what comes out is a good scene by every rule it was drawn by. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { hazardsIn } from '../../../src/engine/hazards/hazardsIn.ts';
import { parse } from '../../../src/engine/scenario/parse.ts';
import { type Made, settled, summed, variantAt } from '../../../src/engine/variants/generate.ts';
import { plainBounds } from '../../../src/engine/variants/types.ts';
import { build } from '../../../src/engine/world/build.ts';
import { root } from '../../../src/setup/run.mjs';

const text = readFileSync(join(root, 'scenarios/mill-lane-refuse.yaml'), 'utf8');
const bounds = {
  ...plainBounds,
  poleFeet: [40, 45],
  faults: { least: 1, most: 1, kinds: ['tie-broken', 'tank-strap-off', 'guy-broken'], not: [], ofBase: 0 },
  lookAlikes: { least: 1, most: 2 },
};
const options = { seed: 3, bases: [{ id: 'mill-lane-refuse', text }], bounds, most: 12 };
const made = [1, 2].map((number) => variantAt(options, number));
const [first] = made.map(({ variant }) => variant);
const yamls = (all: readonly Made[]): readonly (string | undefined)[] => all.map(({ variant }) => variant?.yaml);

describe('variants of a seed', () => {
  it('are the same whatever the order in which their numbers are drawn', () => {
    const [second] = [variantAt(options, 2)];
    expect(yamls(settled(options, [second, ...made.slice(0, 1)] as readonly Made[]))).toEqual(
      yamls(settled(options, made)),
    );
  });

  it('differ from number to number and from seed to seed', () => {
    expect(new Set([...yamls(made), variantAt({ ...options, seed: 4 }, 1).variant?.yaml]).size).toBe(3);
  });

  it('are drawn again where they are twins', () => {
    const [one] = made as [Made];
    const twins = settled(options, [one, { ...one, number: 2 }]);
    expect(twins[0]).toEqual(one);
    expect(twins[1]?.variant?.yaml).not.toBe(one.variant?.yaml);
    expect(summed(twins.map(({ rejected }) => rejected)).twin).toEqual({ 'the same as an earlier one': 1 });
  });
});

describe('a variant', () => {
  if (first == null) throw new Error('no variant');
  const { scenario } = first;

  it('says in its file what it was drawn from', () => {
    expect(scenario.variant).toEqual({ of: 'mill-lane-refuse', seed: 3, number: 1 });
    expect(first.yaml).toContain('# Drawn and proved by loose-tie generate from mill-lane-refuse, seed 3, number 1.');
  });

  it('keeps to the bounds, and to what the file itself says', () => {
    const parsed = parse(first.yaml, 'variant', { parts: (read) => build(read, '').parts });
    if (!parsed.ok) throw new Error(parsed.problems.map(({ message }) => message).join('\n'));
    expect(parsed.scenario).toEqual(scenario);
    expect(scenario.grade).toBe(first.difficulty.grade);
    expect(bounds.faults.kinds).toContain(scenario.faults[0]?.kind);
    expect(scenario.lookAlikes.length).toBeGreaterThanOrEqual(1);
    const feet = scenario.poles.map(({ lengthM }) => Math.round(lengthM / 0.3048));
    expect(feet.every((each) => bounds.poleFeet.includes(each))).toBe(true);
    const causes = hazardsIn(build(scenario, parsed.hash, 1)).flatMap((hazard) => hazard.causes);
    expect(causes).toContain(scenario.faults[0]?.id);
  });

  it('is proved: no claim fails, and it has a par', () => {
    expect(first.proof.claims.filter(({ outcome }) => outcome === 'fails')).toEqual([]);
    expect(first.proof.par?.minutes).toBeGreaterThan(0);
    expect(first.proof.scenarioHash).toBe(first.hash);
  });

  it('is told in its own words, not in those of the scenario that it came from', () => {
    expect(JSON.stringify(scenario.call)).not.toMatch(/squirrel|bang/i);
    expect(scenario.call.customersOut).toBe(1);
  });
});

it('gives up when the draws run out, rather than give what was not asked for', () => {
  const empty = { ...bounds, faults: { ...bounds.faults, least: 0, most: 0 }, lookAlikes: { least: 0, most: 0 } };
  const none = variantAt({ ...options, bounds: empty, grade: 3, most: 1 }, 1);
  expect(none.variant).toBeNull();
  expect(Object.keys(none.rejected.grade)).toHaveLength(1);
});
