/**
 * Insulation that has been hurt: chips, cracks, flashed and cut bodies beyond the pin insulator's. Ohms: scenario choices over two
 * decades of what has been measured (from memory); flashed over they are next to none.
 */
import type { FaultKind } from '../types.ts';
import { none } from './none.ts';
import { buzz, hairline, leak, mark, ohms } from './signs.ts';

const leaking = {
  ...none,
  severity: 'fatal',
  mechanisms: ['contact', 'flash'],
  controls: ['deenergize-ground', 'isolate-source', 'keep-clear'],
  source: 'common practice; ohms estimated',
} as const;

const fizz = buzz('a thin crackle from an insulator', 'thin crackle, from high up');

const chipped: FaultKind = {
  ...leaking,
  id: 'insulator-skirt-gone',
  name: 'pin insulator with a piece of its skirts gone',
  on: ['pin-insulator'],
  signs: [
    {
      ...mark(
        'skirts',
        'skirts: brown glaze, wet, a pale rough place as wide as a hand where two rims end',
        0.03,
        0.18,
      ),
      form: 'outline',
    },
    fizz,
  ],
  conditions: ['chipped', 'cracked'],
  leaks: [leak('path', 'conductor', 'pin')],
  values: ohms(800e3, 50, 'What leaks over the shortened way now'),
  harm: 'The way over the surface is short by what is gone; wet, it leaks, and it may flash over.',
  tempting: [{ what: 'Leave it because it is an old wound', why: 'old or new, the way over it is short' }],
  tellApart: 'A nick on one rim leaves the way over the others long; two rims gone on one side do not.',
};

const flashed: FaultKind = {
  ...leaking,
  id: 'insulator-flashed',
  name: 'flashed pin insulator',
  on: ['pin-insulator'],
  signs: [mark('head', 'head: conductor in the groove, glaze pitted beside it, a dark smear', 0.02, 0.12), fizz],
  conditions: ['flashed-over', 'tracking'],
  leaks: [leak('path', 'conductor', 'pin')],
  values: ohms(300e3, 50, 'What leaks over the pitted glaze now'),
  harm: 'The arc has opened the glaze; it leaks there in wet, and flashes at the same place again.',
  tempting: [{ what: 'Take it for dirt and leave it', why: 'dirt wipes off and leaves a shine; this does not' }],
  tellApart: 'Soot beside a pitted dull patch is an arc; droppings are white and run down from above.',
};

const postCracked: FaultKind = {
  ...leaking,
  id: 'post-insulator-cracked',
  name: 'cracked post insulator',
  on: ['post-insulator'],
  only: { material: ['porcelain'] },
  signs: [
    hairline('body', 'body: grey glaze ribbed all the way up, wet, a fine dark line across three ribs', 0.1),
    fizz,
  ],
  conditions: ['cracked', 'flashed-over', 'tracking'],
  leaks: [leak('path', 'conductor', 'pin')],
  values: ohms(80e3, 50, 'What leaks through the crack now'),
  harm: 'It leaks into its foot and the wood, and may break off when the conductor is lifted.',
  tempting: [{ what: 'Lift the conductor off it by hand', why: 'a cracked post breaks sideways' }],
  tellApart: 'A crack runs on over ribs and grooves; a casting line is straight, raised, and even.',
};

const polymerPostCut: FaultKind = {
  ...leaking,
  id: 'polymer-post-cut',
  name: 'polymer post cut to its rod',
  on: ['post-insulator'],
  only: { material: ['polymer'] },
  signs: [
    mark('body', 'body: grey rubber sheds, wet, one open to the pale rod inside, rims whole beyond', 0.015, 0.06),
    fizz,
  ],
  conditions: ['polymer-cut', 'tracking'],
  leaks: [leak('path', 'conductor', 'pin')],
  values: ohms(250e3, 50, 'What leaks along the wet rod into the wood now'),
  harm: 'Water reaches the rod; it carbonises inside, leaks, and one day parts under tension.',
  tempting: [{ what: 'Tape it until the next round', why: 'the water is inside the tape' }],
  tellApart: 'A white bloom wipes off and the rubber under it is whole; a cut shows the rod.',
};

const polymerDeadendCut: FaultKind = {
  ...polymerPostCut,
  id: 'polymer-deadend-cut',
  name: 'polymer dead end cut to its rod',
  on: ['deadend-insulator'],
  only: {},
  leaks: [leak('path', 'conductor', 'yoke')],
};

