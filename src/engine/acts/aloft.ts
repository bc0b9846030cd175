/** Going up by hooks or bucket, to below the work or into it, and coming down. */

import { toolKind } from '../catalogue/tools.ts';
import { length, sub } from '../math/vec3.ts';
import { trainee } from '../world/edit.ts';
import type { Stand, World } from '../world/types.ts';
import { withTraineeAt } from './go.ts';
import { type ActKind, event, outcome } from './kind.ts';
import { onFoot, standHere, standing } from './presence.ts';

const standAloft = (world: World, pole: string, zone: 'below' | 'work'): Stand | null =>
  world.stands.find(({ aloft }) => aloft?.pole === pole && aloft.zone === zone) ?? null;

/** The ground stand nearest below a stand aloft. */
export function standBelow(world: World, aloft: Stand): Stand {
  const aside = (stand: Stand): number => {
    const [x, y] = sub(stand.feet, aloft.feet);
    return length([x, y, 0]);
  };
  const grounded = world.stands.filter((stand) => stand.aloft === null);
  const [first, ...others] = grounded;
  if (!first) throw new Error('a scene without a stand on the ground');
  return others.reduce((best, stand) => (aside(stand) < aside(best) ? stand : best), first);
}

const hasMeans = (world: World, by: 'hooks' | 'bucket'): boolean =>
  world.tools.some((tool) => toolKind(tool.kind).lifts === by);

export const aloft: ActKind<'aloft'> = {
  minutes: (_world, act) => (act.by === 'hooks' ? 4 : 5),
  refuse: (world, act) => {
    const away = onFoot(world);
    if (away) return away;
    const to = standAloft(world, act.pole, act.zone);
    if (!to) return 'nobody gets up there';
    if (!hasMeans(world, act.by)) return 'there is nothing on the truck to get up with';
    const here = standHere(world);
    if (here?.id === to.id) return 'you are there already';
    if (here?.aloft) {
      if (here.aloft.pole !== act.pole) return 'you are up another pole';
      return trainee(world).aloftBy === act.by ? null : 'you went up another way';
    }
    return here?.id === standBelow(world, to).id ? null : 'you are not at the foot of that pole';
  },
  apply: (world, act) => {
    const to = standAloft(world, act.pole, act.zone);
    if (!to) throw new Error(`no stand aloft at ${act.pole}`);
    const after = withTraineeAt(world, to.id, act.by);
    const minutes = aloft.minutes(world, act);
    return outcome(
      after,
      [event('done', act.pole, `You are ${act.by === 'hooks' ? 'on the pole' : 'in the bucket'}: ${to.name}.`)],
      [standing(after, minutes * 60)],
    );
  },
  offers: (world) =>
    world.stands.flatMap(({ aloft: place }) =>
      place
        ? (['hooks', 'bucket'] as const).map((by) => ({
            act: { act: 'aloft', pole: place.pole, by, zone: place.zone },
            label: `${by === 'hooks' ? 'Climb' : 'Go up in the bucket'} at ${poleName(world, place.pole)}, ${
              place.zone === 'work' ? 'to the work' : 'to below the work'
            }`,
            by: by === 'hooks' ? 'feet' : 'truck',
            about: null,
          }))
        : [],
    ),
};

export const comeDown: ActKind<'come-down'> = {
  minutes: () => 3,
  refuse: (world) => (standHere(world)?.aloft ? null : 'you are on the ground'),
  apply: (world) => {
    const here = standHere(world);
    if (!here?.aloft) throw new Error('nobody is aloft');
    const below = standBelow(world, here);
    return outcome(
      withTraineeAt(world, below.id, null),
      [event('done', here.aloft.pole, `You are down: ${below.name}.`)],
      [standing(world, 180)],
    );
  },
  offers: () => [{ act: { act: 'come-down' }, label: 'Come down', by: 'feet', about: null }],
};

const poleName = (world: World, pole: string): string =>
  world.parts.find((part) => part.pole === pole && part.id === `${pole}.pole`)?.name ?? pole;
