/** Coupled conductors, capacitance and the neutral ladder against closed forms. */
import { describe, expect, test } from 'vitest';
import { componentKind } from '../../../../src/engine/catalogue/components.ts';
import { conductorNamed } from '../../../../src/engine/catalogue/conductorNames.ts';
import { elementsOf } from '../../../../src/engine/circuit/elementsOf.ts';
import { solveCircuit } from '../../../../src/engine/circuit/solveCircuit.ts';
import { abs, add, type Complex, complex, scale, sub } from '../../../../src/engine/math/complex.ts';
import { solveNetwork } from '../../../../src/engine/network/solveNetwork.ts';
import { inducedTouch, inducedVolts } from '../../../../src/engine/standards/inducedVoltage.ts';
import { wireCapacitances } from '../../../../src/engine/standards/lineCapacitance.ts';
import { kronReduce, mutualImpedance, selfImpedance } from '../../../../src/engine/standards/lineImpedance.ts';
import { endlessLadder, ladderOf } from '../../../../src/engine/standards/neutralLadder.ts';
import type { Part, World } from '../../../../src/engine/world/types.ts';
import { piece, tinyWorld } from '../scene.ts';
import { model, only } from './scenes.ts';

const LENGTH = 1000;
const earth = { resistivity: 100, frequency: 60 };
const swan = conductorNamed('Swan');
const self = scale(selfImpedance(swan.ohmsPerMetre, swan.gmr, earth), LENGTH);
const mutual = scale(mutualImpedance(1.2, earth), LENGTH);
const close = (a: Complex, b: Complex, part = 1e-6): void => expect(abs(sub(a, b)) / abs(b)).toBeLessThan(part);

/** Coupled wires of one kilometre, far ends on `far`, near ends on nets n1, n2 … */
function wires(count: number, far: (i: number) => string): readonly Part[] {
  const own = sub(self, mutual);
  const places = Array.from({ length: count }, (_, i) => i + 1);
  const spans = places.map((i) =>
    piece(`w${i}`, 'coupled-span', {
      nets: { a: `n${i}`, b: far(i), m: `m${i}` },
      values: { lengthM: LENGTH, sagM: 1, ohmsPerM: own.re / LENGTH, reactancePerM: own.im / LENGTH, faradsPerM: 0 },
    }),
  );
  const kind = componentKind(`line-coupling-${count}`);
  const fields = Object.fromEntries(
    Object.keys(kind.values)
      .filter((name) => name.startsWith('farads'))
      .map((name) => [name, 0]),
  );
  const nets = Object.fromEntries(
    places.flatMap((i) => [
      [`a${i}`, `n${i}`],
      [`m${i}`, `m${i}`],
      [`b${i}`, far(i)],
    ]),
  );
  const values = { lengthM: LENGTH, mutualOhms: mutual.re / LENGTH, mutualReactance: mutual.im / LENGTH, ...fields };
  return [...spans, piece('c', kind.id, { nets, values })];
}

/** Volts at a net for each ampere that comes in there and goes out at another. */
function seen(world: World, a: string, b: string): Complex {
  const solution = solveNetwork(elementsOf(world));
  if (!solution.ok) throw new Error(solution.reason);
  return solution.theveninBetween(a, b).zth;
}

describe('wires that share a mutual impedance', () => {
  test('have, there and back through another, twice the self less twice the mutual one', () => {
    close(seen(tinyWorld(wires(2, () => 'far')), 'n1', 'n2'), scale(sub(self, mutual), 2));
  });

  test('have, three in parallel with earth return, (Zs + 2 Zm)/3: the zero sequence', () => {
    const joined = [
      ...wires(3, () => 'earth'),
      ...[2, 3].map((i) => piece(`j${i}`, 'upper-lead', { nets: { tank: 'n1', upper: `n${i}` } })),
    ];
    const third = scale(add(self, scale(mutual, 2)), 1 / 3);
    close(seen(tinyWorld(joined), 'n1', 'earth'), third, 5e-3);
  });

  test('have, one beside a neutral grounded at both ends, the Kron-reduced impedance', () => {
    const parts = wires(2, () => 'earth').map((part) =>
      part.id === 'w2' ? { ...part, nets: { ...part.nets, a: 'earth' } } : part,
    );
    const coupling = parts.map((part) => (part.id === 'c' ? { ...part, nets: { ...part.nets, a2: 'earth' } } : part));
    close(seen(tinyWorld(coupling), 'n1', 'earth'), kronReduce(self, mutual, self));
  });
});

