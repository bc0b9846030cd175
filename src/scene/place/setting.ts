/**
 * What stands about the line in each setting that a scenario may name: what grows, what is paved, whose walls are behind. A
 * backdrop: nothing of it is a part, hides a part or can be pointed at, so it keeps off parts, houses and standing points.
 */
import type { Site } from '../../engine/world/types.ts';
import { house } from '../hardware/buildings.ts';
import { car } from '../hardware/car.ts';
import { shop } from '../hardware/shop.ts';
import type { Builder, PartSpec, Point } from '../hardware/types.ts';
import { hash, stream } from '../materials/noise.ts';
import { church } from './church.ts';
import { drives, road } from './lie.ts';
import { open } from './openLand.ts';
import { stall } from './stall.ts';
import type { IsFree, Place, Room, Spot, Standing } from './types.ts';
import { shed, wireFence } from './works.ts';

type Setting = NonNullable<Site['setting']>;

const farmland: Place = {
  plants: open,
  standing: [],
  paved: [],
  grass: { many: 1, tall: 1 },
  fieldFence: true,
  drives: true,
  centreLine: false,
};

const onDrive = (x: number): boolean => drives.some((drive) => Math.abs(x - drive.x) < 4);
const behind = (y: number) => (plants: readonly Spot[]) => plants.filter((spot) => Math.abs(spot[1]) > y);

const woods = ({ clear }: Room): Place => {
  const next = stream(77);
  const among = (many: number): Spot[] => {
    const out: Spot[] = [];
    for (let i = 0; out.length < many && i < many * 8; i++) {
      const x = -95 + 195 * next();
      const y = (next() < 0.6 ? 1 : -1) * (19 + 44 * next() ** 1.4) + (next() < 0.5 ? 0 : -1.5);
      const size = 0.85 + 0.55 * next();
      if (Math.abs(x + 40) > 8 && !onDrive(x) && clear(x - 7, y - 7, x + 7, y + 7)) out.push([x, y, size]);
    }
    return out;
  };
  return {
    ...farmland,
    plants: {
      broadleaf: [...open.broadleaf, ...among(46)],
      conifer: [...open.conifer, ...among(34)],
      bush: [...open.bush, ...among(26)],
    },
    fieldFence: false,
  };
};

const orchard = ({ clear }: Room): Place => {
  const rows: Spot[] = [];
  for (let y = 17.5; y < 52; y += 6.5) {
    for (let x = -74; x < 62; x += 5.5) {
      if (!onDrive(x) && Math.abs(x + 40) > 4 && clear(x - 4, y - 4, x + 4, y + 4))
        rows.push([x, y, 0.4 + 0.08 * hash(Math.round(x * 2), Math.round(y), 4)]);
    }
  }
  return { ...farmland, plants: { ...open, broadleaf: [...behind(54)(open.broadleaf), ...rows], conifer: [] } };
};

/** Houses by the road at both sides, each with its hedge; one church among them. */
const village = ({ free, clear }: Room, dark: boolean): Place => {
  const standing: Standing[] = [];
  const put = (build: Builder, spec: Omit<PartSpec, 'kind'>, at: Point, reach: number): void => {
    if (!free(at[0] - reach, at[1] - reach, at[0] + reach, at[1] + reach)) return;
    if (standing.some((one) => Math.hypot(one.at[0] - at[0], one.at[1] - at[1]) < reach + 7)) return;
    standing.push({ build, spec: { kind: build.kind, ...spec }, at });
  };
  put(church, {}, [-27, 40, 0], 12);
  for (const e of [1, -1]) {
    for (let i = 0; i < 7; i++) {
      const x = -82 + i * 23 + 5 * hash(i, e + 2, 3);
      const y = e * (25 + 5 * hash(i, e + 2, 4));
      const lit = dark && hash(i, e + 2, 5) < 0.6;
      const size = { length: 8.5 + 3 * hash(i, e + 2, 6), rise: 2 + 1.2 * hash(i, e + 2, 7) };
      if (!onDrive(x) || e < 0)
        put(house, { state: lit ? 'lit' : 'dark', side: (-e * Math.PI) / 2, size }, [x, y, 0], 7);
    }
  }
  const hedge: Spot[] = [];
  for (let x = -88; x < 62; x += 0.95) {
    if (!onDrive(x) && Math.abs(x + 40) > 2 && clear(x - 1, 13.5, x + 1, 15.5)) hedge.push([x, 14.4, 0.52]);
    if (!onDrive(x) && clear(x - 1, -19, x + 1, -17)) hedge.push([x, -18, 0.5]);
  }
  return {
    ...farmland,
    plants: { broadleaf: behind(33)(open.broadleaf), conifer: behind(43)(open.conifer), bush: hedge },
    standing,
    grass: { many: 0.55, tall: 0.42 },
    fieldFence: false,
    centreLine: true,
  };
};

const cloths = ['red', 'buff', 'plaster', 'boards'] as const;

