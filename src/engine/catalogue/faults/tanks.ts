/** Transformers, capacitors, regulators: inside, outside, and set wrong. */
import type { FaultKind } from '../types.ts';
import { none } from './none.ts';
import { hairline, leak, mark, measured, ohms, told } from './signs.ts';

const tank = {
  ...none,
  severity: 'fatal',
  mechanisms: ['flash'],
  controls: ['deenergize-ground', 'face-and-arc-wear', 'keep-clear'],
  source: 'common practice; ohms estimated',
} as const;

const leakingOil: FaultKind = {
  ...tank,
  id: 'transformer-oil-lost',
  name: 'transformer that has lost its oil',
  on: ['transformer'],
  signs: [mark('tank', 'tank: grey paint, a dark wet run from a seam to the bottom, lid band in place', 0.05, 0.5)],
  conditions: ['leaking'],
  leaks: [leak('windings', 'h1', 'tank')],
  values: ohms(20e6, 5, 'Windings above the oil now'),
  harm: 'Windings stand dry above the oil; closed in again they flash inside, and hot oil comes out.',
  tempting: [{ what: 'Fit a link and see whether it holds', why: 'it fails beside the face of whoever closes it' }],
  tellApart: 'Rain dries with the rest of the tank; oil stays dark, collects dust, and drips at the bottom.',
};

const bulged: FaultKind = {
  ...tank,
  id: 'transformer-failed-bulged',
  name: 'failed transformer, its tank bulged',
  on: ['transformer'],
  signs: [
    {
      ...mark('tank', 'tank: grey paint, sides round where they were straight, lid lifted at one place', 0.04, 0.5),
      form: 'outline',
    },
  ],
  conditions: ['bulged', 'failed'],
  leaks: [leak('inside', 'h1', 'tank')],
  values: ohms(2, 0.5, 'What the windings have become'),
  harm: 'It is a short with pressure behind it; closing in can blow the lid off.',
  tempting: [{ what: 'Try one more link', why: 'the fault is in the tank and waits for it' }],
  tellApart: 'A weld seam is straight and the same all round; a bulge makes the outline round.',
};

const bushingCracked: FaultKind = {
  ...tank,
  id: 'transformer-bushing-cracked',
  name: 'cracked primary bushing',
  on: ['transformer'],
  signs: [hairline('bushing', 'bushing: grey porcelain on the lid, wet, a fine dark line over two rims', 0.07)],
  conditions: ['bushing-cracked'],
  leaks: [leak('bushing', 'h1', 'tank')],
  values: ohms(150e3, 1, 'What leaks through the crack now'),
  harm: 'It flashes to the tank when closed in, or comes off with its lead when that is moved.',
  tempting: [{ what: 'Work the lead loose by hand', why: 'the bushing comes with it' }],
  tellApart: 'A run of water ends at the drip edge and moves; a crack runs on.',
};

const turnsShorted: FaultKind = {
  ...tank,
  id: 'transformer-turns-shorted',
  name: 'shorted turns inside a transformer',
  on: ['transformer'],
  signs: [
    told('links', 'The record says: two links in a month at this one, both held for an hour.'),
    measured('unequal volts on the two halves of the low side'),
  ],
  conditions: ['failed', 'overheated'],
  leaks: [leak('turns', 'x1', 'x2')],
  values: ohms(0.02, 0.005, 'Turns that touch'),
  harm: 'It draws a fault as soon as it is closed in, with nothing to be seen outside.',
  tempting: [{ what: 'Fit a larger link', why: 'the fault then burns longer inside the tank' }],
  tellApart: 'An overload warms the whole tank evenly and blows in the evening; a fault blows at once.',
};

const wrongTap: FaultKind = {
  ...tank,
  id: 'transformer-voltage-switch-wrong',
  name: 'dual-voltage switch set to the other voltage',
  on: ['transformer'],
  signs: [
    {
      ...mark(
        'plate',
        'plate: volts and size stamped on it, pointer of the switch at half the volts of the line',
        0.008,
        0.04,
      ),
      form: 'piece',
      place: [0, -0.24, -0.155],
    },
    measured('twice the usual volts on both legs, even to each other'),
  ],
  conditions: ['wrong-tap'],
  words: { tap: 'half' },
  severity: 'serious',
  mechanisms: ['contact'],
  harm: 'Every customer behind it gets twice the volts; what is plugged in burns, and so may a hand.',
  controls: ['deenergize-ground', 'keep-clear', 'rubber-gloves'],
  tempting: [{ what: 'Turn the switch with the line on', why: 'it is made for no voltage and flashes' }],
  tellApart: 'An open neutral makes one leg high and one low; a wrong ratio makes both alike.',
};

