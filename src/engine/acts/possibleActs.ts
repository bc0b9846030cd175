/** All plausible acts from here, the foolish ones too, in a fixed order; looks are offered apart, by part and aid. */
import { aids } from '../senses/types.ts';
import type { World } from '../world/types.ts';
import { minutesOf, refusalOf } from './act.ts';
import type { Offer } from './kind.ts';
import { kinds } from './kinds.ts';
import type { Act, ActName, OfferedAct } from './types.ts';

export type AnyOffer = Offer<ActName> & { readonly act: Act };

const allNames = Object.keys(kinds) as readonly ActName[];

/** Every act on offer that would not be refused, each once; of some kinds and of those wanted alone, where that is said. */
export function possibleActs(
  world: World,
  names: readonly ActName[] = allNames,
  isWanted: (offer: AnyOffer) => boolean = () => true,
): readonly OfferedAct[] {
  if (world.ended !== null) return [];
  const seen = new Set<string>();
  const offered: OfferedAct[] = [];
  for (const name of names) {
    for (const offer of kinds[name].offers(world) as readonly AnyOffer[]) {
      if (!isWanted(offer)) continue;
      // One file writes all acts of a kind, so equal ones have equal text.
      const key = JSON.stringify(offer.act);
      if (seen.has(key) || refusalOf(world, offer.act) !== null) continue;
      seen.add(key);
      offered.push({ ...offer, minutes: minutesOf(world, offer.act) });
    }
  }
  return offered;
}

/** Looks at every part by every aid from the present stand. */
export const looksFrom = (world: World): readonly OfferedAct[] =>
  world.parts.flatMap((part) =>
    aids.flatMap((aid): readonly OfferedAct[] => {
      const look = { act: 'look', part: part.id, aid } as const;
      if (refusalOf(world, look) !== null) return [];
      return [
        {
          act: look,
          label: `Look at the ${part.name}, ${lookedBy[aid]}`,
          by: 'eyes',
          minutes: minutesOf(world, look),
          about: part.id,
        },
      ];
    }),
  );

const lookedBy = { eyes: 'by eye', lamp: 'with the lamp', glass: 'with the glass' } as const;
