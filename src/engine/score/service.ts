/**
 * Service: time and customer-minutes. A premises whose own source cannot be kept apart from the line stays disconnected, and its
 * minutes do not count. A hand-over with the public guarded, sources named and open points tagged never scores below doing it
 * alone: service waits for those who come, and only the time until then is held against par.
 */
import { customersOut, minutesOut, premisesOut } from '../acts/customersOut.ts';
import type { Log, Replay } from '../acts/types.ts';
import { format } from '../units/formatQuantity.ts';
import { type Laid, sourcePremisesOf } from './known.ts';
import type { Part } from './types.ts';
import { owedAtHandOver } from './verdict.ts';

/** Premises that must stay out: a cause lay there at the start, and who mends a customer's wiring is not the crew. */
export const keptOut = (replay: Replay, causes: readonly Laid[]): readonly string[] => [
  ...new Set(causes.flatMap((laid) => sourcePremisesOf(replay.start, laid) ?? [])),
];

export const servicePart = (replay: Replay, causes: readonly Laid[], par: Log['par']): Part => {
  const apart = keptOut(replay, causes);
  const counted = (list: readonly string[]): readonly string[] => list.filter((premises) => !apart.includes(premises));
  const outAtFirst = counted(premisesOut(replay.start));
  const outAtLast = counted(premisesOut(replay.end));
  const minutes = replay.end.clock.minute - replay.start.clock.minute;
  const customerMinutes = Object.entries(minutesOut(replay))
    .filter(([premises]) => !apart.includes(premises))
    .reduce((sum, [, out]) => sum + out, 0);
  const restored = outAtFirst.length === 0 ? null : (outAtFirst.length - outAtLast.length) / outAtFirst.length;
  const pace = par === null || minutes === 0 ? 1 : Math.min(1, par.minutes / minutes);
  const handedOver = replay.end.ended === 'handed-over' && owedAtHandOver(replay, causes).length === 0;
  return {
    name: 'service',
    value: handedOver ? pace : restored === null ? null : Math.max(0, restored) * pace,
    numbers: {
      minutes,
      customerMinutes,
      customersOut: customersOut(replay.end),
      restored: outAtFirst.length - outAtLast.length,
      par: par?.minutes ?? null,
      parCustomerMinutes: par?.customerMinutes ?? null,
    },
    says: [
      serviceWords(minutes, outAtFirst.length, outAtFirst.length - outAtLast.length),
      ...(handedOver && outAtLast.length > 0
        ? ['Handed over as it should be, the rest of the outage is not held against you.']
        : []),
      ...(par === null
        ? []
        : [`The shortest safe way that is proven takes ${format(par.minutes, 'duration', 'metric')}.`]),
      ...apartWords(apart.length),
    ],
  };
};

const serviceWords = (minutes: number, could: number, restored: number): string => {
  const took = `The call took ${format(minutes, 'duration', 'metric')}`;
  if (could === 0) return `${took}; there was no service to be restored.`;
  const all = `customer${could === 1 ? '' : 's'} who could be restored`;
  if (restored <= 0)
    return `${took}; the ${could === 1 ? all : `${could} ${all}`} ${could === 1 ? 'has' : 'have'} no service yet.`;
  return `${took}; ${restored === could ? (could === 1 ? 'the' : could === 2 ? 'both' : `all ${could}`) : `${restored} of ${could}`} ${all} ${restored === 1 ? 'has' : 'have'} service again.`;
};

const apartWords = (apart: number): readonly string[] => {
  if (apart === 0) return [];
  return [
    apart === 1
      ? 'One customer may only be connected once their own source is made right; those minutes do not count.'
      : `${apart} customers may only be connected once their own sources are made right; those minutes do not count.`,
  ];
};
