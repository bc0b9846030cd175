/** What an answer leaves of Kirchhoff's laws: volts round each branch, amperes at each node, ampere-turns on each core. */
import { abs, add, arg, type Complex, mul, polar, scale, sub, ZERO } from '../../engine/math/complex.ts';
import type { NetworkElement, TransformerElement } from '../../engine/network/types.ts';
import { currentNames, type OtherAnswer } from '../../engine/qualification/comparePhasors.ts';
import type { NetworkCase } from '../../engine/qualification/networkCases.ts';

/** Sources that make up for what is left: volts in branches, amperes into nodes and into cores. */
export interface Excitation {
  readonly branches: ReadonlyMap<string, Complex>;
  readonly nodes: ReadonlyMap<string, Complex>;
  readonly cores: ReadonlyMap<string, Complex>;
}

/** What is left, and the amperes of admittances, which follow from the volts. */
export interface Leftover {
  readonly excitation: Excitation;
  readonly shunts: ReadonlyMap<string, Complex>;
}

/** A phasor as a deck writes it: magnitude and degrees. */
export const acOf = (value: Complex): string => `${abs(value)} ${(arg(value) * 180) / Math.PI}`;

class Laws {
  readonly branches = new Map<string, Complex>();
  readonly nodes = new Map<string, Complex>();
  readonly cores = new Map<string, Complex>();
  readonly shunts = new Map<string, Complex>();
  private readonly network: NetworkCase;
  private readonly answer: OtherAnswer;

  constructor(network: NetworkCase, answer: OtherAnswer) {
    this.network = network;
    this.answer = answer;
    for (const element of network.elements) this.meet(element);
  }

  private current(name: string): Complex {
    return this.answer.currents.get(name) ?? ZERO;
  }

  private across(from: string, to: string): Complex {
    return sub(this.answer.voltages.get(from) ?? ZERO, this.answer.voltages.get(to) ?? ZERO);
  }

  /** Amperes that leave `from` and come out at `to`. */
  private carry(from: string, to: string, amperes: Complex): void {
    for (const [node, sign] of [
      [from, -1],
      [to, 1],
    ] as const) {
      if (node !== 'earth') this.nodes.set(node, add(this.nodes.get(node) ?? ZERO, scale(amperes, sign)));
    }
  }

  private meet(element: NetworkElement): void {
    if (element.kind === 'transformer') {
      this.meetTransformer(element);
      return;
    }
    const { id, from, to } = element;
    const volts = this.across(from, to);
    if (element.kind === 'admittance') {
      const amperes = mul(element.y, volts);
      this.shunts.set(id, amperes);
      this.carry(from, to, amperes);
      return;
    }
    const amperes = this.current(id);
    const emf = element.kind === 'source' ? mul(element.emf, polar(1, this.network.angles[element.group] ?? 0)) : ZERO;
    this.branches.set(id, sub(add(emf, mul(element.z, amperes)), volts));
    this.carry(from, to, amperes);
  }

  private meetTransformer(element: TransformerElement): void {
    const names = currentNames(element);
    const base = element.windings[0]?.turns ?? 1;
    let induced = ZERO;
    let turns = ZERO;
    for (const [w, { from, to, z, turns: own }] of element.windings.entries()) {
      const amperes = this.current(names[w] ?? '');
      const inner = sub(this.across(from, to), mul(z, amperes));
      // The core's volts are read off winding 0, which then has nothing left.
      if (w === 0) induced = inner;
      this.branches.set(names[w] ?? '', sub(scale(induced, own / base), inner));
      turns = add(turns, scale(amperes, own / base));
      this.carry(from, to, amperes);
    }
    this.cores.set(element.id, sub(turns, mul(element.magnetising ?? ZERO, induced)));
  }
}

/** What is left of the laws in an answer to a case. */
export const leftoverOf = (network: NetworkCase, answer: OtherAnswer): Leftover => {
  const { branches, nodes, cores, shunts } = new Laws(network, answer);
  return { excitation: { branches, nodes, cores }, shunts };
};
