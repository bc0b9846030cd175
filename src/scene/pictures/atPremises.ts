/** Pictures of service drops and what stands at a customer's. */
import type { Part } from '../../engine/world/types.ts';
import type { Point } from '../hardware/types.ts';
import { azimuthFrom, leadThrough, outwardOf, seedOf, shifted, toward } from './shared.ts';
import { lowCourse, spanWires } from './spans.ts';
import type { Around, Picture, Piece } from './types.ts';

const drop: Picture = (part, around) => {
  if (part.end === null) return [];
  const pole = around.world.parts.find((p) => p.pole !== null && p.nets.x1 === part.nets.x1);
  const side = azimuthFrom(part.at, part.end);
  const hook = around.face(pole?.pole ?? null, side, part.at[2], 0.05);
  const start = toward(hook, side, 0.28);
  const meter = around.on(part.premises, 'meter');
  const end = around.point(meter?.id, 'messenger') ?? part.end;
  const tank = around.point(pole?.id, 'tankTop');
  const low = lowCourse(part, start, end);
  const leads = ['x1', 'x3', 'x2'].flatMap((name, i): readonly Piece[] => {
    const from = around.point(pole?.id, name);
    if (from === null) return [];
    const out = azimuthFrom(tank ?? from, from);
    const clear = toward([from[0], from[1], hook[2] + 0.16 - 0.05 * i], out, 0.05);
    const back = around.face(pole?.pole ?? null, side + (i - 1) * 0.5, hook[2] + 0.05 - 0.04 * i, 0.12);
    const joined = toward(start, side, 0.05 + 0.06 * i, 0.012 * (i - 1));
    const bare = name === 'x2';
    return leadThrough(bare ? 'aluminium' : 'insulated', bare ? 0.0042 : 0.0058, [
      from,
      toward(from, out, 0.05, -0.02),
      toward(from, out, 0.07, -0.14),
      clear,
      back,
      toward(hook, side, 0.1, -0.1 - 0.03 * i),
      joined,
    ]);
  });
  return [
    { spec: { kind: 'wedge-clamp', side }, at: hook },
    {
      spec: {
        kind: 'triplex',
        points: low.length > 0 ? [...low] : [start, end],
        size: { sag: part.values.sagM ?? 0.6, pitch: 0.95 },
      },
      at: [0, 0, 0],
      thin: 0.0068,
      swings: true,
    },
    ...leads,
  ];
};

const meterStates: Readonly<Record<string, string>> = { in: 'present', pulled: 'empty', blanked: 'sealed-blank' };

const meter: Picture = (part, around) => {
  const side = outwardOf(part);
  const serviceDrop = around.on(part.premises, 'drop');
  const height = (serviceDrop?.end?.[2] ?? 5) - part.at[2] + 0.1;
  return [
    { spec: { kind: 'meter', side, state: meterStates[part.state.position ?? 'in'] ?? 'present' }, at: part.at },
    { spec: { kind: 'service-mast', side, size: { height } }, at: shifted(part.at, 0, 0, 0.19) },
  ];
};

const mains: Readonly<Record<string, string>> = { closed: 'main-on', tripped: 'main-tripped' };

const panel: Picture = (part) => {
  const side = outwardOf(part);
  const state = mains[part.state.position ?? 'open'] ?? 'main-off';
  return [{ spec: { kind: 'panel', side, state }, at: part.at }];
};

const panelWires: Picture = (part, around) => {
  const side = outwardOf(part);
  const load = around.point(around.on(part.premises, 'meter')?.id, 'load');
  const low = shifted(part.at, 0, 0, -0.4);
  return leadThrough('steel', 0.016, [
    load,
    load && shifted(load, 0.02, 0, -0.18),
    load && toward([low[0], low[1], load[2] - 0.24], side, 0.05),
    toward(low, side, 0.05),
  ]);
};

/** A thick cord from the set's outlet along the ground and the wall up to a box. */
const cordTo = (part: Part, around: Around, end: Point): readonly Piece[] => {
  const set = around.on(part.premises, 'generator');
  const outlet = around.point(set?.id, 'outlet');
  if (set === null || outlet === null) return [];
  const out = outwardOf(part);
  const foot = toward([end[0] + 0.1, end[1], 0.06], out, 0.1);
  const drawn = toward(outlet, outwardOf(set), 0.09, -0.09);
  return leadThrough('insulated', 0.0105, [
    outlet,
    drawn,
    toward([drawn[0], drawn[1], 0.03], outwardOf(set), 0.12),
    [outlet[0] - 1.2, foot[1] + 0.5 * Math.sin(out), 0.03],
    [outlet[0] - 2.6, foot[1] + 0.1 * Math.sin(out), 0.03],
    [foot[0] + 1.6, foot[1] + 0.15 * Math.sin(out), 0.03],
    foot,
    shifted(foot, -0.05, 0, 0.3),
    end,
  ]);
};

const cord: Picture = (part, around) => {
  const main = around.on(part.premises, 'main');
  if (main === null) return [];
  if (part.state.position === 'unplugged') {
    const lying = toward([part.at[0] + 0.4, part.at[1], 0.04], outwardOf(part), 0.5);
    return cordTo(part, around, lying);
  }
  return cordTo(part, around, toward(shifted(main.at, 0.13, 0, -0.37), outwardOf(part), 0.06));
};

const switchStates: Readonly<Record<string, string>> = { utility: 'line', generator: 'generator', off: 'off' };

const transferSwitch: Picture = (part) => [
  {
    spec: {
      kind: 'transfer-switch',
      side: outwardOf(part),
      state: switchStates[part.state.position ?? 'off'] ?? 'off',
    },
    at: part.at,
  },
];

