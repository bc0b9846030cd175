/** A look at one part from where one stands, by eye, lamp or glass. */
import { lookRound, SITE } from '../senses/around.ts';
import { lookAt } from '../senses/lookAt.ts';
import { aids } from '../senses/types.ts';
import type { Minutes } from '../units/quantities.ts';
import { findPart, personById } from '../world/edit.ts';
import type { World } from '../world/types.ts';
import { type ActKind, event, outcome } from './kind.ts';
import { onFoot, standHere } from './presence.ts';

/** Going over everything from one stand with the glass. */
const glassMinutes: Minutes = 2;

/** Whether the glass has been put to the eyes at this stand before. */
const glassIsUp = (world: World): boolean =>
  world.knowledge.looks.some(({ aid, stand }) => aid === 'glass' && stand === standHere(world)?.id);

export const look: ActKind<'look'> = {
  minutes: (world, act) => (act.aid === 'glass' && !glassIsUp(world) ? glassMinutes : 0),
  refuse: (world, act) => {
    const around = isAround(world, act.part);
    if (!findPart(world, act.part) && !around) return 'there is no such part';
    if (around && act.aid !== 'eyes') return 'eyes are enough for that';
    const stand = standHere(world);
    if (around && stand && lookRound(world, act.part, stand.id) === null) return 'that is not in sight from here';
    return onFoot(world) ?? (aids.includes(act.aid) ? null : 'there is no such thing to look with');
  },
  apply: (world, act) => {
    const stand = standHere(world);
    if (!stand) throw new Error('nobody looks from nowhere');
    const seen = lookRound(world, act.part, stand.id) ?? lookAt(world, act.part, stand.id, act.aid);
    const entry = { part: act.part, aid: act.aid, stand: stand.id, minute: world.clock.minute, seen: seen.seen };
    const looks = [...world.knowledge.looks, entry];
    const words = seen.lines.join('. ');
    return outcome({ ...world, knowledge: { ...world.knowledge, looks } }, [
      event('seen', act.part, `${seen.name}: ${words}.`),
    ]);
  },
  offers: (world) =>
    [SITE, ...world.people.filter(({ at, role }) => at !== null && role !== 'trainee').map(({ id }) => id)].map(
      (part) => ({
        act: { act: 'look', part, aid: 'eyes' },
        label: part === SITE ? 'Look round: weather, ground, road' : `Look at ${personById(world, part)?.name ?? part}`,
        by: 'eyes',
        about: part,
      }),
    ),
};

/** The site, or somebody who is there. */
const isAround = (world: World, id: string): boolean => id === SITE || personById(world, id) !== null;
