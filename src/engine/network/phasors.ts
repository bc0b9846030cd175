/** Reads volts and amperes of nodes and elements out of vectors of unknowns. */
import { type Complex, complex, mul, sub, ZERO } from '../math/complex.ts';
import type { Lanes } from './lanes.ts';
import type { Layout } from './layout.ts';
import { EARTH, type Phasors } from './types.ts';

/** Number of a node, undefined for earth; throws a RangeError for a node that the network lacks. */
export function indexOfNode(layout: Layout, node: string): number | undefined {
  const index = layout.numbers.ofNode(node);
  if (index === undefined && node !== EARTH) throw new RangeError(`the network has no node ${node}`);
  return index;
}

/** What one lane says. */
export function phasorsOf(layout: Layout, { lanes, values }: Lanes, lane: number): Phasors {
  const at = (i: number): Complex => {
    const place = 2 * (i * lanes + lane);
    return complex(values[place] as number, values[place + 1] as number);
  };
  const voltage = (node: string): Complex => {
    const index = indexOfNode(layout, node);
    return index === undefined ? ZERO : at(index);
  };
  const voltageBetween = (a: string, b: string): Complex => sub(voltage(a), voltage(b));
  const current = (elementId: string, winding?: number): Complex => {
    const rank = layout.numbers.ofElement(elementId);
    const element = rank === undefined ? undefined : layout.elements[rank];
    if (rank === undefined || element === undefined) throw new RangeError(`the network has no element ${elementId}`);
    const known =
      element.kind === 'transformer'
        ? winding !== undefined && element.windings[winding] !== undefined
        : winding === undefined;
    if (!known) throw new RangeError(`element ${elementId} has no winding ${winding}`);
    if (element.kind === 'admittance') return mul(element.y, voltageBetween(element.from, element.to));
    return at((layout.branch[rank] as number) + (winding ?? 0));
  };
  return { voltage, voltageBetween, current };
}
