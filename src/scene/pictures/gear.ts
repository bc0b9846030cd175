/** Pictures of line gear on a pole: switches, tanks, fittings, guy parts, what belongs to others. */
import { componentKind } from '../../engine/catalogue/components.ts';
import { tankSize } from '../../engine/catalogue/tankSizes.ts';
import { distance, lerp } from '../../engine/math/vec3.ts';
import { lieOfFallen } from '../../engine/world/featurePlace.ts';
import type { Part } from '../../engine/world/types.ts';
import type { Point } from '../hardware/types.ts';
import { azimuthFrom, outwardOf, seedOf, shifted } from './shared.ts';
import { drawnVariant } from './showsAs.ts';
import { conductor, groundSide, poleForm } from './support.ts';
import type { Around, Picture, Piece } from './types.ts';

/** A piece bolted to the face of the pole on the side where its part hangs. */
const onFace = (part: Part, around: Around, spec: Omit<Piece['spec'], 'side'>, up = 0): Piece => {
  const side = outwardOf(part);
  return { spec: { ...spec, side, seed: seedOf(part.id) }, at: around.face(part.pole, side, part.at[2] + up) };
};

const cutout: Picture = (part, around) => [
  onFace(part, around, {
    kind: 'cutout',
    state: part.state.position ?? 'closed',
    variant: part.words.body ?? part.words.material ?? 'porcelain',
  }),
];

const arrester: Picture = (part, around) => {
  const side = outwardOf(part);
  const at = around.face(part.pole, side, part.at[2]);
  const reach = Math.max(0.06, Math.hypot(part.at[0] - at[0], part.at[1] - at[1]));
  const variant = part.words.body ?? part.words.material ?? 'polymer';
  return [{ spec: { kind: 'arrester', variant, side, size: { reach, drop: 0.32 } }, at }];
};

const transformer =
  (variant: string): Picture =>
  (part, around) => {
    return [onFace(part, around, { kind: 'transformer', variant, size: { ...tankSize(part) } }, 0.295)];
  };

const disconnect: Picture = (part, around) => [
  onFace(part, around, { kind: 'disconnect', state: part.state.position ?? 'closed' }),
];

const recloser: Picture = (part, around) => [
  onFace(part, around, { kind: 'recloser', state: part.state.position ?? 'closed' }, 0.1),
];

const capacitor: Picture = (part, around) => [onFace(part, around, { kind: 'capacitor', variant: 'unit' }, 0.15)];

/** Steps on the dial by the tap's name. */
const tapSteps: Readonly<Record<string, number>> = { 'raise-8': 8, 'raise-16': 16, 'lower-8': -8, 'lower-16': -16 };

/** The control box hangs at eye height, whatever the height of the tank. */
const regulator: Picture = (part, around) => {
  const top = 0.42;
  const foot = part.at[2] + top + 0.14 - 1.2;
  const step = tapSteps[part.state.tap ?? ''] ?? 0;
  const state = part.state.bypass === 'closed' ? 'bypassed' : 'whole';
  return [onFace(part, around, { kind: 'regulator', state, size: { control: Math.max(0.6, foot - 1.75), step } }, top)];
};

const streetlight: Picture = (part, around) => [
  onFace(part, around, { kind: 'streetlight', state: part.state.lamp === 'on' ? 'lit' : 'dark' }),
];

const rack: Picture = (part, around) => [onFace(part, around, { kind: 'secondary-rack' })];

const moulding: Picture = (part, around) => {
  const pole = around.on(part.pole, 'pole');
  return [{ spec: { kind: 'moulding', side: groundSide, size: poleForm(pole) }, at: pole?.at ?? part.at }];
};

const alongLine =
  (kind: string): Picture =>
  (part) => [{ spec: { kind, side: part.azimuth }, at: part.at }];

/** The cap sits on the nearest bushing or arrester of its pole, else where it is said to be. */
const birdGuard: Picture = (part, around) => {
  const near = around
    .terminals(part.pole)
    .filter(({ part: other }) => other.id !== part.id)
    .map(({ at }) => ({ at, far: Math.hypot(at[0] - part.at[0], at[1] - part.at[1], at[2] - part.at[2]) }))
    .sort((p, q) => p.far - q.far)[0];
  return [{ spec: { kind: 'bird-guard', side: outwardOf(part) }, at: near && near.far < 1.2 ? near.at : part.at }];
};

/** How far before its anchor's place the eye of the rod stands, metres along the ground. */
const EYE = 0.12;

