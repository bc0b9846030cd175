/** A look at one part from where one stands, by eye, lamp or glass. */
import { lookAt } from '../senses/lookAt.ts';
import { aids } from '../senses/types.ts';
import { findPart } from '../world/edit.ts';
import { type ActKind, event, outcome } from './kind.ts';
import { onFoot, standHere } from './presence.ts';

export const look: ActKind<'look'> = {
  minutes: (_world, act) => (act.aid === 'glass' ? 1 : 0),
  refuse: (world, act) => {
    if (!findPart(world, act.part)) return 'there is no such part';
    return onFoot(world) ?? (aids.includes(act.aid) ? null : 'there is no such thing to look with');
  },
  apply: (world, act) => {
    const stand = standHere(world);
    if (!stand) throw new Error('nobody looks from nowhere');
    const seen = lookAt(world, act.part, stand.id, act.aid);
    const entry = { part: act.part, aid: act.aid, stand: stand.id, minute: world.clock.minute, seen: seen.seen };
    const looks = [...world.knowledge.looks, entry];
    const words = seen.lines.join('. ');
    return outcome({ ...world, knowledge: { ...world.knowledge, looks } }, [
      event('seen', act.part, `${seen.name}: ${words}.`),
    ]);
  },
  offers: () => [],
};
