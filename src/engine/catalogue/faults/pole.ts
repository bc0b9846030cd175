/** Faults of insulators, ties and the wood below them. Accident and fire patterns: public reports, see each source. */
import type { FaultKind } from '../types.ts';
import { none } from './none.ts';

const pinInsulatorCracked: FaultKind = {
  ...none,
  id: 'pin-insulator-cracked',
  name: 'cracked pin insulator',
  on: ['pin-insulator'],
  signs: [
    {
      id: 'crack',
      sense: 'see',
      feature: 'skirts',
      words: 'skirts: brown glaze, wet, a fine dark line from the head down across two rims',
      size: 0.0004,
      extent: 0.09,
      shape: 'line',
      contrast: 0.35,
      reflectance: 0.15,
      source: 'estimate',
    },
    {
      id: 'buzz',
      sense: 'hear',
      words: 'a steady buzz from the top of the pole, crackling now and then',
      sound: {
        sound: 'insulator-buzz',
        level: 56,
        atM: 1,
        caption: 'steady buzz, crackling now and then, from high up',
        follows: 'leakage',
      },
      source: 'estimate: no published level for a tracking distribution insulator was found',
    },
  ],
  conditions: ['cracked', 'flashed-over', 'tracking'],
  leaks: [{ name: 'crack', from: 'conductor', to: 'pin', ohms: 'ohms', credibleOhms: 'credibleOhms' }],
  values: {
    ohms: { default: 60e3, dimension: 'resistance', doc: 'What leaks through the crack now' },
    credibleOhms: { default: 50, dimension: 'resistance', doc: 'The same when it flashes over' },
  },
  severity: 'fatal',
  mechanisms: ['contact', 'flash'],
  harm: 'Its leak makes the pin, the wood below and any wire that ends there alive; it can flash over at any moment.',
  controls: ['deenergize-ground', 'isolate-source', 'keep-clear'],
  tempting: [{ what: 'Work below it because it has held so far', why: 'what leaks in fog flashes in rain' }],
  tellApart: 'A crack runs on over rims and grooves; a run of water ends at the drip edge and moves.',
  source: 'common practice',
};

const poleBurned: FaultKind = {
  ...none,
  id: 'pole-burned-by-tracking',
  name: 'pole burned by tracking',
  on: ['pole'],
  signs: [
    {
      id: 'burn',
      sense: 'see',
      feature: 'upper-body',
      words: 'upper body: grey wood, a black branching line running down from the pin',
      size: 0.008,
      extent: 1.4,
      shape: 'patch',
      contrast: 0.75,
      reflectance: 0.2,
      source: 'estimate',
    },
  ],
  conditions: ['burn-track'],
  leaks: [{ name: 'burn', from: 'pin', to: 'earth', ohms: 'ohms', credibleOhms: 'credibleOhms' }],
  values: {
    ohms: { default: 40e3, dimension: 'resistance', doc: 'What the charred wood carries now' },
    credibleOhms: { default: 50, dimension: 'resistance', doc: 'The same while it flashes' },
  },
  severity: 'fatal',
  mechanisms: ['contact', 'flash'],
  harm: 'Charred wood leads the leak on to the next metal down the pole, and may smoulder inside.',
  controls: ['deenergize-ground', 'isolate-source', 'keep-clear'],
  tempting: [{ what: 'Wipe the soot off and go on', why: 'the wood stays charred inside and leads again when wet' }],
  tellApart: 'A burn branches and begins at metal; a water stain is soft at its edges; an old scar is pale.',
  source: 'wood-pole fire papers, AIEE 1947 and later abstracts; ohms estimated',
};

const tieBroken: FaultKind = {
  ...none,
  id: 'tie-broken',
  name: 'broken tie',
  on: ['tie'],
  signs: [
    {
      id: 'leg-gone',
      sense: 'see',
      form: 'piece',
      feature: 'legs',
      words: 'legs: formed wire laid along the conductor one way, the other way bare',
      size: 0.006,
      extent: 0.28,
      shape: 'patch',
      contrast: 0.6,
      reflectance: 0.3,
      source: 'estimate',
    },
  ],
  conditions: ['tie-broken', 'loose'],
  mechanical: { supports: 'lost' },
  severity: 'fatal',
  mechanisms: ['drop', 'approach'],
  harm: 'The conductor lies loose in the groove; a knock on the pole or a pull on the span lets it drop or swing.',
  controls: ['support-conductor', 'deenergize-ground', 'keep-clear'],
  tempting: [{ what: 'Sound the pole first', why: 'the knock is what shakes a loose conductor off' }],
  tellApart: 'A sound tie shows a leg along the conductor on both sides of the groove.',
  source: 'common practice',
};

export const poleFaults = [pinInsulatorCracked, poleBurned, tieBroken];
