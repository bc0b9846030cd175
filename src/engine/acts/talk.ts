/** Asking and telling: the dispatcher by radio, the caller by telephone, customers at their doors. */
import { faultKind } from '../catalogue/faults.ts';
import { misnamed } from '../hazards/readiness.ts';
import { distance } from '../math/vec3.ts';
import { personById, standById, trainee } from '../world/edit.ts';
import type { Knowledge, Person, Role, World } from '../world/types.ts';
import { acknowledged } from './acknowledge.ts';
import { answerOf, circuitSaid, topicsOf, withReclosing } from './dispatcher.ts';
import { type ActKind, event, outcome } from './kind.ts';
import { onFoot, standHere } from './presence.ts';

/** What an owner is told so that no dog is about any more. */
export const shutIn = 'shut-dog-in';

/** What the dispatcher is told, and what customers are told, with the sentence. */
export const reports = {
  dispatcher: {
    backfeed: 'A customer’s own source holds the tap alive.',
    'cause-found': 'The cause of the outage, as found.',
    'block-reclosing': 'Block the reclosing of the upstream device.',
    'unblock-reclosing': 'Restore the reclosing of the upstream device.',
    'correct-number': 'The numbers on the pole say another circuit than you; match them before you order anything.',
    'stays-out': 'One service stays out, tagged, until it is made right.',
    'public-danger': 'There is danger to the public here; it is guarded.',
    restored: 'The tap is back in service.',
  },
  customer: {
    'keep-away': 'Keep away from the pole and the line.',
    'own-source': 'Your own source feeds into the line; it may only run behind transfer equipment.',
    'keep-set-off': 'Leave your own set off while we work.',
    [shutIn]: 'Shut the dog in while we work.',
    'stays-out': 'Your service stays out until that is made right.',
    restored: 'Your service is back.',
  },
} as const;

const reportsTo = (person: Person): Readonly<Record<string, string>> =>
  person.role === 'dispatcher' ? reports.dispatcher : person.role === 'customer' ? reports.customer : {};

/** How far a raised voice carries along a road (estimate). */
const callM = 60;

const withinCall = (world: World, { at, role }: Person): boolean => {
  const [here, there] = [standHere(world), at === null ? null : standById(world, at)];
  return role !== 'dog' && here !== null && there !== null && distance(here.feet, there.feet) <= callM;
};

/** Why somebody cannot be spoken with from here; null when one can. */
export function beyondVoice(world: World, id: string): string | null {
  const person = personById(world, id);
  if (!person || person.id === trainee(world).id) return 'there is no such person here';
  if (person.role === 'dispatcher') return null;
  if (person.role === 'caller') return Object.keys(person.says).length > 0 ? null : 'nobody answers that line';
  const away = onFoot(world);
  if (away) return away;
  if (person.role === 'second') return person.at === null ? 'that worker is not here yet' : null;
  if (person.role !== 'customer') return withinCall(world, person) ? null : 'that person is not within call';
  return standHere(world)?.near === person.premises ? null : 'that person is not here';
}

