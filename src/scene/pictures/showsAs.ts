/** What a laid fault or look-alike changes in the picture of its part: the state it is drawn in. Marks on surfaces: `markOf`. */
import type { Part } from '../../engine/world/types.ts';

const states: Readonly<Record<string, string>> = {
  'tie-broken': 'broken',
  'ground-bond-burned-off': 'burned',
  'ground-lead-cut': 'cut',
};

/** The state that a part's faults give its picture, else the one in which it is sound. */
export const drawnState = (part: Part, sound: string): string => {
  for (const fault of part.faults) {
    const state = states[fault.kind];
    if (state !== undefined) return state;
  }
  return sound;
};
