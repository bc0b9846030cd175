/** What stands at a customer's: drop, meter, main, loads, ground, house; a set and how it is connected. */
import { hypot } from '../math/elementary.ts';
import type { Vec3 } from '../math/vec3.ts';
import type { ScenarioPole, ScenarioPremises } from '../scenario/types.ts';
import { type PartSpec, partForm } from './partForm.ts';
import { heightOf, serviceBelow } from './poleParts.ts';
import type { Part } from './types.ts';

/** +1 when the wall that faces the line lies toward +y. */
export const facing = (premises: ScenarioPremises, pole: ScenarioPole): 1 | -1 => (pole.y >= premises.y ? 1 : -1);

/** Where one stands in the yard, before meter and panel. */
export const yardOf = (premises: ScenarioPremises, pole: ScenarioPole): Vec3 => [
  premises.x - 1,
  premises.y + facing(premises, pole) * 4.2,
  0,
];

type On = (name: string, kind: string, at: Vec3, more?: Partial<PartSpec>) => Part;

/** A set and what it is cabled to. */
const ownParts = (premises: ScenarioPremises, side: 1 | -1, on: On): readonly Part[] => {
  const { own, x, y } = premises;
  if (own === undefined) return [];
  const wall = y + side * 3.05;
  const azimuth = side === 1 ? Math.PI : 0;
  const lever = (): readonly Part[] =>
    own.connection === 'transfer-switch' || own.connection === 'neutral-transfer-switch'
      ? [
          on('transfer-switch', own.connection, [x - 1.2, wall, 1.5], {
            azimuth,
            state: { position: own.transfer ?? 'utility' },
          }),
        ]
      : [];
  if (own.kind === 'photovoltaic' || own.kind === 'battery') {
    const run = !own.running ? 'stopped' : own.islands ? 'holding' : 'following';
    return [
      on(own.kind, `${own.kind}-plant`, [x + 0.6, wall, 1.6], {
        azimuth,
        state: { run, islanding: own.islands ? 'holds' : 'trips' },
        values: { va: own.kva * 1000 },
        ...(own.connection === 'transfer-switch' ? { nets: { bus1: 'g1', bus2: 'g2' } } : {}),
      }),
      ...lever(),
    ];
  }
  // One with its neutral switched is there to stay, and stands by the wall.
  const place: Vec3 =
    own.connection === 'neutral-transfer-switch' ? [x + 0.2, wall + side * 0.6, 0] : [x + 8.2, y + side * 2.4, 0];
  const set = on('generator', own.kind, place, {
    state: { run: own.running ? 'running' : 'stopped' },
    values: { va: own.kva * 1000 },
    nets: setNets[own.connection] ?? {},
  });
  const shed = on('outbuilding', 'outbuilding', [x + 9, y, 0]);
  return own.connection === 'panel-cord'
    ? [set, shed, on('cord', 'panel-cord', [x + 1.2, wall, 0.9], { azimuth })]
    : [set, shed, ...lever()];
};

/** Where a set's leads end, if not at the house's ordinary nets; alone it stands on the soil with its frame, its neutral. */
const setNets: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'neutral-transfer-switch': { n: 'g0' },
  none: { g1: '$id.g1', g2: '$id.g2', n: 'earth' },
};

/** The main breaker, or main and inlet under one slide; behind a transfer switch it feeds the switch. */
const mainOf = ({ own, main }: ScenarioPremises, at: Vec3, azimuth: number, on: On): Part => {
  if (own?.connection === 'interlock') {
    const position = own.transfer === 'generator' ? 'inlet' : main === 'closed' ? 'main' : 'off';
    return on('main', 'interlocked-main', at, { azimuth, state: { position } });
  }
  const isSwitched = own?.connection === 'transfer-switch' || own?.connection === 'neutral-transfer-switch';
  return on('main', 'main-breaker', at, {
    azimuth,
    state: { position: main },
    ...(isSwitched ? { nets: { bus1: 't1', bus2: 't2' } } : {}),
  });
};

/** Parts of one premises; behind a transfer switch the main feeds the switch and the switch the bus. */
export const premisesParts = (premises: ScenarioPremises, pole: ScenarioPole): readonly Part[] => {
  const { id, x, y, name } = premises;
  const side = facing(premises, pole);
  const wall = y + side * 3.05;
  const azimuth = side === 1 ? Math.PI : 0;
  const on: On = (part, kind, at, more = {}) =>
    partForm({ id: `${id}.${part}`, kind, owner: { premises: id }, where: name, at, ...more });
  const head: Vec3 = [x - 2, wall, 5];
  const from: Vec3 = [pole.x, pole.y - side * 0.16, heightOf(pole) - serviceBelow];
  const at = (net: string): string => `${pole.id}.${net}`;
  return [
    on('drop', 'service-drop', from, {
      end: head,
      nets: { x1: at('x1'), x2: at('x2'), x3: at('x3') },
      values: { lengthM: hypot(head[0] - from[0], head[1] - from[1]), sagM: 0.6 },
    }),
    on('meter', 'meter', [x - 2, wall, 1.6], { azimuth }),
    mainOf(premises, [x - 0.4, wall, 1.5], azimuth, on),
    on('load', 'household-load', [x, y, 1], {
      values: { leg1W: premises.loadW[0], leg2W: premises.loadW[1], bothW: premises.loadW[2] },
    }),
    on('ground', 'house-ground', [x - 2.3, wall, 0]),
    on('house', 'house', [x, y, 0], { azimuth }),
    ...ownParts(premises, side, on),
  ];
};
