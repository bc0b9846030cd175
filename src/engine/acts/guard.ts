/** Chocks, cones and keeping people out. */
import { type ActKind, event, outcome } from './kind.ts';
import { onFoot } from './presence.ts';

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
} as const;
const words = ['chocks', 'cones', 'keep-out'] as const;

export const guard: ActKind<'guard'> = {
  minutes: (_world, act) => guards[act.with].minutes,
  refuse: (world, act) => onFoot(world) ?? (world.guards[guards[act.with].field] ? 'that is done already' : null),
  apply: (world, act) =>
    outcome({ ...world, guards: { ...world.guards, [guards[act.with].field]: true } }, [
      event('done', null, guards[act.with].done),
    ]),
  offers: () =>
    words.map((word) => ({
      act: { act: 'guard', with: word },
      label: guards[word].label,
      by: guards[word].by,
      about: null,
    })),
};
