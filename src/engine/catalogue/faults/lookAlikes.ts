/** Benign things that look like a fault. */
import type { FaultKind } from '../types.ts';
import { benign } from './none.ts';

const transferSwitch: FaultKind = {
  ...benign,
  id: 'generator-with-transfer',
  name: 'set behind a transfer switch',
  on: ['transfer-switch'],
  conditions: ['transfer-switch-on-generator', 'sound'],
  mistakenFor: ['miswired'],
  sets: { position: 'generator' },
  tellApart: 'The lever parts house and line; the service legs at the meter do not take their voltage from this house.',
};

const waterStain: FaultKind = {
  ...benign,
  id: 'water-stain',
  name: 'water stain',
  on: ['pole'],
  signs: [
    {
      id: 'stain',
      sense: 'see',
      feature: 'upper-body',
      words: 'upper body: grey wood, a dark streak running down, soft at its edges',
      size: 0.04,
      extent: 1.2,
      shape: 'patch',
      contrast: 0.35,
      reflectance: 0.2,
      source: 'estimate',
    },
  ],
  conditions: ['water-stain', 'sound'],
  mistakenFor: ['burn-track'],
  tellApart: 'Soft edges, even colour, no branches, begins at no metal.',
};

const oldScar: FaultKind = {
  ...benign,
  id: 'old-scar',
  name: 'old bleached scar',
  on: ['pole'],
  signs: [
    {
      id: 'scar',
      sense: 'see',
      feature: 'body',
      words: 'body: grey-brown wood, a long pale dent in it, smooth inside',
      size: 0.05,
      extent: 0.6,
      shape: 'patch',
      contrast: 0.35,
      reflectance: 0.3,
      source: 'estimate',
    },
  ],
  conditions: ['old-scar', 'sound'],
  mistakenFor: ['burn-track', 'shell-rot'],
  tellApart: 'Pale and weathered like the wood round it: years old, no char.',
};

export const lookAlikes = [transferSwitch, waterStain, oldScar];
