/** The committed drills of Quarry Road and what each comes to. */
import type { Drills } from '../drills.ts';
import { careful } from './careful.acts.ts';
import { hasty } from './hasty.acts.ts';
import { stuck } from './stuck.acts.ts';

export const drills: Drills = {
  careful: { acts: careful, verdict: 'pass', end: 'closed-out' },
  hasty: { acts: hasty, verdict: 'fail', end: 'struck' },
  stuck: { acts: stuck, verdict: 'pass', end: 'handed-over' },
};
