/**
 * Which controls stood between a person and a hazard, by counterfactual: take one measure away, and if the hazard then reaches the
 * person, that measure was the control. What was measured, waited for or told is no barrier and never too much.
 */

import type { Replay, Step } from '../acts/types.ts';
import { controlKind } from '../catalogue/controls.ts';
import { toolKind } from '../catalogue/tools.ts';
import { exposuresOf, hazardsMet } from '../hazards/exposuresOf.ts';
import type { Hazard, Reach } from '../hazards/types.ts';
import { toolById } from '../world/edit.ts';
import type { Jumper, Part, World } from '../world/types.ts';
import { isHandsOn } from './handsOn.ts';
import type { JudgedControl, Part as ScorePart } from './types.ts';
import { improvised, levelWeight } from './weights.ts';

/** A World and who reaches for what in it. */
type Moment = readonly [World, Reach];

/** A measure in effect and the moment without it. */
interface Measure {
  readonly control: string;
  readonly without: (moment: Moment) => Moment;
}

const partsAsAtFirst =
  (start: World, which: (part: Part) => boolean) =>
  (world: World): World => ({
    ...world,
    parts: world.parts.map((part) => {
      const first = start.parts.find(({ id }) => id === part.id);
      return first !== undefined && which(part) ? { ...part, state: first.state, tags: first.tags } : part;
    }),
  });

const withThrough = (reach: Reach, change: { readonly stick?: null; readonly gloves?: null }): Reach => ({
  ...reach,
  touches: reach.touches.map((touch) => ({ ...touch, through: { ...touch.through, ...change } })),
  switches: reach.switches && { ...reach.switches, through: { ...reach.switches.through, ...change } },
});

const isClampOf = (world: World, jumper: Jumper, kind: string): boolean => toolById(world, jumper.tool)?.kind === kind;

/** Measures that the crew may have taken, as differences from the start. */
const measuresOf = (start: World): readonly Measure[] => {
  const world = (control: string, undo: (now: World) => World): Measure => ({
    control,
    without: ([now, reach]) => [undo(now), reach],
  });
  const barrier = (control: string, change: { readonly stick?: null; readonly gloves?: null }): Measure => ({
    control,
    without: ([now, reach]) => [now, withThrough(reach, change)],
  });
  const jumpers =
    (kind: string) =>
    (now: World): World => ({
      ...now,
      jumpers: now.jumpers.filter((jumper) => !isClampOf(now, jumper, kind)),
    });
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
    world('support-conductor', (now) => ({ ...now, parts: now.parts.map((part) => ({ ...part, supported: false })) })),
    world('cover-up', (now) => ({ ...now, covers: [] })),
    barrier('hot-stick-only', { stick: null }),
    barrier('rubber-gloves', { gloves: null }),
    world('face-and-arc-wear', (now) => ({
      ...now,
      people: now.people.map((person) => ({
        ...person,
        wearing: person.wearing.filter((id) => toolKind(toolById(now, id)?.kind ?? '').wornOn !== 'face'),
      })),
    })),
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
  { before, exposures }: Step,
  reach: Reach,
): readonly JudgedControl[] => {
  const measures = measuresOf(start);
  const bare = withoutAll(measures, [before, reach]);
  const held = holding(measures, [before, reach]);
  const judged = (hazard: string, control: string, worked: boolean, failed: readonly string[]): JudgedControl => ({
    hazard,
    control,
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

/** All controls of the replay, each hazard and control once, at its first use; failures as often as they happened. */
export const judgeControls = (replay: Replay, hazards: readonly Hazard[]): readonly JudgedControl[] => {
  const all = replay.steps.flatMap((step) =>
    step.reach.filter(isHandsOn).flatMap((reach) => controlsOfReach(replay.start, hazards, step, reach)),
  );
  const seen = new Set<string>();
  return all.filter(({ hazard, control, worked }) => {
    const key = `${hazard} ${control} ${worked}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
};

/** Mean over hazards met of the best control that held, or nothing where one failed. */
export const controlPart = (controls: readonly JudgedControl[]): ScorePart => {
  const hazards = [...new Set(controls.map(({ hazard }) => hazard))];
  const worth = hazards.map((hazard) => {
    const mine = controls.filter((control) => control.hazard === hazard);
    if (mine.some(({ worked }) => !worked)) return 0;
    return Math.max(...mine.map(({ level, planned: was }) => (levelWeight[level] ?? 0) * (was ? 1 : improvised)));
  });
  const held = worth.filter((value) => value > 0).length;
  return {
    name: 'control',
    value: worth.length === 0 ? null : worth.reduce((sum, value) => sum + value, 0) / worth.length,
    numbers: {
      hazardsMet: hazards.length,
      held,
      planned: controls.filter((control) => control.worked && control.planned).length,
    },
    says: [
      hazards.length === 0
        ? 'No act of yours met a hazard that had to be controlled.'
        : `Of ${hazards.length} hazards that your acts met, ${held} were held by a control at that moment.`,
    ],
  };
};
