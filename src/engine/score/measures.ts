/** Measures that a crew may have taken against a hazard, each with the moment as it would have been without it. */
import { toolKind } from '../catalogue/tools.ts';
import type { Reach } from '../hazards/types.ts';
import { toolById } from '../world/edit.ts';
import type { Jumper, Part, World } from '../world/types.ts';
import { surroundingMeasures } from './surroundingMeasures.ts';

/** A World and who reaches for what in it. */
export type Moment = readonly [World, Reach];

/** A measure and the moment without it; the same World and Reach where it was not taken. */
export interface Measure {
  readonly control: string;
  readonly without: (moment: Moment) => Moment;
}

export const isTaken = ({ without }: Measure, moment: Moment): boolean => {
  const [world, reach] = without(moment);
  return world !== moment[0] || reach !== moment[1];
};

/** The list with some items changed; the same list where none is. */
const changed = <T>(list: readonly T[], change: (item: T) => T): readonly T[] => {
  const next = list.map(change);
  return next.every((item, i) => item === list[i]) ? list : next;
};

const withParts = (world: World, change: (part: Part) => Part): World => {
  const parts = changed(world.parts, change);
  return parts === world.parts ? world : { ...world, parts };
};

const partsAsAtFirst =
  (start: World, which: (part: Part) => boolean) =>
  (world: World): World =>
    withParts(world, (part) => {
      const first = start.parts.find(({ id }) => id === part.id);
      if (first === undefined || !which(part) || (first.state === part.state && first.tags === part.tags)) return part;
      const { reclosing } = part.state;
      const kept: Part['state'] = reclosing === undefined ? {} : { reclosing };
      return { ...part, state: { ...first.state, ...kept }, tags: first.tags };
    });

const withThrough = (reach: Reach, barrier: 'stick' | 'gloves'): Reach => {
  const { touches, switches } = reach;
  const through = [...touches.map((touch) => touch.through), ...(switches === null ? [] : [switches.through])];
  if (through.every((each) => each[barrier] === null)) return reach;
  return {
    ...reach,
    touches: touches.map((touch) => ({ ...touch, through: { ...touch.through, [barrier]: null } })),
    switches: switches && { ...switches, through: { ...switches.through, [barrier]: null } },
  };
};

const isClampOf = (world: World, jumper: Jumper, kinds: readonly string[]): boolean =>
  kinds.includes(toolById(world, jumper.tool)?.kind ?? '');

/** Measures that the crew may have taken, as differences from the start. */
export const measuresOf = (start: World): readonly Measure[] => {
  const world = (control: string, undo: (now: World) => World): Measure => ({
    control,
    without: ([now, reach]) => [undo(now), reach],
  });
  const barrier = (control: string, which: 'stick' | 'gloves'): Measure => ({
    control,
    without: ([now, reach]) => [now, withThrough(reach, which)],
  });
  const jumpers =
    (...kinds: readonly string[]) =>
    (now: World): World => {
      const left = now.jumpers.filter((jumper) => !isClampOf(now, jumper, kinds));
      return left.length === now.jumpers.length ? now : { ...now, jumpers: left };
    };
  const bareFace = (now: World): World => {
    const people = changed(now.people, (person) => {
      const wearing = person.wearing.filter((id) => toolKind(toolById(now, id)?.kind ?? '').wornOn !== 'face');
      return wearing.length === person.wearing.length ? person : { ...person, wearing };
    });
    return people === now.people ? now : { ...now, people };
  };
  return [
    world('deenergize-ground', (now) =>
      partsAsAtFirst(
        start,
        ({ premises }) => premises === null,
      )(jumpers('ground-set', 'large-ground-set', 'cluster-bar')(now)),
    ),
    world(
      'isolate-source',
      partsAsAtFirst(start, ({ premises }) => premises !== null),
    ),
    world('bridge-bond', jumpers('bond-jumper')),
    world('short-secondary', jumpers('secondary-short')),
    world('support-conductor', (now) =>
      withParts(now, (part) => (part.supported ? { ...part, supported: false } : part)),
    ),
    world('cover-up', (now) => (now.covers.length === 0 ? now : { ...now, covers: [] })),
    barrier('hot-stick-only', 'stick'),
    barrier('rubber-gloves', 'gloves'),
    world('face-and-arc-wear', bareFace),
    ...surroundingMeasures(start).map(({ control, undo }) => world(control, undo)),
    { control: 'use-lift', without: ([now, reach]) => [now, onHooks(reach)] },
  ];
};

/** The same climbed instead of lifted. */
const onHooks = (reach: Reach): Reach =>
  reach.climbs?.by === 'bucket' ? { ...reach, climbs: { ...reach.climbs, by: 'hooks' } } : reach;

/** The moment had none of these measures been taken. */
export const withoutAll = (measures: readonly Measure[], moment: Moment): Moment =>
  measures.reduce((now, { without }) => without(now), moment);
