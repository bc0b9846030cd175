/** Pictures of the leads on a pole: from the phase down to the tank, and from tank, arrester and neutral to the rod. */
import { faultKind } from '../../engine/catalogue/faults.ts';
import type { Part } from '../../engine/world/types.ts';
import type { Point } from '../hardware/types.ts';
import { leadThrough, shifted, toward } from './shared.ts';
import { drawnState, shownOf } from './showsAs.ts';
import { conductor, groundSide, lineAzimuth, road } from './support.ts';
import { gearWires } from './tapLeads.ts';
import type { Around, Picture, Piece } from './types.ts';

/** On the pole where the tap leaves the main line, the lead down to the cutout comes from a clamp on that line. */
const tapLead = (part: Part, around: Around): readonly Piece[] => {
  const insulator = around.on(part.pole, 'insulator');
  if (insulator === null || around.on(part.pole, 'clamp') !== null) return [];
  const on = toward(shifted(insulator.at, 0, 0, 0.3), lineAzimuth(part, around) + Math.PI, 0.75);
  const line = around.point(part.id, 'line');
  return [
    { spec: { kind: 'hot-line-clamp', side: lineAzimuth(part, around), size: { conductor } }, at: on },
    ...(line === null
      ? []
      : leadThrough('copper', 0.0026, [
          shifted(on, 0, 0.05, -0.13),
          shifted(on, 0.03, 0.1, -0.34),
          shifted(line, -0.02, -0.02, 0.14),
          line,
        ])),
  ];
};

/** Where the cutout feeds a dead-ended tap, its load lead runs to the tail of that conductor. */
const cutoutWires: Picture = (part, around) => {
  const load = around.point(part.id, 'load');
  const deadEnd = around.world.parts.find((p) => p.nets.conductor === part.nets.bottom);
  const tail = around.point(deadEnd?.id, 'tail');
  return [
    ...tapLead(part, around),
    ...(load && tail
      ? leadThrough('copper', 0.0026, [
          load,
          shifted(load, 0.02, 0.02, -0.12),
          shifted(tail, -0.1, -0.16, -0.2),
          shifted(tail, 0.12, -0.05, -0.12),
          shifted(tail, 0.3, 0, 0.0),
        ])
      : []),
  ];
};

const transformerWires: Picture = (part, around) => {
  const cut = around.on(part.pole, 'cutout');
  const load = around.point(cut?.id, 'load');
  const h1 = around.point(part.id, 'h1');
  return [
    ...(load && h1
      ? leadThrough('copper', 0.0026, [
          load,
          shifted(load, 0.02, 0, -0.1),
          [(load[0] + h1[0]) / 2 - 0.04, (load[1] + h1[1]) / 2 - 0.06, h1[2] - 0.02],
          shifted(h1, -0.03, 0, 0.05),
          h1,
        ])
      : []),
  ];
};

const clamp: Picture = (part, around) => {
  const cut = around.on(part.pole, 'cutout');
  const line = around.point(cut?.id, 'line');
  const arr = around.point(around.on(part.pole, 'arrester')?.id, 'line');
  const jumper: readonly Piece[] =
    line && arr
      ? leadThrough('copper', 0.0026, [
          line,
          shifted(line, 0.03, -0.06, 0.1),
          [(line[0] + arr[0]) / 2 - 0.06, (line[1] + arr[1]) / 2 - 0.1, Math.max(line[2], arr[2]) + 0.13],
          shifted(arr, -0.03, 0, 0.08),
          arr,
        ])
      : [];
  if (part.state.position === 'off') {
    // Hung on the cutout's bracket, out of the way of the phase.
    const hung: Point | null = line && shifted(line, 0.1, 0.06, -0.3);
    return hung === null
      ? jumper
      : [
          { spec: { kind: 'hot-line-clamp', variant: 'bare', side: 0, size: { conductor } }, at: hung },
          ...leadThrough('copper', 0.0026, [
            shifted(hung, 0, 0.05, -0.05),
            shifted(hung, 0.02, 0.09, -0.16),
            shifted(hung, -0.1, 0.1, 0),
            line,
          ]),
          ...jumper,
        ];
  }
  const root = shifted(part.at, 0, 0.05, -0.123);
  return [
    { spec: { kind: 'hot-line-clamp', side: 0, size: { conductor } }, at: part.at },
    ...(line === null
      ? []
      : leadThrough('copper', 0.0026, [
          root,
          shifted(root, -0.06, 0.03, -0.12),
          [(root[0] + line[0]) / 2 - 0.1, part.at[1] + 0.05, (root[2] + line[2]) / 2],
          shifted(line, -0.05, 0.02, 0.16),
          line,
        ])),
    ...jumper,
  ];
};

