/**
 * The neutral open between the scene and the substation, out of sight: what the scene draws goes home through its own grounds,
 * the earth and the ladder of grounds at the source (components/grounding.ts). Found by reading: neutral, tanks and pole grounds stand at
 * volts to the soil that come and go with the load. Circuit: Ohm's law and Millman's theorem, held
 * against ngspice (worked case E11 of the reference tables); signs: common practice.
 */
import { byEarth } from '../components/shared.ts';
import type { FaultKind } from '../types.ts';
import { none } from './none.ts';

export const sourceNeutralFaults: readonly FaultKind[] = [
  {
    ...none,
    id: 'source-neutral-open',
    name: 'open neutral toward the substation',
    on: ['system-source', 'system-source-wye'],
    signs: [
      {
        id: 'volts',
        sense: 'measure',
        words: 'volts from the pole ground to the soil that would not be there with a whole neutral',
        source: 'common practice: a voltmeter from the pole ground to a probe in the soil',
      },
      {
        id: 'dim',
        sense: 'ask',
        by: 'noticed',
        words: 'All lights go dim when much is on, and a tap or a wet rail tingles.',
        source: 'common practice',
      },
    ],
    conditions: ['open-neutral'],
    words: byEarth,
    severity: 'fatal',
    mechanisms: ['contact'],
    beyond: true,
    harm: 'Neutral, tanks and pole grounds here carry the whole return to the soil and stand at a voltage to it.',
    controls: ['deenergize-ground', 'work-as-energized', 'isolate-source', 'keep-clear', 'hand-over'],
    tempting: [
      {
        what: 'Lift the pole ground to see whether it carries',
        why: 'the hand and the lifted end take what it carried',
      },
      { what: 'Take the neutral for dead because it is the neutral', why: 'here it is the only way home' },
    ],
    tellApart: 'With a whole neutral the pole ground reads next to nothing to the soil, whatever is switched on.',
    source: 'circuit worked with ngspice and by hand; signs: common practice',
  },
];
