/** A World that holds, beside the fog scene's, one part of any kind, with any fault laid on it. */
import { componentKind } from '../../src/engine/catalogue/components.ts';
import { faultKind } from '../../src/engine/catalogue/faults.ts';
import type { Side } from '../../src/engine/catalogue/types.ts';
import type { Vec3 } from '../../src/engine/math/vec3.ts';
import type { ScenarioEquipment, ScenarioPole } from '../../src/engine/scenario/types.ts';
import { leaningAgain } from '../../src/engine/world/lean.ts';
import { partForm } from '../../src/engine/world/partForm.ts';
import { equipmentParts, guyOf } from '../../src/engine/world/poleParts.ts';
import type { LaidFault, Part, World } from '../../src/engine/world/types.ts';
import { fogScenario, fogWorld } from './fogWorld.ts';

const bare: World = (() => {
  const world = fogWorld();
  return { ...world, parts: world.parts.map((part): Part => ({ ...part, faults: [] })) };
})();

/** The fog scene without its faults. */
export const soundWorld = (): World => bare;

/** Poles and premises of that scene as it is written. */
const written = fogScenario();
const poleOf = (id: string) => written.poles.find((pole) => pole.id === id) as ScenarioPole;

/** Where a part of this kind would hang on the second pole, on its load side. */
const hung = (kind: string): Part => {
  const item = { id: 'p2.extra', kind, pole: 'p2', side: 'load' } as unknown as ScenarioEquipment;
  const [part] = equipmentParts(poleOf('p2'), item, new Set(), [1, 0, 0]);
  return part as Part;
};

/** One that takes the place of another: of a pole's framing, at a customer's, between two poles. */
const inPlaceOf = (kind: string, id: string, more: Partial<Part> = {}): Part => {
  const there = bare.parts.find((part) => part.id === id) as Part;
  const owner = there.pole === null ? { premises: there.premises as string } : { pole: there.pole };
  const { at, azimuth } = there;
  return { ...partForm({ id, kind, owner, where: 'there', at, azimuth }), ...more };
};

/** Of what the framing, a span or a customer brings: whose place it takes. */
const places: Readonly<Record<string, string>> = {
  'post-insulator': 'p2.insulator',
  'suspension-insulator': 'p3.deadend',
  'interlocked-main': 'a.main',
  'neutral-transfer-switch': 'b.transfer-switch',
  'photovoltaic-plant': 'b.transfer-switch',
  'battery-plant': 'b.transfer-switch',
};

const spanLike = ['-span', '-neutral', 'cable', '-drop'];
/** Heights at which spans other than the phase hang, metres below the roof. */
const below: Readonly<Record<string, number>> = { 'telecom-cable': 4, 'secondary-span': 2.5 };

/** The part of the kind in that World: one that is there, or one put in its place. */
export const partOfKind = (kind: string): Part => {
  const there = bare.parts.find((part) => part.kind === kind);
  if (there) return there;
  const taken = places[kind];
  if (taken !== undefined) return inPlaceOf(kind, taken);
  if (kind === 'crossarm') {
    const [x, y, h] = (bare.parts.find(({ id }) => id === 'p2.insulator') as Part).at;
    return partForm({ id: 'p2.extra', kind, owner: { pole: 'p2' }, where: 'pole 2', at: [x, y, h - 0.45] });
  }
  if (!spanLike.some((tail) => kind.endsWith(tail))) return hung(kind);
  const span = bare.parts.find(({ id }) => id === 's2.phase') as Part;
  const lower = ([x, y, z]: Vec3): Vec3 => [x, y, z - (below[kind] ?? 0)];
  const made = partForm({ id: 's9.extra', kind, owner: null, where: 'span', at: lower(span.at), azimuth: 0 });
  return { ...made, end: lower(span.end as Vec3), nets: { ...made.nets, a: 'n9.a', b: 'n9.b' } };
};

/** A fault of a kind as laid on a part, on a side; on none in particular it lies as a scenario lays it that names none. */
export const laid = (kind: string, side: Side = 'road'): LaidFault => ({
  id: 'laid',
  kind,
  side: side === 'any' ? (faultKind(kind).side ?? 'any') : side,
  to: null,
  values: Object.fromEntries(Object.entries(faultKind(kind).values).map(([name, value]) => [name, value.default])),
});

/** The part as it is without a fault of this kind: what the fault sets is as the kind has it at first. */
export const soundOf = (part: Part, kind: string): Part => {
  const { states } = componentKind(part.kind);
  const sets = Object.keys(faultKind(kind).sets ?? {});
  const first = Object.fromEntries(sets.map((name) => [name, states[name]?.[0] ?? part.state[name] ?? '']));
  return { ...part, state: { ...part.state, ...first }, faults: [] };
};

/** The World with this part in it. */
export const worldWith = (part: Part): World => {
  const guy = bare.parts.some((p) => p.pole === 'p2' && p.kind === 'guy');
  const [top, foot] = guyOf(poleOf('p2'));
  const strand = partForm({
    id: 'p2.guy',
    kind: 'guy',
    owner: { pole: 'p2' },
    where: 'pole 2',
    at: top,
    end: foot,
  });
  const others = bare.parts.filter(({ id }) => id !== part.id);
  const parts = [...others, ...(guy || part.id === strand.id ? [] : [strand]), part];
  return { ...bare, parts: leaningAgain(parts, part).toSorted((p, q) => (p.id < q.id ? -1 : 1)) };
};
