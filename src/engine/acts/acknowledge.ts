/** Acknowledging the call to the dispatcher; the second worker sets out at that moment. */
import { faultKind } from '../catalogue/faults.ts';
import type { Person } from '../world/types.ts';
import { type ActKind, event, outcome } from './kind.ts';

/** Whether something keeps the second worker from setting out at all. */
const isKept = ({ role, faults }: Person): boolean =>
  role === 'second' && faults.some(({ kind }) => faultKind(kind).person?.absent);

/** What stands in the dispatcher's book once the call is acknowledged. */
export const acknowledged = 'acknowledged';

export const acknowledge: ActKind<'acknowledge'> = {
  minutes: () => 0,
  refuse: (world) => (world.orders.reported.includes(acknowledged) ? 'the call is acknowledged already' : null),
  apply: (world) => {
    const { minute } = world.clock;
    const { secondMin, secondName } = world.given.crew;
    const kept = world.people.some(isKept);
    const people = world.people.map((person) =>
      // Who rides along is there with the truck, which takes a minute to park.
      person.role === 'second' && person.at === null && !isKept(person)
        ? { ...person, arrivesAt: minute + Math.max(1, secondMin) }
        : person,
    );
    return outcome(
      { ...world, people, orders: { ...world.orders, reported: [...world.orders.reported, acknowledged] } },
      [
        event(
          'said',
          'dispatcher',
          kept ? 'Acknowledged.' : `Acknowledged. ${capital(secondName)} ${comes(secondMin)}.`,
        ),
      ],
    );
  },
  offers: () => [{ act: { act: 'acknowledge' }, label: 'Acknowledge the call', by: 'radio', about: 'dispatcher' }],
};

const comes = (minutes: number): string => {
  if (minutes === 0) return 'is with you';
  return minutes === 1 ? 'can be there in a minute' : `can be there in ${minutes} minutes`;
};

const capital = (words: string): string => words.slice(0, 1).toUpperCase() + words.slice(1);