const bellBroken: FaultKind = {
  ...leaking,
  id: 'bell-broken',
  name: 'broken bell in a string',
  on: ['suspension-insulator', 'suspension-string'],
  only: { material: ['porcelain', 'glass'] },
  signs: [
    {
      ...mark('body', 'string: in line, wet, one only a stub between its neighbours, as far as made out', 0.03, 0.15),
      form: 'outline',
    },
    fizz,
  ],
  conditions: ['broken', 'chipped', 'cracked'],
  leaks: [leak('path', 'conductor', 'yoke')],
  values: ohms(200e3, 50, 'What leaks over the units that are left now'),
  harm: 'What is left carries the voltage of all; it leaks into yoke and wood and may flash over.',
  tempting: [{ what: 'Count the rest and call it enough', why: 'a unit that looks whole may be punctured as well' }],
  tellApart: 'A glass bell that has let go leaves a stub with crumbs in its cap.',
};

const cutoutPolymer: FaultKind = {
  ...leaking,
  id: 'cutout-polymer-tracked',
  name: 'polymer cutout with a track down its body',
  on: ['cutout'],
  only: { body: ['polymer'] },
  signs: [
    mark('body', 'body: grey rubber sheds on its bracket, a black branching line from rim to rim', 0.012, 0.2),
    fizz,
  ],
  conditions: ['tracking', 'cracked'],
  leaks: [leak('path', 'top', 'earth')],
  values: ohms(150e3, 50, 'What leaks along the track into bracket and wood now'),
  harm: 'Bracket and wood stand in the leak, and it may flash over while somebody works the tube.',
  tempting: [{ what: 'Wipe the body and close it', why: 'the carbon is in the rubber' }],
  tellApart: 'Dirt lies on all sheds alike; a track branches and joins the two ends.',
};

const stackCracked: FaultKind = {
  ...leaking,
  id: 'disconnect-stack-cracked',
  name: 'cracked stack of a disconnect',
  on: ['disconnect'],
  signs: [hairline('stacks', 'stacks: two of grey porcelain on a steel base, a fine dark line round one', 0.08), fizz],
  conditions: ['cracked'],
  leaks: [leak('path', 'source', 'earth')],
  values: ohms(150e3, 50, 'What leaks through the crack into base and wood now'),
  harm: 'The pull at the ring breaks it, and the live jaw hangs on its lead.',
  tempting: [{ what: 'Open it with a quick pull', why: 'the pull is what breaks it' }],
  tellApart: 'A run of water ends at the drip edge; a crack goes on round the stack.',
};

const arresterCracked: FaultKind = {
  ...leaking,
  id: 'arrester-housing-cracked',
  name: 'cracked arrester housing',
  on: ['arrester'],
  only: { body: ['porcelain'] },
  signs: [hairline('housing', 'housing: brown glaze, wet, a fine dark line round it under a rim', 0.09)],
  conditions: ['cracked', 'failed'],
  leaks: [leak('moisture', 'line', 'foot')],
  values: ohms(400e3, 1, 'Wet blocks now'),
  mechanisms: ['flash'],
  harm: 'Water is in the blocks; energised again it may turn into a short and burst.',
  tempting: [{ what: 'Close in and stand back a step', why: 'porcelain flies farther than a step' }],
  tellApart: 'The line where glaze was cut in the works is even, glazed over, and the same on its neighbours.',
};

const rackSpool: FaultKind = {
  ...leaking,
  id: 'rack-spool-broken',
  name: 'broken spool in a secondary rack',
  on: ['secondary-rack'],
  signs: [
    {
      ...mark(
        'spools',
        'spools: two of white porcelain on one rod, a wire on bare steel above, as far as made out',
        0.02,
        0.08,
      ),
      form: 'outline',
    },
  ],
  conditions: ['broken', 'cracked'],
  leaks: [leak('rod', 'x1', 'rack')],
  values: ohms(2, 0.05, 'Wire on the bare rod'),
  mechanisms: ['contact'],
  severity: 'serious',
  harm: 'The back of the rack stands at 120 V beside grounded metal, just where a climber takes hold.',
  tempting: [{ what: 'Belt off against the rack', why: 'low voltage throws people off poles' }],
  tellApart: 'Three wires on three white spools; bare steel under a wire means that one is gone.',
};

export const porcelainFaults = [
  chipped,
  flashed,
  postCracked,
  polymerPostCut,
  polymerDeadendCut,
  bellBroken,
  cutoutPolymer,
  stackCracked,
  arresterCracked,
  rackSpool,
];
