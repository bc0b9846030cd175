/**
 * Order: of which causes a sign had been perceived before hands went on anything, and what is left by acts that came too early.
 * Order is causal: an act comes too early for a cause when, bare, a hazard of that cause would have met the person and no sign of
 * it had been perceived; each cause counts once, by its severity. Looks that expose nobody may come in any order. A test, a ground,
 * an opening is how one comes to know, so it is too early only if it exposed somebody. Causes that only a test with hands on
 * can tell are not asked for before hands-on.
 */

import type { Replay } from '../acts/types.ts';
import { faultKind } from '../catalogue/faults.ts';
import { rateInterval } from '../standards/wilson.ts';
import type { Contact } from './contacts.ts';
import { isHandsOn } from './handsOn.ts';
import { type Laid, perceived } from './known.ts';
import { sceneCovered } from './sceneCovered.ts';
import type { JudgedExposure, JudgedPrecedence, Part } from './types.ts';
import type { Weights } from './weights.ts';

/** Index of the first step with hands, stick or feet on something; the number of steps if there is none. */
export const firstHandsOn = (replay: Replay): number => {
  const first = replay.steps.findIndex(({ reach }) => reach.some(isHandsOn));
  return first < 0 ? replay.steps.length : first;
};

/** Whether something can be perceived of it before hands go on anything. */
const isToldBefore = ({ fault }: Laid): boolean => {
  const { signs } = faultKind(fault.kind);
  return signs.length === 0 || signs.some(({ sense, by }) => sense !== 'measure' && by !== 'sound' && by !== 'prod');
};

interface Coverage {
  readonly seen: number;
  /** Causes that can be told before hands go on anything. */
  readonly of: number;
}

/** Causes of which a sign had been perceived before the first hands-on act. */
const coverageOf = (replay: Replay, causes: readonly Laid[]): Coverage => {
  const at = replay.steps[firstHandsOn(replay)]?.before ?? replay.end;
  const asked = causes.filter(isToldBefore);
  return { seen: asked.filter((laid) => perceived(at, replay, laid)).length, of: asked.length };
};

/** For each cause the first act that would have met a hazard of it, and whether a sign of it had been perceived before. */
export const judgePrecedence = (
  replay: Replay,
  causes: readonly Laid[],
  contacts: readonly Contact[],
  exposures: readonly JudgedExposure[],
): readonly JudgedPrecedence[] =>
  causes.flatMap((laid): readonly JudgedPrecedence[] => {
    const id = laid.fault.id;
    const met = contacts
      .filter(({ precaution, bare }) => !precaution && bare.some(({ causes: ids }) => ids.includes(id)))
      .map(({ at }) => at);
    const exposed = exposures.filter(({ causes: ids }) => ids.includes(id)).map(({ step }) => step);
    const step = Math.min(...met, ...exposed);
    const at = replay.steps[step];
    if (at === undefined) return [];
    return [
      {
        cause: id,
        step,
        minute: at.before.clock.minute,
        act: at.entry.act.act,
        known: perceived(at.before, replay, laid),
        exposed: exposed.includes(step),
      },
    ];
  });

export const orderPart = (
  replay: Replay,
  causes: readonly Laid[],
  precedence: readonly JudgedPrecedence[],
  exposures: readonly JudgedExposure[],
  { values }: Weights,
): Part => {
  const { seen, of } = coverageOf(replay, causes);
  const coverage = of === 0 ? null : seen / of;
  const [coverageLow, coverageHigh] = rateInterval(seen, of);
  const first = replay.steps[firstHandsOn(replay)];
  const scene = sceneCovered(replay, firstHandsOn(replay));
  const early = precedence.filter(({ known }) => !known);
  const severity = (id: string): number => {
    const laid = causes.find(({ fault }) => fault.id === id);
    return laid === undefined ? 0 : values[`miss-${faultKind(laid.fault.kind).severity}`] / values['miss-fatal'];
  };
  const tooEarly = early.reduce((sum, { cause }) => sum + severity(cause), 0);
  const share = values['coverage-share'];
  // Not a share of all acts: harmless acts afterwards make up for nothing.
  const inOrder = 1 / (1 + values['too-early'] * tooEarly);
  return {
    name: 'order',
    value: coverage === null ? inOrder : share * coverage + (1 - share) * inOrder,
    numbers: {
      coverage,
      coverageLow,
      coverageHigh,
      causesPerceived: seen,
      causesToPerceive: of,
      partsLookedOver: scene.lookedOver,
      partsInScene: scene.parts,
      handsOnActs: replay.steps.filter(({ reach }) => reach.some(isHandsOn)).length,
      causesMet: precedence.length,
      causesMetTooEarly: early.length,
      exposingActs: new Set(exposures.map(({ step }) => step)).size,
      exposingBeforeKnown: new Set(exposures.filter(({ known }) => !known).map(({ step }) => step)).size,
      minuteOfFirstHandsOn: first?.before.clock.minute ?? null,
    },
    says: [
      coverageWords(seen, of, of < causes.length, first !== undefined),
      sceneWords(scene.lookedOver, scene.parts, first !== undefined),
      earlyWords(
        precedence.length,
        early.length,
        causes.length > 0 && exposures.some(({ causes: ids }) => ids.length === 0),
      ),
    ],
  };
};

const coverageWords = (seen: number, of: number, isSome: boolean, worked: boolean): string => {
  if (of === 0) return 'There was nothing to be found before work.';
  const told = isSome ? ' that can be told without hands on anything' : '';
  const one = seen === 1 ? 'a sign of the one cause' : 'no sign of the one cause';
  const some =
    seen === of
      ? `signs of ${of === 2 ? 'both' : `all ${of}`} causes`
      : `signs of ${seen === 0 ? 'none' : seen} of ${of} causes`;
  const perceived = `perceived ${of === 1 ? one : some}${told}.`;
  return worked
    ? `Before hands, stick or hooks went on anything, you had ${perceived}`
    : `You put hands on nothing, and ${perceived}`;
};

const sceneWords = (lookedOver: number, parts: number, worked: boolean): string =>
  `${worked ? 'By then' : 'In all'} you had looked over ${lookedOver} of ${parts} parts of the scene from where something could be made out.`;

const earlyWords = (met: number, early: number, isOfWork: boolean): string => {
  if (met === 0) {
    return `No act of yours came near the hazards of a cause${isOfWork ? '; what you met came of the work itself' : ''}.`;
  }
  if (met === 1) {
    return `Your acts came near the hazards of one cause, ${early === 0 ? 'known by then' : 'before you knew of it'}.`;
  }
  const when =
    early === met ? 'each before you knew of it' : `${early === 0 ? 'none' : early} of them before you knew of it`;
  return `Your acts came near the hazards of ${met} causes, ${when}.`;
};
