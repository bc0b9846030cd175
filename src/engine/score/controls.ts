/**
 * Which controls stood between a person and a hazard, by counterfactual: take one measure away, and if the hazard then reaches the
 * person, that measure was the control. A fault's hazards count, and those that the work itself brings; one that reached somebody,
 * with hands on anything or not, was held by nothing. What was waited for or told is no barrier. Testing, grounding and opening are never too
 * much: a hazard that only they met, and that was held, does not lower the part. Covers and supports that held nothing only cost
 * time; they are told, and count in no part but service.
 */

import type { Replay } from '../acts/types.ts';
import { controlKind } from '../catalogue/controls.ts';
import type { ControlKind, Mechanism } from '../catalogue/types.ts';
import type { Exposure, Reach } from '../hazards/types.ts';
import { rateInterval } from '../standards/wilson.ts';
import type { World } from '../world/types.ts';
import { type Contact, met } from './contacts.ts';
import { type Measure, type Moment, withoutAll } from './measures.ts';
import type { JudgedControl, JudgedExposure, OverControl, Part as ScorePart } from './types.ts';
import type { WeightId, Weights } from './weights.ts';

const planned = (world: World, control: string): boolean =>
  world.paper.plans.some((plan) => plan.control === control) && world.paper.briefings.length > 0;

/** What a tool in the hand can hold back. */
const electrical: readonly Mechanism[] = ['contact', 'approach', 'flash'];

