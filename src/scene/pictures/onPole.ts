/** Pictures of the bodies on a pole. Order of things and typical distances: FRAMING of a single-phase tap, common practice. */
import type { Part } from '../../engine/world/types.ts';
import { azimuthFrom, outwardOf, seedOf, shifted } from './shared.ts';
import { drawnState } from './showsAs.ts';
import type { Around, Picture } from './types.ts';

/** Azimuths of the pole's road and field side. */
export const road = -Math.PI / 2;
export const field = Math.PI / 2;
/** The pole ground runs down between field side and load side, away from the climbing space. */
export const groundSide = Math.PI / 4;
/** Radius of the small ACSR of a rural tap (#4 6/1: 6.35 mm over all). */
export const conductor = 0.0032;

/** Diameters and height that hardware wants of a pole. */
export const poleForm = (pole: Part | null): { height: number; topDiameter: number; groundDiameter: number } => ({
  height: pole?.values.heightM ?? 10.36,
  topDiameter: 2 * (pole?.values.topRadiusM ?? 0.1),
  groundDiameter: 2 * (pole?.values.buttRadiusM ?? 0.14),
});

/** Azimuth of the conductor that a pole's pin carries. */
export const lineAzimuth = (part: Part, around: Around): number => around.on(part.pole, 'tie')?.azimuth ?? 0;

const pole: Picture = (part) => {
  const feet = Math.round((part.values.heightM ?? 10.36) / 0.3048 / 0.85 / 5) * 5;
  const text = `${part.words.class ?? '4'}-${feet}`;
  return [{ spec: { kind: 'pole', size: poleForm(part), side: road + 0.5, text, seed: seedOf(part.id) }, at: part.at }];
};

const pinInsulator: Picture = (part, around) => {
  const { topDiameter } = poleForm(around.on(part.pole, 'pole'));
  const side = lineAzimuth(part, around) + field;
  return [{ spec: { kind: 'pin-insulator', side, size: { poleDiameter: topDiameter } }, at: part.at }];
};

const tie: Picture = (part) => [
  {
    spec: {
      kind: 'tie',
      variant: 'preformed',
      state: drawnState(part, 'whole'),
      side: part.azimuth,
      size: { conductor },
    },
    at: part.at,
  },
];

const deadend: Picture = (part, around) => {
  const side = part.azimuth + Math.PI;
  return [
    { spec: { kind: 'deadend-insulator', variant: 'polymer', side }, at: around.face(part.pole, side, part.at[2]) },
  ];
};

const spool: Picture = (part, around) => [
  { spec: { kind: 'neutral-spool', side: field, size: { conductor } }, at: around.face(part.pole, field, part.at[2]) },
];

const tag: Picture = (part, around) => {
  const number = around.on(part.pole, 'pole')?.words.number ?? '';
  return [
    {
      spec: { kind: 'tag', side: road, text: number.replace('-', '|'), size: { width: 0.11, height: 0.17 } },
      at: around.face(part.pole, road, part.at[2], 0.002),
    },
  ];
};

const guy: Picture = (part, around) => {
  if (part.end === null) return [];
  const top = around.face(part.pole, azimuthFrom(part.at, part.end), part.at[2]);
  return [
    { spec: { kind: 'guy', variant: 'strain-ball', points: [top, shifted(part.end, -0.12, 0, 0.2)] }, at: [0, 0, 0] },
  ];
};

const cutout: Picture = (part, around) => {
  const side = outwardOf(part);
  return [
    {
      spec: { kind: 'cutout', state: part.state.position ?? 'closed', side },
      at: around.face(part.pole, side, part.at[2]),
    },
  ];
};

const arrester: Picture = (part, around) => {
  const side = outwardOf(part);
  const at = around.face(part.pole, side, part.at[2]);
  const reach = Math.hypot(part.at[0] - at[0], part.at[1] - at[1]);
  return [{ spec: { kind: 'arrester', side, size: { reach, drop: 0.32 } }, at }];
};

const transformer: Picture = (part, around) => {
  const side = outwardOf(part);
  const kva = (part.values.va ?? 25000) / 1000;
  return [
    {
      spec: { kind: 'transformer', side, size: { kva } },
      at: around.face(part.pole, side, part.at[2] + 0.295),
    },
  ];
};

const groundLead: Picture = (part, around) => {
  const base = around.on(part.pole, 'pole');
  const bond = around.on(part.pole, 'ground-bond');
  const top = (bond?.at[2] ?? 8.7) - 0.1;
  const cut = drawnState(part, 'whole') === 'cut';
  return [
    {
      spec: {
        kind: 'pole-ground',
        side: groundSide,
        state: cut ? 'cut' : 'whole',
        size: { ...poleForm(base), top, moulding: cut ? 0 : 1.6, ...(cut ? { partedFrom: 0.14, partedTo: 1.7 } : {}) },
        seed: seedOf(part.id),
      },
      at: base?.at ?? part.at,
    },
  ];
};

/** Bodies of the kinds that a pole carries; they may not ask for points. */
export const poleBodies: Readonly<Record<string, Picture>> = {
  pole,
  'pin-insulator': pinInsulator,
  tie,
  'deadend-insulator': deadend,
  'neutral-spool': spool,
  tag,
  guy,
  cutout,
  arrester,
  transformer,
  'ground-lead': groundLead,
};
