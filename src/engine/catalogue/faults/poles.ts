/**
 * Poles that carry less than they seem to, and guys that do not hold or are not insulated. Strength left stands for the weakest of
 * wood and setting; from geometry where it is wood (a hollow round keeps 1 - (d/D)^4), an estimate where it is soil.
 */
import type { FaultKind } from '../types.ts';
import { none } from './none.ts';
import { leak, mark, ohms, tested } from './signs.ts';

const weak = {
  ...none,
  severity: 'fatal',
  mechanisms: ['fall', 'struck-by'],
  controls: ['keep-clear', 'hand-over'],
  source: 'common practice; 29 CFR 1910.269 App. D; strength estimated',
} as const;

const heartRot: FaultKind = {
  ...weak,
  id: 'pole-heart-rot',
  name: 'heart rot',
  on: ['pole'],
  signs: [tested('sound', 'A hollow answer, like a drum, from knee height to the chest.')],
  conditions: ['heart-rot', 'groundline-decay'],
  mechanical: { strength: 0.6 },
  harm: 'A thin shell round a hollow buckles when a climber or a changed pull bends it.',
  tempting: [{ what: 'Trust the outside because it is hard', why: 'the shell is what is left, and it may be thin' }],
  tellApart: 'Over one check the answer changes for a hand; over a hollow it stays dull for an arm.',
};

const woodpecker: FaultKind = {
  ...weak,
  id: 'pole-woodpecker-nest',
  name: 'woodpecker nest in the pole',
  on: ['pole'],
  signs: [mark('body', 'body: grey-brown wood, a round dark opening in it as wide as a fist', 0.06, 0.1)],
  conditions: ['woodpecker-holes'],
  mechanical: { strength: 0.55 },
  severity: 'serious',
  harm: 'The room behind the opening is far wider than it; the pole may break there under a climber.',
  tempting: [{ what: 'Count openings and climb past them', why: 'one entrance can hide a room half a metre long' }],
  tellApart: 'A bolt hole is as wide as a thumb and goes through; a nest is as wide as a fist and does not.',
};

const leaning: FaultKind = {
  ...weak,
  id: 'pole-leaning',
  name: 'pole that has leaned over in its hole',
  on: ['pole'],
  signs: [
    {
      ...mark('butt', 'butt: a gap to the soil on one side of the wood, a heap on the other', 0.05, 0.4),
      form: 'outline',
      place: [0, 0, 0.08],
    },
    {
      // Half way up, where it stands so far out of plumb.
      ...mark('butt', 'butt: wood going up out of plumb, two hands off half way up', 0.35, 0.5),
      id: 'plumb',
      form: 'outline',
      place: [0, 0, 5],
      aside: true,
    },
  ],
  side: 'field',
  conditions: ['leaning', 'set-shallow'],
  // About 4 degrees, an estimate: less is seldom noticed, more is a pole that nobody takes for sound.
  mechanical: { strength: 0.5, leans: 0.07 },
  harm: 'The soil has given once; a climber or a changed pull turns the pole farther out of it.',
  tempting: [
    { what: 'Pull it straight by winch and climb it', why: 'live conductors move, and the soil holds no better' },
  ],
  tellApart: 'A raked pole leans away from its pull, the soil tight all round it.',
};

const shallow: FaultKind = {
  ...weak,
  id: 'pole-set-shallow',
  name: 'pole set too shallow, or its soil washed out',
  on: ['pole'],
  signs: [mark('butt', 'butt: a dark band of old soil line two hands above the grass, soil soft round it', 0.08, 0.4)],
  conditions: ['set-shallow', 'leaning'],
  mechanical: { strength: 0.4 },
  harm: 'What bends the pole is held by the soil; with a third of the depth gone most of that is gone.',
  tempting: [{ what: 'Tread the soil down and go up', why: 'loose fill carries nothing' }],
  tellApart: 'The brand stands at its usual height above the soil on a pole that was set right.',
};

const anchorPulled: FaultKind = {
  ...weak,
  id: 'anchor-pulled',
  name: 'anchor pulled out of the soil',
  on: ['anchor'],
  signs: [
    {
      ...mark('rod', 'rod: an arm of it bare above the grass, soil open and heaped round it', 0.05, 0.5),
      form: 'outline',
    },
  ],
  conditions: ['anchor-pulled', 'loose'],
  mechanical: { guy: 'lost' },
  harm: 'The guy holds nothing, and the pull of the conductors bends the pole alone.',
  tempting: [
    { what: 'Take up the slack in the guy first', why: 'it pulls the rod, or a weak butt, the rest of the way' },
  ],
  tellApart: 'A rod that holds shows its eye a hand above the grass and no cracks round it.',
};

const insulatorGone: FaultKind = {
  ...none,
  id: 'guy-insulator-missing',
  name: 'guy without its insulator',
  on: ['guy'],
  signs: [
    {
      ...mark('strand', 'strand: grey, taut, one piece all the way, guard at the foot upright', 0.03, 0.3),
      form: 'piece',
    },
  ],
  conditions: ['insulator-missing'],
  leaks: [leak('strand', 'top', 'low')],
  values: ohms(0.05, 0.05, 'Strand where the insulator should be'),
  severity: 'fatal',
  mechanisms: ['contact', 'approach'],
  harm: 'Whatever leaks or falls onto the top of the guy stands at its foot, where people take hold of it.',
  controls: ['deenergize-ground', 'keep-clear', 'work-as-energized'],
  tempting: [{ what: 'Hold on to the guy while looking up', why: 'its top may lie against something that is alive' }],
  tellApart: 'An insulated guy has a ball or rod in it above reach; one that is bonded has a wire to the neutral.',
  source: 'common practice; insulated or bonded by the NESC, from memory, differs by place',
};

const insulatorBridged: FaultKind = {
  ...insulatorGone,
  id: 'strain-insulator-bridged',
  name: 'strain insulator bridged by wire',
  on: ['strain-insulator'],
  signs: [
    {
      ...mark(
        'body',
        'body: brown ball between two eyes of the strand, a wire looped past it, as far as made out',
        0.012,
        0.3,
      ),
      form: 'outline',
    },
  ],
  conditions: ['insulator-missing'],
  leaks: [leak('bridge', 'upper', 'lower')],
  values: ohms(0.1, 0.1, 'The wire that goes past it'),
  tellApart: 'Past a whole insulator nothing goes: two loops of strand interlock through it and do not touch.',
};

const jumperOnGuy: FaultKind = {
  ...insulatorGone,
  id: 'jumper-against-guy',
  name: 'slack jumper lying against the guy',
  signs: [mark('strand', 'strand: grey, taut, a loop of wire from above resting on it, guard upright', 0.012, 0.6)],
  conditions: ['foreign-contact'],
  leaks: [{ ...leak('touch', 'top', 'earth'), elsewhere: true }],
  values: ohms(0.5, 0.1, 'Bare metal on bare metal'),
  harm: 'The upper part of the guy stands at line voltage; with its insulator gone the foot does as well.',
  controls: ['deenergize-ground', 'keep-clear'],
  tempting: [{ what: 'Shake the guy to free it', why: 'the hand is then on the line' }],
  tellApart: 'A jumper that is long enough hangs clear in a loop and moves without touching.',
};

export const supportFaults = [
  heartRot,
  woodpecker,
  leaning,
  shallow,
  anchorPulled,
  insulatorGone,
  insulatorBridged,
  jumperOnGuy,
];
