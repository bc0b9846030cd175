/**
 * What the dispatcher knows and does: answers from the state of the scene, works devices out of sight at an order (with
 * the travel time of whoever goes there), blocks reclosing at a word, reads everything back. A dispatcher who has another
 * circuit in mind orders there: nothing of this line changes, and a clearance given so holds nothing.
 */
import { componentKind } from '../catalogue/components.ts';
import { faultKind } from '../catalogue/faults.ts';
import type { Operation } from '../catalogue/types.ts';
import { misnamed } from '../hazards/readiness.ts';
import { findPart, withPart } from '../world/edit.ts';
import type { Part, Person, World } from '../world/types.ts';
import { customersOut } from './customersOut.ts';
import { event } from './kind.ts';
import { operated, operationOf, unfit } from './switching.ts';
import type { WorldEvent } from './types.ts';

type Happening = { readonly world: World; readonly events: readonly WorldEvent[] };

/** The last two different digits changed about: 'Feeder 4271' becomes 'Feeder 4217'. */
const swapped = (circuit: string): string => circuit.replace(/(\d)(\d)(?!.*\d\d)/, '$2$1');

/** The circuit as the dispatcher says it. */
export function circuitSaid(world: World): string {
  const { circuit } = world.given.supply;
  const fault = world.people.flatMap(({ faults }) => faults).find(({ kind }) => faultKind(kind).person?.misnames);
  if (fault === undefined) return circuit;
  const other = swapped(circuit);
  return fault.says ?? (other === circuit ? 'the next feeder' : other);
}

/** Operations of a part that are done at the dispatcher's word. */
export const remoteOf = (part: Part): readonly Operation[] =>
  componentKind(part.kind).operations.filter(({ by }) => by === 'dispatcher');

/** Devices out of sight that the dispatcher has worked. */
export const remoteParts = (world: World): readonly Part[] => world.parts.filter((part) => remoteOf(part).length > 0);

/** Reclosing set on every device that the dispatcher works, as far as it fits. */
export function withReclosing(world: World, operation: 'block' | 'unblock'): World {
  if (misnamed(world)) return world;
  return remoteParts(world).reduce((now, part) => {
    const step = operationOf(part, operation);
    return step && unfit(part, step) === null ? withPart(now, part.id, operated(part, step)) : now;
  }, world);
}

/** Orders whose time has come. */
export function switchingDue(world: World): Happening {
  const { orders, clock } = world;
  const due = orders.switching.filter((order) => order.due <= clock.minute);
  if (due.length === 0) return { world, events: [] };
  const open = { ...world, orders: { ...orders, switching: orders.switching.filter((order) => !due.includes(order)) } };
  return due.reduce<Happening>(
    (now, order) => {
      const part = findPart(now.world, order.part);
      const step = part && operationOf(part, order.operation);
      if (!part || !step) throw new Error(`${order.part} has no operation ${order.operation}`);
      const fits = unfit(part, step) === null && !misnamed(now.world);
      const after = fits ? withPart(now.world, part.id, operated(part, step)) : now.world;
      const words = `${circuitSaid(now.world)}, ${world.given.supply.upstream.name}: ${step.label.toLowerCase()}, done.`;
      return { world: after, events: [...now.events, event('said', 'dispatcher', words)] };
    },
    { world: open, events: [] },
  );
}

const customers = (count: number): string => (count === 1 ? 'One customer' : `${count} customers`);

/** How the upstream device recloses, as the dispatcher would see it. */
function reclosingWords(world: World, written: string | undefined): string {
  const { upstream } = world.given.supply;
  const states = remoteParts(world).map(({ state }) => state.reclosing);
  const blocked =
    states.length > 0
      ? states.every((state) => state === 'blocked')
      : world.orders.reported.includes('block-reclosing') || !upstream.recloses;
  if (blocked) return `${upstream.name}: reclosing is blocked.`;
  return written ?? `${upstream.name} recloses by itself. I can block it when you ask.`;
}

function etaWords(world: World): string {
  const second = world.people.find(({ role }) => role === 'second');
  if (!second) return 'There is no second worker on this call.';
  if (second.at !== null) return `${world.given.crew.secondName} is with you.`;
  if (second.arrivesAt === null) return 'I have nobody to send you. You are alone on this one.';
  const minutes = world.orders.reported.includes('acknowledged')
    ? Math.max(0, second.arrivesAt - world.clock.minute)
    : world.given.crew.secondMin;
  return `${world.given.crew.secondName}: ${minutes} minutes out.`;
}

function upstreamWords(world: World, written: string | undefined): string {
  const { upstream } = world.given.supply;
  const [part] = remoteParts(world);
  const stands = part === undefined ? '' : ` It stands ${part.state.position?.replaceAll('-', ' ') ?? 'closed'}.`;
  return `${written ?? `${upstream.name}, ${customers(upstream.customers)}; ${upstream.travelMin} minutes to get there.`}${stands}`;
}

const answers: Readonly<Record<string, (world: World, written: string | undefined) => string>> = {
  circuit: (world, written) =>
    misnamed(world) ? `${circuitSaid(world)}, as I have it here.` : (written ?? `${world.given.supply.circuit}.`),
  customers: (world, written) => {
    const out = customersOut(world);
    const now = out === 0 ? 'On my screen nobody is out there now.' : `${customers(out)} without service now.`;
    return written === undefined ? now : `${now} ${written}`;
  },
  eta: etaWords,
  history: (world, written) =>
    written ?? world.given.call.ticketHistory.at(-1) ?? 'Nothing is written down for that tap.',
  reclosing: reclosingWords,
  upstream: upstreamWords,
};

/** Topics on which somebody has an answer, sorted. */
export const topicsOf = (person: Person): readonly string[] =>
  [...new Set([...Object.keys(person.says), ...(person.role === 'dispatcher' ? Object.keys(answers) : [])])].sort();

/** What somebody answers now. */
export function answerOf(world: World, person: Person, about: string): string {
  const written = Object.hasOwn(person.says, about) ? person.says[about] : undefined;
  const computed = person.role === 'dispatcher' && Object.hasOwn(answers, about) ? answers[about] : undefined;
  return computed ? sentence(computed(world, written)) : (written ?? '');
}

const sentence = (words: string): string => words.slice(0, 1).toUpperCase() + words.slice(1);
