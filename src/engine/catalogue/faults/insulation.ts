/**
 * Current where none should go: over dirty porcelain, over a cracked cutout, along the wet wood of an arm, through a limb.
 * Ohms are scenario choices over two decades of what has been measured (from memory); flashed over they are next to none.
 */
import type { FaultKind } from '../types.ts';
import { none } from './none.ts';

const flashed = { default: 50, dimension: 'resistance', doc: 'The same when it flashes over' } as const;
const now = (ohms: number, doc: string) => ({ default: ohms, dimension: 'resistance', doc });

const crackle = (id: string, words: string, caption: string) =>
  ({
    id,
    sense: 'hear',
    words,
    sound: { sound: 'insulator-buzz', level: 52, atM: 1, caption, follows: 'leakage' },
    source: 'estimate',
  }) as const;

const dirty = {
  tempting: [{ what: 'Wait for the rain to wash it', why: 'the first wet on the crust is what flashes it' }],
};

const pinContaminated: FaultKind = {
  ...none,
  ...dirty,
  id: 'pin-insulator-contaminated',
  name: 'contaminated pin insulator',
  on: ['pin-insulator'],
  signs: [
    {
      id: 'crust',
      sense: 'see',
      feature: 'skirts',
      words: 'skirts: brown glaze under a grey crust, no shine as far as made out',
      size: 0.03,
      extent: 0.12,
      shape: 'patch',
      contrast: 0.5,
      reflectance: 0.35,
      source: 'estimate',
    },
    crackle('fizz', 'a thin fizzing from an insulator', 'thin fizzing, from high up'),
  ],
  conditions: ['contaminated', 'tracking'],
  leaks: [{ name: 'crust', from: 'conductor', to: 'pin', ohms: 'ohms', credibleOhms: 'credibleOhms' }],
  values: { ohms: now(500e3, 'What leaks over the wet crust now'), credibleOhms: flashed },
  severity: 'fatal',
  mechanisms: ['contact', 'flash'],
  harm: 'What leaks over the wet crust makes pin and wood alive, and may flash over.',
  controls: ['deenergize-ground', 'isolate-source', 'keep-clear'],
  tellApart: 'A clean wet glaze shines; a crust stays dull when wet.',
  source: 'common practice',
};

const deadendContaminated: FaultKind = {
  ...pinContaminated,
  id: 'deadend-contaminated',
  name: 'contaminated dead-end insulator',
  on: ['deadend-insulator'],
  signs: [
    {
      id: 'crust',
      sense: 'see',
      feature: 'body',
      words: 'body: grey sheds under a pale crust, rims dull as far as made out',
      size: 0.03,
      extent: 0.2,
      shape: 'patch',
      contrast: 0.5,
      reflectance: 0.35,
      source: 'estimate',
    },
    crackle('fizz', 'a thin fizzing from an insulator', 'thin fizzing, from high up'),
  ],
  leaks: [{ name: 'crust', from: 'conductor', to: 'yoke', ohms: 'ohms', credibleOhms: 'credibleOhms' }],
};

const cutoutCracked: FaultKind = {
  ...none,
  id: 'cutout-porcelain-cracked',
  name: 'cracked cutout',
  on: ['cutout'],
  signs: [
    {
      id: 'crack',
      sense: 'see',
      feature: 'body',
      words: 'body: grey porcelain on its bracket, a fine dark line across two rims',
      size: 0.0004,
      extent: 0.08,
      shape: 'line',
      contrast: 0.35,
      reflectance: 0.3,
      source: 'estimate',
    },
    crackle('buzz', 'a buzz beside the cutout, now and then', 'low buzz, now and then, from the cutout'),
  ],
  conditions: ['cracked'],
  leaks: [{ name: 'crack', from: 'top', to: 'earth', ohms: 'ohms', credibleOhms: 'credibleOhms' }],
  values: { ohms: now(200e3, 'What leaks through the crack into bracket and wood'), credibleOhms: flashed },
  // Half the porcelain with its contact: order of magnitude, estimate.
  mechanical: { drops: { what: 'a piece of the porcelain with its contact', kilograms: 3 } },
  severity: 'fatal',
  mechanisms: ['contact', 'flash', 'struck-by'],
  harm: 'It may come apart in the hand of whoever opens or closes it, and drop a live lead.',
  controls: ['deenergize-ground', 'isolate-source', 'keep-clear'],
  tempting: [{ what: 'Open it quickly by stick', why: 'the pull of the stick is what breaks it' }],
  tellApart: 'A crack runs on over rims; a run of water ends at the drip edge.',
  source: 'common practice',
};