/** Shops in a row along y, facing the road, wherever there is room. */
const rowOfShops = (y: number, seed: number, free: IsFree, dark: boolean): Standing[] => {
  const next = stream(seed);
  const facing = y > 0 ? -Math.PI / 2 : Math.PI / 2;
  const out: Standing[] = [];
  for (let x = -96; x < 60; ) {
    const width = 6 + 2.2 * next();
    const spec = {
      kind: shop.kind,
      variant: cloths[Math.floor(next() * cloths.length)] ?? 'red',
      state: dark && next() < 0.55 ? 'lit' : 'dark',
      side: facing,
      seed: out.length + seed,
      size: { width, height: 7 + 1.4 * next(), depth: 10 },
    };
    const far = y + 10 * Math.sign(y);
    if (free(x - 1, Math.min(y, far) - 1, x + width + 1, Math.max(y, far) + 1))
      out.push({ build: shop, spec, at: [x + width / 2, y, 0] });
    x += width + (next() < 0.12 ? 3 : 0.02);
  }
  return out;
};

const street = ({ free, clear }: Room, dark: boolean): Place => {
  const stalls: Standing[] = [];
  for (let i = 0; i < 12 && !dark; i++) {
    const x = -58 + i * 9.5;
    // The market is across the road where nobody's meter is behind it.
    const y = clear(-96, -15.5, 60, -12.5) ? -14.2 : 13.5;
    const build = i % 4 === 3 ? car : stall;
    const side = build === car ? 0 : (-Math.sign(y) * Math.PI) / 2;
    if (clear(x - 2.5, y - 2, x + 2.5, y + 2))
      stalls.push({ build, spec: { kind: build.kind, side, seed: i }, at: [x, y, 0.03] });
  }
  return {
    plants: { broadleaf: behind(40)(open.broadleaf), conifer: behind(43)(open.conifer), bush: [] },
    standing: [...rowOfShops(20, 5, free, dark), ...rowOfShops(-18, 9, free, dark), ...stalls],
    paved: [
      { from: road.near - 0.05, to: -2.4, level: 0.035, of: 'concrete' },
      { from: -2.4, to: 17, level: 0.03, of: 'asphalt' },
      { from: 17, to: 20.2, level: 0.06, of: 'concrete' },
      { from: -18.2, to: road.far + 0.05, level: 0.035, of: 'concrete' },
    ],
    kerbs: [
      { at: road.near, toward: 1 },
      { at: road.far, toward: -1 },
      { at: -2.4, toward: -1 },
      { at: 17, toward: 1 },
    ],
    grass: { many: 0, tall: 1 },
    fieldFence: false,
    drives: false,
    centreLine: true,
  };
};

const works = ({ free, clear }: Room, dark: boolean): Place => {
  const standing: Standing[] = [];
  const state = dark ? 'lit' : 'dark';
  for (const [x, y] of [
    [-38, 27],
    [24, 30],
    [-48, -30],
    [30, -32],
  ] as const) {
    const far = y + 18 * Math.sign(y);
    if (free(x - 19, Math.min(y, far) - 2, x + 19, Math.max(y, far) + 2))
      standing.push({
        build: shed,
        spec: { kind: shed.kind, state, side: y > 0 ? -Math.PI / 2 : Math.PI / 2 },
        at: [x, y, 0],
      });
  }
  for (let x = -84; x < 60; x += 12) {
    for (const y of [12.5, -18])
      if (clear(x - 6, y - 0.5, x + 6, y + 0.5))
        standing.push({
          build: wireFence,
          spec: { kind: wireFence.kind, side: Math.PI / 2, size: { length: 12 } },
          at: [x, y, 0],
        });
  }
  return {
    plants: { broadleaf: behind(60)(open.broadleaf), conifer: behind(60)(open.conifer), bush: [] },
    standing,
    paved: [
      { from: 12.5, to: 52, level: 0.04, of: 'concrete' },
      { from: -54, to: -18, level: 0.04, of: 'concrete' },
    ],
    grass: { many: 0.7, tall: 0.7 },
    fieldFence: false,
    drives: false,
    centreLine: true,
  };
};

/** The place of a setting; `dark`: windows are lit where somebody is in. */
export const placeOf = (setting: Setting, room: Room, dark: boolean): Place => {
  const made: Readonly<Record<Setting, () => Place>> = {
    farmland: () => farmland,
    woods: () => woods(room),
    orchard: () => orchard(room),
    village: () => village(room, dark),
    street: () => street(room, dark),
    works: () => works(room, dark),
  };
  const place = made[setting]();
  /** `reach`: metres from its middle to which a plant of the usual size hides what is low; of a broad tree only the trunk does. */
  const seenPast = (plants: readonly Spot[], reach: number): readonly Spot[] =>
    plants.filter(
      ([x, y, size]) => room.clear(x - 1.5, y - 1.5, x + 1.5, y + 1.5) && room.past(x, y, Math.max(0.4, reach * size)),
    );
  const { broadleaf, conifer, bush } = place.plants;
  return {
    ...place,
    plants: { broadleaf: seenPast(broadleaf, 0.4), conifer: seenPast(conifer, 2.4), bush: seenPast(bush, 1.5) },
  };
};
