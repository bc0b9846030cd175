/**
 * Reaches that ask a World what could hurt in it: from every standing point a bare hand on each point that can be got
 * at, work aloft, each operation of each device. Nobody wears anything and nothing is covered, so that what is found
 * is the hazard without its controls; grounds and open devices are the World's state and stay.
 */
import { componentKind } from '../catalogue/components.ts';
import { distance } from '../math/vec3.ts';
import { trainee, withPerson } from '../world/edit.ts';
import type { Part, PointId, Stand, World } from '../world/types.ts';
import { bareMetal } from './bareMetal.ts';
import { STEP, shoulderOf } from './personSpace.ts';
import type { Reach } from './types.ts';

/** The World with nobody protected. */
export const unprotected = (world: World): World => ({
  ...withPerson(world, trainee(world).id, { wearing: [] }),
  covers: [],
});

const bareHand = { stick: null, gloves: null } as const;

const standing = (world: World, stand: Stand): Reach => ({
  who: trainee(world).id,
  stand: stand.id,
  at: stand.feet,
  aloft: stand.aloft !== null,
  touches: [],
  switches: null,
  disturbs: null,
  climbs: null,
  works: false,
  seconds: 60,
});

/** Each point once: from the ground where that can be, else from where the shoulder is nearest. */
function touches(world: World): readonly Reach[] {
  const shoulders = world.stands.map((stand) => {
    const reach = standing(world, stand);
    return { stand, reach, shoulder: shoulderOf(reach), far: stand.reachM + (stand.aloft === null ? STEP : 0) };
  });
  return bareMetal(world).flatMap(({ point, path }) => {
    const [at] = path;
    if (at === undefined || path.length > 1) return [];
    const able = shoulders
      .map((each) => ({ ...each, away: distance(each.shoulder, at) }))
      .filter(({ away, far }) => away <= far)
      .sort((a, b) => Number(a.reach.aloft) - Number(b.reach.aloft) || a.away - b.away);
    return able.slice(0, 1).map(({ reach }) => ({ ...reach, touches: [{ point, through: bareHand }] }));
  });
}

const aloft = (world: World, stand: Stand): readonly Reach[] =>
  stand.aloft === null
    ? []
    : [{ ...standing(world, stand), climbs: { pole: stand.aloft.pole, by: 'hooks' }, works: true }];

/** Beside the part: on the ground of its pole or premises, nearest first by the order of stands. */
const standFor = (world: World, part: Part): Stand | null =>
  world.stands.find(({ near, aloft: up }) => up === null && near !== null && near === (part.premises ?? part.pole)) ??
  null;

function operations(world: World, part: Part): readonly Reach[] {
  const stand = standFor(world, part);
  if (stand === null) return [];
  const pair = (between: readonly [string, string] | undefined): readonly [PointId, PointId] | null =>
    between === undefined ? null : [`${part.id}/${between[0]}`, `${part.id}/${between[1]}`];
  return componentKind(part.kind).operations.flatMap(({ by, makes, breaks }) =>
    by === 'owner' || (makes === undefined && breaks === undefined)
      ? []
      : [
          {
            ...standing(world, stand),
            switches: {
              part: part.id,
              makes: pair(makes),
              breaks: pair(breaks),
              through: by === 'stick' ? { stick: '', gloves: null } : bareHand,
            },
          },
        ],
  );
}

/** Reaches by what they ask: each mechanism is asked only what can meet it. */
export interface Probes {
  readonly touching: readonly Reach[];
  readonly being: readonly Reach[];
  readonly switching: readonly Reach[];
}

/** All of them, in the order of stands and parts. */
export const probesOf = (world: World): Probes => ({
  touching: touches(world),
  being: world.stands.flatMap((stand) => [standing(world, stand), ...aloft(world, stand)]),
  switching: world.parts.flatMap((part) => operations(world, part)),
});
