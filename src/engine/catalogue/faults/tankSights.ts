/** On tanks, meters and services: what only looks or sounds bad. Each says what it is wrongly called, and how to tell. */
import type { FaultKind } from '../types.ts';
import { benign } from './none.ts';
import { mark, strip } from './signs.ts';

export const tankSights: readonly FaultKind[] = [
  {
    ...benign,
    id: 'tank-weld-seam',
    name: 'weld seam of a tank',
    on: ['transformer'],
    signs: [
      strip(
        'tank',
        'tank: grey paint, a raised seam from lid to bottom, sides straight, dry, lid band in place',
        0.03,
        0.8,
      ),
    ],
    conditions: ['factory-seam', 'sound'],
    mistakenFor: ['bulged', 'leaking'],
    tellApart: 'Straight, dry, the same on its like; a bulge makes the outline round.',
  },
  {
    ...benign,
    id: 'tank-faded',
    name: 'paint faded by the sun',
    on: ['transformer'],
    signs: [
      mark('tank', 'tank: paint paler on its south side, seams dry, lid band in place, size stencilled', 0.04, 0.5),
    ],
    conditions: ['faded-paint', 'sound'],
    mistakenFor: ['overheated'],
    tellApart: 'Pale where the sun stands; heat darkens round the top.',
  },
  {
    ...benign,
    id: 'tank-rain-run',
    name: 'rain run on a tank',
    on: ['transformer'],
    signs: [strip('tank', 'tank: grey paint, a wet run from the lid that ends halfway, seams dry above it', 0.04, 0.4)],
    conditions: ['water-stain', 'sound'],
    mistakenFor: ['leaking'],
    tellApart: 'It dries with the rest and leaves no dust; oil stays dark and drips at the bottom.',
  },
  {
    ...benign,
    id: 'can-seam',
    name: 'pressed seam of a capacitor',
    on: ['capacitor'],
    signs: [strip('can', 'can: grey steel box, a pressed edge along each side, flat between, dry', 0.03, 0.4)],
    conditions: ['factory-seam', 'sound'],
    mistakenFor: ['bulged', 'leaking'],
    tellApart: 'The sides between the edges are flat.',
  },
  {
    ...benign,
    id: 'meter-fog',
    name: 'fog inside a meter glass',
    on: ['meter'],
    signs: [mark('meter', 'meter: glass white with fog, ring and seal on', 0.02, 0.1)],
    conditions: ['fogged-glass', 'sound'],
    mistakenFor: ['jaws-burned', 'damaged'],
    tellApart: 'White, and gone when the sun is on it; char is brown and stays.',
  },
  {
    ...benign,
    id: 'taped-leg',
    name: 'taped place on a service leg',
    on: ['service-drop'],
    signs: [
      mark('triplex', 'triplex: two dark legs round the bare messenger, one wrapped thick, wrapping whole', 0.02, 0.2),
    ],
    conditions: ['taped', 'sound'],
    mistakenFor: ['insulation-worn'],
    tellApart: 'Thick, dull, whole all round: mended, not bare.',
  },
  {
    ...benign,
    id: 'lamp-lit-by-day',
    name: 'streetlight burning by day',
    on: ['streetlight'],
    signs: [
      { ...mark('lamp', 'lamp: glass bowl at the end of the arm, lit, eye on its top', 0.06, 0.3), form: 'outline' },
    ],
    conditions: ['lit', 'sound'],
    mistakenFor: ['other-circuit', 'bracket-live'],
    sets: { lamp: 'on' },
    tellApart: 'Its eye is stuck: a job for the lamp crew, nothing is alive that was not.',
  },
  {
    ...benign,
    id: 'transformer-hum',
    name: 'hum of a transformer',
    on: ['transformer'],
    signs: [
      {
        id: 'hum',
        sense: 'hear',
        words: 'a low even hum from the tank',
        sound: { sound: 'transformer-hum', level: 44, atM: 1, caption: 'low even hum from the tank' },
        source: 'estimate: below the 48 dB that NEMA TR 1 allows a small unit, from memory',
      },
    ],
    conditions: ['humming', 'sound'],
    mistakenFor: ['overheated', 'failed'],
    tellApart: 'Even, like that of others of its size; a fault growls, crackles, or changes with the load.',
  },
  {
    ...benign,
    id: 'regulator-clack',
    name: 'clack of a tap change',
    on: ['regulator'],
    signs: [
      {
        id: 'clack',
        sense: 'hear',
        words: 'a clack from the tank, and quiet again',
        sound: { sound: 'tap-change', level: 50, atM: 1, caption: 'a clack, then quiet' },
        source: 'estimate',
      },
    ],
    conditions: ['humming', 'sound'],
    mistakenFor: ['overheated', 'off-neutral'],
    tellApart: 'One step a while after the load has changed; the dial moves with it by one.',
  },
];
