/** Short forms for writing networks in tests, and seeded random networks of mixed magnitudes. */
import { type Complex, complex } from '../../../src/engine/math/complex.ts';
import { solveNetwork } from '../../../src/engine/network/solveNetwork.ts';
import type { NetworkElement, NetworkSolution, Winding } from '../../../src/engine/network/types.ts';
import { Dice as Throws } from '../../../src/engine/qualification/randomNetwork.ts';

export const OMEGA = 2 * Math.PI * 60;

export const impedance = (id: string, from: string, to: string, re: number, im = 0): NetworkElement => ({
  kind: 'impedance',
  id,
  from,
  to,
  z: complex(re, im),
});

export const admittance = (id: string, from: string, to: string, re: number, im = 0): NetworkElement => ({
  kind: 'admittance',
  id,
  from,
  to,
  y: complex(re, im),
});

export const source = (
  id: string,
  from: string,
  to: string,
  emf: Complex,
  z = complex(0),
  group = 'system',
): NetworkElement => ({ kind: 'source', id, from, to, emf, z, group });

export const winding = (from: string, to: string, turns: number, re = 0, im = 0): Winding => ({
  from,
  to,
  turns,
  z: complex(re, im),
});

export const transformer = (id: string, windings: readonly Winding[], magnetising?: Complex): NetworkElement =>
  magnetising === undefined
    ? { kind: 'transformer', id, windings }
    : { kind: 'transformer', id, windings, magnetising };

export function solved(elements: readonly NetworkElement[]): NetworkSolution {
  const solution = solveNetwork(elements);
  if (!solution.ok) throw new Error(`not solved: ${JSON.stringify(solution)}`);
  return solution;
}

class Dice extends Throws {
  shuffle<T>(list: readonly T[]): T[] {
    const shuffled = list.slice();
    for (let i = shuffled.length - 1; i > 0; i--) {
      const j = this.whole(0, i);
      [shuffled[i], shuffled[j]] = [shuffled[j] as T, shuffled[i] as T];
    }
    return shuffled;
  }
}

export const shuffled = <T>(list: readonly T[], seed: number): T[] => new Dice(seed).shuffle(list);

function randomImpedance(dice: Dice, id: string, from: string, to: string): NetworkElement {
  const size = dice.uniform() < 0.7 ? dice.decades(-3, 2) : dice.decades(2, 6);
  const shape = dice.uniform();
  if (shape < 0.3) return impedance(id, from, to, size);
  if (shape < 0.85) return impedance(id, from, to, size, size * 3 * dice.uniform());
  return shape < 0.95 ? impedance(id, from, to, size, -size * dice.uniform()) : impedance(id, from, to, 0, size);
}

/**
 * 5 to 40 nodes: a tree of milliohms to megohms with chords, one to three sources in groups, a centre-tapped
 * transformer for about every ten nodes, leakages and picofarads, and islands that hang on capacitance alone.
 */
export function randomNetwork(seed: number): NetworkElement[] {
  const dice = new Dice(seed);
  const elements: NetworkElement[] = [];
  const nodes: string[] = ['n0'];
  let serial = 0;
  const next = (letter: string): string => `${letter}${serial++}`;
  const sources = dice.whole(1, 3);
  elements.push(source('s0', 'n0', 'earth', complex(7200), complex(0.4, 2.4), 'system'));
  const wanted = dice.whole(5, 40);
  while (nodes.length < wanted) {
    const node = `n${nodes.length}`;
    const roll = dice.uniform();
    if (roll < 0.1 && wanted - nodes.length >= 3) {
      const [x1, x3] = [`n${nodes.length + 1}`, `n${nodes.length + 2}`];
      const ends = [winding(dice.pick(nodes), dice.pick(['earth', ...nodes]), 7200, 16.6, 25)];
      ends.push(winding(x1, node, 120, 0.0092, 0.0035), winding(node, x3, 120, 0.0092, 0.0035));
      elements.push(transformer(next('t'), ends, complex(2.5e-6, -9e-6)), impedance(next('z'), x1, x3, 11.5, 2));
      elements.push(impedance(next('z'), node, dice.pick(['earth', ...nodes]), dice.decades(-3, 2)));
      nodes.push(node, x1, x3);
    } else if (roll < 0.2) {
      elements.push(admittance(next('c'), node, 'earth', 0, OMEGA * dice.decades(-11, -8)));
      nodes.push(node);
    } else {
      elements.push(randomImpedance(dice, next('z'), node, dice.pick(['earth', ...nodes])));
      nodes.push(node);
    }
  }
  for (let k = 0; k < wanted / 3; k++) {
    const [from, to] = dice.shuffle([...nodes, 'earth']) as [string, string];
    elements.push(randomImpedance(dice, next('z'), from, to));
    elements.push(
      admittance(next('c'), dice.pick(nodes), dice.pick(['earth', ...nodes]), 0, OMEGA * dice.decades(-12, -9)),
    );
    elements.push(admittance(next('g'), dice.pick(nodes), 'earth', dice.decades(-9, -4), 0));
  }
  for (let k = 1; k < sources; k++) {
    const emf = complex(120 * dice.uniform(), 120 * dice.uniform());
    elements.push(
      source(
        `s${k}`,
        dice.pick(nodes),
        'earth',
        emf,
        complex(dice.decades(-2, 1), 0.6),
        dice.pick(['generator', 'inverter']),
      ),
    );
  }
  return elements;
}
