/** What happens by the clock: people come and leave, a set is started, a device is closed, it thunders. */
import { componentKind } from '../catalogue/components.ts';
import { faultKind } from '../catalogue/faults.ts';
import { changesTo } from '../hazards/credibleStates.ts';
import { nextUniform } from '../math/random.ts';
import type { ScenarioEvent } from '../scenario/types.ts';
import { findPart, personById, standById, withPart, withPerson } from '../world/edit.ts';
import type { Part, World } from '../world/types.ts';
import { event } from './kind.ts';
import { onFoot } from './presence.ts';
import { operated, unfit } from './switching.ts';
import type { WorldEvent } from './types.ts';

type Happening = { readonly world: World; readonly events: readonly WorldEvent[] };

const nothing = (world: World): Happening => ({ world, events: [] });

/** A tape stops grown people and children who are told; no dog. */
const stopsAtTape = ['bystander', 'child'];

function comes(world: World, { who = '', to = '' }: ScenarioEvent): Happening {
  const person = personById(world, who);
  if (!person) throw new Error(`nobody is called ${who}`);
  const name = capital(person.name);
  if (world.guards.keepOut && stopsAtTape.includes(person.role)) {
    return { world, events: [event('seen', who, `${name} stops at the tape.`)] };
  }
  const place = standById(world, to)?.name ?? to;
  return { world: withPerson(world, who, { at: to }), events: [event('arrived', who, `${name} comes: ${place}.`)] };
}

function leaves(world: World, { who = '' }: ScenarioEvent): Happening {
  const person = personById(world, who);
  if (!person || person.at === null) return nothing(world);
  return {
    world: withPerson(world, who, { at: null, task: null }),
    events: [event('seen', who, `${capital(person.name)} goes away.`)],
  };
}

/** What the owner of the premises does to start a set: the first part that a start fits. */
const startable = (world: World, premises: string): Part | null =>
  world.parts.find((part) => part.premises === premises && startOf(part) !== null) ?? null;

const startOf = (part: Part) =>
  componentKind(part.kind).operations.find(
    (operation) => operation.by === 'owner' && operation.id === 'start' && unfit(part, operation) === null,
  ) ?? null;

/** Told so, an owner leaves the set alone. */
const toldNot = ({ orders }: World, premises: string): boolean =>
  ['own-source', 'keep-set-off'].some((what) => orders.customersTold.includes(`${premises}.customer/${what}`));

function startsSet(world: World, { who = '' }: ScenarioEvent): Happening {
  const part = startable(world, who);
  const start = part && startOf(part);
  if (!part || !start || toldNot(world, who)) return nothing(world);
  const heard = onFoot(world) === null;
  return {
    world: withPart(world, part.id, operated(part, start)),
    events: heard
      ? [event('heard', part.id, `An engine starts: ${standById(world, `${who}.yard`)?.name ?? who}.`)]
      : [],
  };
}

function closes(world: World, { part: id = '' }: ScenarioEvent): Happening {
  const part = findPart(world, id);
  const change = part && changesTo(world, part)[0];
  if (!part || !change) return nothing(world);
  const state = { ...part.state, ...change.becomes };
  return {
    world: withPart(world, id, { state }),
    events: [event('operated', id, `${capital(change.who)}: ${part.name}.`)],
  };
}

function thunders(world: World): Happening {
  return {
    world: { ...world, site: { ...world.site, thunderAt: world.clock.minute } },
    events: [event('heard', 'sky', 'Thunder, not far off.')],
  };
}

const kinds: Readonly<Record<ScenarioEvent['what'], (world: World, due: ScenarioEvent) => Happening>> = {
  comes,
  leaves,
  'starts-set': startsSet,
  closes,
  thunder: thunders,
  calls: (world, { says = '' }) => ({ world, events: [event('said', 'dispatcher', says)] }),
};

/** Events of this minute, in the order written. */
export function eventsDue(world: World): Happening {
  const due = world.given.events.filter(({ atMinute }) => atMinute === world.clock.minute);
  return due.reduce<Happening>((now, each) => {
    const { world: after, events } = kinds[each.what](now.world, each);
    return { world: after, events: [...now.events, ...events] };
  }, nothing(world));
}

/** Minutes between two claps of a storm that is near (estimate). */
const clapEvery = 5;

/** A storm that is near is heard again and again. */
export function storm(world: World): Happening {
  if (world.site.lightning !== 'near') return nothing(world);
  const { minute } = world.clock;
  const since = minute - (world.site.thunderAt ?? Number.NEGATIVE_INFINITY);
  return since < clapEvery ? nothing(world) : thunders(world);
}

// A list of parts is never changed in place, and most of them hold nothing that gets worse.
const worsens = new WeakMap<World['parts'], readonly Part[]>();

function mayWorsen({ parts }: World): readonly Part[] {
  const known = worsens.get(parts);
  if (known !== undefined) return known;
  const found = parts.filter(({ faults }) => faults.some(({ kind }) => faultKind(kind).worsens !== undefined));
  worsens.set(parts, found);
  return found;
}

/** What may get worse by itself, in the order of parts; each draws once a minute. */
export function worsening(world: World): Happening {
  return mayWorsen(world).reduce<Happening>((now, part) => {
    const fault = part.faults.find(({ kind }) => faultKind(kind).worsens !== undefined);
    const worse = fault && faultKind(fault.kind).worsens;
    if (!fault || !worse) return now;
    const [drawn, chance] = nextUniform(now.world.chance);
    const drawnWorld = { ...now.world, chance };
    if (drawn >= worse.perMinute) return { world: drawnWorld, events: now.events };
    const faults = part.faults.map((each) => (each === fault ? { ...each, kind: worse.into } : each));
    return {
      world: withPart(drawnWorld, part.id, { faults }),
      events: [...now.events, event('fell', part.id, `${worse.words}: ${part.name}.`)],
    };
  }, nothing(world));
}

const capital = (words: string): string => words.slice(0, 1).toUpperCase() + words.slice(1);
