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
  const first = replay.steps[firstHandsOn(replay)];
  const acts = new Set(exposures.map(({ step }) => step)).size;
  const unknown = new Set(exposures.filter(({ known }) => !known).map(({ step }) => step)).size;
  const handsOn = replay.steps.filter(({ reach }) => reach.some(isHandsOn)).length;
  // Not a share of all acts: harmless acts afterwards make up for nothing.
  const inOrder = 1 / (1 + unknown);
  return {
    name: 'order',
    value: coverage === null ? inOrder : coverageShare * coverage + (1 - coverageShare) * inOrder,
    numbers: {
      coverage,
      handsOnActs: handsOn,
      exposingActs: acts,
      exposingBeforeKnown: unknown,
      minuteOfFirstHandsOn: first?.before.clock.minute ?? null,
    },
    says: [coverageWords(coverage, scene.length, first !== undefined), exposingWords(acts, unknown)],
  };
};

const coverageWords = (coverage: number | null, causes: number, worked: boolean): string => {
  if (coverage === null) return 'There was nothing to be found before work.';
  const seen = Math.round(coverage * causes);
  const of = seen === causes ? `all ${causes} causes` : `${seen === 0 ? 'none' : seen} of ${causes} causes`;
  return worked
    ? `Before hands, stick or hooks went on anything, you had perceived signs of ${of} around you.`
    : `You put hands on nothing, and perceived signs of ${of} around you.`;
};

const exposingWords = (acts: number, unknown: number): string => {
  if (acts === 0) return 'No act of yours put anybody in reach of a hazard.';
  if (acts === 1) {
    return `One act put somebody in reach of a hazard, ${unknown === 0 ? 'its causes known' : 'before you knew of it'}.`;
  }
  const when =
    unknown === acts
      ? 'each before you knew of it'
      : `${unknown === 0 ? 'none' : unknown} of them before you knew of it`;
  return `${acts} acts put somebody in reach of a hazard, ${when}.`;
};
