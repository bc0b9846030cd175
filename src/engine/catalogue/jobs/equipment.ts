/** Jobs on equipment of a pole. */
import type { JobKind } from '../types.ts';
import { deadJob, work } from './steps.ts';

export const equipmentJobs: readonly JobKind[] = [
  {
    id: 'change-cutout',
    name: 'Change a cutout',
    steps: deadJob(work('change', 'Take line lead, then load lead off; change the cutout.', 'repair:replace-cutout')),
    limits: 'Cracked porcelain is not operated. Some change it alive by stick or from a bucket; most isolate upstream.',
    source: '29 CFR 1910.269(l), (m), (n); common practice',
  },
  {
    id: 'change-arrester',
    name: 'Change an arrester',
    steps: deadJob(work('change', 'Take the line lead off first, the ground last.', 'repair:replace-arrester')),
    limits: 'Ahead of the cutout or behind it, so the open point differs between employers.',
    source: '29 CFR 1910.269(m), (n); common practice',
  },
  {
    id: 'change-pin-insulator',
    name: 'Change a pin insulator',
    steps: deadJob(
      work('hold', 'Hold the conductor by the arm before the tie comes off.', 'act:support'),
      work('change', 'Change the insulator.', 'repair:replace-pin-insulator', 'repair:wash-pin-insulator'),
      work('tie', 'Tie the conductor in.', 'repair:tie-in'),
    ),
    limits: 'Done alive by stick or with gloves and cover where the employer allows it.',
    source: '29 CFR 1910.269(l), (m), (n); common practice',
  },
  {
    id: 'change-transformer',
    name: 'Change a transformer',
    steps: deadJob(
      work('isolate', 'Open its cutout; pull or blank meters that may feed back.', 'operation:open', 'operation:pull'),
      work('short', 'Short and ground the low side.', 'act:ground'),
      work('change', 'Lower the old one, set the new one, tank ground first.', 'act:repair'),
    ),
    limits: 'New unit: some energize it with the secondary open for the voltage check, some pull meters instead.',
    source: '29 CFR 1910.269(l)(11), (m), (n), (w)(7); common practice',
  },
  {
    id: 'refuse-after-patrol',
    name: 'Re-fuse a tap after a patrol',
    steps: [
      ...deadJob().slice(0, 3),
      work('patrol', 'Walk the tap: every pole, every premises with a source of its own.', 'act:go'),
      work('cause', 'Name the cause before closing; none found is a cause not found.', 'act:call-finding'),
      work('tube-out', 'Lift the tube out by stick.', 'operation:remove-tube'),
      work('link', 'Fit the link that the table gives.', 'repair:fit-link', 'repair:change-tube'),
      work('hang', 'Hang the tube, everybody clear.', 'operation:hang-tube'),
      work('close', 'Close from the side, face turned.', 'operation:close'),
      work('check', 'Measure at the customer’s side.', 'act:test'),
      work('close-out', 'Tell the dispatcher; close the call out.', 'act:close-out'),
    ],
    limits: 'One trial fuse without a patrol: allowed by some on some taps in fair weather, by others never.',
    source: '29 CFR 1910.269(a)(4), (l)(9), (l)(12); common practice',
  },
];
