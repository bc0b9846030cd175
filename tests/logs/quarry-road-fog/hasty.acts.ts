/** Straight for the obvious fault: a new link, close, and a quick hand on what is loose at the next pole. */
import type { Act } from '../../../src/engine/acts/types.ts';
import { byStick, check, find, go, repair } from './shorthand.ts';

export const hasty: readonly Act[] = [
  { act: 'acknowledge' },
  { act: 'park', at: 'under-line' },
  check('stick-1', 'wipe'),
  go('p1.butt'),
  find('p1.tap-cutout', 'fuse-operated', 1),
  byStick('p1.tap-cutout', 'remove-tube'),
  repair('p1.tap-cutout', 'fit-link'),
  byStick('p1.tap-cutout', 'hang-tube'),
  byStick('p1.tap-cutout', 'close'),
  go('p2.butt'),
  repair('p2.ground-lead', 'replace-ground-lead'),
];