describe('capacitance', () => {
  const live = { offset: 0, height: 10, radius: 0.004 };
  const idle = { offset: 0.8, height: 9.4, radius: 0.004 };

  test('of one wire alone is the single-wire formula', () => {
    const { toEarth } = wireCapacitances([live]);
    expect(toEarth[0]).toBeCloseTo((2 * Math.PI * 8.8541878128e-12) / Math.log(20 / 0.004), 17);
  });

  test('between wires is symmetric and positive, and less to earth than alone', () => {
    const { toEarth, between } = wireCapacitances([live, idle, { offset: -0.8, height: 9.4, radius: 0.004 }]);
    for (const [i, row] of between.entries())
      for (const [j, c] of row.entries()) expect(c).toBeCloseTo(between[j]?.[i] ?? 0, 20);
    expect(between[0]?.[1]).toBeGreaterThan(0);
    expect(toEarth[0]).toBeLessThan(wireCapacitances([live]).toEarth[0] ?? 0);
    expect(() => wireCapacitances([live, live])).toThrow(RangeError);
  });

  test('puts the volts on an isolated wire that the potential coefficients foretell, and the touch current', () => {
    const { toEarth, between } = wireCapacitances([live, idle]);
    const [nets, lengthM] = [{ a1: 'line', m1: 'line-m', b1: 'line', a2: 'idle', m2: 'idle-m', b2: 'idle' }, 500];
    const span = (id: string, net: string, i: number): Part =>
      piece(id, 'coupled-span', {
        nets: { a: net, b: net, m: `${net}-m` },
        values: { lengthM, sagM: 1, faradsPerM: toEarth[i] ?? 0 },
      });
    const source = piece('s', 'system-source', {
      nets: { line: 'line', neutral: 'earth' },
      values: { ohms: 1e-3, reactance: 1e-3 },
    });
    const coupling = piece('c', 'line-coupling-2', { nets, values: { lengthM, farads12: between[0]?.[1] ?? 0 } });
    const solution = solveCircuit(tinyWorld([source, span('l', 'line', 0), span('i', 'idle', 1), coupling]));
    const volts = inducedVolts(live, 7200, idle);
    const touch = inducedTouch(live, 7200, idle, lengthM, 1000);
    expect(Math.abs(solution.point('i/a').volts / volts - 1)).toBeLessThan(2e-3);
    expect(Math.abs(solution.bodyCurrent('i/a', 'earth', 1000) / touch - 1)).toBeLessThan(5e-3);
  });

  test('is what an idle conductor beside three live ones shows in a scene: alive by volts, hardly by current', () => {
    const idle = solveCircuit(only(model('wye-bank'))).point('s3.phase/a');
    expect(idle.volts).toBeGreaterThan(300);
    expect(idle.throughKilohm).toBeGreaterThan(1e-5);
    expect(idle.throughKilohm).toBeLessThan(1e-3);
  });
});

describe('the neutral as a ladder of spans and pole grounds', () => {
  /** Worked case E12: sections 0.032 + j0.100 ohm, grounds of 25 ohm. */
  const section = complex(0.032, 0.1);
  const ladder = (sections: number): World =>
    tinyWorld(
      Array.from({ length: sections }, (_, i) => i + 1).flatMap((i) => [
        piece(`n${i}`, 'neutral-span', {
          nets: { a: `k${i - 1}`, b: `k${i}` },
          values: { lengthM: 1, sagM: 1, ohmsPerM: section.re, reactancePerM: section.im, faradsPerM: 0 },
        }),
        piece(`r${i}`, 'ground-rod', { nets: { rod: `k${i}` } }),
      ]),
    );

  test.each([1, 3, 12])('of %d sections is what the recursion gives', (sections) => {
    close(seen(ladder(sections), 'k0', 'earth'), ladderOf(sections, section, 25), 1e-5);
  });

  test('of 120 sections is 1.3243 + j1.0060 ohm, as without end', () => {
    const z = seen(ladder(120), 'k0', 'earth');
    close(z, endlessLadder(section, 25), 1e-3);
    close(z, complex(1.3243, 1.006), 1e-3);
  });
});