/** Whether a fault that one sees has let go one end of a lead. */
const isOff = (part: Part): boolean =>
  part.faults.some((fault) => faultKind(fault.kind).opens.length > 0 && shownOf(fault) !== null);

const tankStrap: Picture = (part, around) => {
  const lug = around.point(around.on(part.pole, 'transformer')?.id, 'ground');
  const wire = around.point(around.on(part.pole, 'neutral-spool')?.id, 'conductor');
  const z = part.at[2];
  if (!lug || !wire) return [];
  const under = lug[2] - 0.1;
  if (isOff(part)) {
    return leadThrough(
      'copper',
      0.0032,
      [lug, shifted(lug, 0.02, 0.06, -0.09), shifted(lug, 0.05, 0.1, -0.2), shifted(lug, 0.03, 0.09, -0.42)],
      'cut',
    );
  }
  return leadThrough('copper', 0.0032, [
    lug,
    shifted(lug, 0.02, 0.06, -0.09),
    around.face(part.pole, road + 0.5, under, 0.05),
    around.face(part.pole, -0.35, under + 0.12, 0.008),
    around.face(part.pole, -0.1, z - 0.35, 0.008),
    around.face(part.pole, 0.5, z - 0.02, 0.012),
    shifted(wire, 0.16, 0, 0.012),
    shifted(wire, 0.2, 0, 0.004),
  ]);
};

const upperLead: Picture = (part, around) => {
  const bond = around.on(part.pole, 'ground-bond');
  const foot = around.point(around.on(part.pole, 'arrester')?.id, 'ground');
  const end = bond === null ? null : around.face(part.pole, groundSide, bond.at[2] + 0.1, 0.004);
  if (foot === null || end === null) return [];
  if (isOff(part)) {
    const up = around.face(part.pole, groundSide, foot[2] - 0.34, 0.006);
    return leadThrough(
      'copper',
      0.0026,
      [
        end,
        around.face(part.pole, groundSide, end[2] + 0.12, 0.004),
        up,
        shifted(up, 0.09, 0.05, 0.09),
        shifted(up, 0.17, 0.06, 0.05),
      ],
      'cut',
    );
  }
  return leadThrough('copper', 0.0026, [
    foot,
    around.face(part.pole, -0.9, foot[2] - 0.03, 0.006),
    around.face(part.pole, -0.2, foot[2] - 0.1, 0.006),
    around.face(part.pole, groundSide - 0.2, foot[2] - 0.18, 0.005),
    around.face(part.pole, groundSide, foot[2] - 0.3, 0.004),
    around.face(part.pole, groundSide, end[2] + 0.12, 0.004),
    end,
  ]);
};

