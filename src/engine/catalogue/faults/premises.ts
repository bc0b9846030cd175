/** Faults at customers' sources. */
import type { FaultKind } from '../types.ts';
import { none } from './none.ts';

const backfeed: FaultKind = {
  ...none,
  id: 'backfeed-generator',
  name: 'set tied to the panel with nothing between it and the line',
  on: ['panel-cord'],
  signs: [
    {
      id: 'cable',
      sense: 'see',
      form: 'outline',
      feature: 'cable',
      words: 'cable: thick, from the outbuilding to the panel, its end let into a breaker there',
      size: 0.002,
      extent: 3,
      shape: 'patch',
      contrast: 0.6,
      reflectance: 0.3,
      source: 'estimate',
    },
    {
      id: 'owner',
      sense: 'ask',
      by: 'generator',
      words: 'The owner says that the set is cabled into the panel.',
      source: 'common practice',
    },
    {
      id: 'voltage',
      sense: 'measure',
      words: 'voltage where the line side is open',
      source: 'common practice',
    },
  ],
  conditions: ['feeding-panel', 'main-closed-on-set', 'backfed', 'live-by-backfeed'],
  sets: { position: 'plugged' },
  severity: 'fatal',
  mechanisms: ['contact', 'approach', 'flash'],
  harm: 'The transformer works both ways: 240 V from the house stands as line voltage on a tap that everybody takes for dead.',
  controls: ['isolate-source', 'deenergize-ground', 'work-as-energized'],
  tempting: [
    { what: 'Open the transformer cutout and call the low side dead', why: 'the source is on the low side' },
    { what: 'Have the owner stop the set and go to work', why: 'it can be started again while hands are on the line' },
    { what: 'Touch the line with pliers to hear a buzz', why: 'a weak backfeed makes none' },
  ],
  tellApart: 'With a transfer switch the service legs test dead at the meter while the house is lit.',
  source: 'NIOSH FACE 90-02; 29 CFR 1910.269(m)',
};

export const premisesFaults = [backfeed];
