/**
 * The materials of everything drawn, made once and shared: physically based, with seeded procedural textures.
 * Metals and glaze want a `scene.environment`; without one they look dark.
 */
import {
  Color,
  DoubleSide,
  type Material,
  MeshPhysicalMaterial,
  type MeshPhysicalMaterialParameters,
  MeshStandardMaterial,
  type MeshStandardMaterialParameters,
  Vector2,
} from 'three';
import {
  asphalt,
  bark,
  boardShade,
  boards,
  bricks,
  concrete,
  grass,
  gravel,
  gravelNormals,
  leaves,
  meshOfWire,
  needles,
  ribs,
  shingles,
  twigs,
} from './ground.ts';
import { mottle, oxide, rustColour, spangle, strandNormals, streaks } from './metal.ts';
import { litRoom } from './room.ts';
import { endGrain, woodColour, woodNormals } from './wood.ts';

const standard = (p: MeshStandardMaterialParameters): MeshStandardMaterial => new MeshStandardMaterial(p);
const glazed = (p: MeshPhysicalMaterialParameters): MeshPhysicalMaterial =>
  new MeshPhysicalMaterial({ roughness: 0.32, clearcoat: 1, clearcoatRoughness: 0.06, ...p });
const plain = (color: number, roughness: number, metalness = 0): MeshStandardMaterial =>
  standard({ color, roughness, metalness });

const once = <T>(paint: () => T): (() => T) => {
  let made: T | undefined;
  return () => {
    made ??= paint();
    return made;
  };
};

type Made<M extends Record<string, () => Material>> = { readonly [K in keyof M]: ReturnType<M[K]> };

/** Each material is made, and its textures painted, when it is first asked for. */
const lazy = <M extends Record<string, () => Material>>(makers: M): Made<M> => {
  const set = {};
  for (const [name, maker] of Object.entries(makers)) {
    Object.defineProperty(set, name, { enumerable: true, get: once(maker) });
  }
  return set as Made<M>;
};

