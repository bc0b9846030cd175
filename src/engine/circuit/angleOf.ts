/**
 * The angle at which sources that are not in step meet in a replay: drawn from the World's seeded generator, so that the
 * log fixes it. What is judged is the worst angle; this one only says what happened, and what the deck shows. Left out:
 * how fast the angle slips.
 */
import { abs } from '../math/complex.ts';
import { nextUniform, seedFrom } from '../math/random.ts';
import type { World } from '../world/types.ts';
import { branchesOf } from './elementsOf.ts';

/** The synchronism group that the others' angles are counted from. */
const REFERENCE = 'system';

/** Synchronism groups whose sources are running, in code-unit order. */
export function groupsIn(world: World): string[] {
  const groups = new Set<string>();
  for (const part of world.parts) {
    for (const branch of branchesOf(part))
      if (branch.type === 'source' && abs(branch.emf) > 0) groups.add(branch.group);
  }
  return [...groups].sort();
}

/** Turn of each running group in radians, [0, 2 pi); a group's angle does not depend on which others run. */
export function angleOf(world: World): Readonly<Record<string, number>> {
  const angles: Record<string, number> = {};
  for (const group of groupsIn(world)) {
    const [uniform] = nextUniform(seedFrom(`${group} ${world.chance.join(' ')}`));
    angles[group] = group === REFERENCE ? 0 : 2 * Math.PI * uniform;
  }
  return angles;
}
