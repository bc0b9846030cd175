/** Services, meters, streetlights, what customers and communication companies tie to the low side; grounds that have come off. */
import type { FaultKind } from '../types.ts';
import { none } from './none.ts';
import { leak, mark, measured, ohms, told } from './signs.ts';

const low = {
  ...none,
  severity: 'serious',
  mechanisms: ['contact'],
  controls: ['deenergize-ground', 'rubber-gloves', 'keep-clear'],
  source: 'common practice; ohms estimated',
} as const;

const elsewhere = (name: string, from: string) => [{ ...leak(name, from, 'earth'), elsewhere: true as const }];

const triplexRubs: FaultKind = {
  ...low,
  id: 'triplex-rubbed-through',
  name: 'service leg rubbed through against metal',
  on: ['service-drop'],
  signs: [
    mark('triplex', 'triplex: two dark legs round the bare messenger, one resting on metal, bright there', 0.015, 0.1),
    told('noticed', 'It tingles when somebody touches the gutter.'),
  ],
  conditions: ['insulation-worn', 'foreign-contact'],
  leaks: elsewhere('rub', 'x1'),
  values: ohms(2, 0.5, 'Bare strand on metal'),
  harm: 'Whatever it rubs on stands at 120 V, and a shock throws people off ladders and poles.',
  tempting: [
    { what: 'Push it aside bare-handed, it is only a service', why: 'a touch of 120 V has ended in a fall of 7 m' },
  ],
  tellApart: 'A taped place is thick and dull; a rubbed one is bright.',
  source: 'NIOSH FACE 88-39; ohms estimated',
};

const dropLow: FaultKind = {
  ...low,
  id: 'service-drop-low',
  name: 'service hanging low over a drive, chafed bare',
  on: ['service-drop'],
  signs: [
    mark('triplex', 'triplex: two dark legs round the bare messenger, hanging within reach, one leg bare', 0.02, 1),
  ],
  conditions: ['low-sag', 'insulation-worn'],
  points: { bare: { on: 'x1', along: 'alongM', above: 2.2 } },
  values: { alongM: { default: 24, dimension: 'length', doc: 'How far along it hangs lowest, from the pole' } },
  harm: 'It hangs where hands, ladders and loads come by, with a bare place at 120 V.',
  tempting: [
    { what: 'Prop it up with a pole from the shed', why: 'wet wood leads, and what pulled it down still pulls' },
  ],
  tellApart: 'A drop that hangs as usual clears a drive by 3.7 m and more (NESC, from memory).',
};

const legsCrossed: FaultKind = {
  ...low,
  id: 'service-legs-crossed',
  name: 'leg and neutral crossed at the service',
  on: ['service-drop'],
  signs: [
    measured('120 V from the neutral of the house to the ground, 240 V on one leg'),
    told('noticed', 'Everything in the house burned out at once when it came back on.'),
  ],
  conditions: ['miswired'],
  sets: { legs: 'crossed' },
  harm: 'Neutral, meter case and pipes of the house stand at 120 V.',
  tempting: [
    { what: 'Test leg to leg and call it right', why: 'leg to leg can look usual while the neutral is a leg' },
  ],
  tellApart: 'Wired as it should be, each leg shows 120 V to the neutral, and the neutral nothing to the ground.',
};

const cordBetween: FaultKind = {
  ...low,
  id: 'cord-from-neighbour',
  name: 'cord from the house next door',
  on: ['house'],
  signs: [
    {
      ...mark('wall', 'wall: boards down to the grass, an orange cord out to the next house', 0.02, 8),
      form: 'piece',
      place: [-3.4, -3.15, 0.5],
    },
  ],
  conditions: ['foreign-source', 'feeding-panel'],
  leaks: elsewhere('cord', 'bus1'),
  values: ohms(0.4, 0.4, 'The cord from its socket'),
  severity: 'fatal',
  mechanisms: ['contact', 'approach', 'flash'],
  harm: 'One leg of a dark house is fed from its neighbour, and through the service from another transformer.',
  controls: ['isolate-source', 'deenergize-ground', 'work-as-energized'],
  tempting: [{ what: 'Test between the legs only', why: 'one leg fed through its loads shows little there' }],
  tellApart: 'A cord that ends at a lamp or a freezer feeds that and nothing else.',
};

const bracketLive: FaultKind = {
  ...low,
  id: 'streetlight-bracket-live',
  name: 'streetlight bracket alive',
  on: ['streetlight'],
  signs: [
    {
      ...mark(
        'bracket',
        'bracket: steel arm bolted to the pole, its wire going in bare, a strap hanging at the foot',
        0.012,
        0.1,
      ),
      form: 'piece',
      place: [0.045, -0.12, -0.15],
    },
    measured('voltage from the bracket to the pole ground'),
  ],
  conditions: ['bracket-live', 'bond-missing'],
  opens: ['bond'],
  leaks: [leak('wire', 'line', 'bracket')],
  values: ohms(20, 0.5, 'Bare wire on the steel'),
  harm: 'The arm stands at 120 V beside the pole ground, in the way of whoever climbs past.',
  tempting: [{ what: 'Take it for dead because the lamp is dark', why: 'a burned-out lamp hangs on a live wire' }],
  tellApart: 'A bonded arm has its strap on both ends and shows nothing to the pole ground.',
};

