/** The fog scene as a World, small worlds of a few parts, and changes to them. */
import { readFileSync } from 'node:fs';
import { parse } from '../../../src/engine/scenario/parse.ts';
import { build } from '../../../src/engine/world/build.ts';
import { partById, withPart } from '../../../src/engine/world/edit.ts';
import { type PartSpec, partForm } from '../../../src/engine/world/partForm.ts';
import type { LaidFault, Part, PointId, World } from '../../../src/engine/world/types.ts';

const file = 'scenarios/quarry-road-fog.yaml';
const parsed = parse(readFileSync(file, 'utf8'), file);

/** The scene at the start. */
export function fogScene(seed = 1): World {
  if (!parsed.ok) throw new Error(parsed.problems.map(({ message }) => message).join('\n'));
  return build(parsed.scenario, parsed.hash, seed);
}

/** A part of a small world: every net as written, at the origin unless told. */
export const piece = (
  id: string,
  kind: string,
  more: Partial<PartSpec> = {},
  faults: readonly LaidFault[] = [],
): Part => ({
  ...partForm({ id, kind, owner: null, where: 'test', at: [0, 0, 0], ...more }),
  ...(more.nets ? { nets: more.nets } : {}),
  faults,
});

/** The fog scene's site, people and tools around other parts. */
export const tinyWorld = (parts: readonly Part[], jumpers: readonly (readonly PointId[])[] = []): World =>
  withJumpers({ ...fogScene(), parts }, jumpers);

export const withJumpers = (world: World, jumpers: readonly (readonly PointId[])[]): World => ({
  ...world,
  jumpers: jumpers.map((points, i) => ({ id: `jumper-${i + 1}`, tool: 'ground-1', points })),
});

/** Writes states to a part, the others left. */
export const withState = (world: World, part: string, state: Readonly<Record<string, string>>): World =>
  withPart(world, part, { state: { ...partById(world, part).state, ...state } });

export const laid = (
  kind: string,
  values: Readonly<Record<string, number>> = {},
  to: PointId | null = null,
  id = kind,
): LaidFault => ({ id, kind, side: 'any', to, values });
