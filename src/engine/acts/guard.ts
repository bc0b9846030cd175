/** Chocks, cones and keeping people out. */
import { toolKind } from '../catalogue/tools.ts';
import type { ToolKind } from '../catalogue/types.ts';
import type { World } from '../world/types.ts';
import { type ActKind, event, outcome } from './kind.ts';
import { onFoot, standing } from './presence.ts';

const guards = {
  chocks: { field: 'chocks', minutes: 1, label: 'Chock the wheels', done: 'The wheels are chocked.', by: 'truck' },
  cones: {
    field: 'cones',
    minutes: 2,
    label: 'Set out cones',
    done: 'Cones stand round the truck and the work.',
    by: 'hands',
  },
  'keep-out': {
    field: 'keepOut',
    minutes: 2,
    label: 'Tape the place off and keep people out',
    done: 'The place under the line is taped off; nobody is inside.',
    by: 'hands',
  },
  barrier: {
    field: 'barrier',
    minutes: 3,
    label: 'Set the barrier vehicle between traffic and work',
    done: 'The barrier vehicle stands between traffic and work.',
    by: 'truck',
  },
  'truck-ground': {
    field: 'truckGround',
    minutes: 2,
    label: 'Clamp the ground of the truck on the pole ground',
    done: 'The truck is grounded.',
    by: 'hands',
  },
} as const;
const words = ['chocks', 'cones', 'keep-out', 'barrier', 'truck-ground'] as const;

/** Those that take something which not every truck carries. */
const needs: Partial<Record<(typeof words)[number], NonNullable<ToolKind['guards']>>> = {
  barrier: 'barrier',
  'truck-ground': 'truck-ground',
};

const lacks = (world: World, word: (typeof words)[number]): boolean => {
  const need = needs[word];
  return need !== undefined && !world.tools.some((tool) => toolKind(tool.kind).guards === need);
};

/** Whoever of the public stands under the line goes outside the tape; a dog does not. */
const cleared = (world: World): World['people'] =>
  world.people.map((person) =>
    person.at !== null && ['bystander', 'child'].includes(person.role) ? { ...person, at: null } : person,
  );

export const guard: ActKind<'guard'> = {
  minutes: (_world, act) => guards[act.with].minutes,
  refuse: (world, act) =>
    onFoot(world) ??
    (lacks(world, act.with) ? 'there is nothing of the kind here' : null) ??
    (world.guards[guards[act.with].field] ? 'that is done already' : null),
  apply: (world, act) =>
    outcome(
      {
        ...world,
        guards: { ...world.guards, [guards[act.with].field]: true },
        people: act.with === 'keep-out' ? cleared(world) : world.people,
      },
      [event('done', null, guards[act.with].done)],
      // Whoever sets the barrier sits in it for most of that time.
      act.with === 'barrier' ? [standing(world, 60)] : [],
    ),
  offers: () =>
    words.map((word) => ({
      act: { act: 'guard', with: word },
      label: guards[word].label,
      by: guards[word].by,
      about: null,
    })),
};