const make = () => {
  const zinc = once(spangle);
  const glaze = once(mottle);
  const strand = once(() => strandNormals(7));
  const boardNormal = once(boards);
  const boardTint = once(boardShade);
  const brick = once(bricks);
  const concreteMap = once(concrete);
  const soft = new Vector2(0.7, 0.7);
  return lazy({
    porcelainBrown: () => glazed({ color: 0x6b3520, map: glaze() }),
    porcelainGrey: () => glazed({ color: 0x8e9694, map: glaze(), roughness: 0.36 }),
    porcelainWhite: () => glazed({ color: 0xc4c7c3, map: glaze(), roughness: 0.36 }),
    bisque: () => plain(0xd8cdb8, 0.95),
    polymer: () => standard({ color: 0x878b8c, roughness: 0.72, map: glaze() }),
    polymerBlack: () => plain(0x1d1e20, 0.6),
    zinc: () => standard({ color: 0xa9aeb0, roughness: 0.5, metalness: 0.72, map: zinc() }),
    steelDark: () => plain(0x3a3c3e, 0.55, 0.6),
    aluminium: () => standard({ color: 0xb9bcbd, roughness: 0.42, metalness: 0.8 }),
    aluminiumStrand: () =>
      standard({
        color: 0xa4a7a8,
        roughness: 0.5,
        metalness: 0.7,
        normalMap: strand(),
      }),
    steelStrand: () => standard({ color: 0x84898c, roughness: 0.52, metalness: 0.7, normalMap: strand() }),
    bronze: () => standard({ color: 0x86704e, roughness: 0.5, metalness: 0.75, map: glaze() }),
    tinned: () => plain(0x98968f, 0.45, 0.8),
    copper: () => standard({ color: 0xffffff, roughness: 0.62, metalness: 0.45, map: oxide() }),
    verdigris: () => standard({ color: 0x6c9482, roughness: 0.9, map: glaze() }),
    copperFresh: () => plain(0xd09268, 0.3, 0.95),
    insulation: () => plain(0x161719, 0.55),
    tube: () => plain(0x574a3c, 0.5),
    tankPaint: () => standard({ color: 0xaab1ae, roughness: 0.48, map: streaks() }),
    lidPaint: () => standard({ color: 0xa4aba8, roughness: 0.5, map: glaze() }),
    boxPaint: () => standard({ color: 0x979d9b, roughness: 0.52, map: glaze() }),
    wood: () =>
      standard({
        color: 0xffffff,
        roughness: 0.92,
        map: woodColour(),
        normalMap: woodNormals(),
        normalScale: soft,
        vertexColors: true,
      }),
    woodEnd: () => standard({ color: 0xffffff, roughness: 0.95, map: endGrain(), side: DoubleSide }),
    moulding: () => plain(0x6c6a63, 0.8),
    rust: () => standard({ color: 0xffffff, roughness: 0.95, map: rustColour() }),
    glass: () => glazed({ color: 0xdfe8e6, roughness: 0.05, transparent: true, opacity: 0.24 }),
    glassDisc: () => glazed({ color: 0x8fb8a6, roughness: 0.12, transparent: true, opacity: 0.62, side: DoubleSide }),
    solar: () => glazed({ color: 0x101a2c, roughness: 0.25 }),
    lens: () => standard({ color: 0xd9d6c6, roughness: 0.3, emissive: 0x000000 }),
    lampLit: () => standard({ color: 0xfff1cf, roughness: 0.4, emissive: 0xffc983, emissiveIntensity: 2.2 }),
    lampGreen: () => standard({ color: 0x2c8a45, roughness: 0.4, emissive: 0x3fe070, emissiveIntensity: 1.2 }),
    lampRed: () => standard({ color: 0x8a2c22, roughness: 0.4, emissive: 0xff4630, emissiveIntensity: 1.2 }),
    windowDark: () => glazed({ color: 0x1a2227, roughness: 0.12 }),
    // By day a lit room is no more than a warm tone behind the glass.
    windowLit: () =>
      glazed({ color: 0x4f4331, roughness: 0.12, emissive: 0xf2b866, emissiveMap: litRoom(), emissiveIntensity: 0.9 }),
    display: () => plain(0x8f9c86, 0.35),
    white: () => plain(0xdfe0dc, 0.55),
    black: () => plain(0x16171a, 0.6),
    yellow: () => plain(0xd3a80f, 0.55),
    safetyOrange: () => plain(0xe0521a, 0.6),
    safetyLime: () => plain(0xb9d32a, 0.8),
    guard: () => plain(0x54585a, 0.62),
    earth: () => plain(0x4a3a2a, 1),
    red: () => plain(0xa32418, 0.5),
    green: () => plain(0x3d5546, 0.5),
    reflective: () => plain(0xd6d9d8, 0.28, 0.35),
    truckPaint: () => glazed({ color: 0xd5d7d3, roughness: 0.4 }),
    carPaint: () => glazed({ color: 0x5d6872, roughness: 0.35 }),
    fur: () => plain(0x5b4632, 1),
    rubber: () => plain(0x1c1c1d, 0.9),
    fabricDark: () => plain(0x27303d, 0.95),
    leather: () => plain(0x6a4a2c, 0.85),
    skin: () => plain(0x9c7a66, 0.8),
    concrete: () => standard({ roughness: 0.95, map: concreteMap() }),
    grass: () => standard({ roughness: 1, map: grass() }),
    gravel: () => standard({ roughness: 0.95, map: gravel(), normalMap: gravelNormals() }),
    asphalt: () => standard({ roughness: 0.9, map: asphalt() }),
    siding: () => standard({ color: 0xc9c3b2, roughness: 0.8, map: boardTint(), normalMap: boardNormal() }),
    sidingDark: () =>
      standard({
        color: 0x7a4637,
        roughness: 0.88,
        map: boardTint(),
        normalMap: boardNormal(),
      }),
    brickRed: () => standard({ color: 0x9c5a45, roughness: 0.92, map: brick() }),
    brickBuff: () => standard({ color: 0xb49a73, roughness: 0.92, map: brick() }),
    plaster: () => standard({ color: 0xcfc8b6, roughness: 0.95, map: concreteMap() }),
    cladding: () => standard({ color: 0x8f9a9f, roughness: 0.55, metalness: 0.35, normalMap: ribs() }),
    wireMesh: () =>
      standard({
        color: 0xb9bec0,
        roughness: 0.5,
        metalness: 0.6,
        map: meshOfWire(),
        transparent: true,
        depthWrite: false,
        side: DoubleSide,
        // One sheet each: drawn once, where twice would look every material's program up anew in every frame.
        forceSinglePass: true,
      }),
    shingles: () => standard({ roughness: 0.95, map: shingles() }),
    bark: () => standard({ roughness: 1, map: bark() }),
    leaves: () => standard({ roughness: 0.9, map: leaves(), alphaTest: 0.5, side: DoubleSide }),
    needles: () => standard({ roughness: 0.9, map: needles(), alphaTest: 0.2, side: DoubleSide }),
    // Blended: from afar a crown of twigs is a haze, which a cut-out would make solid or leave out.
    twigs: () =>
      standard({
        roughness: 0.9,
        map: twigs(),
        transparent: true,
        depthWrite: false,
        side: DoubleSide,
        forceSinglePass: true,
      }),
    mark: () =>
      new MeshPhysicalMaterial({
        roughness: 1,
        specularIntensity: 0.08,
        vertexColors: true,
        transparent: true,
        depthWrite: false,
        polygonOffset: true,
        polygonOffsetFactor: -2,
        polygonOffsetUnits: -2,
        side: DoubleSide,
        // One sheet each: drawn once, where twice would look every material's program up anew in every frame.
        forceSinglePass: true,
      }),
  });
};

