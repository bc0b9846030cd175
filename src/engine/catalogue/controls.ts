/**
 * Controls that a crew may plan against a hazard. Whether one works is computed from the World, never looked up here; the
 * preconditions name what must hold for it to be the control it claims to be.
 */
import { crewControls } from './controls/crew.ts';
import { siteControls } from './controls/site.ts';
import { toolControls } from './controls/tools.ts';
import type { ControlKind } from './types.ts';

export { briefingTopics } from './types.ts';

const lineControls: readonly ControlKind[] = [
  {
    id: 'deenergize-ground',
    name: 'Open, tag, test dead and ground the line, every source counted',
    level: 'elimination',
    subject: 'energy-controls',
    preconditions: ['clearance', 'tagged', 'source-known', 'tested-dead', 'detector-proved', 'grounded'],
    rule: '29 CFR 1910.269(m), (n)',
    limits: 'Three of the four is a belief. Grounds do not protect outside the zone that they bond.',
  },
  {
    id: 'isolate-source',
    name: "Keep a customer's source apart: stop it, pull, blank and tag the meter",
    level: 'elimination',
    subject: 'energy-controls',
    preconditions: ['gloves-air-tested', 'gloves-in-test', 'face-shield', 'tested-dead', 'tagged'],
    rule: '29 CFR 1910.269(m)(3)',
    limits: 'A stopped set can be started again. Who may pull meters differs between employers.',
  },
  {
    id: 'support-conductor',
    name: 'Hold the conductor by an auxiliary arm before anything shakes the pole',
    level: 'engineering',
    subject: 'procedures',
    preconditions: ['tool-in-test', 'second-qualified'],
    rule: 'common practice',
    limits: 'Weight and tension must be known.',
  },
  {
    id: 'bridge-bond',
    name: 'Bridge the gap in the ground by a jumper, by stick, before hands come near',
    level: 'engineering',
    subject: 'energy-controls',
    preconditions: ['neutral-first', 'tool-in-test', 'tool-clean-dry'],
    rule: '29 CFR 1910.269(n)(6)',
    limits: 'Neutral end first, taken off last.',
  },
  {
    id: 'short-secondary',
    name: 'Test, short and ground the low side',
    level: 'engineering',
    subject: 'energy-controls',
    preconditions: ['tested-dead'],
    rule: 'common practice',
    limits: 'On a running set it is a fault; test first.',
  },
  {
    id: 'cover-up',
    name: 'Cover what stays alive',
    level: 'engineering',
    subject: 'procedures',
    preconditions: ['cover-rated'],
    rule: '29 CFR 1910.269(l)(3)',
    limits: 'For brushing contact only.',
  },
  {
    id: 'hot-stick-only',
    name: 'Work by stick from outside the approach distance',
    level: 'engineering',
    subject: 'procedures',
    preconditions: ['tool-in-test', 'tool-clean-dry', 'keep-distance'],
    rule: '29 CFR 1910.269(j), (l)(3)',
    limits: 'Wet sticks are wiped before each use.',
  },
  {
    id: 'work-as-energized',
    name: 'Treat it as alive',
    level: 'administrative',
    subject: 'procedures',
    preconditions: ['keep-distance'],
    rule: '29 CFR 1910.269(l)(1)',
    limits: 'Needs rated gloves or distance as well.',
  },
  {
    id: 'keep-clear',
    name: 'Stay clear and keep everybody clear',
    level: 'administrative',
    subject: 'precautions',
    preconditions: ['barricaded'],
    rule: '29 CFR 1910.269(w)',
    limits: 'Lasts as long as somebody watches.',
  },
  {
    id: 'reject-tool',
    name: 'Tag the tool out and take a good one',
    level: 'elimination',
    subject: 'procedures',
    preconditions: [],
    rule: '29 CFR 1910.269(j)(2)',
    limits: '',
  },
  {
    id: 'wait-second-qualified',
    name: 'Wait for the second qualified worker',
    level: 'administrative',
    subject: 'procedures',
    preconditions: ['second-qualified'],
    rule: '29 CFR 1910.269(l)(1)',
    limits: '',
  },
  {
    id: 'rubber-gloves',
    name: 'Rated rubber gloves, air-tested, with protectors',
    level: 'ppe',
    subject: 'protective-equipment',
    preconditions: ['gloves-rated', 'gloves-in-test', 'gloves-air-tested'],
    rule: '29 CFR 1910.137(c)',
    limits: 'They protect hands and arms, nothing else.',
  },
  {
    id: 'face-and-arc-wear',
    name: 'Arc-rated clothing and face shield',
    level: 'ppe',
    subject: 'protective-equipment',
    preconditions: ['face-shield'],
    rule: '29 CFR 1910.269(l)(8)',
    limits: '',
  },
  {
    id: 'hand-over',
    name: 'Stop, guard the public, hand over',
    level: 'elimination',
    subject: 'procedures',
    preconditions: ['barricaded', 'reported'],
    rule: 'common practice',
    limits: 'Never a failure.',
  },
];

export const controlKinds: readonly ControlKind[] = [
  ...lineControls,
  ...crewControls,
  ...siteControls,
  ...toolControls,
];

const byId = new Map(controlKinds.map((kind) => [kind.id, kind]));

/** The control; throws on an unknown id. */
export const controlKind = (id: string): ControlKind => {
  const kind = byId.get(id);
  if (kind === undefined) throw new Error(`no control ${id}`);
  return kind;
};

export const isControlKind = (id: string): boolean => byId.has(id);
