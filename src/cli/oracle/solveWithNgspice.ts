/**
 * A network case solved by ngspice: the very elements, with a source of zero volts in series with each impedance, so that
 * ngspice tells its current. ngspice keeps milliohms as conductances beside picofarads at 7200 V and loses digits; so what is
 * left of Kirchhoff's laws in its answer is fed to it again as sources and the answer to that added (iterative refinement
 * with ngspice as the solver). Our own solver has no part in it.
 */
import { add, type Complex, ZERO } from '../../engine/math/complex.ts';
import { spiceDeck } from '../../engine/network/spiceDeck.ts';
import { spiceElement, spiceNode } from '../../engine/network/spiceNames.ts';
import type { NetworkElement } from '../../engine/network/types.ts';
import { currentNames, type OtherAnswer } from '../../engine/qualification/comparePhasors.ts';
import type { NetworkCase } from '../../engine/qualification/networkCases.ts';
import { acOf, type Excitation, type Leftover, leftoverOf } from './leftover.ts';
import { runNgspice } from './ngspice.ts';

const omega = 2 * Math.PI * 60;
const rounds = 3;

/** Ids that no element of ours has. */
const meterOf = (id: string): string => `${id}\u0001meter`;

const metered = (elements: readonly NetworkElement[]): NetworkElement[] =>
  elements.flatMap((element): NetworkElement[] => {
    if (element.kind !== 'impedance') return [element];
    const meter = meterOf(element.id);
    return [
      { kind: 'source', id: meter, from: element.from, to: meter, emf: ZERO, z: ZERO, group: 'meter' },
      { ...element, from: meter },
    ];
  });

/** The voltage source of the deck that stands in a branch and tells its current. */
const sensorOf = (element: NetworkElement, w: number): string => {
  if (element.kind === 'transformer') return spiceElement('V', `w${w}`, element.id);
  return spiceElement('V', 's', element.kind === 'impedance' ? meterOf(element.id) : element.id);
};

/** The deck with its sources replaced by what drives it now. */
const driven = (deck: string, elements: readonly NetworkElement[], { branches, nodes, cores }: Excitation): string => {
  const emfs = new Map<string, Complex>();
  for (const element of elements) {
    if (element.kind === 'admittance') continue;
    for (const [w, name] of currentNames(element).entries()) {
      emfs.set(sensorOf(element, w), branches.get(name) ?? ZERO);
    }
  }
  const lines = deck.split('\n').map((line) => {
    const [name = '', from, to] = line.split(' ');
    const emf = emfs.get(name);
    return emf === undefined ? line : `${name} ${from} ${to} DC 0 AC ${acOf(emf)}`;
  });
  const injected = [
    ...[...nodes].map(([node, amperes]) => [spiceNode(node), amperes] as const),
    ...[...cores].map(([id, amperes]) => [spiceElement('c', 'o', id), amperes] as const),
  ].map(([node, amperes], k) => `Iin${k} 0 ${node} DC 0 AC ${acOf(amperes)}`);
  lines.splice(lines.indexOf('.options noopac'), 0, ...injected);
  return lines.join('\n');
};

async function answerOf(deck: string, network: NetworkCase, nodes: readonly string[]): Promise<OtherAnswer> {
  const { voltages, currents } = await runNgspice(deck);
  const read = (found: ReadonlyMap<string, Complex>, name: string): Complex => {
    const value = found.get(name);
    if (value === undefined) throw new Error(`ngspice gave no ${name} in ${network.id}`);
    return value;
  };
  const branches = network.elements
    .filter(({ kind }) => kind !== 'admittance')
    .flatMap((element) => currentNames(element).map((name, w) => [name, sensorOf(element, w).toLowerCase()] as const));
  return {
    voltages: new Map(nodes.map((node) => [node, read(voltages, node)])),
    currents: new Map(branches.map(([name, sensor]) => [name, read(currents, sensor)])),
  };
}

const summed = (a: ReadonlyMap<string, Complex>, b: ReadonlyMap<string, Complex>): ReadonlyMap<string, Complex> =>
  new Map([...a].map(([name, value]) => [name, add(value, b.get(name) ?? ZERO)]));

/** Volts at every node and amperes in every branch; throws on what ngspice reports or leaves out. */
export async function solveWithNgspice(network: NetworkCase): Promise<OtherAnswer> {
  const { id, elements, angles } = network;
  const deck = spiceDeck(metered(elements), { title: id, omega, angles });
  const nodesOf = (e: NetworkElement): string[] =>
    e.kind === 'transformer' ? e.windings.flatMap(({ from, to }) => [from, to]) : [e.from, e.to];
  const nodes = [...new Set(elements.flatMap(nodesOf))].filter((node) => node !== 'earth');
  let answer = await answerOf(deck, network, nodes);
  let left: Leftover = leftoverOf(network, answer);
  for (let round = 0; round < rounds; round++) {
    const correction = await answerOf(driven(deck, elements, left.excitation), network, nodes);
    answer = {
      voltages: summed(answer.voltages, correction.voltages),
      currents: summed(answer.currents, correction.currents),
    };
    left = leftoverOf(network, answer);
  }
  return { voltages: answer.voltages, currents: new Map([...answer.currents, ...left.shunts]) };
}
