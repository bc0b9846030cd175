/**
 * What a framing puts on a pole, where. Heights and distances: typical single-phase framing on a 40 ft pole, common practice;
 * every utility has its own construction standard.
 */
import { componentKind } from '../catalogue/components.ts';
import { poleSize } from '../catalogue/poleSizes.ts';
import type { Side } from '../catalogue/types.ts';
import { add, length, lerp, scale, type Vec3 } from '../math/vec3.ts';
import type { Scenario, ScenarioEquipment, ScenarioPole } from '../scenario/types.ts';
import { carrierOf, deadEnd, tieWords } from './heldBy.ts';
import { type PartSpec, partForm } from './partForm.ts';
import type { Part } from './types.ts';

/** Height of the roof above ground, metres. */
export const heightOf = (pole: ScenarioPole): number => pole.lengthM - poleSize(pole.lengthM, pole.class).settingM;

/** Turn of a part's outward −y to a side of the pole, radians. */
const quarter = Math.PI / 2;
export const azimuthOf = (side: Side): number => {
  if (side === 'load') return quarter;
  if (side === 'field') return 2 * quarter;
  return side === 'source' ? -quarter : 0;
};

const outward: Readonly<Partial<Record<Side, Vec3>>> = {
  road: [0, -1, 0],
  field: [0, 1, 0],
  source: [-1, 0, 0],
  load: [1, 0, 0],
};

/** Where equipment hangs whose kind does not say, metres below the roof and from the middle of the pole. */
const anywhere = { belowM: 2, outM: 0.3 };

/** The joint of neutral and pole ground lies this far below the roof. */
export const neutralBelow = 1.45;
/** Services leave the pole this far below the roof. */
export const serviceBelow = 2.5;

/** Along the ground, away from the spans that end at the pole; toward the load where none does. */
export const guyOut = (scenario: Scenario, pole: ScenarioPole): Vec3 => {
  const away = scenario.spans.flatMap(({ from, to }): readonly Vec3[] => {
    const [a, b] = [from, to].map((net) => scenario.poles.find(({ id }) => net.startsWith(`${id}.`)));
    const other = a?.id === pole.id ? b : b?.id === pole.id ? a : undefined;
    if (other === undefined) return [];
    const out: Vec3 = [pole.x - other.x, pole.y - other.y, 0];
    return [scale(out, 1 / length(out))];
  });
  const sum = away.reduce(add, [0, 0, 0]);
  const size = length(sum);
  return size > 1e-6 ? scale(sum, 1 / size) : [1, 0, 0];
};

/** Ends of the guy of a dead end: 0.6 of its height out (common practice), the way that is told. */
export const guyOf = (pole: ScenarioPole, [dx, dy]: Vec3 = [1, 0, 0]): readonly [top: Vec3, foot: Vec3] => {
  const h = heightOf(pole);
  return [
    [pole.x, pole.y, h - 0.2],
    [pole.x + 0.6 * h * dx, pole.y + 0.6 * h * dy, 0],
  ];
};

/** Where a piece of equipment hangs on its pole. */
export const mountingOf = (
  pole: ScenarioPole,
  { kind, side = 'road', heightM }: ScenarioEquipment,
  out?: Vec3,
): Vec3 => {
  const mounting = componentKind(kind).mounting ?? anywhere;
  if ('along' in mounting) return lerp(...guyOf(pole, out), mounting.share);
  const height = 'aboveM' in mounting ? mounting.aboveM : heightOf(pole) - mounting.belowM;
  const [dx, dy] = outward[side] ?? [0, -1, 0];
  return [pole.x + dx * mounting.outM, pole.y + dy * mounting.outM, heightM ?? height];
};

/** Pole, insulator, tie, neutral, ground and tag by framing. */
export const framingParts = (pole: ScenarioPole, out?: Vec3): readonly Part[] => {
  const h = heightOf(pole);
  const size = poleSize(pole.lengthM, pole.class);
  const { x, y } = pole;
  const where = `pole ${pole.number}`;
  const on = (name: string, kind: string, at: Vec3, more: Partial<PartSpec> = {}): Part =>
    partForm({ id: `${pole.id}.${name}`, kind, owner: { pole: pole.id }, where, at, ...more });
  const neutralZ = h - neutralBelow;
  const common = [
    on('pole', 'pole', [x, y, 0], {
      values: { heightM: h, topRadiusM: size.topRadiusM, buttRadiusM: size.buttRadiusM },
      words: { class: pole.class, number: pole.number },
    }),
    on('neutral-spool', 'neutral-spool', [x, y + 0.16, neutralZ]),
    on('ground-bond', 'ground-bond', [x + 0.08, y + 0.12, neutralZ], { azimuth: Math.PI }),
    on('ground-lead', 'ground-lead', [x + 0.1, y + 0.1, 0]),
    on('ground-rod', 'ground-rod', [x + 0.5, y + 0.3, 0]),
    on('tag', 'tag', [x, y - 0.15, 1.6]),
  ];
  const dead = deadEnd(pole);
  if (pole.framing === 'deadend') {
    const [top, foot] = guyOf(pole, out);
    return [
      ...common,
      on('deadend', dead.kind, [x, y, h - 0.15], { words: dead.words }),
      on('guy', 'guy', top, { end: foot }),
    ];
  }
  const carrier = carrierOf(pole);
  const through = [
    ...common,
    on('insulator', carrier.kind, [x, y, h], {
      words: carrier.words,
      ...(pole.framing === 'tap' ? { nets: { conductor: 'main' } } : {}),
    }),
    on('tie', 'tie', [x, y, h + 0.3], {
      words: tieWords(pole),
      ...(pole.framing === 'tap' ? { azimuth: quarter } : {}),
    }),
  ];
  return pole.framing === 'tangent'
    ? through
    : [
        ...through,
        on('deadend', dead.kind, [x, y, h - 0.15], {
          azimuth: Math.PI,
          nets: { conductor: 'tap' },
          words: dead.words,
        }),
      ];
};

/** Leads that equipment brings along, as its kind says, unless the scenario lists one itself. */
const leadsOf = (pole: ScenarioPole, item: ScenarioEquipment, at: Vec3, listed: ReadonlySet<string>): readonly Part[] =>
  (componentKind(item.kind).brings ?? [])
    .filter(({ framings }) => framings === undefined || framings.includes(pole.framing))
    .filter(({ name }) => !listed.has(`${pole.id}.${name}`))
    .map(({ name, kind, toward, aside, belowM, faces }) =>
      partForm({
        id: `${pole.id}.${name}`,
        kind,
        owner: { pole: pole.id },
        where: `pole ${pole.number}`,
        at: [
          at[0] * toward + pole.x * (1 - toward) + aside[0],
          at[1] * toward + pole.y * (1 - toward) + aside[1],
          heightOf(pole) - belowM,
        ],
        azimuth: faces ? azimuthOf(item.side ?? 'road') : 0,
      }),
    );

/** A piece of equipment and its leads. Links and apparent power are read from its words and values. */
export const equipmentParts = (
  pole: ScenarioPole,
  item: ScenarioEquipment,
  listed: ReadonlySet<string> = new Set(),
  out?: Vec3,
): readonly Part[] => {
  const at = mountingOf(pole, item, out);
  return [
    partForm({
      id: item.id,
      kind: item.kind,
      owner: { pole: pole.id },
      where: `pole ${pole.number}`,
      at,
      azimuth: azimuthOf(item.side ?? 'road'),
      nets: item.nets,
      state: item.state,
      values: item.values,
      words: item.words,
    }),
    ...leadsOf(pole, item, at, listed),
  ];
};
