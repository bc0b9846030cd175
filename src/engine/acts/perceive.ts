/**
 * What enters knowledge without being asked for: sounds loud enough above the background, and sounds that stop. Everything
 * fainter takes listening; every mark, however plain, takes a look, for a caption would find it for the trainee.
 */
import { backgroundAt, heardFrom } from '../senses/heardFrom.ts';
import type { Heard } from '../senses/types.ts';
import type { Decibels } from '../units/quantities.ts';
import type { Knowledge, World } from '../world/types.ts';
import { event } from './kind.ts';
import { onFoot, standHere } from './presence.ts';
import type { WorldEvent } from './types.ts';

/** Decibels above the background from which a sound is noticed unasked (estimate). */
const loud: Decibels = 6;

type Perceived = { readonly world: World; readonly events: readonly WorldEvent[] };

const soundsAt = (world: World, which: 'loud' | 'all'): readonly Heard[] => {
  const stand = standHere(world);
  if (!stand || onFoot(world)) return [];
  const all = heardFrom(world, stand.id);
  return which === 'all' ? all : all.filter(({ level }) => level >= backgroundAt(world, stand.id) + loud);
};

/** Ids of loud sounds before, when that was at the same stand. */
function loudBefore(before: World, after: World): ReadonlySet<string> {
  const same = standHere(before)?.id === standHere(after)?.id;
  return new Set(same ? soundsAt(before, 'loud').map(({ id }) => id) : []);
}

/** Sounds from here into knowledge, once from a stand; told are all, or those that were not loud just before. */
export function hear(world: World, which: 'loud' | 'all', before: World = world): Perceived {
  const stand = standHere(world);
  if (!stand) return { world, events: [] };
  const sounds = soundsAt(world, which);
  const known = (id: string): boolean =>
    world.knowledge.heard.some((entry) => entry.sign === id && entry.stand === stand.id);
  const fresh = sounds.filter(({ id }) => !known(id));
  const { minute } = world.clock;
  const heard: Knowledge['heard'] = [
    ...world.knowledge.heard,
    ...fresh.map(({ id }) => ({ sign: id, stand: stand.id, minute })),
  ];
  const was = which === 'all' ? new Set<string>() : loudBefore(before, world);
  const told = sounds.filter(({ id }) => !was.has(id));
  const events = told.map((sound) => event('heard', sound.id, sentence(captionOf(sound))));
  const after = fresh.length > 0 ? { ...world, knowledge: { ...world.knowledge, heard } } : world;
  if (which === 'all' && events.length === 0)
    return { world: after, events: [event('heard', null, 'Nothing but the place itself.')] };
  return { world: after, events };
}

/** Sounds that were there before and are not any more, at the same stand. */
function stopped(before: World, after: World): readonly WorldEvent[] {
  const [from, to] = [standHere(before), standHere(after)];
  if (!from || from.id !== to?.id) return [];
  const now = new Set(soundsAt(after, 'all').map(({ id }) => id));
  return soundsAt(before, 'loud')
    .filter(({ id }) => !now.has(id))
    .map((sound) => event('heard', sound.id, `Not heard any more: ${captionOf(sound)}.`));
}

/** What the trainee notices unasked once the act is done. */
export function perceive(before: World, after: World): Perceived {
  const heard = hear(after, 'loud', before);
  return { world: heard.world, events: [...stopped(before, after), ...heard.events] };
}

/** Quarters of the scene by azimuth, from the load side on round by the field. */
const quarters = ['toward the load', 'from the field side', 'toward the source', 'from the road side'] as const;

/** Caption and where it comes from. */
function captionOf({ caption, azimuth }: Heard): string {
  if (azimuth === null) return caption;
  const quarter = ((Math.round(azimuth / (Math.PI / 2)) % 4) + 4) % 4;
  return `${caption}, ${quarters[quarter]}`;
}

const sentence = (words: string): string => `${words.slice(0, 1).toUpperCase()}${words.slice(1)}.`;