const armTracked: FaultKind = {
  ...none,
  id: 'arm-wet-track',
  name: 'leak along wet wood of an arm',
  on: ['crossarm'],
  signs: [
    {
      id: 'track',
      sense: 'see',
      feature: 'arm',
      words: 'arm: grey wood across the pole, a black branching line along it from a pin',
      size: 0.05,
      extent: 0.9,
      shape: 'patch',
      contrast: 0.7,
      reflectance: 0.3,
      source: 'estimate',
    },
  ],
  conditions: ['burn-track'],
  leaks: [{ name: 'track', from: 'road', to: 'middle', ohms: 'ohms', credibleOhms: 'credibleOhms' }],
  values: { ohms: now(20e3, 'A metre of soaked, tracked wood'), credibleOhms: flashed },
  severity: 'fatal',
  mechanisms: ['contact', 'flash'],
  harm: 'It leads what leaks over an arm pin to the hardware of the pole, and smoulders inside.',
  controls: ['deenergize-ground', 'isolate-source', 'keep-clear'],
  tempting: [{ what: 'Lean on the arm while looking', why: 'wood that leads is no insulation' }],
  tellApart: 'A track branches and begins at metal; weather checks run with the grain.',
  source: 'wood-pole fire papers, AIEE 1947 and later abstracts; ohms estimated',
};

const limbOnLine: FaultKind = {
  ...none,
  id: 'limb-on-line',
  name: 'limb on the line',
  on: ['phase-span', 'coupled-span'],
  signs: [
    {
      id: 'limb',
      sense: 'see',
      feature: 'strands',
      words: 'conductor: strands with a leafy branch from beside the line resting on them',
      size: 0.04,
      extent: 2,
      shape: 'patch',
      contrast: 0.6,
      reflectance: 0.3,
      source: 'estimate',
    },
  ],
  conditions: ['limb-on-line'],
  leaks: [
    { name: 'limb', from: 'a', to: 'limb', ohms: 'ohms', credibleOhms: 'credibleOhms' },
    { name: 'trunk', from: 'limb', to: 'earth', ohms: 'trunkOhms', credibleOhms: 'credibleTrunkOhms' },
  ],
  // As high as a hand; the wood above it feeds what is touched there, the wood beyond it carries the rest to ground.
  points: { limb: { along: 'alongM', above: 1.9 } },
  values: {
    alongM: { default: 2, dimension: 'length', doc: 'How far along the span it lies, from the source end' },
    ohms: now(20e3, 'Green wood from the line to where it hangs in reach'),
    credibleOhms: { ...flashed, default: 250, doc: 'The same when charred through' },
    trunkOhms: now(20e3, 'Green wood from there to ground'),
    credibleTrunkOhms: { ...flashed, default: 250, doc: 'The same when charred through' },
  },
  severity: 'fatal',
  mechanisms: ['contact', 'approach'],
  harm: 'Limb, trunk and fence beside it can be alive.',
  controls: ['deenergize-ground', 'isolate-source', 'keep-clear'],
  tempting: [{ what: 'Pull it off from the ground', why: 'wet wood leads to the hands' }],
  tellApart: 'A limb on the line moves with it and shows against the sky.',
  source: 'common practice',
};

export const insulationFaults = [pinContaminated, deadendContaminated, cutoutCracked, armTracked, limbOnLine];
