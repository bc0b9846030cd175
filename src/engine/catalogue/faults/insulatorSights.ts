/** Glaze, rubber and metal that only look bad. Each says what it is wrongly called, and how to tell. */
import type { FaultKind } from '../types.ts';
import { benign } from './none.ts';
import { mark, strip } from './signs.ts';

export const insulatorSights: readonly FaultKind[] = [
  {
    ...benign,
    id: 'glaze-variation',
    name: 'glaze of another shade',
    on: ['pin-insulator'],
    signs: [mark('skirts', 'skirts: brown glaze, wet, paler in one broad patch, shine unbroken over it', 0.03, 0.08)],
    conditions: ['glaze-variation', 'sound'],
    mistakenFor: ['contaminated', 'flashed-over', 'chipped'],
    tellApart: 'The shine runs on over the edge of the patch; dirt and arc marks are dull.',
  },
  {
    ...benign,
    id: 'casting-line',
    name: 'casting line on porcelain',
    on: ['pin-insulator'],
    signs: [strip('skirts', 'skirts: brown glaze, wet, one straight raised line from head to foot, even', 0.01, 0.15)],
    conditions: ['factory-seam', 'sound'],
    mistakenFor: ['cracked'],
    tellApart: 'Straight, raised, glazed over, and the same on its neighbours; a crack wanders and is dark.',
  },
  {
    ...benign,
    id: 'mould-line',
    name: 'mould line on a body',
    on: ['post-insulator', 'cutout'],
    signs: [
      strip(
        'body',
        'body: a straight raised line down it from end to end, even, rims whole as far as made out',
        0.01,
        0.3,
      ),
    ],
    conditions: ['factory-seam', 'sound'],
    mistakenFor: ['cracked', 'polymer-cut', 'tracking'],
    tellApart: 'Straight, raised and on both sides alike: from the mould.',
  },
  {
    ...benign,
    id: 'bird-droppings',
    name: 'bird droppings',
    on: ['pin-insulator'],
    signs: [mark('skirts', 'skirts: brown glaze, wet, white runs from the head down over one side of it', 0.02, 0.1)],
    conditions: ['droppings', 'sound'],
    mistakenFor: ['contaminated', 'flashed-over'],
    tellApart: 'White, in runs from above, and the shine is back beside it.',
  },
  {
    ...benign,
    id: 'spider-web-on-cutout',
    name: 'spider web on a cutout',
    on: ['cutout'],
    signs: [
      mark('body', 'body: on its bracket, fine pale threads from rim to rim that move, rims whole beyond', 0.01, 0.12),
    ],
    conditions: ['web', 'sound'],
    mistakenFor: ['cracked', 'tracking'],
    tellApart: 'Threads are pale, move with the air, and bridge the gaps; a crack is dark and does not.',
  },
  {
    ...benign,
    id: 'polymer-bloom',
    name: 'white bloom on polymer',
    on: ['deadend-insulator'],
    signs: [mark('body', 'body: grey sheds, wet, a white bloom on one side, rims whole as far as made out', 0.03, 0.2)],
    conditions: ['chalking', 'sound'],
    mistakenFor: ['contaminated', 'tracking'],
    tellApart:
      'It wipes off as powder and the rubber under it is whole. Noted, not urgent; views differ between makers.',
  },
  {
    ...benign,
    id: 'arrester-shed-line',
    name: 'line round a shed',
    on: ['arrester'],
    signs: [
      mark('housing', 'housing: wet, one even line all the way round each rim, the same on all of them', 0.01, 0.3),
    ],
    conditions: ['factory-seam', 'sound'],
    mistakenFor: ['cracked'],
    tellApart: 'The same on every rim and on its neighbours: where the mould closed.',
  },
  {
    ...benign,
    id: 'rust-on-shank',
    name: 'rust bloom on a galvanised shank',
    on: ['ridge-pin'],
    signs: [
      mark(
        'shank',
        'shank: steel with thin brown patches, up past the roof of the pole, full and straight',
        0.02,
        0.15,
      ),
    ],
    conditions: ['rust-bloom', 'sound'],
    mistakenFor: ['rusted'],
    tellApart: 'Thin colour on full metal; rust that counts comes off in flakes and leaves it thinner.',
  },
];
