/** Asking and telling: the dispatcher by radio, the caller by telephone, customers at their doors. */
import { faultKind } from '../catalogue/faults.ts';
import { personById, trainee } from '../world/edit.ts';
import type { Knowledge, Person, Role, World } from '../world/types.ts';
import { acknowledged } from './acknowledge.ts';
import { type ActKind, event, outcome } from './kind.ts';
import { onFoot, standHere } from './presence.ts';

/** What the dispatcher is told, and what customers are told, with the sentence. */
export const reports = {
  dispatcher: {
    backfeed: 'A customer’s own source holds the tap alive.',
    'cause-found': 'The cause of the outage, as found.',
    'block-reclosing': 'Block the reclosing of the upstream device.',
    'stays-out': 'One service stays out, tagged, until it is made right.',
    'public-danger': 'There is danger to the public here; it is guarded.',
    restored: 'The tap is back in service.',
  },
  customer: {
    'keep-away': 'Keep away from the pole and the line.',
    'own-source': 'Your own source feeds into the line; it may only run behind transfer equipment.',
    'stays-out': 'Your service stays out until that is made right.',
    restored: 'Your service is back.',
  },
} as const;

const reportsTo = (person: Person): Readonly<Record<string, string>> =>
  person.role === 'dispatcher' ? reports.dispatcher : person.role === 'customer' ? reports.customer : {};

/** Why somebody cannot be spoken with from here; null when one can. */
export function beyondVoice(world: World, id: string): string | null {
  const person = personById(world, id);
  if (!person || person.id === trainee(world).id) return 'there is no such person here';
  if (person.role === 'dispatcher') return null;
  if (person.role === 'caller') return Object.keys(person.says).length > 0 ? null : 'nobody answers that line';
  const away = onFoot(world);
  if (away) return away;
  if (person.role === 'second') return person.at === null ? 'that worker is not here yet' : null;
  return standHere(world)?.near === person.premises ? null : 'that person is not here';
}

/** Signs that an answer gives away: of sense 'ask' and on that topic, on parts of those premises (or none: on the line). */
const signsAsked = (world: World, person: Person, about: string): Knowledge['tests'] =>
  world.parts
    .filter((part) => part.premises === person.premises)
    .flatMap((part) =>
      part.faults.flatMap((fault) =>
        faultKind(fault.kind)
          .signs.filter((sign) => sign.sense === 'ask' && sign.by === about)
          .map((sign) => ({
            on: part.id,
            test: 'ask',
            result: sign.words,
            sign: `${fault.id}/${sign.id}`,
            minute: world.clock.minute,
          })),
      ),
    );

export const ask: ActKind<'ask'> = {
  minutes: () => 1,
  refuse: (world, act) =>
    beyondVoice(world, act.who) ??
    (Object.hasOwn(personById(world, act.who)?.says ?? {}, act.about) ? null : 'there is no answer to that'),
  apply: (world, act) => {
    const person = personById(world, act.who);
    if (!person) throw new Error(`nobody is called ${act.who}`);
    const { minute } = world.clock;
    const knowledge: Knowledge = {
      ...world.knowledge,
      asked: [...world.knowledge.asked, { who: act.who, about: act.about, minute }],
      tests: [...world.knowledge.tests, ...signsAsked(world, person, act.about)],
    };
    return outcome({ ...world, knowledge }, [event('said', act.who, person.says[act.about] ?? '')]);
  },
  offers: (world) =>
    world.people.flatMap((person) =>
      Object.keys(person.says)
        .sort()
        .map((about) => ({
          act: { act: 'ask', who: person.id, about },
          label: `Ask ${person.name}${askedBy[person.role] ?? ''}: ${topics[about] ?? about.replaceAll('-', ' ')}`,
          by: person.role === 'dispatcher' || person.role === 'caller' ? 'radio' : 'talk',
          about: person.id,
        })),
    ),
};

const alreadyTold = (world: World, person: Person, what: string): boolean =>
  person.role === 'dispatcher'
    ? world.orders.reported.includes(what)
    : world.orders.customersTold.includes(`${person.id}/${what}`);

export const tell: ActKind<'tell'> = {
  minutes: () => 1,
  refuse: (world, act) => {
    const away = beyondVoice(world, act.who);
    if (away) return away;
    const person = personById(world, act.who);
    if (!person || !Object.hasOwn(reportsTo(person), act.what)) return 'there is nothing of the kind to tell them';
    if (!world.orders.reported.includes(acknowledged)) return 'the call is not acknowledged yet';
    return alreadyTold(world, person, act.what) ? 'they were told that already' : null;
  },
  apply: (world, act) => {
    const { orders } = world;
    const person = personById(world, act.who);
    if (!person) throw new Error(`nobody is called ${act.who}`);
    return person.role === 'dispatcher'
      ? outcome({ ...world, orders: { ...orders, reported: [...orders.reported, act.what] } }, [
          event('said', act.who, `Copied: ${reportsTo(person)[act.what]}`),
        ])
      : outcome(
          { ...world, orders: { ...orders, customersTold: [...orders.customersTold, `${act.who}/${act.what}`] } },
          [event('said', act.who, 'Understood.')],
        );
  },
  offers: (world) =>
    world.people.flatMap((person) =>
      Object.entries(reportsTo(person)).map(([what, words]) => ({
        act: { act: 'tell', who: person.id, what },
        label: `Tell ${person.name}: ${words}`,
        by: person.role === 'dispatcher' ? 'radio' : 'talk',
        about: person.id,
      })),
    ),
};

/** How one speaks with them, where the same person may be reached in two ways. */
const askedBy: Partial<Record<Role, string>> = { caller: ' by telephone', customer: ' at the door' };

/** Topics as they are asked; a scenario's own topic is said as it is written there. */
const topics: Readonly<Record<string, string>> = {
  circuit: 'which circuit it is',
  customers: 'who is out',
  eta: 'when the second worker arrives',
  generator: 'about a set of their own',
  history: 'what happened here before',
  main: 'about the main breaker',
  noticed: 'what they noticed',
  reclosing: 'how the upstream device recloses',
  'transfer-switch': 'about a transfer switch',
  upstream: 'what the upstream device did',
};
