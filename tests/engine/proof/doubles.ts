/** A drill and its double, in which all that moves neither metal nor truck nor trainee is waited for instead. */
import { act, minutesOf, refusalOf } from '../../../src/engine/acts/act.ts';
import { possibleActs } from '../../../src/engine/acts/possibleActs.ts';
import type { Act } from '../../../src/engine/acts/types.ts';
import { canonicalJson } from '../../../src/engine/math/hash.ts';
import { nextInteger, seedFrom } from '../../../src/engine/math/random.ts';
import { movesNothing, moving } from '../../../src/engine/proof/arrangements.ts';
import { calm } from '../../../src/engine/proof/learned/reduced.ts';
import { trainee } from '../../../src/engine/world/edit.ts';
import type { World } from '../../../src/engine/world/types.ts';

/** Whether the act is one by which arrangements are explored. */
export const moves = (each: Act): boolean => moving.includes(each.act) && !movesNothing(each);
/** The call taken, and nothing comes by chance. */
export const called = (start: World): World => ({ ...act(start, { act: 'acknowledge' }).world, chance: calm });
/** One act on; exposures stop nothing. */
export const on = (world: World, each: Act): World => ({ ...act(world, each).world, ended: null, chance: calm });

/** What of a World the arrangements are about. */
export const arranged = (world: World) => ({
  parts: world.parts.map(({ tags: _, ...part }) => part),
  place: world.truck.place,
  at: trainee(world).at,
  aloftBy: trainee(world).aloftBy,
  minute: world.clock.minute,
});

const untaken = new Set<Act['act']>(['ground', 'unground', 'hand-over', 'close-out']);

interface Walk {
  readonly seed: number;
  readonly steps: number;
}

/** Where a drill drawn at random and its double part, in words; null when they do not. */
export function strayed(start: World, { seed, steps }: Walk): string | null {
  let random = seedFrom(seed);
  let drill = called(start);
  let double = drill;
  for (let step = 0; step < steps; step++) {
    const acts = possibleActs(drill)
      .map((offer) => offer.act)
      .filter((each) => !untaken.has(each.act));
    // Every other time something that moves, or walks would go nowhere.
    const some = step % 2 === 0 ? acts.filter(moves) : acts;
    const [drawn, next] = nextInteger(random, 0, some.length - 1);
    random = next;
    const each = some[drawn] as Act;
    const where = `step ${step}, ${JSON.stringify(each)}`;
    const minutes = minutesOf(drill, each);
    drill = on(drill, each);
    if (moves(each)) {
      const refused = refusalOf(double, each);
      if (refused !== null) return `${where}: ${refused}`;
      double = on(double, each);
    } else if (minutes > 0) {
      double = on(double, { act: 'wait', minutes });
    }
    if (canonicalJson(arranged(double)) !== canonicalJson(arranged(drill))) return `${where}: another arrangement`;
  }
  return null;
}
