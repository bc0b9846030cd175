/** The committed drills of Quarry Road and what each comes to. */
import type { Drills } from '../drills.ts';
import { acknowledge, go, handOver, park, up } from '../shorthand.ts';
import { careful } from './careful.acts.ts';
import { hasty } from './hasty.acts.ts';
import { stuck } from './stuck.acts.ts';

export const drills: Drills = {
  careful: { acts: careful, verdict: 'pass', end: 'closed-out' },
  hasty: { acts: hasty, verdict: 'fail', end: 'struck' },
  alone: {
    acts: [acknowledge, park('clear'), go('p2.butt'), up('p2', 'work', 'hooks'), handOver],
    verdict: 'fail',
    end: 'handed-over',
  },
  stuck: { acts: stuck, verdict: 'pass', end: 'handed-over' },
};
