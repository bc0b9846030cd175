import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { abs, add, type Complex, conj, mul, scale, sub, ZERO } from '../../../src/engine/math/complex.ts';
import type { NetworkElement, Phasors } from '../../../src/engine/network/types.ts';
import { randomNetwork, shuffled, solved } from './elements.ts';

fc.configureGlobal({ seed: 20 });

const seed = fc.integer({ min: 1000, max: 1_000_000 });
const runs = { numRuns: 60 };

interface Branch {
  readonly from: string;
  readonly to: string;
  readonly current: Complex;
  /** Magnitude of the terms that make the current: an admittance between nearly equal volts is a small difference. */
  readonly size: number;
}

const branches = (elements: readonly NetworkElement[], view: Phasors): Branch[] =>
  elements.flatMap((element): Branch[] => {
    if (element.kind === 'transformer') {
      return element.windings.map(({ from, to }, w) => {
        const current = view.current(element.id, w);
        return { from, to, current, size: abs(current) };
      });
    }
    const { from, to } = element;
    const current = view.current(element.id);
    const volts = abs(view.voltage(from)) + abs(view.voltage(to));
    return [{ from, to, current, size: element.kind === 'admittance' ? abs(element.y) * volts : abs(current) }];
  });

const power = (volts: Complex, amperes: Complex): Complex => mul(volts, conj(amperes));

