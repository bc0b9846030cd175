/** Repair steps: what they need and what they mend. Minutes are estimates. */
import { hardwareRepairs } from './hardwareRepairs.ts';
import { lineRepairs } from './lineRepairs.ts';
import { lowSideRepairs } from './lowSideRepairs.ts';
import type { RepairKind } from './types.ts';

export const repairKinds: readonly RepairKind[] = [
  {
    id: 'replace-pin-insulator',
    label: 'Change the pin insulator',
    on: ['pin-insulator'],
    by: 'hand',
    minutes: 12,
    mends: ['pin-insulator-cracked', 'pin-insulator-cracked-through', 'pin-insulator-parted'],
    touches: ['conductor', 'pin'],
    tie: 'off',
    workers: 2,
    source: 'common practice',
  },
  {
    id: 'clean-burned-wood',
    label: 'Look into the burned wood and scrape it clean',
    on: ['pole'],
    by: 'hand',
    minutes: 4,
    mends: ['pole-burned-by-tracking'],
    touches: [],
    workers: 2,
    source: 'common practice',
  },
  {
    id: 'tie-in',
    label: 'Tie the conductor in',
    on: ['tie'],
    by: 'hand',
    minutes: 6,
    mends: ['tie-broken'],
    touches: [],
    tie: 'on',
    workers: 2,
    source: 'common practice',
  },
  {
    id: 'mend-ground-bond',
    label: 'Mend the joint of pole ground and neutral',
    on: ['ground-bond'],
    by: 'hand',
    minutes: 5,
    mends: ['ground-bond-burned-off'],
    touches: ['neutral', 'upper', 'lead'],
    workers: 2,
    source: 'common practice',
  },
  {
    id: 'replace-ground-lead',
    label: 'Replace the copper at the butt',
    on: ['ground-lead'],
    by: 'hand',
    minutes: 8,
    mends: ['ground-lead-cut'],
    touches: ['low', 'foot'],
    workers: 1,
    source: 'common practice',
  },
  {
    id: 'fit-link',
    label: 'Fit a new fuse link in the tube',
    on: ['cutout'],
    by: 'hand',
    minutes: 3,
    mends: [],
    from: { position: ['removed'] },
    inHand: true,
    sets: { link: 'sound' },
    touches: [],
    workers: 1,
    source: 'common practice',
  },
  ...lineRepairs,
  ...hardwareRepairs,
  ...lowSideRepairs,
];

const byId = new Map(repairKinds.map((kind) => [kind.id, kind]));

/** The step; throws on an unknown id. */
export const repairKind = (id: string): RepairKind => {
  const kind = byId.get(id);
  if (kind === undefined) throw new Error(`no repair ${id}`);
  return kind;
};

export const isRepairKind = (id: string): boolean => byId.has(id);
