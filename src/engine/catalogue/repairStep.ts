/** What most repair steps have in common: by hand, two workers, common practice. */
import type { RepairKind } from './types.ts';

/** A step with what it does not say itself. */
export const step = (more: Omit<RepairKind, 'by' | 'workers' | 'source'> & Partial<RepairKind>): RepairKind => ({
  by: 'hand',
  workers: 2,
  source: 'common practice',
  ...more,
});
