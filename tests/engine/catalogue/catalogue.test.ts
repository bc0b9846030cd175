/** Every entry of the catalogue against every other: what it names exists, and what it says gives nothing away. */
import { describe, expect, it } from 'vitest';
import { componentKind, componentKinds } from '../../../src/engine/catalogue/components.ts';
import {
  conditions,
  isCondition,
  personConditions,
  siteConditions,
  toolConditions,
} from '../../../src/engine/catalogue/conditions.ts';
import { briefingTopics, controlKinds, isControlKind } from '../../../src/engine/catalogue/controls.ts';
import { faultKinds } from '../../../src/engine/catalogue/faults.ts';
import { repairKinds } from '../../../src/engine/catalogue/repairs.ts';
import { toolKind, toolKinds } from '../../../src/engine/catalogue/tools.ts';
import { type ComponentKind, hierarchy, type PartView } from '../../../src/engine/catalogue/types.ts';
import { preconditions } from '../../../src/engine/hazards/preconditions.ts';
import { otherRoles } from '../../../src/engine/scenario/types.ts';
import { statesOf, viewOf } from './views.ts';

const twice = (ids: readonly string[]): readonly string[] => ids.filter((id, i) => ids.indexOf(id) !== i);
const without = (names: readonly string[], known: readonly string[]): readonly string[] =>
  names.filter((name) => !known.includes(name));

/** Every view of a kind: its default values in each combination of positions. */
const views = (kind: ComponentKind): readonly PartView[] => statesOf(kind).map((state) => viewOf(kind, state));

describe.each([
  ['component', componentKinds],
  ['fault', faultKinds],
  ['condition', conditions],
  ['tool', toolKinds],
  ['control', controlKinds],
  ['repair', repairKinds],
])('%s kinds', (_, kinds) => {
  it('have ids of their own, in kebab case', () => {
    const ids = kinds.map(({ id }) => id);
    expect(twice(ids)).toEqual([]);
    expect(ids.filter((id) => !/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/.test(id))).toEqual([]);
  });
});

it('every kind names its source, every control its rule', () => {
  const sources = [
    ...componentKinds,
    ...faultKinds,
    ...toolKinds,
    ...repairKinds,
    ...faultKinds.flatMap((f) => f.signs),
  ];
  expect(sources.filter(({ source }) => source.trim().length < 8)).toEqual([]);
  expect(controlKinds.filter(({ rule }) => rule.trim().length < 8)).toEqual([]);
});

