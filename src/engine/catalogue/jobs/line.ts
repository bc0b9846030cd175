/** Jobs on conductors, arms, guys and services. */
import type { JobKind } from '../types.ts';
import { crewReady, deadJob, restore, survey, work } from './steps.ts';

export const lineJobs: readonly JobKind[] = [
  {
    id: 're-tie',
    name: 'Tie a conductor in again',
    steps: deadJob(
      work('next-poles', 'Look at the ties of the next pole each way.', 'act:look'),
      work('hold', 'Hold the conductor by the arm.', 'act:support'),
      work('tie', 'Tie it in.', 'repair:tie-in'),
    ),
    limits: 'Done alive by stick where the conductor still rests and the employer allows it.',
    source: '29 CFR 1910.269(l), (m), (n), (q); common practice',
  },
  {
    id: 'clear-limb',
    name: 'Clear a limb off the line',
    steps: deadJob(work('limb-off', 'Take the limb off, then look at the wire under it.', 'repair:splice-conductor')),
    limits: 'Line-clearance tree crews work under 1910.269(r); who may cut what differs.',
    source: '29 CFR 1910.269(r), (m), (n); common practice',
  },
  {
    id: 'repair-service-drop',
    name: 'Repair a service drop',
    steps: [
      ...survey,
      ...crewReady,
      work('ask', 'Ask the customer about a source of their own.', 'act:ask'),
      work(
        'open',
        'Open the transformer’s cutout or part the legs; pull the meter.',
        'operation:open',
        'operation:pull',
      ),
      work('test', 'Test leg to leg and each leg to the neutral.', 'act:test'),
      work('up', 'Go up attached.', 'act:aloft'),
      work('splice', 'Mend it, neutral first.', 'repair:splice-messenger'),
      ...restore,
    ],
    limits: 'Who may pull meters and whether a drop is mended alive with gloves differs.',
    source: '29 CFR 1910.269(l)(6), (m), (w)(7); common practice',
  },
  {
    id: 'repair-open-neutral',
    name: 'Repair an open neutral',
    steps: [
      ...survey,
      ...crewReady,
      work('load-off', 'Have the main opened: the voltage swings with the load.', 'operation:open'),
      work('measure', 'Measure each leg to neutral, and neutral to ground.', 'act:test'),
      work('bridge', 'Bridge the break by a jumper before hands come near.', 'act:ground'),
      work('up', 'Go up attached.', 'act:aloft'),
      work(
        'splice',
        'Splice it.',
        'repair:splice-messenger',
        'repair:splice-secondary-neutral',
        'repair:splice-neutral',
      ),
      ...restore,
    ],
    limits: 'An open neutral counts as a phase. Glove class and whether the phase stays alive differ.',
    source: '29 CFR 1910.269(l), (n)(3), App. C; common practice',
  },
  {
    id: 'downed-conductor',
    name: 'A conductor down',
    steps: [
      work('report', 'Acknowledge; have reclosing blocked.', 'precondition:reclosing-blocked'),
      work('stay-back', 'Stop far off; keep everybody back, on both sides of the road.', 'precondition:barricaded'),
      work('public', 'Tell the dispatcher that the public is in danger and guarded.', 'act:tell'),
      ...deadJob().slice(3, 9),
      work('ground', 'Ground it on both sides of the break.', 'act:ground'),
      work('splice', 'Splice and pull it up.', 'repair:splice-conductor'),
      ...restore,
    ],
    limits:
      'How far to keep people away: 10 ft in federal sheets for the public, a span or more in many employers’ rules.',
    source: '29 CFR 1910.269(m), (n), App. C; common practice',
  },
  {
    id: 'guy-and-anchor',
    name: 'Replace a guy and its anchor',
    steps: [
      ...survey,
      ...crewReady,
      work('pole', 'Look at the pole and what pulls on it; keep out from under the pull.', 'precondition:pole-checked'),
      work('guy', 'Set the new one and draw it up before the old one goes.', 'repair:replace-guy'),
      work('close-out', 'Tell the dispatcher; close the call out.', 'act:close-out'),
    ],
    limits: 'Grounded or insulated guys; a temporary guy first where the pole leans.',
    source: '29 CFR 1910.269(q)(1); common practice',
  },
  {
    id: 'replace-crossarm',
    name: 'Replace a crossarm',
    steps: deadJob(
      work('hold', 'Hold each conductor before its pin moves.', 'act:support'),
      work('change', 'Change the arm.', 'repair:replace-arm'),
      work('tie', 'Tie each conductor in.', 'repair:tie-in'),
    ),
    limits: 'Many employers have it done by truck and boom only.',
    source: '29 CFR 1910.269(m), (n), (q); common practice',
  },
];
