/**
 * What a fault or look-alike adds to the picture of its part where no state of it and no mark shows the sign: short pieces of wire
 * and metal in the true size of the sign, where the catalogue says that it is seen.
 */
import { componentKind } from '../../engine/catalogue/components.ts';
import { faultKind } from '../../engine/catalogue/faults.ts';
import { add, type Vec3 } from '../../engine/math/vec3.ts';
import { placeOn } from '../../engine/world/edit.ts';
import type { Part } from '../../engine/world/types.ts';
import type { Point } from '../hardware/types.ts';
import { leadThrough } from './shared.ts';
import type { Piece } from './types.ts';

/** A wire by its metal, radius and course about the sign's place, metres. */
type Wire = readonly [variant: string, radius: number, course: readonly Vec3[]];

const wires: Readonly<Record<string, readonly Wire[]>> = {
  'pole-top-split': [
    [
      'insulated',
      0.008,
      [
        [0.02, -0.11, -0.4],
        [0.03, -0.11, -0.15],
        [0.02, -0.1, 0],
      ],
    ],
  ],
  'long-tie-tails': [
    [
      'aluminium',
      0.002,
      [
        [0, 0.02, 0],
        [0.04, 0.09, 0.03],
        [0.06, 0.12, 0.1],
      ],
    ],
    [
      'aluminium',
      0.002,
      [
        [-0.4, -0.02, 0],
        [-0.44, -0.08, 0.04],
        [-0.5, -0.1, 0.09],
      ],
    ],
  ],
  'green-ground-wire': [
    [
      'verdigris',
      0.0046,
      [
        [0, 0.01, -3],
        [0, 0.01, 0],
        [0, 0.01, 3],
      ],
    ],
  ],
  'ground-rod-loose': [
    [
      'copper',
      0.011,
      [
        [-0.025, 0, 0.07],
        [0.025, 0, 0.085],
      ],
    ],
  ],
  'rod-below-grass': [
    [
      'verdigris',
      0.003,
      [
        [-0.04, 0, -0.05],
        [-0.03, 0.01, 0.1],
      ],
    ],
    [
      'verdigris',
      0.003,
      [
        [0.03, 0.02, -0.05],
        [0.045, 0, 0.13],
      ],
    ],
    [
      'verdigris',
      0.003,
      [
        [0, -0.03, -0.05],
        [0.01, -0.05, 0.11],
      ],
    ],
  ],
  'conductor-within-reach': [
    [
      'aluminium',
      0.0035,
      [
        [-1.4, 0, 0.05],
        [-1, 0, -5],
        [-0.5, 0, -8.2],
        [3, 0, -8.2],
        [6, 0, -8],
      ],
    ],
  ],
  'wire-thrown-over-line': [
    [
      'pale',
      0.002,
      [
        [-0.5, 0.1, -0.6],
        [-0.5, 0, 0.07],
        [-0.48, -0.05, -4],
        [-0.5, 0, -8.9],
      ],
    ],
  ],
  'armor-rods': [
    [
      'aluminium',
      0.0075,
      [
        [-2, 0, 0.05],
        [-1.4, 0, 0.045],
        [-0.8, 0, 0.04],
      ],
    ],
  ],
  'splice-tight': [
    [
      'aluminium',
      0.011,
      [
        [0, 0, 0.02],
        [0.3, 0, 0.015],
        [0.6, 0, 0.01],
      ],
    ],
  ],
  'service-wedge-slipped': [
    [
      'aluminium',
      0.004,
      [
        [0, -0.7, 0.05],
        [0.05, -0.6, -0.25],
        [0, -0.3, -0.1],
      ],
    ],
  ],
  'taped-leg': [
    [
      'insulated',
      0.013,
      [
        [0, -1, 0],
        [0, -1.1, -0.02],
        [0, -1.2, -0.04],
      ],
    ],
  ],
  'meter-fog': [
    [
      'pale',
      0.045,
      [
        [-0.01, -0.09, 0],
        [0.01, -0.09, 0],
      ],
    ],
  ],
  'cord-from-neighbour': [
    [
      'cord',
      0.008,
      [
        [0, 0, 0],
        [-1, -0.4, -0.95],
        [-6, -0.6, -0.98],
        [-12, 0, -0.95],
      ],
    ],
  ],
  'jumper-against-guy': [
    [
      'aluminium',
      0.004,
      [
        [-0.6, 0, 1.4],
        [-0.3, 0.05, 0.3],
        [0, 0.01, 0.01],
        [0.2, 0, 0.5],
      ],
    ],
  ],
  'guy-slack-usual': [
    [
      'steel',
      0.005,
      [
        [0.4, 0.02, -0.7],
        [1.5, 0.06, -2.7],
        [2.6, 0.02, -4.4],
      ],
    ],
  ],
  'rust-on-guy': [
    [
      'rust',
      0.0062,
      [
        [0, 0, 0],
        [0.3, 0, -0.5],
        [0.6, 0, -1],
      ],
    ],
  ],
  'rust-on-rod': [
    [
      'rust',
      0.014,
      [
        [0, 0, -0.12],
        [-0.04, 0, 0.02],
        [-0.07, 0, 0.1],
      ],
    ],
  ],
  'stirrup-burned': [
    [
      'insulated',
      0.006,
      [
        [0.05, 0, -0.03],
        [0.055, 0, 0.02],
      ],
    ],
  ],
  'stirrup-patina': [
    [
      'verdigris',
      0.0055,
      [
        [-0.05, 0, 0.03],
        [-0.05, 0, -0.05],
        [0.05, 0, -0.05],
        [0.05, 0, 0.03],
      ],
    ],
  ],
  'connector-patina': [
    [
      'verdigris',
      0.007,
      [
        [0, 0, -0.03],
        [0, 0, 0.035],
      ],
    ],
  ],
  'streetlight-bracket-live': [
    [
      'copper',
      0.003,
      [
        [0.02, 0, -0.05],
        [0.06, -0.05, -0.2],
        [0.04, -0.02, -0.35],
      ],
    ],
  ],
  'strand-not-bonded': [
    [
      'verdigris',
      0.003,
      [
        [-0.3, 0.02, 0],
        [-0.28, 0.03, -0.04],
      ],
    ],
  ],
  'telecom-supply-feeds-back': [
    [
      'cord',
      0.012,
      [
        [-0.012, 0, 0],
        [0.012, 0, 0],
      ],
    ],
  ],
  'crossing-line-touches': [
    [
      'aluminium',
      0.0045,
      [
        [0, -3, 0.1],
        [0, -0.5, -1.4],
        [0, 0.5, -1.5],
        [0, 3, 0],
      ],
    ],
  ],
  'crossing-clear': [
    [
      'aluminium',
      0.0045,
      [
        [0, -3, 1.2],
        [0, 0, 1.15],
        [0, 3, 1.2],
      ],
    ],
  ],
};

/** Pieces that the faults of a part add to its picture, in world axes. */
export const addedBy = (part: Part): readonly Piece[] =>
  part.faults.flatMap(({ kind }) => {
    const sign = faultKind(kind).signs.find(({ sense }) => sense === 'see');
    const offset = componentKind(part.kind).features.find(({ id }) => id === sign?.feature)?.offset ?? [0, 0, 0];
    return (wires[kind] ?? []).flatMap(([variant, radius, course]) =>
      leadThrough(
        variant,
        radius,
        course.map((p): Point => placeOn(part, add(offset, p))),
      ),
    );
  });