const lightTied: FaultKind = {
  ...low,
  id: 'streetlight-on-other-circuit',
  name: 'streetlight wired to another secondary as well',
  on: ['streetlight'],
  signs: [
    told('circuit', 'Our map shows that lamp on the next transformer.'),
    measured('voltage at the lamp with the transformer of this pole open'),
  ],
  conditions: ['other-circuit', 'foreign-source'],
  leaks: elsewhere('wire', 'line'),
  values: ohms(0.5, 0.5, 'Lamp wire to the other secondary'),
  severity: 'fatal',
  mechanisms: ['contact', 'approach', 'flash'],
  harm: 'The lamp wire ties two secondaries; with one transformer open the other feeds it backward.',
  controls: ['deenergize-ground', 'short-secondary', 'work-as-energized'],
  tempting: [{ what: 'Trust that a lamp is only a load', why: 'its wire joins whatever it is tied to at both ends' }],
  tellApart: 'A lamp on this secondary goes dark for good when this transformer is opened.',
};

const supplyFeeds: FaultKind = {
  ...low,
  id: 'telecom-supply-feeds-back',
  name: 'communication supply that feeds the secondary',
  on: ['telecom-enclosure'],
  signs: [
    mark('lamp', 'lamp: small window in the door, amber behind it, steady', 0.012, 0.05),
    measured('voltage on one leg of the secondary with the transformer open'),
  ],
  conditions: ['foreign-source', 'backfed'],
  sets: { transfer: 'both' },
  severity: 'fatal',
  mechanisms: ['contact', 'approach', 'flash'],
  harm: 'Its inverter stands on one leg, and the transformer makes line voltage of it as of any set.',
  controls: ['deenergize-ground', 'short-secondary', 'work-as-energized'],
  tempting: [{ what: 'Leave it alone because it belongs to others', why: 'what it feeds belongs to us' }],
  tellApart: 'One that feeds only its cable leaves the secondary dead with the transformer open.',
};

const strandUnbonded: FaultKind = {
  ...low,
  id: 'strand-not-bonded',
  name: 'communication strand not bonded to the pole ground',
  on: ['telecom-cable'],
  signs: [
    mark('strand', 'strand: steel above a black cable lashed to it, clamp at the pole, no wire down from it', 0.01, 1),
  ],
  conditions: ['bond-missing'],
  opens: ['bond-a', 'bond-b'],
  harm: 'What rubs on the strand makes it alive along the whole street, and no fuse opens for it.',
  controls: ['deenergize-ground', 'bridge-bond', 'keep-clear'],
  tempting: [{ what: 'Unbelt and swing past it', why: 'strand and secondary are then both in reach of one body' }],
  tellApart: 'A bonded strand has a wire from its clamp to the pole ground.',
};

const rodOff: FaultKind = {
  ...low,
  id: 'ground-rod-loose',
  name: 'clamp loose on the ground rod',
  on: ['ground-rod'],
  signs: [mark('rod', 'rod: head just above the ground, its clamp slid up and turning', 0.012, 0.05)],
  conditions: ['clamp-off', 'loose'],
  opens: ['electrode'],
  severity: 'fatal',
  harm: 'The pole ground ends in the air; whatever leaks into it stands at hand height.',
  controls: ['deenergize-ground', 'bridge-bond', 'keep-clear'],
  tempting: [{ what: 'Turn the clamp tight by hand', why: 'the hand is the way to the rod until it bites' }],
  tellApart: 'A tight clamp sits low on the rod and does not turn.',
};

const connectorBurned: FaultKind = {
  ...low,
  id: 'connector-burned',
  name: 'connector burned open',
  on: ['split-bolt'],
  signs: [
    {
      ...mark(
        'bolt',
        'bolt: bronze, black and pitted, one wire short of it by a finger, as far as made out',
        0.01,
        0.05,
      ),
      form: 'outline',
    },
  ],
  conditions: ['burned', 'overheated', 'loose'],
  opens: ['bolt'],
  harm: 'What it should join takes other ways; in a neutral the low side shifts and its metal comes alive.',
  controls: ['deenergize-ground', 'bridge-bond', 'rubber-gloves'],
  tempting: [
    { what: 'Squeeze the wires together with pliers', why: 'the load current flows through the gap and the hand' },
  ],
  tellApart: 'Brown or green all over and tight is patina; black with a gap is not.',
};

const foreignContact: FaultKind = {
  ...low,
  id: 'crossing-line-touches',
  name: 'line that crosses lying on ours',
  on: ['crossing-line'],
  signs: [mark('wire', 'wire: bare conductor across ours from beyond the road, hanging down onto it', 0.012, 2)],
  conditions: ['foreign-contact', 'too-close'],
  leaks: elsewhere('touch', 'a'),
  values: ohms(0.2, 0.1, 'Wire on wire'),
  severity: 'fatal',
  mechanisms: ['contact', 'approach', 'flash'],
  harm: 'Ours stands at the voltage of theirs, however well it has been opened.',
  controls: ['deenergize-ground', 'keep-clear', 'work-as-energized'],
  tempting: [{ what: 'Open ours and go to work', why: 'it is fed from a substation that is not ours to open' }],
  tellApart: 'Wires that cross clear of each other show sky between them from below, and from the side.',
  source: 'common practice; pattern of NIOSH FACE 86-46',
};

export const lowSideFaults = [
  triplexRubs,
  dropLow,
  legsCrossed,
  cordBetween,
  bracketLive,
  lightTied,
  supplyFeeds,
  strandUnbonded,
  rodOff,
  connectorBurned,
  foreignContact,
];
