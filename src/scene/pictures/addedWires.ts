/** Wires and metal that faults and look-alikes add to the picture of their part, in the true size of their signs. */
import type { Vec3 } from '../../engine/math/vec3.ts';

/** A wire by its metal, radius and course about the sign's place, metres. */
type Wire = readonly [variant: string, radius: number, course: readonly Vec3[]];

/** By kind of fault; x along a span or as the part faces, z up. */
export const wires: Readonly<Record<string, readonly Wire[]>> = {
  'strain-insulator-bridged': [
    [
      'aluminium',
      0.004,
      [
        [-0.13, 0, 0.22],
        [-0.04, 0.07, 0.1],
        [0.05, 0.08, -0.06],
        [0.14, 0, -0.23],
      ],
    ],
  ],
  'secondary-tied-across': [
    [
      'insulated',
      0.009,
      [
        [-0.14, 0.05, -0.05],
        [-0.08, -0.03, 0.03],
        [0.05, -0.04, 0.02],
        [0.16, 0.02, 0.08],
        [0.5, 0.2, 0.6],
        [3, 0.25, 0.9],
      ],
    ],
  ],
  'wire-thrown-over-line': [
    [
      'pale',
      0.004,
      [
        [0, 0.1, -0.6],
        [0, 0, 0.02],
        [0.02, -0.05, -4],
        [0, 0, -8.9],
      ],
    ],
  ],
  'cord-from-neighbour': [
    [
      'cord',
      0.008,
      [
        [0.4, 0.08, 0.5],
        [0.05, 0, 0.1],
        [-0.1, -0.05, -0.44],
        [-3, -0.2, -0.48],
        [-11, 0.1, -0.47],
      ],
    ],
  ],
  'jumper-against-guy': [
    [
      'aluminium',
      0.004,
      [
        [-0.6, 0, 1.5],
        [-0.3, 0.05, 0.6],
        [0, 0.01, 0.01],
        [0.2, 0, -0.3],
      ],
    ],
  ],
  'streetlight-bracket-live': [
    [
      'copper',
      0.003,
      [
        [-0.025, 0.05, 0.1],
        [0.015, 0, -0.02],
        [-0.005, 0.02, -0.17],
      ],
    ],
  ],
  'strand-not-bonded': [
    [
      'verdigris',
      0.004,
      [
        [-0.05, 0.01, 0.02],
        [0.02, 0.04, -0.1],
        [0.06, 0.05, -0.3],
      ],
    ],
  ],
  'telecom-supply-feeds-back': [
    [
      'amber',
      0.014,
      [
        [0, 0.005, 0],
        [0, -0.008, 0],
      ],
    ],
  ],
  'crossing-line-touches': [
    [
      'aluminium',
      0.0045,
      [
        [-3, 0, 0],
        [-0.5, 0, -0.02],
        [0, 0, 0],
        [0.5, 0, -0.02],
        [3, 0, 0],
      ],
    ],
    [
      'aluminium',
      0.0045,
      [
        [0, 0, 0],
        [0.1, -0.05, -0.7],
        [0, 0, -1.5],
      ],
    ],
  ],
  'crossing-clear': [
    [
      'aluminium',
      0.0045,
      [
        [-3, 0, 0.05],
        [0, 0, 0.02],
        [3, 0, 0.05],
      ],
    ],
  ],
};
