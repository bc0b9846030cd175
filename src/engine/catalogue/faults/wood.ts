/**
 * Strength that a pole has lost, and a guy that no longer holds. Strength left: geometry of a round
 * (standards/poles.ts), as chosen for a 40 ft class 4 pole; a scenario's pole keeps its own figure where it is less.
 */
import type { FaultKind } from '../types.ts';
import { none } from './none.ts';

const wood = {
  ...none,
  severity: 'fatal',
  mechanisms: ['fall', 'struck-by'],
  controls: ['keep-clear', 'deenergize-ground'],
  source: 'common practice; strength: geometry, standards/poles.ts',
} as const;

const shellRot: FaultKind = {
  ...wood,
  id: 'pole-shell-rot',
  name: 'shell rot',
  on: ['pole'],
  signs: [
    {
      id: 'blade',
      sense: 'test',
      by: 'prod',
      words: 'The blade goes in a finger deep all round below the grass.',
      source: 'common practice',
    },
  ],
  conditions: ['shell-rot', 'groundline-decay'],
  mechanical: { strength: 0.6 },
  harm: 'What bends a pole is carried by its outside; with that gone it may break under a climber.',
  tempting: [{ what: 'Trust the clear ring of the hammer', why: 'a firm middle rings under a soft outside' }],
  tellApart: 'Firm wood stops the blade all round at the ground line.',
};

const groundlineDecay: FaultKind = {
  ...wood,
  id: 'pole-groundline-decay',
  name: 'decay at the ground line',
  on: ['pole'],
  signs: [
    {
      id: 'thud',
      sense: 'test',
      by: 'sound',
      words: 'A dull thud low on the field side, a clear ring above it.',
      source: 'common practice',
    },
    {
      id: 'blade',
      sense: 'test',
      by: 'prod',
      words: 'The blade goes in a hand deep on the field side below the grass.',
      source: 'common practice',
    },
  ],
  conditions: ['groundline-decay', 'shell-rot'],
  mechanical: { strength: 0.45 },
  harm: 'The pole may break at the ground under a climber or when a conductor is let go.',
  tempting: [{ what: 'Climb because the top looks new', why: 'it rots where air and wet soil meet' }],
  tellApart: 'A firm butt rings all round and stops the blade.',
};

const guyBroken: FaultKind = {
  ...wood,
  id: 'guy-broken',
  name: 'broken guy',
  on: ['guy'],
  signs: [
    {
      id: 'slack',
      sense: 'see',
      feature: 'strand',
      words: 'strand: grey, lying in the grass, guard at the foot tilted',
      size: 0.03,
      extent: 3,
      shape: 'patch',
      contrast: 0.6,
      reflectance: 0.35,
      source: 'estimate',
    },
  ],
  conditions: ['broken', 'slack'],
  mechanical: { guy: 'lost', lies: 4.5 },
  harm: 'The pull of the conductors bends the pole alone; it may lean, break, or let go when disturbed.',
  tempting: [{ what: 'Climb it to look at the top', why: 'the climber adds to what it cannot carry' }],
  tellApart: 'A sound guy is taut, its guard upright.',
};

export const woodFaults = [shellRot, groundlineDecay, guyBroken];
