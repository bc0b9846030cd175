import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import type { Act } from '../../src/engine/acts/types.ts';
import type { Exposure } from '../../src/engine/hazards/types.ts';
import { parse } from '../../src/engine/scenario/parse.ts';
import { build } from '../../src/engine/world/build.ts';
import type { World } from '../../src/engine/world/types.ts';
import { playDrill } from '../logs/playDrill.ts';
import { type Pattern, patterns } from './patterns.ts';

function start(scene: string): World {
  const text = readFileSync(fileURLToPath(new URL(`./${scene}.yaml`, import.meta.url)), 'utf8');
  const parsed = parse(text, `${scene}.yaml`);
  if (!parsed.ok) throw new Error(parsed.problems.map(({ message }) => message).join('\n'));
  return build(parsed.scenario, parsed.hash, 1);
}

const exposures = (scene: string, acts: readonly Act[]): readonly Exposure[] =>
  playDrill(start(scene), acts, 1).steps.flatMap((step) => step.exposures);

const isReported = ({ met }: Pattern, { mechanism, part, quantities, potentiallyFatal }: Exposure): boolean =>
  potentiallyFatal &&
  mechanism === met.mechanism &&
  met.part.test(part) &&
  quantities.some(({ unit, value }) => unit === met.unit && value >= met.from && value <= met.to);

describe.each(patterns)('$report: $what', (pattern) => {
  it('done as reported, ends in an exposure of that kind and size', () => {
    const met = exposures(pattern.scene, pattern.asReported);
    expect(met.filter((each) => isReported(pattern, each)).length).toBeGreaterThan(0);
  });

  it('done with the missed look and control, exposes nobody', () => {
    expect(exposures(pattern.scene, pattern.controlled)).toEqual([]);
  });
});
