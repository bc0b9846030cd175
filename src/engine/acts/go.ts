/** Walking to a standing point; aloft one gets by hooks or bucket only. */
import { distance } from '../math/vec3.ts';
import { standById, trainee, withPerson } from '../world/edit.ts';
import type { World } from '../world/types.ts';
import { type ActKind, event, outcome } from './kind.ts';
import { onFoot, standHere } from './presence.ts';

/** Metres that one walks in a minute with an eye on the ground and overhead (estimate, 1 m/s). */
const pace = 60;

/** The World with the trainee at a stand. */
export const withTraineeAt = (world: World, stand: string, aloftBy: 'hooks' | 'bucket' | null): World =>
  withPerson(world, trainee(world).id, { at: stand, aloftBy });

export const go: ActKind<'go'> = {
  minutes: (world, act) => {
    const from = standHere(world);
    const to = standById(world, act.to);
    return from && to ? Math.max(1, Math.ceil(distance(from.feet, to.feet) / pace)) : 1;
  },
  refuse: (world, act) => {
    const away = onFoot(world);
    if (away) return away;
    const to = standById(world, act.to);
    if (!to) return 'there is no such place';
    if (standHere(world)?.aloft) return 'you are aloft, come down first';
    if (to.aloft) return 'one gets there with hooks or a bucket only';
    return trainee(world).at === act.to ? 'you stand there already' : null;
  },
  apply: (world, act) =>
    outcome(withTraineeAt(world, act.to, null), [
      event('done', null, `You stand: ${standById(world, act.to)?.name ?? act.to}.`),
    ]),
  offers: (world) =>
    world.stands
      .filter(({ aloft }) => aloft === null)
      .map((stand) => ({
        act: { act: 'go', to: stand.id },
        label: `Walk to: ${stand.name}`,
        by: 'feet',
        about: null,
      })),
};

/** The ground stand nearest to the truck. */
export function besideTruck(world: World): string {
  const [first, ...others] = world.stands.filter(({ aloft }) => aloft === null);
  if (!first) throw new Error('a scene without a stand on the ground');
  const away = (feet: World['truck']['at']): number => distance(feet, world.truck.at);
  return others.reduce((best, stand) => (away(stand.feet) < away(best.feet) ? stand : best), first).id;
}
