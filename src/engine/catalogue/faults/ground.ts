/** Faults of the metal that should be one with the neutral. */
import type { FaultKind } from '../types.ts';
import { none } from './none.ts';

const bondBurnedOff: FaultKind = {
  ...none,
  id: 'ground-bond-burned-off',
  name: 'bond of pole ground and neutral burned off',
  on: ['ground-bond'],
  signs: [
    {
      id: 'ends',
      sense: 'see',
      feature: 'joint',
      words: 'joint: neutral with a dark patch on it, copper ends above and below standing free',
      size: 0.008,
      extent: 0.12,
      shape: 'patch',
      contrast: 0.6,
      reflectance: 0.25,
      source: 'estimate',
    },
  ],
  conditions: ['bond-missing'],
  opens: ['upper', 'lead'],
  severity: 'fatal',
  mechanisms: ['contact'],
  harm: 'The pole ground no longer holds the neutral; whatever leaks into it makes it alive.',
  controls: ['deenergize-ground', 'bridge-bond', 'isolate-source', 'keep-clear'],
  tempting: [{ what: 'Take a copper wire on a pole for grounded', why: 'it is what it is joined to' }],
  tellApart: 'A sound joint shows a connector that holds all leads.',
  source: 'common practice',
};

const leadCut: FaultKind = {
  ...none,
  id: 'ground-lead-cut',
  name: 'pole ground cut away at the butt',
  on: ['ground-lead'],
  signs: [
    {
      id: 'cut',
      sense: 'see',
      feature: 'foot',
      words: 'foot: wire ends above the moulding, staples below it hold nothing',
      size: 0.008,
      extent: 1.5,
      shape: 'patch',
      contrast: 0.5,
      reflectance: 0.2,
      source: 'estimate',
    },
  ],
  conditions: ['cut'],
  opens: ['butt'],
  severity: 'fatal',
  mechanisms: ['contact'],
  harm: 'The piece left on the pole hangs in the air; touched from the ground, it carries whatever leaks into it.',
  controls: ['deenergize-ground', 'isolate-source', 'keep-clear'],
  tempting: [{ what: 'Twist the ends together by hand', why: 'the hand joins them first' }],
  tellApart: 'A sound wire runs under its moulding into the ground.',
  source: 'common practice',
};

export const groundFaults = [bondBurnedOff, leadCut];