const switchWires: Picture = (part, around) =>
  cordTo(part, around, toward(shifted(part.at, 0.06, 0, -0.27), outwardOf(part), 0.07));

/** Metres from the middle of a house to the wall that meter and panel hang on. */
const WALL = 3.04;

/** A shop of the row; meter and panel hang beside its window. */
const SHOP = { width: 8.4, depth: 2 * WALL, height: 7.2, aside: 0.8 } as const;

const shop: Picture = (part, around) => {
  const side = outwardOf(part);
  const service = Math.sign(Math.sin(side));
  const { width, depth, height } = SHOP;
  return [
    {
      spec: {
        kind: 'shop',
        variant: 'boards',
        state: around.lit(part) ? 'lit' : 'dark',
        side,
        seed: seedOf(part.id),
        size: { width, depth, height, service },
      },
      at: shifted(part.at, SHOP.aside, service * WALL, 0),
    },
  ];
};

/** The gable end faces the line; its ridge stands a little aside, so that meter and panel have bare wall between windows. */
const house: Picture = (part, around) =>
  around.world.site.setting === 'street'
    ? shop(part, around)
    : [
        {
          spec: {
            kind: 'house',
            state: around.lit(part) ? 'lit' : 'dark',
            side: part.azimuth - Math.PI,
            size: { length: 2 * WALL, width: 8, eaves: 3, rise: 2.5 },
          },
          at: shifted(part.at, -0.95, 0, 0),
        },
      ];

const outbuilding: Picture = (part) => [
  {
    spec: {
      kind: 'outbuilding',
      state: 'open',
      side: outwardOf(part),
      size: { length: 4, width: 3, eaves: 2.4, rise: 1.1 },
    },
    at: part.at,
  },
];

const generator: Picture = (part) => [
  {
    spec: { kind: 'generator', state: part.state.run === 'running' ? 'running' : 'stopped', side: outwardOf(part) },
    at: part.at,
  },
];

const slides: Readonly<Record<string, string>> = {
  main: 'main-on',
  inlet: 'inlet-on',
  both: 'both-on',
  tripped: 'main-tripped',
};

/** Main and inlet under one slide. */
const interlocked: Picture = (part) => {
  const state = slides[part.state.position ?? 'off'] ?? 'main-off';
  return [{ spec: { kind: 'panel', variant: 'interlock', side: outwardOf(part), state }, at: part.at }];
};

/** Lamp of an inverter by how it runs. */
const running: Readonly<Record<string, string>> = {
  following: 'following',
  holding: 'following',
  tripped: 'tripped',
  stopped: 'stopped',
};

const plant = (part: Part, kind: string): Piece => ({
  spec: { kind, side: outwardOf(part), state: running[part.state.run ?? 'stopped'] ?? 'stopped' },
  at: part.at,
});

/** Panels lie on the slope of the roof that one sees from the line; the house: eaves 3 m, rise 2.5 m over half of 8 m. */
const photovoltaic: Picture = (part, around) => {
  const home = around.on(part.premises, 'house');
  if (home === null) return [plant(part, 'inverter')];
  if (around.world.site.setting === 'street') {
    // On a flat roof they stand in a low rack, their lower edge toward the street.
    const flat = shifted(home.at, SHOP.aside, 0, SHOP.height - 0.3);
    return [
      plant(part, 'inverter'),
      { spec: { kind: 'solar-panels', side: outwardOf(home), size: { pitch: 0.2, columns: 4 } }, at: flat },
    ];
  }
  const middle = shifted(home.at, -0.95 + 2.1, 0, 3 + 2.5 * (1 - 2.1 / 4) + 0.06);
  return [
    plant(part, 'inverter'),
    { spec: { kind: 'solar-panels', side: 0, size: { pitch: Math.atan2(2.5, 4), columns: 4 } }, at: middle },
  ];
};

const battery: Picture = (part) => [plant(part, 'battery')];

/** Conduit from a plant down its wall and along to the panel. */
const plantWires: Picture = (part, around) => {
  const main = around.on(part.premises, 'main');
  const out = around.point(part.id, 'out');
  if (main === null || out === null) return [];
  const wall = outwardOf(part);
  const low = toward(shifted(main.at, 0.1, 0, -0.4), wall, 0.05);
  return leadThrough('steel', 0.013, [out, shifted(out, 0, 0, -0.2), [low[0], out[1], low[2] - 0.3], low]);
};

const houseGround: Picture = (part, around) => {
  const hub = around.point(around.on(part.premises, 'meter')?.id, 'load');
  const out = part.at;
  return leadThrough('copper', 0.0026, [
    hub,
    hub && shifted(hub, -0.08, 0, -0.1),
    [out[0], hub?.[1] ?? out[1], 0.6],
    shifted(out, 0, 0, -0.05),
  ]);
};

/** Bodies at a customer's; they may not ask for points. */
export const premisesBodies: Readonly<Record<string, Picture>> = {
  meter,
  'main-breaker': panel,
  'transfer-switch': transferSwitch,
  house,
  outbuilding,
  generator,
  'governed-generator': generator,
  'interlocked-main': interlocked,
  'neutral-transfer-switch': transferSwitch,
  'photovoltaic-plant': photovoltaic,
  'battery-plant': battery,
};

/** Spans, drops and cords. */
export const premisesWires: Readonly<Record<string, Picture>> = {
  ...spanWires,
  'service-drop': drop,
  'main-breaker': panelWires,
  'panel-cord': cord,
  'transfer-switch': switchWires,
  'neutral-transfer-switch': switchWires,
  'interlocked-main': panelWires,
  'photovoltaic-plant': plantWires,
  'battery-plant': plantWires,
  'house-ground': houseGround,
};