export type Materials = ReturnType<typeof make>;
export type MaterialName = keyof Materials;

let shared: Materials | undefined;

/** The one set of materials. */
export const materials = (): Materials => {
  shared ??= make();
  return shared;
};

const wettable: readonly (readonly [MaterialName, number])[] = [
  ['wood', 0.45],
  ['woodEnd', 0.45],
  ['concrete', 0.35],
  ['gravel', 0.35],
  ['asphalt', 0.4],
  ['grass', 0.2],
  ['brickRed', 0.25],
  ['brickBuff', 0.25],
  ['plaster', 0.15],
  ['siding', 0.2],
  ['sidingDark', 0.25],
  ['shingles', 0.35],
  ['bark', 0.35],
];
/** How far the colour of what ice clings to goes toward its grey-white: many facets scatter more than one smooth skin. */
const clinging: readonly (readonly [MaterialName, number])[] = [
  ['grass', 0.5],
  ['leaves', 0.5],
  ['needles', 0.5],
  ['bark', 0.22],
  ['wood', 0.16],
  ['woodEnd', 0.2],
  ['shingles', 0.4],
  ['gravel', 0.25],
];
/** Ice over a dark texture: beyond white, so that what is beneath still shows through. */
const icy = new Color(1.9, 2.05, 2.2);
const dry = new WeakMap<Material, { colour: number; roughness: number }>();

/** Darkens and smooths what soaks up water; `amount` 0 dry to 1 streaming. `iced`: under a clear skin of ice. */
export const wet = (set: Materials, amount: number, iced = false): void => {
  for (const [name] of clinging) {
    const m = set[name] as MeshStandardMaterial;
    dry.set(m, dry.get(m) ?? { colour: m.color.getHex(), roughness: m.roughness });
    const was = dry.get(m);
    if (was) m.color.setHex(was.colour);
    if (was) m.roughness = was.roughness;
  }
  for (const [name, darkening] of wettable) {
    const m = set[name] as MeshStandardMaterial;
    const was = dry.get(m) ?? { colour: m.color.getHex(), roughness: m.roughness };
    dry.set(m, was);
    m.color.setHex(was.colour).multiplyScalar(1 - darkening * amount);
    // A film of water mirrors lamps; what soaks stays rougher than what sheds.
    m.roughness = was.roughness * (1 - (name === 'asphalt' || name === 'concrete' ? 0.72 : 0.5) * amount);
  }
  if (!iced) return;
  for (const [name, share] of clinging) {
    const m = set[name] as MeshStandardMaterial;
    m.color.lerp(icy, share);
    m.roughness = Math.min(m.roughness, 0.3);
  }
};