describe.each(componentKinds.map((kind) => [kind.id, kind] as const))('component %s', (_, kind) => {
  it('puts nets and points on its own terminals only', () => {
    expect(twice(kind.terminals)).toEqual([]);
    expect(without(Object.keys(kind.nets), kind.terminals)).toEqual([]);
    expect(without(Object.keys(kind.points), kind.terminals)).toEqual([]);
    expect(without(kind.endPoints, Object.keys(kind.points))).toEqual([]);
  });

  it('draws its circuit between its own terminals, no joint without impedance, each branch with a name of its own', () => {
    for (const view of views(kind)) {
      const branches = kind.branches(view);
      expect(twice(branches.map(({ name }) => name))).toEqual([]);
      for (const branch of branches) {
        const ends = branch.type === 'transformer' ? branch.windings.flatMap(({ between }) => between) : branch.between;
        expect(without(ends, [...kind.terminals, 'earth'])).toEqual([]);
        if (branch.type === 'series') expect(Math.abs(branch.z.re) + Math.abs(branch.z.im)).toBeGreaterThan(0);
        const opens = branch.type === 'series' ? (branch.protects?.opens ?? {}) : {};
        for (const [state, position] of Object.entries(opens)) expect(kind.states[state]).toContain(position);
      }
    }
  });

  it('names only states and positions that it has, in words, truths, operations and what others may do', () => {
    const shown = kind.features.flatMap(({ byState = [] }) => byState.flatMap(({ when }) => Object.entries(when)));
    const allowed = (name: string) => kind.states[name] ?? kind.words[name]?.allowed ?? [];
    expect(shown.filter(([name, word]) => !allowed(name).includes(word))).toEqual([]);
    const used = [
      ...kind.trueWhen.map(({ when }) => when),
      ...kind.othersMay.flatMap(({ when, becomes }) => [when, becomes]),
      ...kind.operations.map(({ to }) => to),
    ].flatMap((entry) => Object.entries(entry));
    const froms = kind.operations.flatMap(({ from }) =>
      Object.entries(from).flatMap(([name, list]) => list.map((position) => [name, position] as const)),
    );
    const unknown = [...used, ...froms].filter(([name, position]) => !kind.states[name]?.includes(position));
    expect(unknown).toEqual([]);
  });

  it('operates on its own terminals and always changes something', () => {
    expect(twice(kind.operations.map(({ id }) => id))).toEqual([]);
    for (const { makes = [], breaks = [], touches, from, to, minutes } of kind.operations) {
      expect(without([...makes, ...breaks, ...touches], kind.terminals)).toEqual([]);
      expect(Number.isInteger(minutes) && minutes > 0).toBe(true);
      expect(Object.entries(to).some(([name, position]) => !(from[name]?.includes(position) ?? false))).toBe(true);
    }
  });

  it('offers conditions that exist, something that is wrong and something that is not', () => {
    expect(kind.conditions.filter((id) => !isCondition(id))).toEqual([]);
    expect(
      without(
        kind.trueWhen.map(({ condition }) => condition),
        kind.conditions,
      ),
    ).toEqual([]);
    if (kind.conditions.length > 0) {
      const healthy = kind.conditions.map((id) => conditions.find((each) => each.id === id)?.healthy === true);
      expect(healthy).toContain(true);
      expect(healthy).toContain(false);
    }
  });

  it('has features with ids and subjects of their own and terminals that exist', () => {
    const subjects = kind.features.map(({ healthy }) => healthy.split(':')[0] ?? '');
    expect(twice(kind.features.map(({ id }) => id))).toEqual([]);
    expect(twice(subjects)).toEqual([]);
    for (const { live, size } of kind.features) {
      expect(without(live?.between ?? [], kind.terminals)).toEqual([]);
      expect(size).toBeGreaterThan(0);
    }
  });
});

