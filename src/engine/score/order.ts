/**
 * Order: what had been looked at before hands went on anything, and what was known before each act that exposed somebody. Order
 * is causal; looks that expose nobody may come in any order. Only looks that could have resolved a sign count as coverage.
 */

import type { Replay } from '../acts/types.ts';
import { isHandsOn } from './handsOn.ts';
import { type Laid, perceived } from './known.ts';
import type { JudgedExposure, Part } from './types.ts';
import { coverageShare } from './weights.ts';

/** Index of the first step with hands, stick or feet on something; the number of steps if there is none. */
export const firstHandsOn = (replay: Replay): number => {
  const first = replay.steps.findIndex(({ reach }) => reach.some(isHandsOn));
  return first < 0 ? replay.steps.length : first;
};

/** Share of causes of which a sign had been perceived before the first hands-on act. */
const coverageOf = (replay: Replay, causes: readonly Laid[]): number | null => {
  if (causes.length === 0) return null;
  const at = replay.steps[firstHandsOn(replay)]?.before ?? replay.end;
  return causes.filter((laid) => perceived(at, replay, laid)).length / causes.length;
};

export const orderPart = (replay: Replay, scene: readonly Laid[], exposures: readonly JudgedExposure[]): Part => {
  const coverage = coverageOf(replay, scene);
  const acts = new Set(exposures.map(({ step }) => step));
  const unknown = new Set(exposures.filter(({ known }) => !known).map(({ step }) => step));
  const handsOn = replay.steps.filter(({ reach }) => reach.some(isHandsOn)).length;
  const clean = handsOn === 0 ? null : 1 - acts.size / handsOn;
  const value =
    coverage === null ? clean : clean === null ? coverage : coverageShare * coverage + (1 - coverageShare) * clean;
  return {
    name: 'order',
    value,
    numbers: {
      coverage,
      handsOnActs: handsOn,
      exposingActs: acts.size,
      exposingBeforeKnown: unknown.size,
      minuteOfFirstHandsOn: replay.steps[firstHandsOn(replay)]?.before.clock.minute ?? null,
    },
    says: [
      coverage === null
        ? 'There was nothing to be found before work.'
        : `Before your first hands-on act you had perceived signs of ${Math.round(coverage * scene.length)} of ${scene.length} causes around you.`,
      acts.size === 0
        ? 'No act of yours put anybody in reach of a hazard.'
        : `${acts.size} of ${handsOn} hands-on acts put somebody in reach of a hazard, ${unknown.size} of them before you knew of it.`,
    ],
  };
};
