/**
 * Seeded networks of mixed magnitudes to solve in two programs: a tree of milliohms to kilohms with chords, one to three
 * sources in groups, a centre-tapped transformer for about every eight nodes, leakages and picofarads. No trade in them.
 */
import { complex } from '../math/complex.ts';
import { pow } from '../math/elementary.ts';
import { nextInteger, nextUniform, type RandomState, seedFrom } from '../math/random.ts';
import { EARTH, type NetworkElement } from '../network/types.ts';

const omega = 2 * Math.PI * 60;

/** Draws from the seeded generator in turn. */
export class Dice {
  private state: RandomState;

  constructor(seed: string | number) {
    this.state = seedFrom(seed);
  }

  uniform(): number {
    const [value, state] = nextUniform(this.state);
    this.state = state;
    return value;
  }

  whole(low: number, high: number): number {
    const [value, state] = nextInteger(this.state, low, high);
    this.state = state;
    return value;
  }

  /** From 10^low to 10^high, even on the logarithm. */
  decades(low: number, high: number): number {
    return pow(10, low + (high - low) * this.uniform());
  }

  pick<T>(list: readonly T[]): T {
    return list[this.whole(0, list.length - 1)] as T;
  }
}

const branch = (dice: Dice, id: string, from: string, to: string): NetworkElement => {
  const size = dice.uniform() < 0.7 ? dice.decades(-2, 2) : dice.decades(2, 4);
  const shape = dice.uniform();
  const ratio = shape < 0.3 ? 0 : shape < 0.9 ? 3 * dice.uniform() : -dice.uniform();
  return { kind: 'impedance', id, from, to, z: complex(size, size * ratio) };
};

const shunt = (id: string, from: string, to: string, re: number, im: number): NetworkElement => ({
  kind: 'admittance',
  id,
  from,
  to,
  y: complex(re, im),
});

const centreTapped = (id: string, high: string, back: string, x1: string, n: string, x3: string): NetworkElement => ({
  kind: 'transformer',
  id,
  windings: [
    { from: high, to: back, turns: 7200, z: complex(16.6, 25) },
    { from: x1, to: n, turns: 120, z: complex(0.0092, 0.0035) },
    { from: n, to: x3, turns: 120, z: complex(0.0092, 0.0035) },
  ],
  magnetising: complex(2.5e-6, -9e-6),
});

class Builder {
  readonly elements: NetworkElement[] = [];
  readonly nodes: string[] = ['n0'];
  private serial = 0;
  private readonly dice: Dice;

  constructor(dice: Dice) {
    this.dice = dice;
    this.source('n0', 7200, 'system', 0.4, 2.4);
  }

  private next(letter: string): string {
    this.serial++;
    return `${letter}${this.serial}`;
  }

  private anywhere(): string {
    return this.dice.pick([...this.nodes, EARTH]);
  }

  source(at: string, volts: number, group: string, re: number, im: number): void {
    const id = this.next('s');
    this.elements.push({ kind: 'source', id, from: at, to: EARTH, emf: complex(volts), z: complex(re, im), group });
  }

  transformer(): void {
    const [n, x1, x3] = [0, 1, 2].map((k) => `n${this.nodes.length + k}`) as [string, string, string];
    const back = this.nodes.length < 2 || this.dice.uniform() < 0.7 ? EARTH : this.anywhere();
    const high = this.dice.pick(this.nodes.filter((node) => node !== back));
    this.elements.push(centreTapped(this.next('t'), high, back, x1, n, x3));
    this.elements.push({ kind: 'impedance', id: this.next('z'), from: x1, to: x3, z: complex(11.5, 2) });
    this.elements.push({
      kind: 'impedance',
      id: this.next('z'),
      from: n,
      to: EARTH,
      z: complex(this.dice.decades(-2, 2)),
    });
    this.nodes.push(n, x1, x3);
  }

  twig(): void {
    const node = `n${this.nodes.length}`;
    this.elements.push(branch(this.dice, this.next('z'), node, this.anywhere()));
    this.nodes.push(node);
  }

  chords(count: number): void {
    for (let k = 0; k < count; k++) {
      const from = this.dice.pick(this.nodes);
      const to = this.dice.pick([...this.nodes, EARTH].filter((node) => node !== from));
      this.elements.push(branch(this.dice, this.next('z'), from, to));
      this.elements.push(
        shunt(this.next('c'), this.dice.pick(this.nodes), EARTH, 0, omega * this.dice.decades(-12, -8)),
      );
      this.elements.push(shunt(this.next('g'), this.dice.pick(this.nodes), EARTH, this.dice.decades(-9, -4), 0));
    }
  }
}

/** Network of a seed, 5 to 60 nodes, at least one transformer. */
export const randomNetwork = (seed: number): readonly NetworkElement[] => {
  const dice = new Dice(`network ${seed}`);
  const builder = new Builder(dice);
  const wanted = dice.whole(5, 60);
  builder.transformer();
  while (builder.nodes.length < wanted) {
    if (dice.uniform() < 0.06 && builder.nodes.length + 3 <= wanted) builder.transformer();
    else builder.twig();
  }
  builder.chords(Math.ceil(wanted / 4));
  for (const group of ['generator', 'inverter'].slice(0, dice.whole(0, 2))) {
    builder.source(dice.pick(builder.nodes), 120 + 120 * dice.uniform(), group, dice.decades(-1, 1), 0.6);
  }
  return builder.elements;
};
