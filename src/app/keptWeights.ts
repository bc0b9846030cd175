/** The weights that drills on this device are judged by: the usual ones, or those of an instructor's file, kept as its text. */
import { type ReadonlySignal, signal } from '@preact/signals';
import { usualWeights, type Weights } from '../engine/score/weights.ts';
import { longestWeights, parseWeights } from '../engine/score/weightsForm.ts';
import type { Kept } from './kept.ts';

const weightsKey = 'loose-tie.weights';

export interface KeptWeights {
  readonly now: ReadonlySignal<Weights>;
  /** Takes over a file; what is wrong with it, or that it cannot be kept, in words. */
  open(file: File): Promise<string | null>;
  backToUsual(): void;
}

/** Weights kept by an earlier version that are none any more are put away, and the usual ones judge. */
export const createKeptWeights = (kept: Kept): KeptWeights => {
  const read = parseWeights(kept.text(weightsKey) ?? '');
  const now = signal(read.ok ? read.weights : usualWeights);
  return {
    now,
    open: async (file) => {
      if (file.size > 4 * longestWeights) return `${file.name} is far too long for a file of weights.`;
      const text = await file.text();
      const given = parseWeights(text);
      if (!given.ok) return `${file.name} is no file of weights: ${given.problems.slice(0, 3).join('; ')}`;
      now.value = given.weights;
      const saved = kept.saveText(weightsKey, text);
      return saved.ok ? null : `The weights hold until this page is closed; they cannot be kept (${saved.why}).`;
    },
    backToUsual: () => {
      now.value = usualWeights;
      kept.saveText(weightsKey, '');
    },
  };
};