/** Signs that an answer gives away: of sense 'ask' and on that topic, on parts of those premises (or none: on the line), on themselves. */
const signsAsked = (world: World, person: Person, about: string): Knowledge['tests'] =>
  [
    ...world.parts.filter((part) => part.premises === person.premises),
    ...world.people.filter(({ id, role }) => id === person.id || (person.role === 'dispatcher' && role === 'second')),
  ].flatMap((part) =>
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

const hasAnswer = (world: World, who: string, about: string): boolean => {
  const person = personById(world, who);
  return person !== null && topicsOf(person).includes(about);
};

export const ask: ActKind<'ask'> = {
  minutes: () => 1,
  refuse: (world, act) =>
    beyondVoice(world, act.who) ?? (hasAnswer(world, act.who, act.about) ? null : 'there is no answer to that'),
  apply: (world, act) => {
    const person = personById(world, act.who);
    if (!person) throw new Error(`nobody is called ${act.who}`);
    const { minute } = world.clock;
    const knowledge: Knowledge = {
      ...world.knowledge,
      asked: [...world.knowledge.asked, { who: act.who, about: act.about, minute }],
      tests: [...world.knowledge.tests, ...signsAsked(world, person, act.about)],
    };
    return outcome({ ...world, knowledge }, [event('said', act.who, answerOf(world, person, act.about))]);
  },
  offers: (world) =>
    world.people.flatMap((person) =>
      topicsOf(person).map((about) => ({
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

const orderedBlock = ({ orders }: World): boolean => orders.reported.includes('block-reclosing');
/** Whether a dog is about. */
export const dogsOut = ({ people }: World): boolean => people.some(({ role, at }) => role === 'dog' && at !== null);

/** Blocking and restoring take each other's place. */
const reportedWith = (reported: readonly string[], what: string): readonly string[] => [
  ...reported.filter((each) => !(what === 'unblock-reclosing' && each === 'block-reclosing')),
  ...(what === 'unblock-reclosing' ? [] : [what]),
];

/** What the dispatcher does at once on a report. */
function carriedOut(world: World, what: string): World {
  if (what === 'block-reclosing') return withReclosing(world, 'block');
  if (what === 'unblock-reclosing') return withReclosing(world, 'unblock');
  return what === 'correct-number' ? rightNumbers(world) : world;
}

const readBack = (world: World, what: string): string =>
  what === 'block-reclosing' || what === 'unblock-reclosing'
    ? ` ${circuitSaid(world)}, ${world.given.supply.upstream.name}.`
    : '';

/** The right circuit from now on; a clearance given on another one is asked for again. */
function rightNumbers(world: World): World {
  if (!misnamed(world)) return world;
  const people = world.people.map((person) => {
    const faults = person.faults.filter(({ kind }) => !faultKind(kind).person?.misnames);
    return faults.length === person.faults.length ? person : { ...person, faults };
  });
  const { clearance } = world.orders;
  const again =
    clearance?.state === 'held'
      ? ({ ...clearance, state: 'requested', minute: world.clock.minute } as const)
      : clearance;
  return { ...world, people, orders: { ...world.orders, clearance: again } };
}

const withoutDogs = (world: World): World => ({
  ...world,
  people: world.people.map((person) => (person.role === 'dog' ? { ...person, at: null } : person)),
});

export const tell: ActKind<'tell'> = {
  minutes: () => 1,
  refuse: (world, act) => {
    const away = beyondVoice(world, act.who);
    if (away) return away;
    const person = personById(world, act.who);
    if (!person || !Object.hasOwn(reportsTo(person), act.what)) return 'there is nothing of the kind to tell them';
    if (act.what === 'unblock-reclosing' && !orderedBlock(world)) return 'nothing is blocked';
    if (act.what === shutIn && !dogsOut(world)) return 'there is no dog about';
    if (!world.orders.reported.includes(acknowledged)) return 'the call is not acknowledged yet';
    return alreadyTold(world, person, act.what) ? 'they were told that already' : null;
  },
  apply: (world, act) => {
    const { orders } = world;
    const person = personById(world, act.who);
    if (!person) throw new Error(`nobody is called ${act.who}`);
    if (person.role === 'dispatcher') {
      const told: World = { ...world, orders: { ...orders, reported: reportedWith(orders.reported, act.what) } };
      return outcome(carriedOut(told, act.what), [
        event('said', act.who, `Copied: ${reportsTo(person)[act.what]}${readBack(told, act.what)}`),
      ]);
    }
    const told: World = {
      ...world,
      orders: { ...orders, customersTold: [...orders.customersTold, `${act.who}/${act.what}`] },
    };
    return outcome(act.what === shutIn ? withoutDogs(told) : told, [event('said', act.who, 'Understood.')]);
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
