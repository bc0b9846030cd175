/** Every fault of equipment has a bench of its own, and every look-alike says what it is wrongly called. */
import { expect, it } from 'vitest';
import { componentKind } from '../../../src/engine/catalogue/components.ts';
import { condition } from '../../../src/engine/catalogue/conditions.ts';
import { faultKinds } from '../../../src/engine/catalogue/faults.ts';
import { cases, laidOnEquipment } from './bench.ts';

const onEquipment = faultKinds.filter(({ on }) => on.every((each) => !each.includes(':') && each !== 'site'));

it('each fault of equipment that does harm is laid on a bench, once', () => {
  const laid = cases.map(({ kind }) => kind);
  expect(new Set(laid).size).toBe(laid.length);
  expect([...laid].sort()).toEqual(
    faultKinds
      .map(({ id }) => id)
      .filter(laidOnEquipment)
      .sort(),
  );
});

it('there are at least 48 faults of equipment and 28 of its look-alikes', () => {
  expect(onEquipment.filter(({ benign }) => !benign).length).toBeGreaterThanOrEqual(48);
  expect(onEquipment.filter(({ benign }) => benign).length).toBeGreaterThanOrEqual(28);
});

it.each(onEquipment.filter(({ benign }) => benign).map((kind) => [kind.id, kind] as const))(
  'the look-alike %s is named by something healthy and says what is wrongly called for it, where it lies',
  (_, { on, conditions, mistakenFor = [] }) => {
    expect(conditions.some((id) => condition(id).healthy === true)).toBe(true);
    expect(mistakenFor.length).toBeGreaterThan(0);
    expect(mistakenFor.filter((id) => condition(id).healthy === true || conditions.includes(id))).toEqual([]);
    for (const kind of on) {
      const callable = componentKind(kind).conditions;
      expect(mistakenFor.some((id) => callable.includes(id))).toBe(true);
      expect(conditions.some((id) => callable.includes(id))).toBe(true);
    }
  },
);

it.each(onEquipment.filter(({ benign }) => !benign).map((kind) => [kind.id, kind] as const))(
  'where %s lies something wrong can be called beside what names it',
  (_, { on, conditions }) => {
    for (const kind of on) {
      const wrong = componentKind(kind).conditions.filter((id) => !conditions.includes(id));
      expect(wrong.length).toBeGreaterThan(0);
    }
  },
);