/** What was relied on and did not hold: the tool between, or nothing but care. */
const reliedOn = ({ touches, switches }: Reach, { mechanism }: Exposure): string => {
  if (!electrical.includes(mechanism)) return 'keep-clear';
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
const controlsOf = ({ step, reach, precaution, taken, bare }: Contact): readonly JudgedControl[] => {
  const { entry, before, exposures } = step;
  const judged = (hazard: string, control: string, worked: boolean, failed: readonly string[]): JudgedControl => ({
    hazard,
    control,
    act: entry.act.act,
    precaution,
    minute: before.clock.minute,
    worked,
    level: controlKind(control).level,
    planned: planned(before, control),
    failed,
  });
  const held = bare.length === 0 ? null : holding(taken, [before, reach]);
  return bare.flatMap(({ hazard }) => {
    const actual = exposures.find((exposure) => exposure.hazard === hazard);
    return actual === undefined
      ? (held?.(hazard) ?? []).map(({ control }) => judged(hazard, control, true, []))
      : [judged(hazard, reliedOn(reach, actual), false, actual.failed)];
  });
};

/** Where one only stood or walked, distance was all that could have held. */
const unheld = ({ hazard, minute, act, failed }: JudgedExposure, before: World): JudgedControl => ({
  hazard,
  control: 'keep-clear',
  act,
  precaution: false,
  minute,
  worked: false,
  level: controlKind('keep-clear').level,
  planned: planned(before, 'keep-clear'),
  failed,
});

/** All controls of the replay, each hazard, control and outcome once: its first use in work, or as a precaution if there is no other. */
export const judgeControls = (
  replay: Replay,
  contacts: readonly Contact[],
  exposures: readonly JudgedExposure[],
): readonly JudgedControl[] => {
  const first = new Map<string, JudgedControl>();
  const withHands = contacts.flatMap(controlsOf);
  const failed = new Set(withHands.filter(({ worked }) => !worked).map(({ hazard }) => hazard));
  const without = exposures
    .filter(({ hazard }) => !failed.has(hazard))
    .map((exposure) => unheld(exposure, replay.steps[exposure.step]?.before ?? replay.start));
  for (const judged of [...withHands, ...without]) {
    const key = `${judged.hazard} ${judged.control} ${judged.worked}`;
    const known = first.get(key);
    if (known === undefined) first.set(key, judged);
    else if (known.precaution && !judged.precaution) first.set(key, { ...known, act: judged.act, precaution: false });
  }
  return [...first.values()];
};

/** From the top of the hierarchy down. */
const controlLevels = ['elimination', 'substitution', 'engineering', 'administrative', 'ppe'] as const;

/** Acts that lay a control which may turn out to have held nothing. */
const laying = { cover: 'cover-up', support: 'support-conductor' } as const;

/** Covers and supports put on that held nothing all through the drill, with the minutes that they took. */
export const overControls = (replay: Replay, controls: readonly JudgedControl[]): readonly OverControl[] => {
  const held = new Set(controls.filter(({ worked }) => worked).map(({ control }) => control));
  const laid = replay.steps.flatMap(({ entry, before, after }): readonly OverControl[] => {
    const { act } = entry;
    if (act.act !== 'cover' && act.act !== 'support') return [];
    const control = laying[act.act];
    const minutes = after.clock.minute - before.clock.minute;
    return act.on && !held.has(control) ? [{ control, on: act.part, minute: before.clock.minute, minutes }] : [];
  });
  return laid;
};

/** Worth of each hazard met: of the best control that held, or nothing where one failed. */
const worthOf = (mine: readonly JudgedControl[], { values }: Weights): number =>
  mine.some(({ worked }) => !worked)
    ? 0
    : Math.max(
        ...mine.map(({ level, planned: was }) => values[`level-${level}` as WeightId] * (was ? 1 : values.improvised)),
      );

/** Mean over the hazards met in work or failed at; null where there were none. */
export const controlPart = (
  controls: readonly JudgedControl[],
  over: readonly OverControl[],
  weights: Weights,
): ScorePart => {
  const hazards = [...new Set(controls.map(({ hazard }) => hazard))].map((hazard) => {
    const mine = controls.filter((control) => control.hazard === hazard);
    return { worth: worthOf(mine, weights), precaution: mine.every(({ worked, precaution }) => worked && precaution) };
  });
  const working = controls.filter(({ worked }) => worked);
  const levels = controlLevels.map((level) => [level, working.filter((each) => each.level === level).length] as const);
  const inWork = hazards.filter(({ precaution }) => !precaution);
  const held = hazards.filter(({ worth }) => worth > 0).length;
  const [heldLow, heldHigh] = rateInterval(held, hazards.length);
  const plannedOnes = working.filter((control) => control.planned).length;
  return {
    name: 'control',
    value: inWork.length === 0 ? null : inWork.reduce((sum, { worth }) => sum + worth, 0) / inWork.length,
    numbers: {
      hazardsMet: hazards.length,
      held,
      heldLow,
      heldHigh,
      planned: plannedOnes,
      improvised: working.length - plannedOnes,
      ...Object.fromEntries(levels),
      overControls: over.length,
      overControlMinutes: over.reduce((sum, { minutes }) => sum + minutes, 0),
    },
    says: [heldWords(hazards.length, held), ...plannedWords(working.length, plannedOnes, levels), ...overWords(over)],
  };
};

const heldWords = (met: number, held: number): string => {
  if (met === 0) return 'No act of yours met a hazard that had to be controlled.';
  if (held === met && met === 1) return 'The one hazard that your acts met was held by a control at that moment.';
  if (held === met) return `Each of the ${met} hazards that your acts met was held by a control at that moment.`;
  const were = `Your acts met ${met} hazard${met === 1 ? '' : 's'} that had to be controlled`;
  return `${were}; ${held === 0 ? 'none' : held} of them ${held === 1 || held === 0 ? 'was' : 'were'} held at that moment.`;
};

const levelWords: Readonly<Record<ControlKind['level'], string>> = {
  elimination: 'by elimination',
  substitution: 'by substitution',
  engineering: 'by engineering',
  administrative: 'by rules and warnings',
  ppe: 'by what one wears',
};

/** How high in the hierarchy of controls, and whether it stood in the briefing. */
const plannedWords = (
  working: number,
  planned: number,
  levels: readonly (readonly [ControlKind['level'], number])[],
): readonly string[] => {
  if (working === 0) return [];
  const by = levels.flatMap(([level, count]) => (count === 0 ? [] : [`${count} ${levelWords[level]}`])).join(', ');
  const were = planned === working ? 'all planned' : planned === 0 ? 'none planned' : `${planned} planned`;
  return [`Controls that held, from the top of the hierarchy down: ${by}; ${were} in the briefing.`];
};

const overWords = (over: readonly OverControl[]): readonly string[] => {
  if (over.length === 0) return [];
  const minutes = over.reduce((sum, each) => sum + each.minutes, 0);
  return [
    `${over.length === 1 ? 'One cover or support' : `${over.length} covers or supports`} held nothing in this drill and took ${minutes} min; that costs service and nothing else.`,
  ];
};
