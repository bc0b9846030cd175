/** What can come down: pins, strings, arms, brackets, shoes, and conductors that hang from too little. Masses: usual weights, from memory. */
import type { FaultKind } from '../types.ts';
import { none } from './none.ts';
import { mark, tested } from './signs.ts';

const falls = {
  ...none,
  severity: 'fatal',
  mechanisms: ['struck-by'],
  controls: ['keep-clear', 'hand-over'],
  source: 'common practice; mass from memory',
} as const;

const splitTop: FaultKind = {
  ...falls,
  id: 'pole-top-split',
  name: 'pole top split at the pin',
  on: ['pin-insulator'],
  signs: [
    {
      ...mark('pin', 'pin: galvanised steel in an open gap of the wood, leaning, grey', 0.012, 0.4),
      form: 'outline',
      place: [0, 0, -0.12],
    },
  ],
  conditions: ['split-top', 'loose-pin'],
  mechanical: { drops: { what: 'the insulator with its pin', kilograms: 4 } },
  harm: 'The pin pulls out when the pole is shaken or the conductor moved, and brings the phase along.',
  tempting: [{ what: 'Drive the pin back by hammer', why: 'the blow opens the split' }],
  tellApart: 'A check in the roof ends short of the bolt and does not open; the pin stands straight.',
};

const pinLoose: FaultKind = {
  ...falls,
  id: 'ridge-pin-loose',
  name: 'ridge pin with its bolts drawn',
  on: ['ridge-pin'],
  signs: [
    {
      ...mark('bolts', 'bolts: upper one half out of the pole, washer standing off, as far as made out', 0.015, 0.4),
      form: 'outline',
      place: [0, 0.04, 0.12],
    },
  ],
  conditions: ['loose-pin', 'loose'],
  mechanical: { drops: { what: 'the pin with its insulator', kilograms: 6 } },
  harm: 'The pin turns over under a pull and lets insulator and conductor come down.',
  tempting: [{ what: 'Draw the nut up with the conductor on it', why: 'what turns under the wrench is what holds it' }],
  tellApart: 'A long bolt stands out as far, but its washer lies flat and its nut is on the wood.',
};

const cotterGone: FaultKind = {
  ...falls,
  id: 'cotter-missing',
  name: 'cotter key gone from a string',
  on: ['suspension-insulator', 'suspension-string'],
  signs: [
    {
      ...mark(
        'hardware',
        'hardware: eye, ball half out of its socket, no cotter in it, as far as made out',
        0.01,
        0.05,
      ),
      form: 'outline',
    },
  ],
  conditions: ['cotter-missing', 'loose'],
  mechanical: { drops: { what: 'the string with its conductor', kilograms: 15 } },
  harm: 'The ball works out of its socket, and the whole string comes down with its conductor.',
  tempting: [{ what: 'Push the ball back and go on', why: 'without its cotter it comes out again' }],
  tellApart: 'A seated joint shows the two legs of its cotter through the hole.',
};

const clampOpen: FaultKind = {
  ...falls,
  id: 'suspension-clamp-open',
  name: 'suspension clamp with its keeper off',
  on: ['suspension-clamp'],
  signs: [
    {
      ...mark(
        'keeper',
        'keeper: standing up on one U-bolt, the other bare, conductor out of the groove, as made out',
        0.012,
        0.08,
      ),
      form: 'outline',
    },
  ],
  conditions: ['loose', 'slipping'],
  mechanical: { supports: 'lost' },
  mechanisms: ['drop', 'approach'],
  harm: 'The conductor lies on the lip of the clamp; a knock on the pole or a gust lets it roll out.',
  controls: ['support-conductor', 'deenergize-ground', 'keep-clear'],
  tempting: [
    { what: 'Press the keeper down with a stick', why: 'what is pushed on is all that the conductor lies on' },
  ],
  tellApart: 'A tight keeper is level and shows thread beyond each of its nuts.',
};

const shoeSlips: FaultKind = {
  ...falls,
  id: 'deadend-shoe-slipping',
  name: 'conductor slipping in its dead-end shoe',
  on: ['deadend-shoe'],
  signs: [
    {
      ...mark(
        'keeper',
        'keeper: conductor bright for a finger behind the groove, its tail short, as far as made out',
        0.01,
        0.06,
      ),
      form: 'piece',
      place: [0.11, 0, -0.05],
    },
  ],
  conditions: ['slipping', 'loose'],
  mechanical: { drops: { what: 'the end of the conductor', kilograms: 10 } },
  harm: 'The next pull or cold night draws it through, and the span comes down.',
  tempting: [{ what: 'Draw the bolts up by hand under tension', why: 'the first turn lets it go before it grips' }],
  tellApart: 'In a tight shoe the conductor is dull right up to the groove and its tail is long.',
};

const armCracked: FaultKind = {
  ...falls,
  id: 'crossarm-cracked',
  name: 'arm cracked through a bolt hole',
  on: ['crossarm'],
  signs: [
    {
      ...mark('arm', 'arm: grey wood across the pole, an open line along it through a bolt, one end lower', 0.03, 1.2),
      form: 'outline',
      place: [-0.15, -0.75, -0.1],
    },
  ],
  conditions: ['arm-cracked', 'broken', 'split-top'],
  mechanical: { drops: { what: 'half of the arm with what stands on it', kilograms: 25 } },
  harm: 'It lets go without notice and drops phases onto whoever is below.',
  tempting: [{ what: 'Tie it up with a rope over the arm', why: 'the rope loads the crack' }],
  tellApart: 'Weather checks run along the grain, miss the holes, and leave the arm straight.',
  source: 'NIOSH FACE 88-47; mass from memory',
};