/** The guy that this part belongs to: its strand from the pole's face to the eye. */
const strandOf = (part: Part, around: Around): readonly Point[] => {
  const whole = around.on(part.pole, 'guy');
  if (whole === null || whole.end === null) return [];
  // Straight from the pole's axis to the anchor, as the engine has it: it comes out of the wood a little below its attachment.
  const face = around.face(part.pole, azimuthFrom(whole.at, whole.end), whole.at[2]);
  const out = Math.hypot(face[0] - whole.at[0], face[1] - whole.at[1]);
  const far = Math.hypot(whole.end[0] - whole.at[0], whole.end[1] - whole.at[1]);
  return [lerp(whole.at, whole.end, out / far), lerp(whole.at, whole.end, 1 - EYE / far)];
};

const onGuy =
  (kind: string, more: (part: Part) => Partial<Piece['spec']> = () => ({})): Picture =>
  (part, around) => {
    const points = strandOf(part, around);
    return points.length < 2 ? [] : [{ spec: { kind, points, ...more(part) }, at: [0, 0, 0] }];
  };

const [strandFeature] = componentKind('guy').features;

const guy: Picture = (part, around) => {
  const points = strandOf(part, around);
  if (points.length < 2) return [];
  const made = (part.words.insulator ?? 'in it') === 'in it' ? 'strain-ball' : 'plain';
  const variant = drawnVariant(part, made);
  const [top, along] = [points[0] as Point, strandFeature?.along ?? 3];
  const fallen = lieOfFallen(part);
  const size: Record<string, number> = {
    // Where the engine looks at it.
    ball: along - Math.hypot(top[0] - part.at[0], top[1] - part.at[1], top[2] - part.at[2]),
    ...(around.beside(part, 'guy-guard') === null ? {} : { guard: 0 }),
    ...(fallen === null ? {} : { lies: distance(...fallen) - EYE }),
  };
  return [{ spec: { kind: 'guy', variant, points, size }, at: [0, 0, 0] }];
};

const enclosure: Picture = (part, around) => [onFace(part, around, { kind: 'telecom-enclosure', variant: 'cabinet' })];

const telecomCable: Picture = (part) => {
  if (part.end === null) return [];
  const side = azimuthFrom(part.at, part.end);
  return [
    {
      spec: { kind: 'telecom-cable', points: [part.at, part.end], size: { sag: part.values.sagM ?? 0.6 } },
      at: [0, 0, 0],
      thin: 0.008,
      swings: true,
    },
    {
      spec: { kind: 'strand-clamp', side: side - Math.PI / 2 },
      at: shifted(part.at, -0.037 * Math.sin(side), 0.037 * Math.cos(side), 0),
    },
    {
      spec: { kind: 'telecom-enclosure', variant: 'case', side },
      at: shifted(part.at, 1.6 * Math.cos(side), 1.6 * Math.sin(side), -0.09),
    },
  ];
};

/** Metres that a line which crosses is drawn beyond its ends, with a pole at each. */
const BEYOND = 24;

const crossingLine: Picture = (part) => {
  const [x, y, z] = part.at;
  const ends: readonly [Point, Point] = [
    [x, y - BEYOND, z],
    [x, y + BEYOND, z],
  ];
  return [
    {
      spec: { kind: 'lead', variant: 'aluminium', size: { radius: conductor, sag: 0.5 }, points: [...ends] },
      at: [0, 0, 0],
      thin: conductor,
    },
    ...ends.flatMap((end, i): Piece[] => [
      { spec: { kind: 'pole', size: { height: z - 0.3 }, seed: 70 + i }, at: [end[0], end[1], 0] },
      { spec: { kind: 'pin-insulator', side: Math.PI }, at: shifted(end, 0, 0, -0.3) },
    ]),
  ];
};

/** Bodies of line gear by kind. */
export const gearBodies: Readonly<Record<string, Picture>> = {
  cutout,
  arrester,
  transformer: transformer('usual'),
  'transformer-two-bushing': transformer('two-bushing'),
  'bank-unit-120': transformer('unit'),
  'bank-unit-240': transformer('unit'),
  disconnect,
  recloser,
  capacitor,
  regulator,
  streetlight,
  'secondary-rack': rack,
  moulding,
  stirrup: alongLine('stirrup'),
  'split-bolt': alongLine('split-bolt'),
  'deadend-shoe': alongLine('deadend-shoe'),
  'bird-guard': birdGuard,
  guy,
  'strain-insulator': onGuy('strain-insulator', (part) => ({
    variant: part.words.material === 'fibreglass' ? 'fibreglass' : 'porcelain',
    size: { share: 0.22 },
  })),
  'guy-guard': onGuy('guy-guard'),
  anchor: onGuy('anchor'),
  'telecom-cable': telecomCable,
  'telecom-enclosure': enclosure,
  'crossing-line': crossingLine,
};