const tiedAcross: FaultKind = {
  ...tank,
  id: 'secondary-tied-across',
  name: 'second transformer on the same secondary',
  on: ['transformer'],
  signs: [
    {
      ...mark('secondary', 'low side: three small bushings, a lead on each, one on to the next pole', 0.012, 0.4),
      form: 'outline',
      place: [0.1, -0.27, 0.36],
    },
    measured('voltage on the low side with its cutout open'),
  ],
  conditions: ['second-source', 'backfed'],
  leaks: [{ ...leak('tie', 'x1', 'earth'), elsewhere: true }],
  values: ohms(0.05, 0.05, 'Secondary wire to the other transformer'),
  mechanisms: ['contact', 'approach', 'flash'],
  harm: 'The other transformer feeds this one backward, and its primary stands at line voltage with its cutout open.',
  controls: ['deenergize-ground', 'short-secondary', 'work-as-energized'],
  tempting: [{ what: 'Open its cutout and call it dead', why: 'the source is on the low side' }],
  tellApart: 'Where a secondary is broken both ends are dead-ended and a gap is seen between them.',
  source: 'NIOSH Alert 88-104; ohms estimated',
};

const canBulged: FaultKind = {
  ...tank,
  id: 'capacitor-bulged',
  name: 'bulged capacitor',
  on: ['capacitor'],
  signs: [
    {
      ...mark('can', 'can: grey steel box, sides round like a pillow, a wet run at a seam', 0.04, 0.4),
      form: 'outline',
    },
  ],
  conditions: ['bulged', 'failed'],
  sets: { position: 'open', charge: 'none' },
  leaks: [leak('inside', 'can', 'case')],
  values: ohms(5, 0.5, 'Foil that has burned together'),
  harm: 'Closed in again it bursts.',
  tempting: [{ what: 'Close it once more', why: 'the fault is inside, the pressure too' }],
  tellApart: 'A seam from the works is straight and dry; a can that has failed stands round.',
};

const chargeHeld: FaultKind = {
  ...tank,
  id: 'capacitor-holds-charge',
  name: 'capacitor that keeps its charge',
  on: ['capacitor'],
  signs: [measured('voltage on the bushing with the switch open, minutes later')],
  conditions: ['charge-held'],
  sets: { position: 'open', charge: 'held' },
  mechanisms: ['contact', 'approach'],
  harm: 'With its resistor gone the can keeps the crest of the line voltage after it was opened.',
  controls: ['keep-clear', 'work-as-energized', 'deenergize-ground'],
  tempting: [{ what: 'Wait five minutes and take hold', why: 'the resistor that should drain it is what has gone' }],
  tellApart: 'One that has drained shows nothing and draws no spark from the shorting stick.',
  source: 'NIOSH FACE reports; IEEE Std 18, from memory',
};

const offNeutral: FaultKind = {
  ...tank,
  id: 'regulator-off-neutral',
  name: 'regulator off neutral before its bypass is closed',
  on: ['regulator'],
  signs: [mark('indicator', 'indicator: dial under the lid, pointer far right at 16, as far as made out', 0.012, 0.08)],
  conditions: ['off-neutral'],
  sets: { tap: 'raise-16' },
  harm: 'A bypass closed over it shorts the series winding; the arc is beside whoever closes it.',
  tempting: [{ what: 'Trust the lamp of the control', why: 'the dial under the lid is what moves with the contacts' }],
  tellApart: 'In neutral the dial points straight up and both bushings stand at one voltage.',
};

export const tankFaults = [
  leakingOil,
  bulged,
  bushingCracked,
  turnsShorted,
  wrongTap,
  tiedAcross,
  canBulged,
  chargeHeld,
  offNeutral,
];
