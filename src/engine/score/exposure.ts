/** Exposure: what would have reached a person, as computed. One that could have been fatal leaves nothing of this part. */
import type { Replay } from '../acts/types.ts';
import { type Laid, perceived } from './known.ts';
import type { JudgedExposure, Part } from './types.ts';
import type { Weights } from './weights.ts';

/** Every exposure of the replay with its step, and whether its causes were known before. */
export const judgeExposures = (replay: Replay, causes: readonly Laid[]): readonly JudgedExposure[] =>
  replay.steps.flatMap(({ entry, before, exposures }, step) =>
    exposures.map((exposure) => {
      const behind = causes.filter(({ fault }) => exposure.causes.includes(fault.id));
      return {
        ...exposure,
        minute: before.clock.minute,
        step,
        act: entry.act.act,
        known: behind.every((laid) => perceived(before, replay, laid)),
      };
    }),
  );

export const exposurePart = (exposures: readonly JudgedExposure[], { values }: Weights): Part => {
  const fatal = exposures.filter(({ potentiallyFatal }) => potentiallyFatal).length;
  const value = fatal > 0 ? 0 : Math.max(0, 1 - values['exposure-cost'] * exposures.length);
  return {
    name: 'exposure',
    value,
    numbers: { exposures: exposures.length, potentiallyFatal: fatal },
    says: [exposureWords(exposures.length, fatal)],
  };
};

const exposureWords = (exposures: number, fatal: number): string => {
  if (exposures === 0) return 'Nobody was in reach of a hazard that was not controlled at that moment.';
  if (exposures === 1) return `One exposure, which could ${fatal === 1 ? 'have been fatal' : 'have hurt somebody'}.`;
  return `${exposures} exposures; ${fatal === 0 ? 'none' : fatal === exposures ? 'all' : fatal} of them could have been fatal.`;
};
