/** What holds until it lets go by itself: the chance in a minute is an estimate, and judging takes it for gone already. */
import type { FaultKind } from '../types.ts';
import { none } from './none.ts';

const held = {
  ...none,
  on: ['pin-insulator'],
  severity: 'fatal',
  mechanical: { supports: 'lost' },
  mechanisms: ['drop', 'approach'],
  controls: ['support-conductor', 'keep-clear', 'deenergize-ground'],
  source: 'common practice; chance estimated',
} as const;

const mark = {
  sense: 'see',
  feature: 'skirts',
  extent: 0.12,
  shape: 'patch',
  contrast: 0.6,
  reflectance: 0.2,
  source: 'estimate',
} as const;

export const lettingGoFaults: readonly FaultKind[] = [
  {
    ...held,
    id: 'pin-insulator-cracked-through',
    name: 'pin insulator cracked right through',
    signs: [
      {
        ...mark,
        id: 'gap',
        words: 'skirts: brown glaze, a dark open line all round below the head',
        size: 0.003,
      },
    ],
    conditions: ['cracked', 'broken'],
    worsens: {
      perMinute: 0.01,
      into: 'pin-insulator-parted',
      words: 'A crack, pieces come down, the wire jumps aside',
    },
    harm: 'The head can come off at any moment, and the conductor with it.',
    tempting: [{ what: 'Work below it because it still stands', why: 'it stands until it does not' }],
    tellApart: 'A line that runs all round with an edge standing out; a glaze run ends and has none.',
  },
  {
    ...held,
    id: 'pin-insulator-parted',
    name: 'head of a pin insulator gone',
    signs: [
      {
        ...mark,
        id: 'pieces',
        words: 'skirts: a bare pin with brown pieces on it, the wire beside it',
        size: 0.02,
        extent: 0.18,
        form: 'outline',
      },
    ],
    conditions: ['broken'],
    harm: 'Nothing holds the conductor; it lies loose and can drop or swing.',
    tempting: [{ what: 'Push it back on the pin by hand', why: 'the hand is then on the conductor' }],
    tellApart: 'A sound insulator shows head and groove with the wire in it.',
  },
];