describe.each(faultKinds.map((kind) => [kind.id, kind] as const))('fault %s', (_, fault) => {
  const isElsewhere = (on: string): boolean => on === 'site' || on.startsWith('person:');
  const components = fault.on.filter((on) => !on.startsWith('tool:') && !isElsewhere(on)).map(componentKind);
  const elsewhere = fault.on.filter(isElsewhere);
  const tools = fault.on.filter((on) => on.startsWith('tool:')).map((on) => toolKind(on.slice(5)));

  it('lies on kinds that exist', () => {
    expect(components.length + tools.length + elsewhere.length).toBeGreaterThan(0);
    for (const role of elsewhere.filter((on) => on !== 'site').map((on) => on.slice('person:'.length)))
      expect(['second', 'dispatcher', 'customer', ...otherRoles]).toContain(role);
  });

  it('is named by conditions that can be called where it lies or, for a source, on what it feeds', () => {
    expect(fault.conditions.filter((id) => !isCondition(id))).toEqual([]);
    for (const { conditions: callable } of components)
      expect(fault.conditions.some((id) => callable.includes(id))).toBe(true);
    if (tools.length > 0) expect(without(fault.conditions, toolConditions)).toEqual([]);
    const anywhere = new Set(componentKinds.flatMap((kind) => kind.conditions));
    const around = [
      ...(elsewhere.includes('site') ? siteConditions : []),
      ...(elsewhere.length > 0 ? personConditions : []),
    ];
    expect(without(fault.conditions, [...anywhere, ...toolConditions, ...around])).toEqual([]);
  });

  it('opens branches and leaks between terminals that are there, with ohms that it declares', () => {
    for (const kind of components) {
      const names = views(kind).flatMap((view) => kind.branches(view).map(({ name }) => name));
      expect(without(fault.opens, names)).toEqual([]);
      for (const { from, to, ohms, credibleOhms } of fault.leaks) {
        const brought = Object.keys(fault.points ?? {});
        expect(without([from, to], [...kind.terminals, ...brought, 'earth'])).toEqual([]);
        expect(without([ohms, credibleOhms], Object.keys(fault.values))).toEqual([]);
      }
      for (const [state, position] of Object.entries(fault.sets ?? {})) expect(kind.states[state]).toContain(position);
    }
  });

  it('brings points at places and on terminals that are there, and takes from conductors and leads what they have', () => {
    const { breaks, hangs, drops, strength } = fault.mechanical ?? {};
    for (const kind of components) {
      for (const { on, along } of Object.values(fault.points ?? {})) {
        if (on !== undefined) expect(kind.terminals).toContain(on);
        expect(Object.keys(fault.values)).toContain(along);
      }
      if (breaks !== undefined) {
        expect(Object.keys(fault.values)).toContain(breaks);
        expect(kind.endPoints.length).toBeGreaterThan(0);
      }
      if (hangs !== undefined) expect(Object.keys(kind.points)).toContain(hangs.from);
    }
    if (drops !== undefined) expect([drops.kilograms > 0, drops.what.length > 3]).toEqual([true, true]);
    if (strength !== undefined) expect(strength > 0 && strength < 1).toBe(true);
  });

  it('shows on features that are there', () => {
    expect(twice(fault.signs.map(({ id }) => id))).toEqual([]);
    for (const { sense, feature, sound, by } of fault.signs) {
      if (sense === 'see')
        for (const { features } of components) expect(features.map(({ id }) => id)).toContain(feature);
      if (sense === 'hear') expect(sound).toBeDefined();
      if (sense === 'test' || sense === 'ask' || sense === 'read') expect(by).toBeDefined();
      if (sense === 'test' || sense === 'read') for (const { checks } of tools) expect(checks).toContain(by);
    }
  });

  it('is either benign or has a sign, a mechanism, a working control, a tempting wrong one and a harm', () => {
    expect(fault.controls.filter((id) => !isControlKind(id))).toEqual([]);
    expect(fault.tellApart.length).toBeGreaterThan(20);
    if (fault.benign) {
      expect([fault.mechanisms, fault.controls, fault.harm]).toEqual([[], [], '']);
      return;
    }
    for (const list of [fault.signs, fault.mechanisms, fault.controls, fault.tempting])
      expect(list.length).toBeGreaterThan(0);
    expect(fault.harm).toMatch(/^[A-Z].{20,}\.$/);
    for (const { what, why } of fault.tempting) expect([what.length > 5, why.length > 5]).toEqual([true, true]);
  });

  it('is mended by a repair step or set right by an operation, unless it is benign, beyond the scene or on a tool', () => {
    if (fault.benign || fault.beyond || tools.length > 0 || elsewhere.length > 0) return;
    const mended = repairKinds.some(({ mends }) => mends.includes(fault.id));
    const undone = components.some(({ operations }) =>
      operations.some(({ from }) =>
        Object.entries(fault.sets ?? {}).some(([name, value]) => from[name]?.includes(value)),
      ),
    );
    expect(mended || undone).toBe(true);
  });
});

it('controls rest on preconditions that are computed, at a level of the hierarchy', () => {
  const known = [...preconditions, 'keep-distance'];
  for (const { preconditions: asked, level } of controlKinds) {
    expect(without(asked, known)).toEqual([]);
    expect(hierarchy).toContain(level);
  }
});

it('repairs are done on kinds that exist, touch their terminals and mend faults that lie there', () => {
  for (const { on, touches, mends, from = {}, sets = {}, minutes } of repairKinds) {
    for (const kind of on.map(componentKind)) {
      const brought = faultKinds
        .filter(({ id }) => mends.includes(id))
        .flatMap(({ points = {} }) => Object.keys(points));
      expect(without(touches, [...kind.terminals, ...brought])).toEqual([]);
      for (const [name, position] of Object.entries(sets)) expect(kind.states[name]).toContain(position);
      for (const [name, positions] of Object.entries(from))
        expect(without(positions, kind.states[name] ?? [])).toEqual([]);
      for (const id of mends) expect(faultKinds.find((fault) => fault.id === id)?.on).toContain(kind.id);
    }
    expect(minutes).toBeGreaterThan(0);
  }
});

it('clamps fit terminals that some part has', () => {
  const terminals = componentKinds.flatMap((kind) => kind.terminals);
  for (const { fits = [], clamps } of toolKinds) {
    expect(without(fits, terminals)).toEqual([]);
    if (fits.length > 0) expect(fits.length).toBe(clamps);
  }
});

it('a briefing has the five topics of 29 CFR 1910.269(c)(2)', () => {
  expect(briefingTopics).toHaveLength(5);
});
