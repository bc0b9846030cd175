/** Compares our solution of a case with another program's, node by node and branch by branch, and says so as a check. */
import { abs, type Complex, sub } from '../math/complex.ts';
import { solveNetwork } from '../network/solveNetwork.ts';
import type { NetworkElement } from '../network/types.ts';
import type { NetworkCase } from './networkCases.ts';
import { runCheck } from './runChecks.ts';
import type { QualifiedCheck } from './types.ts';

/** Another program's answer: volts by node, amperes by branch as currentNames gives them. */
export interface OtherAnswer {
  readonly voltages: ReadonlyMap<string, Complex>;
  readonly currents: ReadonlyMap<string, Complex>;
}

/** Largest difference allowed, relative to the larger of the other's magnitude and a millionth of nominal. */
export const phasorTolerance = 1e-6;
const floorPart = 1e-6;

/** Name of a branch's current: the element, of a transformer with its winding. */
export const currentNames = (element: NetworkElement): readonly string[] =>
  element.kind === 'transformer' ? element.windings.map((_, w) => `${element.id} ${w}`) : [element.id];

const nodesOf = (element: NetworkElement): readonly string[] =>
  element.kind === 'transformer' ? element.windings.flatMap(({ from, to }) => [from, to]) : [element.from, element.to];

const relative = (ours: Complex, theirs: Complex | undefined, nominal: number): number =>
  theirs === undefined ? Number.POSITIVE_INFINITY : abs(sub(ours, theirs)) / Math.max(abs(theirs), floorPart * nominal);

/** The worst difference over every node and branch; infinite when one lacks an answer or we have no solution. */
export const worstDifference = (
  { elements, angles, nominalVolts, nominalAmperes }: NetworkCase,
  other: OtherAnswer,
): { readonly worst: number; readonly at: string; readonly nodes: number; readonly branches: number } => {
  const solution = solveNetwork(elements);
  const nodes = [...new Set(elements.flatMap(nodesOf))].filter((node) => node !== 'earth').sort();
  const branches = elements.reduce((sum, element) => sum + currentNames(element).length, 0);
  if (!solution.ok) return { worst: Number.POSITIVE_INFINITY, at: solution.reason, nodes: nodes.length, branches };
  const phasors = solution.at(angles);
  let worst = 0;
  let at = '';
  const meet = (difference: number, name: string): void => {
    if (difference <= worst) return;
    worst = difference;
    at = name;
  };
  for (const node of nodes) meet(relative(phasors.voltage(node), other.voltages.get(node), nominalVolts), node);
  for (const element of elements) {
    for (const [w, name] of currentNames(element).entries()) {
      const ours = element.kind === 'transformer' ? phasors.current(element.id, w) : phasors.current(element.id);
      meet(relative(ours, other.currents.get(name), nominalAmperes), name);
    }
  }
  return { worst, at, nodes: nodes.length, branches };
};

/** A case compared, as a line of the report. */
export const compareCase = (network: NetworkCase, other: OtherAnswer, program: string): QualifiedCheck => {
  const { worst, at, nodes, branches } = worstDifference(network, other);
  return runCheck({
    id: network.id,
    model: network.model,
    quantity: `worst difference of ${nodes} voltages and ${branches} currents${at === '' ? '' : `, at ${at}`}`,
    input: network.input,
    ours: () => worst,
    reference: 0,
    unit: '1',
    tolerance: { kind: 'absolute', value: phasorTolerance, because: 'the reference is zero: a difference' },
    source: program,
    kind: 'independent program',
  });
};
