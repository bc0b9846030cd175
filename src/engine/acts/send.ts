/** Sending the second worker or a flagger to a place or a task, and asking people of the public to go. */
import { distance } from '../math/vec3.ts';
import { personById, standById, trainee, withPerson } from '../world/edit.ts';
import type { Person, Task, World } from '../world/types.ts';
import { type ActKind, event, outcome } from './kind.ts';
import { onFoot, standHere } from './presence.ts';
import { beyondVoice } from './talk.ts';

/** Where somebody of the public goes when asked. */
export const away = 'away';
const crewRoles: readonly Person['role'][] = ['second', 'flagger', 'foreman'];
const publicRoles: readonly Person['role'][] = ['bystander', 'child'];
/** Metres that one walks in a minute (estimate, 1 m/s). */
const pace = 60;

const isCrew = ({ role }: Person): boolean => crewRoles.includes(role);

const minutesTo = (world: World, person: Person, to: string): number => {
  const [from, there] = [person.at === null ? null : standById(world, person.at), standById(world, to)];
  return from && there ? Math.max(1, Math.ceil(distance(from.feet, there.feet) / pace)) : 1;
};

export const send: ActKind<'send'> = {
  minutes: (world, act) => {
    const person = personById(world, act.who);
    return person ? minutesTo(world, person, act.to) : 0;
  },
  refuse: (world, act) => {
    const beyond = onFoot(world) ?? beyondVoice(world, act.who);
    if (beyond) return beyond;
    const person = personById(world, act.who);
    if (!person) return 'there is no such person here';
    if (publicRoles.includes(person.role)) return act.to === away ? null : 'nobody of the public is sent there';
    if (!isCrew(person)) return 'that is nobody to be sent';
    const to = standById(world, act.to);
    if (!to) return 'there is no such place';
    if (to.aloft) return 'nobody is sent up there';
    return person.at === act.to ? 'that worker stands there already' : null;
  },
  apply: (world, act) => {
    const person = personById(world, act.who);
    if (!person) throw new Error(`nobody is called ${act.who}`);
    const name = capital(person.name);
    if (act.to === away) {
      return outcome(withPerson(world, act.who, { at: null }), [event('seen', act.who, `${name} goes back.`)]);
    }
    return outcome(withPerson(world, act.who, { at: act.to }), [
      event('done', act.who, `${name} stands: ${standById(world, act.to)?.name ?? act.to}.`),
    ]);
  },
  offers: (world) =>
    world.people
      .filter(({ at }) => at !== null)
      .flatMap((person) => {
        if (publicRoles.includes(person.role)) {
          return [
            {
              act: { act: 'send', who: person.id, to: away } as const,
              label: `Ask ${person.name} to go back`,
              by: 'talk' as const,
              about: person.id,
            },
          ];
        }
        return isCrew(person)
          ? besides(world).map((to) => ({
              act: { act: 'send', who: person.id, to } as const,
              label: `Send ${person.name} to: ${standById(world, to)?.name ?? to}`,
              by: 'talk' as const,
              about: person.id,
            }))
          : [];
      }),
};

/** Where a worker is sent from here: beside one, or clear of the work on the road side. */
function besides(world: World): readonly string[] {
  const here = standHere(world);
  if (!here) return [];
  const road = world.stands.find(({ id, near }) => near === here.near && id.endsWith('.road'))?.id;
  return [...new Set([...(here.aloft ? [] : [here.id]), ...(road ? [road] : [])])];
}

const taskWords: Readonly<Record<Task, string>> = {
  watch: 'watches the work and nothing else',
  flag: 'flags the traffic',
};

export const assign: ActKind<'assign'> = {
  minutes: () => 1,
  refuse: (world, act) => {
    const beyond = onFoot(world) ?? beyondVoice(world, act.who);
    if (beyond) return beyond;
    const person = personById(world, act.who);
    if (!person || !isCrew(person)) return 'that is nobody of the crew';
    return person.task === act.task ? 'that is what they do already' : null;
  },
  apply: (world, act) => {
    const person = personById(world, act.who);
    if (!person) throw new Error(`nobody is called ${act.who}`);
    const words = act.task === null ? 'is free for the work again' : taskWords[act.task];
    return outcome(withPerson(world, act.who, { task: act.task }), [
      event('said', act.who, `${capital(person.name)} ${words}.`),
    ]);
  },
  offers: (world) =>
    world.people
      .filter((person) => isCrew(person) && person.at !== null)
      .flatMap((person) =>
        tasksFor(world, person).map((task) => ({
          act: { act: 'assign', who: person.id, task } as const,
          label: `Ask ${person.name} to ${task === null ? 'join the work again' : askWords[task]}`,
          by: 'talk' as const,
          about: person.id,
        })),
      ),
};

const askWords: Readonly<Record<Task, string>> = { watch: 'watch the work only', flag: 'flag the traffic' };

/** Flagging is on offer where there is traffic. */
const tasksFor = (world: World, { task }: Person): readonly (Task | null)[] => {
  const tasks: readonly (Task | null)[] = [
    'watch',
    ...(world.site.traffic === 'none' ? [] : (['flag'] as const)),
    null,
  ];
  return tasks.filter((each) => each !== task && trainee(world).at !== null);
};

const capital = (words: string): string => words.slice(0, 1).toUpperCase() + words.slice(1);
