/** Ties and conductors that have let go in part, and leads that hang. Lengths of what hangs: usual, from memory. */
import type { FaultKind } from '../types.ts';
import { none } from './none.ts';
import { leak, mark, ohms } from './signs.ts';

const hand: FaultKind = {
  ...none,
  id: 'hand-tie-unwound',
  name: 'hand tie that has come unwound',
  on: ['tie'],
  only: { form: ['hand'] },
  signs: [
    {
      ...mark('legs', 'legs: soft wire standing out from the groove, the conductor bright beside it', 0.008, 0.2),
      form: 'piece',
    },
  ],
  conditions: ['tie-broken', 'loose', 'rusted'],
  mechanical: { supports: 'lost' },
  severity: 'fatal',
  mechanisms: ['drop', 'approach'],
  harm: 'The conductor lies free in the groove; at an angle it jumps to the inside when anything moves.',
  controls: ['support-conductor', 'deenergize-ground', 'keep-clear'],
  tempting: [{ what: 'Tie this one and go on', why: 'the next tie has often come off first' }],
  tellApart: 'Long tails on wraps that are tight on both sides are only long tails.',
  source: 'common practice',
};

const strands: FaultKind = {
  ...none,
  id: 'conductor-strands-parted',
  name: 'strands parted and unlaid',
  on: ['phase-span', 'coupled-span'],
  signs: [
    mark('strands', 'conductor: strands sprung open along an arm of the span, two tails hanging from it', 0.02, 0.8),
  ],
  conditions: ['broken-strands'],
  mechanical: { hangs: { from: 'a', metres: 0.9 } },
  severity: 'fatal',
  mechanisms: ['drop'],
  harm: 'Tails at line voltage swing about the pole top, and the strands that are left carry the whole pull.',
  controls: ['deenergize-ground', 'keep-clear', 'support-conductor'],
  tempting: [{ what: 'Put armor rods over it from the hooks', why: 'the wrapping loads the strands that are left' }],
  tellApart: 'Armor rods are even all round, thicker than the conductor, and end in one plane.',
  source: 'common practice; length estimated',
};

const arresterLead: FaultKind = {
  ...none,
  id: 'arrester-lead-parted',
  name: 'line lead of the arrester parted',
  on: ['arrester'],
  signs: [
    {
      ...mark('housing', 'housing: sheds wet, rims whole, a length of lead hanging beside its cap', 0.012, 0.6),
      form: 'outline',
      place: [0, 0.08, -0.25],
    },
  ],
  conditions: ['lead-off'],
  opens: ['blocks'],
  mechanical: { hangs: { from: 'line', metres: 0.6 } },
  severity: 'fatal',
  mechanisms: ['drop'],
  harm: 'The lead hangs at line voltage and swings to whoever comes up beside it.',
  controls: ['deenergize-ground', 'keep-clear', 'cover-up'],
  tempting: [{ what: 'Push it aside with a glove', why: 'it springs back to the arm above the cuff' }],
  tellApart: 'A whole lead ends under the nut on the cap.',
  source: 'common practice; length estimated',
};

const low: FaultKind = {
  ...none,
  id: 'conductor-within-reach',
  name: 'conductor hanging within reach of the ground',
  on: ['phase-span', 'coupled-span'],
  signs: [mark('strands', 'conductor: strands in one long curve far below the neutral, a man could touch it', 0.03, 8)],
  conditions: ['low-sag', 'off-insulator', 'slack'],
  points: { low: { on: 'a', along: 'alongM', above: 2.4 } },
  values: {
    alongM: { default: 1.5, dimension: 'length', doc: 'Where it hangs lowest, from the source end' },
  },
  severity: 'fatal',
  mechanisms: ['contact', 'approach'],
  harm: 'Whoever walks, rides or lifts something below it comes into reach of line voltage.',
  controls: ['deenergize-ground', 'keep-clear', 'hand-over'],
  tempting: [{ what: 'Prop it up with a dry board', why: 'boards are not dry, and the props slip' }],
  tellApart: 'Spans of one line sag alike; one that hangs far below its neighbours has come off something.',
  source: 'common practice; height estimated',
};

const kite: FaultKind = {
  ...none,
  id: 'wire-thrown-over-line',
  name: 'wire or foil string over the line',
  on: ['phase-span', 'coupled-span'],
  signs: [mark('strands', 'conductor: strands with a thin bright string over them, its end down by the road', 0.02, 4)],
  conditions: ['foreign-contact'],
  leaks: [
    leak('string', 'a', 'string'),
    { name: 'end', from: 'string', to: 'earth', ohms: 'endOhms', credibleOhms: 'endOhms' },
  ],
  points: { string: { along: 'alongM', above: 1.6 } },
  values: {
    ...ohms(20e3, 1e3, 'Wet string with foil in it'),
    endOhms: { default: 200e3, dimension: 'resistance', doc: 'From its lower end over wet grass to ground' },
    alongM: { default: 1.5, dimension: 'length', doc: 'Where it hangs, from the source end' },
  },
  severity: 'fatal',
  mechanisms: ['contact'],
  harm: 'Its lower end hangs where a child takes hold of it.',
  controls: ['deenergize-ground', 'keep-clear', 'hot-stick-only'],
  tempting: [{ what: 'Pull it down by its end', why: 'the hand is the way to the ground' }],
  tellApart: 'A spider thread is finer, moves with the air, and ends nowhere near the ground.',
  source: 'common practice; ohms estimated',
};

export const looseFaults = [hand, strands, arresterLead, low, kite];
