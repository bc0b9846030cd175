/** Customers' plant that feeds where it should not, or loses what holds its voltage even. */
import type { FaultKind } from '../types.ts';
import { none } from './none.ts';

const plant = {
  ...none,
  severity: 'fatal',
  controls: ['isolate-source', 'deenergize-ground', 'work-as-energized'],
  source: 'common practice; 29 CFR 1910.269(m)',
} as const;

const holdsAlone: FaultKind = {
  ...plant,
  id: 'inverter-holds-alone',
  name: 'inverter that holds its voltage without the line',
  on: ['photovoltaic-plant', 'battery-plant'],
  signs: [
    {
      id: 'lamp',
      sense: 'see',
      feature: 'display',
      words: 'display: box on the wall, green lamp steady, figures changing as before',
      size: 0.012,
      extent: 0.1,
      shape: 'patch',
      contrast: 0.6,
      reflectance: 0.35,
      source: 'estimate',
    },
    { id: 'voltage', sense: 'measure', words: 'voltage where the line side is open', source: 'common practice' },
  ],
  conditions: ['live-by-backfeed', 'backfed', 'feeding-panel'],
  sets: { run: 'holding', islanding: 'holds' },
  mechanisms: ['contact', 'approach', 'flash'],
  harm: 'It stands on the low side like a set, and the transformer makes line voltage of it, silently.',
  tempting: [{ what: 'Trust that it must trip', why: 'the rule says what it should do, the detector what it does' }],
  tellApart: 'One that has let go shows no figures, and the service legs test without voltage at the meter.',
};

const interlockDefeated: FaultKind = {
  ...plant,
  id: 'interlock-defeated',
  name: 'interlock taken off, main and inlet both closed',
  on: ['interlocked-main'],
  signs: [
    {
      id: 'plate',
      sense: 'see',
      feature: 'slide',
      words: 'slide: no plate between two handles, both of them at ON',
      size: 0.02,
      extent: 0.2,
      shape: 'patch',
      contrast: 0.6,
      reflectance: 0.35,
      source: 'estimate',
    },
  ],
  conditions: ['main-closed-on-set', 'feeding-panel', 'missing'],
  sets: { position: 'both' },
  mechanisms: ['contact', 'approach', 'flash'],
  harm: 'The set feeds the line through the main, and the transformer makes line voltage of it.',
  tempting: [{ what: 'Believe that an interlock is there', why: 'a plate that was taken off holds nothing' }],
  tellApart: 'With its plate on, one handle can only be ON when the other is OFF.',
};

const legBypassed: FaultKind = {
  ...plant,
  id: 'transfer-leg-bypassed',
  name: 'transfer switch with one leg bypassed',
  on: ['transfer-switch', 'neutral-transfer-switch'],
  signs: [{ id: 'voltage', sense: 'measure', words: 'voltage on one leg of the service', source: 'common practice' }],
  conditions: ['miswired', 'feeding-panel'],
  leaks: [{ name: 'bypass', from: 'line1', to: 'bus1', ohms: 'ohms', credibleOhms: 'credibleOhms' }],
  values: {
    ohms: { default: 0.01, dimension: 'resistance', doc: 'The wire that goes past the switch' },
    credibleOhms: { default: 0.01, dimension: 'resistance', doc: 'The same' },
  },
  mechanisms: ['contact', 'approach', 'flash'],
  harm: 'One leg goes past the lever; 120 V on half the winding is enough to make line voltage.',
  tempting: [{ what: 'Trust the lever', why: 'it moves only what is wired to it' }],
  tellApart: 'Behind a sound switch on generator both service legs test without voltage at the meter.',
};

const neutralNotTaken: FaultKind = {
  ...plant,
  id: 'transfer-neutral-open',
  name: 'transfer switch that loses the neutral of the set',
  on: ['neutral-transfer-switch'],
  signs: [
    { id: 'shift', sense: 'measure', words: 'unequal volts on the two legs of the house', source: 'common practice' },
    {
      id: 'bright',
      sense: 'ask',
      by: 'noticed',
      words: 'Some lights go bright while others go dim.',
      source: 'common practice',
    },
  ],
  conditions: ['miswired'],
  opens: ['set-neutral'],
  controls: ['rubber-gloves', 'keep-clear', 'isolate-source'],
  severity: 'serious',
  mechanisms: ['contact'],
  harm: 'The two legs of the house share 240 V by their loads, and the set has lost its ground.',
  tempting: [{ what: 'Blame the set', why: 'its two halves are even; the joint in the switch is not there' }],
  tellApart: 'With the neutral through, both legs stand at 120 V whatever is switched on.',
};

export const plantFaults = [holdsAlone, interlockDefeated, legBypassed, neutralNotTaken];