describe('any network', () => {
  test('currents sum to zero at each node', () => {
    fc.assert(
      fc.property(seed, (n) => {
        const elements = randomNetwork(n);
        const sums = new Map<string, { sum: Complex; size: number }>();
        const count = (node: string, current: Complex, size: number): void => {
          const before = sums.get(node) ?? { sum: ZERO, size: 0 };
          sums.set(node, { sum: add(before.sum, current), size: before.size + size });
        };
        for (const { from, to, current, size } of branches(elements, solved(elements))) {
          count(from, current, size);
          count(to, scale(current, -1), size);
        }
        sums.delete('earth');
        const largest = Math.max(...[...sums.values()].map(({ size }) => size));
        for (const [node, { sum, size }] of sums) {
          expect(abs(sum), node).toBeLessThanOrEqual(1e-9 * size + 1e-24 * largest);
        }
      }),
      runs,
    );
  });

  test('what the sources deliver is what the rest takes (Tellegen)', () => {
    fc.assert(
      fc.property(seed, (n) => {
        const elements = randomNetwork(n);
        const s = solved(elements);
        let sum = ZERO;
        let size = 0;
        for (const { from, to, current } of branches(elements, s)) {
          const part = power(s.voltageBetween(from, to), current);
          sum = add(sum, part);
          size += abs(part);
        }
        expect(abs(sum)).toBeLessThanOrEqual(1e-9 * size);
      }),
      runs,
    );
  });

  test('an ideal core neither makes nor takes power', () => {
    fc.assert(
      fc.property(seed, (n) => {
        const elements = randomNetwork(n);
        const s = solved(elements);
        for (const element of elements) {
          if (element.kind !== 'transformer') continue;
          let sum = ZERO;
          let size = 0;
          for (const [w, { from, to, z }] of element.windings.entries()) {
            const current = s.current(element.id, w);
            const across = s.voltageBetween(from, to);
            const induced = sub(across, mul(z, current));
            sum = add(sum, power(induced, current));
            if (w === 0 && element.magnetising) sum = sub(sum, power(induced, mul(element.magnetising, induced)));
            size += abs(across) * abs(current);
          }
          expect(abs(sum), element.id).toBeLessThanOrEqual(1e-7 * size + 1e-12);
        }
      }),
      runs,
    );
  });

  test('groups superpose: turning each by its angle is solving with turned sources', () => {
    fc.assert(
      fc.property(seed, fc.double({ min: -3, max: 3, noNaN: true }), (n, angle) => {
        const elements = randomNetwork(n);
        const direction = { re: Math.cos(angle), im: Math.sin(angle) };
        const turned = elements.map((e) =>
          e.kind === 'source' && e.group === 'system' ? { ...e, emf: mul(e.emf, direction) } : e,
        );
        const a = solved(elements).at({ system: angle });
        const b = solved(turned);
        for (const { from, to } of branches(elements, b)) {
          for (const node of [from, to]) {
            expect(abs(sub(a.voltage(node), b.voltage(node)))).toBeLessThanOrEqual(1e-9 * b.worst(node) + 1e-9);
          }
        }
      }),
      runs,
    );
  });

  test('a group gives the same bits whatever the others give beside it', () => {
    let compared = 0;
    fc.assert(
      fc.property(seed, (n) => {
        const elements = randomNetwork(n);
        const all = solved(elements);
        for (const group of all.groups) {
          const alone = solved(
            elements.map((e) => (e.kind === 'source' && e.group !== group ? { ...e, emf: ZERO } : e)),
          ).contribution(group);
          const beside = all.contribution(group);
          for (const { from, to } of branches(elements, beside)) {
            expect(beside.voltageBetween(from, to)).toEqual(alone.voltageBetween(from, to));
          }
          if (all.groups.length > 1) compared++;
        }
      }),
      runs,
    );
    expect(compared).toBeGreaterThan(20);
  });

  test('is reciprocal: volts at b for an ampere at a are volts at a for an ampere at b', () => {
    fc.assert(
      fc.property(seed, (n) => {
        const elements = randomNetwork(n);
        const passive = elements.map((e) => (e.kind === 'source' ? { ...e, emf: ZERO } : e));
        const inject = (node: string): NetworkElement => ({
          kind: 'source',
          id: 'probe',
          from: node,
          to: 'earth',
          emf: { re: 1e9, im: 0 },
          z: { re: 1e9, im: 0 },
          group: 'probe',
        });
        const [a, b] = ['n1', 'n4'];
        const forward = solved([...passive, inject(a)]);
        const backward = solved([...passive, inject(b)]);
        const there = mul(forward.voltage(b), backward.current('probe'));
        const back = mul(backward.voltage(a), forward.current('probe'));
        expect(abs(sub(there, back))).toBeLessThanOrEqual(1e-6 * Math.max(abs(there), 1e-9));
      }),
      runs,
    );
  });

  test('comes out bit for bit the same in any order of its elements', () => {
    fc.assert(
      fc.property(seed, fc.integer(), (n, order) => {
        const elements = randomNetwork(n);
        const a = solved(elements);
        const b = solved(shuffled(elements, order));
        for (const { from, to } of branches(elements, a)) {
          expect(b.voltage(from)).toEqual(a.voltage(from));
          expect(b.voltage(to)).toEqual(a.voltage(to));
        }
        expect(branches(elements, b)).toEqual(branches(elements, a));
      }),
      runs,
    );
  });

  test('names the island that an added loose branch makes', () => {
    fc.assert(
      fc.property(seed, (n) => {
        const loose: NetworkElement = { kind: 'impedance', id: 'loose', from: 'p', to: 'q', z: { re: 1, im: 0 } };
        expect(() => solved([...randomNetwork(n), loose])).toThrow('"island":["p","q"]');
      }),
      runs,
    );
  });

  test('is singular, never zero, with a core added that nothing magnetises', () => {
    fc.assert(
      fc.property(seed, fc.double({ min: 0.5, max: 300, noNaN: true }), (n, turns) => {
        const dead: NetworkElement = {
          kind: 'transformer',
          id: 'dead',
          windings: [
            { from: 'p', to: 'n1', turns, z: { re: 16.6, im: 25 } },
            { from: 'q', to: 'n2', turns: 1, z: { re: 0.0092, im: 0.0035 } },
          ],
        };
        expect(() => solved([...randomNetwork(n), dead])).toThrow('singular');
      }),
      runs,
    );
  });
});
