/** A hand on bare metal, gloved or not. */
import { bareTerminals } from '../world/points.ts';
import { type ActKind, event, outcome } from './kind.ts';
import { pointWords } from './pointWords.ts';
import { beyondReach, glovesOn, standing, through } from './presence.ts';

export const touch: ActKind<'touch'> = {
  minutes: () => 0,
  refuse: (world, act) => beyondReach(world, act.point, null),
  apply: (world, act) =>
    outcome(
      world,
      [
        event(
          'done',
          act.point.split('/')[0] ?? null,
          glovesOn(world) ? 'You lay a gloved hand on it.' : 'You lay a hand on it.',
        ),
      ],
      [{ ...standing(world, 3), touches: [{ point: act.point, through: through(world, null) }] }],
    ),
  offers: (world) =>
    world.parts.flatMap((part) =>
      [...bareTerminals(part)].sort().map((terminal) => ({
        act: { act: 'touch', point: `${part.id}/${terminal}` },
        label: `Touch the ${pointWords(world, `${part.id}/${terminal}`)} with the hand`,
        by: 'hands',
        about: part.id,
      })),
    ),
};
