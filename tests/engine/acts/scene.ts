import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { act } from '../../../src/engine/acts/act.ts';
import type { Act, ActResult } from '../../../src/engine/acts/types.ts';
import { parse } from '../../../src/engine/scenario/parse.ts';
import type { Scenario } from '../../../src/engine/scenario/types.ts';
import { build } from '../../../src/engine/world/build.ts';
import type { World } from '../../../src/engine/world/types.ts';

/** Freezes plain data to its leaves, so that an edit in place throws. */
export function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const inner of Object.values(value)) frozen(inner);
  }
  return value;
}

const file = fileURLToPath(new URL('../../../scenarios/quarry-road-fog.yaml', import.meta.url));

/** The scenario on Quarry Road, checked, with its hash. */
export function quarryRoad(): { scenario: Scenario; hash: string } {
  const parsed = parse(readFileSync(file, 'utf8'), 'quarry-road-fog.yaml');
  if (!parsed.ok) throw new Error(parsed.problems.map(({ message }) => message).join('\n'));
  return { scenario: parsed.scenario, hash: parsed.hash };
}

const { scenario, hash } = quarryRoad();

/** A fresh World of it. */
export const start = (seed = 1): World => frozen(build(scenario, hash, seed));

/** Does the acts one after the other; fails on the first refusal. */
export function played(world: World, ...acts: readonly Act[]): World {
  return acts.reduce((now, each) => {
    const result = act(now, each);
    if (!result.ok) throw new Error(`${JSON.stringify(each)}: ${result.reason}`);
    return frozen(result.world);
  }, world);
}

/** The result of one act, which must be possible. */
export function done(world: World, each: Act): Extract<ActResult, { ok: true }> {
  const result = act(world, each);
  if (!result.ok) throw new Error(`${JSON.stringify(each)}: ${result.reason}`);
  frozen(result.world);
  return result;
}

/** Why an act is refused; null when it is not. */
export function refused(world: World, each: Act): string | null {
  const result = act(world, each);
  if (result.ok) return null;
  if (result.world !== world) throw new Error('a refused act must give the very same World');
  return result.reason;
}

/** Acknowledged, parked clear, engine off. */
export const onScene = (): World =>
  played(start(), { act: 'acknowledge' }, { act: 'park', at: 'clear' }, { act: 'engine', on: false });
