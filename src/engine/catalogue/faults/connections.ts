/** Metal that should be joined and is not: conductors, neutrals, ground wires, straps. Each opens one branch of its part. */
import { groundContactOhms } from '../../standards/groundContact.ts';
import type { FaultKind, SignKind } from '../types.ts';
import { none } from './none.ts';

const seen = (id: string, feature: string, words: string, size: number): SignKind => ({
  id,
  sense: 'see',
  feature,
  words,
  size,
  extent: Math.max(0.1, 10 * size),
  shape: 'patch',
  contrast: 0.6,
  reflectance: 0.3,
  source: 'estimate',
});

const onGround = {
  'wet-grass': groundContactOhms('wet-grass'),
  'reinforced-concrete': groundContactOhms('reinforced-concrete'),
};

const open = {
  ...none,
  severity: 'fatal',
  mechanisms: ['contact'],
  source: 'common practice',
} as const;

const conductorBroken: FaultKind = {
  ...open,
  id: 'conductor-broken',
  name: 'broken conductor',
  on: ['phase-span', 'coupled-span'],
  signs: [seen('end', 'strands', 'conductor: its end hanging beside the insulator, strands spread at the tip', 0.03)],
  conditions: ['broken-strands'],
  mechanisms: ['contact', 'approach', 'step', 'drop'],
  opens: ['line'],
  mechanical: { breaks: 'breakM' },
  leaks: [
    { name: 'soil-a', from: 'a', to: 'earth', ohms: 'groundOhms', credibleOhms: 'credibleGroundOhms', soil: true },
    { name: 'soil-b', from: 'b', to: 'earth', ohms: 'groundOhms', credibleOhms: 'credibleGroundOhms', soil: true },
  ],
  values: {
    breakM: { default: 2, dimension: 'length', doc: 'Where it has parted, from its source end' },
    groundOhms: {
      default: onGround['wet-grass'],
      dimension: 'resistance',
      doc: 'What lies on the ground to remote earth, by standards/groundContact.ts',
    },
    credibleGroundOhms: { default: onGround['reinforced-concrete'], dimension: 'resistance', doc: 'The same at worst' },
  },
  harm: 'Either piece may be alive, from the line or from whatever feeds it backward, and lie where people walk.',
  controls: ['deenergize-ground', 'isolate-source', 'keep-clear'],
  tempting: [{ what: 'Take the far piece for dead', why: 'a transformer on it works both ways' }],
  tellApart: 'A whole conductor hangs in one even curve from pole to pole.',
};

const neutralOpen: FaultKind = {
  ...open,
  id: 'neutral-open',
  name: 'open neutral of the line',
  on: ['neutral-span', 'coupled-neutral'],
  signs: [
    seen('end', 'strands', 'conductor: one end beside the spool, strands spread at it, the other below', 0.03),
    {
      id: 'blinks',
      sense: 'ask',
      by: 'noticed',
      words: 'Some lights go bright while others go dim.',
      source: 'common practice',
    },
  ],
  conditions: ['open-neutral', 'broken-strands'],
  opens: ['line'],
  harm: 'Return current seeks the grounds beyond it; neutral, tanks and services there stand at a voltage to the soil.',
  controls: ['deenergize-ground', 'bridge-bond', 'isolate-source', 'keep-clear'],
  tempting: [{ what: 'Join the ends by gloved hand under load', why: 'the whole return current flows across the gap' }],
  tellApart: 'A sound neutral lies on its spool and goes on in the same curve.',
};

const serviceNeutralOpen: FaultKind = {
  ...open,
  id: 'service-neutral-open',
  name: 'open neutral of a service',
  on: ['service-drop', 'secondary-span'],
  signs: [
    seen('end', 'triplex', 'triplex: two dark legs round a bare messenger that ends short of its clamp', 0.02),
    {
      id: 'bright',
      sense: 'ask',
      by: 'noticed',
      words: 'Some lights go bright while others go dim.',
      source: 'common practice',
    },
  ],
  conditions: ['open-neutral'],
  opens: ['messenger'],
  severity: 'serious',
  harm: 'The two legs share 240 V by their loads; one goes high, and the ground of the house carries the rest.',
  controls: ['deenergize-ground', 'isolate-source', 'keep-clear'],
  tempting: [{ what: 'Change the lamps', why: 'the next ones burn out too' }],
  tellApart: 'With a whole neutral both legs stand at 120 V, whatever is switched on.',
};

const groundLeadBroken: FaultKind = {
  ...open,
  id: 'ground-lead-broken',
  name: 'broken ground lead',
  on: ['ground-lead'],
  signs: [seen('gap', 'wire', 'wire: copper stapled down the pole, two ends a hand apart', 0.006)],
  conditions: ['cut'],
  opens: ['wire'],
  harm: 'What is above the gap is no longer grounded here; touched together with the ground it can carry current.',
  controls: ['deenergize-ground', 'bridge-bond', 'keep-clear'],
  tempting: [{ what: 'Twist the ends together by hand', why: 'the hand joins them first' }],
  tellApart: 'A whole wire runs from the neutral to the soil without a gap.',
};

const upperLeadOff: FaultKind = {
  ...open,
  id: 'upper-lead-off',
  name: 'equipment ground lead off',
  on: ['upper-lead'],
  signs: [
    {
      ...seen('end', 'lead', 'lead: copper from arrester foot downward, its end in the air', 0.006),
      form: 'outline',
      place: [0.09, 0.02, -0.27],
    },
  ],
  conditions: ['lead-off'],
  opens: ['lead'],
  mechanical: { hangs: { from: 'tank', metres: 0.9 } },
  harm: 'Tank and arrester foot hang on the strap alone; without it they take the voltage of whatever fails.',
  controls: ['deenergize-ground', 'bridge-bond', 'keep-clear'],
  tempting: [{ what: 'Touch the tank to see', why: 'the hand finds out first' }],
  tellApart: 'A whole lead runs from tank and arrester to the joint below.',
};

const tankStrapOff: FaultKind = {
  ...open,
  id: 'tank-strap-off',
  name: 'tank strap off',
  on: ['tank-strap'],
  signs: [
    {
      ...seen('end', 'strap', 'strap: from the tank lug, its other end hanging in the air', 0.008),
      form: 'piece',
      place: [0.1, -0.42, -0.85],
    },
  ],
  conditions: ['lead-off'],
  opens: ['strap'],
  mechanical: { hangs: { from: 'tank', metres: 0.4 } },
  harm: 'The tank returns its current by whatever is left, and stands at a voltage if nothing is.',
  controls: ['deenergize-ground', 'bridge-bond', 'keep-clear'],
  tempting: [{ what: 'Take a hanging tank for grounded', why: 'it is what it is joined to' }],
  tellApart: 'A sound strap is bolted at both ends.',
};

export const connectionFaults = [
  conductorBroken,
  neutralOpen,
  serviceNeutralOpen,
  groundLeadBroken,
  upperLeadOff,
  tankStrapOff,
];
