/**
 * Which controls stood between a person and a hazard, by counterfactual: take one measure away, and if the hazard then reaches the
 * person, that measure was the control. What was waited for or told is no barrier. Testing, grounding and opening are never too
 * much: a hazard that only they met, and that was held, does not lower the part.
 */

import type { Act, Replay, Step } from '../acts/types.ts';
import { componentKind } from '../catalogue/components.ts';
import { controlKind } from '../catalogue/controls.ts';
import { toolKind } from '../catalogue/tools.ts';
import { exposuresOf, hazardsMet } from '../hazards/exposuresOf.ts';
import type { Hazard, Reach } from '../hazards/types.ts';
import { findPart, toolById } from '../world/edit.ts';
import type { Jumper, Part, World } from '../world/types.ts';
import { isHandsOn } from './handsOn.ts';
import type { JudgedControl, Part as ScorePart } from './types.ts';
import { improvised, levelWeight } from './weights.ts';

/** A World and who reaches for what in it. */
type Moment = readonly [World, Reach];

/** A measure and the moment without it; the same World and Reach where it was not taken. */
interface Measure {
  readonly control: string;
  readonly without: (moment: Moment) => Moment;
}

const isTaken = ({ without }: Measure, moment: Moment): boolean => {
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
      return { ...part, state: first.state, tags: first.tags };
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

const isClampOf = (world: World, jumper: Jumper, kind: string): boolean => toolById(world, jumper.tool)?.kind === kind;

/** Measures that the crew may have taken, as differences from the start. */
const measuresOf = (start: World): readonly Measure[] => {
  const world = (control: string, undo: (now: World) => World): Measure => ({
    control,
    without: ([now, reach]) => [undo(now), reach],
  });
  const barrier = (control: string, which: 'stick' | 'gloves'): Measure => ({
    control,
    without: ([now, reach]) => [now, withThrough(reach, which)],
  });
  const jumpers =
    (kind: string) =>
    (now: World): World => {
      const left = now.jumpers.filter((jumper) => !isClampOf(now, jumper, kind));
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
      partsAsAtFirst(start, ({ premises }) => premises === null)(jumpers('ground-set')(now)),
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
  ];
};

const met = ([world, reach]: Moment): readonly string[] => hazardsMet(reach, world, world);

/** Whether a hazard has causes; asked of the moment itself where the scene at the start did not know it. */
const isCaused = (hazards: readonly Hazard[], [world, reach]: Moment, id: string): boolean => {
  const known = hazards.find((hazard) => hazard.id === id);
  if (known !== undefined) return known.causes.length > 0;
  return exposuresOf(reach, world, world).some(({ hazard, causes }) => hazard === id && causes.length > 0);
};

/** The moment had none of these measures been taken. */
const withoutAll = (measures: readonly Measure[], moment: Moment): Moment =>
  measures.reduce((now, { without }) => without(now), moment);

const planned = (world: World, control: string): boolean =>
  world.paper.plans.some((plan) => plan.control === control) && world.paper.briefings.length > 0;

/** What was relied on and did not hold: the tool between, or nothing but care. */
const reliedOn = ({ touches, switches }: Reach): string => {
  const between = [...touches.map(({ through }) => through), ...(switches === null ? [] : [switches.through])];
  if (between.some(({ stick }) => stick !== null)) return 'hot-stick-only';
  return between.some(({ gloves }) => gloves !== null) ? 'rubber-gloves' : 'work-as-energized';
};

/** Measures without which a hazard reaches the person; where two stand for one another, the one highest in the hierarchy. */
const holding = (measures: readonly Measure[], moment: Moment): ((hazard: string) => readonly Measure[]) => {
  const without = measures.map((measure) => ({ measure, ids: new Set(met(measure.without(moment))) }));
  const alone = measures.map((measure) => {
    let ids: ReadonlySet<string> | undefined;
    const others = measures.filter((other) => other !== measure);
    return {
      measure,
      bites: (hazard: string): boolean => {
        ids ??= new Set(met(withoutAll(others, moment)));
        return ids.has(hazard);
      },
    };
  });
  return (hazard) => {
    const needed = without.filter(({ ids }) => ids.has(hazard)).map(({ measure }) => measure);
    if (needed.length > 0) return needed;
    const first = alone.find(({ bites }) => !bites(hazard));
    return first === undefined ? [] : [first.measure];
  };
};

/** Controls of one reach: what would have met somebody and what held it, or that nothing did. */
const controlsOfReach = (
  start: World,
  hazards: readonly Hazard[],
  { entry, before, exposures }: Step,
  reach: Reach,
): readonly JudgedControl[] => {
  const measures = measuresOf(start).filter((measure) => isTaken(measure, [before, reach]));
  const bare = withoutAll(measures, [before, reach]);
  const held = holding(measures, [before, reach]);
  const judged = (hazard: string, control: string, worked: boolean, failed: readonly string[]): JudgedControl => ({
    hazard,
    control,
    act: entry.act.act,
    precaution: isPrecaution(before, entry.act),
    minute: before.clock.minute,
    worked,
    level: controlKind(control).level,
    planned: planned(before, control),
    failed,
  });
  return met(bare)
    .filter((id) => isCaused(hazards, bare, id))
    .flatMap((hazard) => {
      const actual = exposures.find((exposure) => exposure.hazard === hazard);
      return actual === undefined
        ? held(hazard).map(({ control }) => judged(hazard, control, true, []))
        : [judged(hazard, reliedOn(reach), false, actual.failed)];
    });
};

/** Testing, grounding, and operations that make no contact: opening, pulling, blanking. */
const isPrecaution = (world: World, act: Act): boolean => {
  if (act.act !== 'operate') return act.act === 'test' || act.act === 'ground';
  const part = findPart(world, act.part);
  const operation = part && componentKind(part.kind).operations.find(({ id }) => id === act.operation);
  return operation?.makes === undefined;
};

/** All controls of the replay, each hazard, control and outcome once: its first use in work, or as a precaution if there is no other. */
export const judgeControls = (replay: Replay, hazards: readonly Hazard[]): readonly JudgedControl[] => {
  const all = replay.steps.flatMap((step) =>
    step.reach.filter(isHandsOn).flatMap((reach) => controlsOfReach(replay.start, hazards, step, reach)),
  );
  const first = new Map<string, JudgedControl>();
  for (const judged of all) {
    const key = `${judged.hazard} ${judged.control} ${judged.worked}`;
    const known = first.get(key);
    if (known === undefined) first.set(key, judged);
    else if (known.precaution && !judged.precaution) first.set(key, { ...known, act: judged.act, precaution: false });
  }
  return [...first.values()];
};

/** Worth of each hazard met: of the best control that held, or nothing where one failed. */
const worthOf = (mine: readonly JudgedControl[]): number =>
  mine.some(({ worked }) => !worked)
    ? 0
    : Math.max(...mine.map(({ level, planned: was }) => (levelWeight[level] ?? 0) * (was ? 1 : improvised)));

/** Mean over the hazards met in work or failed at; null where there were none. */
export const controlPart = (controls: readonly JudgedControl[]): ScorePart => {
  const hazards = [...new Set(controls.map(({ hazard }) => hazard))].map((hazard) => {
    const mine = controls.filter((control) => control.hazard === hazard);
    return { worth: worthOf(mine), precaution: mine.every(({ worked, precaution }) => worked && precaution) };
  });
  const inWork = hazards.filter(({ precaution }) => !precaution);
  const held = hazards.filter(({ worth }) => worth > 0).length;
  return {
    name: 'control',
    value: inWork.length === 0 ? null : inWork.reduce((sum, { worth }) => sum + worth, 0) / inWork.length,
    numbers: {
      hazardsMet: hazards.length,
      held,
      planned: controls.filter((control) => control.worked && control.planned).length,
    },
    says: [heldWords(hazards.length, held)],
  };
};

const heldWords = (met: number, held: number): string => {
  if (met === 0) return 'No act of yours met a hazard that had to be controlled.';
  if (held === met) return `Every hazard that your acts met, ${met} in all, was held by a control at that moment.`;
  const were = `Your acts met ${met} hazard${met === 1 ? '' : 's'} that had to be controlled`;
  return `${were}; ${held === 0 ? 'none' : held} of them ${held === 1 || held === 0 ? 'was' : 'were'} held at that moment.`;
};