/** Two leads come to a connector on the neutral; burned off, their ends stand free and the neutral bears the soot. */
const groundBond: Picture = (part, around) => {
  const wire = around.point(around.on(part.pole, 'neutral-spool')?.id, 'conductor');
  if (wire === null) return [];
  const z = part.at[2];
  const above = around.face(part.pole, groundSide, z + 0.12, 0.004);
  const below = around.face(part.pole, groundSide, z - 0.1, 0.004);
  // The neutral falls away from its spool by some 4 % of the way.
  const seat = shifted(wire, 0.11, 0, -0.0045);
  if (drawnState(part, 'whole') === 'burned') {
    return [
      ...leadThrough(
        'copper',
        0.0026,
        [above, shifted(above, 0.012, 0.016, -0.03), shifted(above, 0.036, 0.05, -0.062)],
        'burned',
      ),
      ...leadThrough(
        'copper',
        0.0026,
        [below, shifted(below, 0.012, 0.014, 0.02), shifted(below, 0.03, 0.045, 0.04)],
        'burned',
      ),
      ...leadThrough('insulated', 0.0042, [shifted(seat, -0.03, 0, 0.0012), shifted(seat, 0.035, 0, -0.0014)]),
    ];
  }
  return [
    ...leadThrough('copper', 0.0026, [
      above,
      shifted(above, 0.02, 0.03, -0.06),
      shifted(seat, 0.012, -0.01, 0.03),
      seat,
    ]),
    ...leadThrough('copper', 0.0026, [
      below,
      shifted(below, 0.02, 0.03, 0.05),
      shifted(seat, -0.01, -0.01, -0.03),
      seat,
    ]),
    ...leadThrough('aluminium', 0.011, [shifted(seat, -0.026, 0, 0), shifted(seat, 0.026, 0, 0)]),
  ];
};

/** Blades of grass that stand over what is driven below them, out and up from its head, metres. */
const blades: readonly (readonly [number, number, number])[] = [
  [-0.05, 0.02, 0.17],
  [-0.03, -0.04, 0.14],
  [-0.015, 0.05, 0.19],
  [0.01, -0.02, 0.21],
  [0.02, 0.035, 0.15],
  [0.045, -0.01, 0.18],
  [0.06, 0.03, 0.13],
  [-0.07, -0.015, 0.12],
  [-0.04, 0.06, 0.1],
  [0.005, 0.07, 0.13],
  [0.03, -0.05, 0.16],
  [-0.01, -0.06, 0.11],
  [0.075, 0.012, 0.1],
];

/** Rod, acorn clamp and the wire into it; loose, the clamp has slid to the head and the wire stands off. */
const groundRod: Picture = (part, around) => {
  const base = around.on(part.pole, 'pole');
  const head = shifted(part.at, 0, 0, 0.09);
  const foot = base === null ? null : around.face(part.pole, groundSide, 0.02, 0.004);
  const loose = part.faults.some((fault) => shownOf(fault)?.states?.includes('loose'));
  const grown = part.faults.some((fault) => shownOf(fault)?.adds === 'grass');
  const seat = loose ? shifted(head, 0.004, 0, 0.006) : shifted(head, 0, 0, -0.03);
  const lean = loose ? 0.016 : 0;
  return [
    ...leadThrough('zinc', 0.008, [shifted(part.at, 0, 0, -0.2), head]),
    ...leadThrough('bronze', 0.0145, [shifted(seat, -lean, 0, -0.016), shifted(seat, lean, 0, 0.016)]),
    ...leadThrough('bronze', 0.0055, [shifted(seat, 0.01, 0, lean), shifted(seat, 0.031, 0, lean * 1.4)]),
    ...leadThrough('copper', 0.0026, [
      foot,
      foot && shifted(foot, 0.08, 0.06, -0.03),
      shifted(head, -0.08, -0.05, -0.09),
      loose ? shifted(head, -0.05, -0.012, -0.02) : null,
      shifted(seat, -0.012, 0, 0.022),
    ]),
    ...(grown
      ? blades.flatMap(([x, y, up]) =>
          leadThrough('blade', 0.0017, [
            shifted(head, x, y, -0.1),
            shifted(head, 1.1 * x, 1.1 * y, up * 0.4),
            shifted(head, 1.3 * x + 0.006, 1.3 * y, up * 0.8),
            shifted(head, 1.6 * x + 0.03, 1.6 * y, up),
          ]),
        )
      : []),
  ];
};

/** What runs between those bodies. */
export const poleWires: Readonly<Record<string, Picture>> = {
  cutout: cutoutWires,
  transformer: transformerWires,
  'hot-line-clamp': clamp,
  'tank-strap': tankStrap,
  'upper-lead': upperLead,
  'ground-bond': groundBond,
  'ground-rod': groundRod,
  ...gearWires,
};
