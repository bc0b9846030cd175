/** Where an arm, a bracket or the bare roof puts an insulator: pictures of insulators, ties, arms and their pins. */
import type { Part } from '../../engine/world/types.ts';
import type { Point } from '../hardware/types.ts';
import { azimuthFrom, outwardOf, seedOf, shifted, toward } from './shared.ts';
import { conductor, lineAzimuth, poleForm } from './support.ts';
import type { Around, Picture } from './types.ts';

/** Half the depth of an arm. */
const HALF = 0.0515;
/** The arm is bolted to the face toward the source. */
const armFace = Math.PI;

const offAxis = (part: Part, around: Around): number => {
  const pole = around.on(part.pole, 'pole');
  return pole === null ? 0 : Math.hypot(part.at[0] - pole.at[0], part.at[1] - pole.at[1]);
};

/** Metres along the line from the pole's axis to the middle of its arm; 0 for what does not sit on one. */
const armShift = (part: Part, around: Around): number => {
  const arm = around.on(part.pole, 'crossarm');
  if (arm === null || offAxis(part, around) < 0.3) return 0;
  const face = around.face(part.pole, armFace, arm.at[2]);
  return face[0] - arm.at[0] - HALF;
};

/** Words of a kind that say of what it is made. */
const madeOf = (part: Part, usual: string): string => part.words.material ?? usual;

const crossarm: Picture = (part, around) => [
  {
    spec: { kind: 'crossarm', side: armFace, seed: seedOf(part.id), size: { pole: 0.21 } },
    at: around.face(part.pole, armFace, part.at[2]),
  },
];

const pinInsulator: Picture = (part, around) => {
  const { topDiameter } = poleForm(around.on(part.pole, 'pole'));
  const side = lineAzimuth(part, around) + Math.PI / 2;
  const off = offAxis(part, around);
  if (off < 0.1) {
    const variant = around.beside(part, 'ridge-pin') === null ? 'pole-top' : 'bare';
    return [{ spec: { kind: 'pin-insulator', variant, side, size: { poleDiameter: topDiameter } }, at: part.at }];
  }
  if (around.on(part.pole, 'crossarm') !== null) {
    return [
      { spec: { kind: 'pin-insulator', variant: 'arm', side }, at: shifted(part.at, armShift(part, around), 0, 0) },
    ];
  }
  const pole = around.on(part.pole, 'pole') as Part;
  const out = azimuthFrom(pole.at, part.at);
  const face = around.face(part.pole, out, part.at[2]);
  const reach = off - Math.hypot(face[0] - pole.at[0], face[1] - pole.at[1]);
  return [{ spec: { kind: 'pin-insulator', variant: 'armless', side: out, size: { out: reach } }, at: face }];
};

const ridgePin: Picture = (part, around) => {
  const pole = around.on(part.pole, 'pole');
  const { height, topDiameter } = poleForm(pole);
  const foot = pole?.at ?? part.at;
  return [
    {
      spec: { kind: 'ridge-pin', side: outwardOf(part), size: { poleDiameter: topDiameter } },
      at: [foot[0], foot[1], height],
    },
  ];
};

const post: Picture = (part, around) => [
  {
    spec: { kind: 'post-insulator', variant: madeOf(part, 'porcelain'), side: lineAzimuth(part, around) + Math.PI / 2 },
    at: shifted(part.at, armShift(part, around), 0, 0),
  },
];

const tie: Picture = (part, around) => {
  const held = around.beside(part, 'post-insulator') !== null;
  const size: Record<string, number> = held ? { conductor, neck: 0.0335, drop: 0.052 } : { conductor };
  return [
    {
      spec: {
        kind: 'tie',
        variant: part.words.form ?? 'preformed',
        side: part.azimuth,
        size,
      },
      at: shifted(part.at, armShift(part, around), 0, 0),
    },
  ];
};

/** A string reaches from the pole's face, or from the arm's, toward its span. */
const stringAt = (part: Part, around: Around, side: number): Point =>
  offAxis(part, around) < 0.3
    ? around.face(part.pole, side, part.at[2])
    : toward(shifted(part.at, armShift(part, around), 0, 0), side, HALF);

const strings: Readonly<Record<string, string>> = { porcelain: 'bells', polymer: 'polymer', glass: 'glass' };

const deadend =
  (usual: string): Picture =>
  (part, around) => {
    const side = part.azimuth + Math.PI;
    const variant = strings[madeOf(part, usual)] ?? usual;
    return [{ spec: { kind: 'deadend-insulator', variant, side }, at: stringAt(part, around, side) }];
  };

/** Hung from the arm, and its clamp at the conductor's height. */
const hung =
  (kind: string): Picture =>
  (part, around) => {
    const variant = strings[part.words.material ?? ''];
    const spec = { kind, side: lineAzimuth(part, around), ...(variant === undefined ? {} : { variant }) };
    return [{ spec, at: shifted(part.at, armShift(part, around), 0, 0) }];
  };

/** Bodies that hold conductors. */
export const armBodies: Readonly<Record<string, Picture>> = {
  crossarm,
  'pin-insulator': pinInsulator,
  'ridge-pin': ridgePin,
  'post-insulator': post,
  tie,
  'deadend-insulator': deadend('polymer'),
  'suspension-insulator': deadend('porcelain'),
  'suspension-string': hung('suspension-insulator'),
  'suspension-clamp': hung('suspension-clamp'),
};