const armDecayed: FaultKind = {
  ...falls,
  id: 'crossarm-end-decayed',
  name: 'decayed end of an arm',
  on: ['crossarm'],
  signs: [
    {
      ...mark('arm', 'arm: grey wood across the pole, plants on its end, the pin there leaning out', 0.04, 0.3),
      form: 'mark',
      place: [-0.15, -1.05, 0],
    },
  ],
  conditions: ['decayed', 'broken'],
  mechanical: { drops: { what: 'the end of the arm with its insulator', kilograms: 8 } },
  harm: 'Pin and insulator tear out of the soft end when the conductor is lifted or the pole is shaken.',
  tempting: [{ what: 'Hang a block from that end', why: 'soft wood holds no bolt' }],
  tellApart: 'Moss on hard wood scrapes off, and the pin stands straight in it.',
};

const braceLoose: FaultKind = {
  ...falls,
  id: 'crossarm-brace-loose',
  name: 'brace hanging from one bolt',
  on: ['crossarm'],
  signs: [
    {
      ...mark('arm', 'arm: grey wood across the pole, one brace hanging free, the arm out of level', 0.03, 2.4),
      form: 'outline',
      place: [-0.15, 0, 0],
    },
  ],
  conditions: ['brace-loose', 'loose'],
  mechanical: { drops: { what: 'the brace', kilograms: 2 } },
  harm: 'The brace falls or swings, and the arm turns about its one bolt when somebody leans on it.',
  tempting: [{ what: 'Take the hanging brace by hand', why: 'it may lie against a pin that leaks' }],
  tellApart: 'An arm on a gain plate has no braces, and is level.',
};

const bracketLoose: FaultKind = {
  ...falls,
  id: 'cutout-bracket-loose',
  name: 'cutout with its bracket loose',
  on: ['cutout', 'disconnect'],
  signs: [
    tested('inspect', 'Bracket turned a hand to one side on its bolt, the nut a finger off the wood.'),
    {
      id: 'rattle',
      sense: 'test',
      by: 'sound',
      words: 'Something rattles overhead at each blow.',
      source: 'common practice',
    },
  ],
  conditions: ['bracket-loose'],
  mechanical: { drops: { what: 'the whole piece with its bracket', kilograms: 8 } },
  harm: 'The pull of a stick turns it or brings it down, with leads that are alive.',
  tempting: [{ what: 'Pull harder because it will not open', why: 'the bracket gives before the hinge does' }],
  tellApart: 'A tight bracket stands square to its bolt and does not move with the ring of the tube.',
};

const stirrupBurned: FaultKind = {
  ...falls,
  id: 'stirrup-burned',
  name: 'stirrup burned under its clamp',
  on: ['stirrup'],
  signs: [
    {
      ...mark('loop', 'loop: copper bail under two grips, thin and dark at one side, as far as made out', 0.01, 0.04),
      form: 'outline',
    },
  ],
  conditions: ['burned', 'overheated'],
  mechanical: { drops: { what: 'the clamp with its lead', kilograms: 3 } },
  harm: 'The bail parts when the clamp is turned, and the lead comes down alive.',
  tempting: [{ what: 'Shift the clamp a little and draw it up', why: 'the thin place is what the clamp turns on' }],
  tellApart: 'Green or brown all along is patina; a thin dark place at one side is not.',
};

const wedgeSlipped: FaultKind = {
  ...falls,
  id: 'service-wedge-slipped',
  name: 'service slipping out of its wedge',
  on: ['service-drop'],
  signs: [
    mark('triplex', 'triplex: two dark legs carrying the span, the bare messenger slack beside its wedge', 0.02, 0.3),
  ],
  conditions: ['slipping', 'low-sag'],
  mechanical: { drops: { what: 'the end of the service', kilograms: 6 } },
  severity: 'serious',
  harm: 'The legs carry what the messenger should; they pull off their connectors and the drop comes down.',
  tempting: [{ what: 'Hang it back by hand from a ladder', why: 'the legs are alive and bare at the end that moves' }],
  tellApart: 'In a tight wedge the messenger is taut and the legs hang easy round it.',
};

const spoolBroken: FaultKind = {
  ...falls,
  id: 'neutral-spool-broken',
  name: 'neutral off its broken spool',
  on: ['neutral-spool'],
  signs: [mark('spool', 'spool: half of the white porcelain in its clevis, neutral resting on the bolt', 0.02, 0.08)],
  conditions: ['broken', 'off-insulator', 'loose'],
  mechanical: { drops: { what: 'the neutral with the clevis', kilograms: 10 } },
  harm: 'The neutral chafes on its bolt and comes down onto whoever works below it.',
  tempting: [{ what: 'Leave it, since it is only the neutral', why: 'a neutral that parts is a phase' }],
  tellApart: 'On a whole spool the neutral lies against white all round.',
};

export const hardwareFaults = [
  splitTop,
  pinLoose,
  cotterGone,
  clampOpen,
  shoeSlips,
  armCracked,
  armDecayed,
  braceLoose,
  bracketLoose,
  stirrupBurned,
  wedgeSlipped,
  spoolBroken,
];
