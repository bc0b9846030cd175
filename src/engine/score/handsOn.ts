/** Whether a reach puts hands, stick or weight on something; standing and looking does not. */
import type { Reach } from '../hazards/types.ts';

export const isHandsOn = (reach: Reach): boolean =>
  reach.touches.length > 0 ||
  reach.switches !== null ||
  reach.disturbs !== null ||
  reach.climbs !== null ||
  reach.works;
