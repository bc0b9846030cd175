/** The fog scene in device states of all sorts against ngspice, the deck built of the very elements that are solved. */
import { describe, expect, test } from 'vitest';
import { angleOf } from '../../../src/engine/circuit/angleOf.ts';
import { netsOf } from '../../../src/engine/circuit/elementsOf.ts';
import { netlistOf } from '../../../src/engine/circuit/netlistOf.ts';
import { settle } from '../../../src/engine/circuit/settle.ts';
import { solveCircuit } from '../../../src/engine/circuit/solveCircuit.ts';
import { abs, type Complex, mul, sub, ZERO } from '../../../src/engine/math/complex.ts';
import { spiceElement } from '../../../src/engine/network/spiceNames.ts';
import type { NetworkElement, Phasors } from '../../../src/engine/network/types.ts';
import { withoutFault } from '../../../src/engine/world/edit.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { type NgspiceAnswer, runNgspice } from '../../oracle/ngspice.ts';
import { fogScene, withJumpers, withState } from './scene.ts';

/** Nominal figures of the scene: phase to ground volts, and the rated amperes of its transformer, 25 kVA at 240 V. */
const NOMINAL_VOLTS = 7200;
const NOMINAL_AMPERES = 25_000 / 240;
const TOLERANCE = 1e-6;
const FLOOR = 1e-6;

const closed = (world: World): World => withState(world, 'p1.tap-cutout', { position: 'closed', link: 'sound' });
const off = (world: World): World => withState(world, 'a.generator', { run: 'stopped', breaker: 'open' });
const grounded = (world: World): World =>
  withJumpers(world, [['p3.neutral-spool/neutral', 'p3.ground-lead/top', 'p3.deadend/conductor']]);
const shorted = (world: World): World =>
  withJumpers(world, [['p2.transformer/x1', 'p2.transformer/x2', 'p2.transformer/x3']]);

const states: Readonly<Record<string, World>> = {
  'as found': fogScene(),
  'set stopped but connected': withState(fogScene(), 'a.generator', { run: 'stopped' }),
  'both sets stopped': withState(off(fogScene()), 'b.generator', { run: 'stopped' }),
  'tap closed, first set off': closed(off(fogScene())),
  'tap closed on the running set, angle of seed 1': closed(fogScene(1)),
  'tap closed on the running set, angle of seed 2': closed(fogScene(2)),
  'the same after protection operated': settle(closed(fogScene())).world,
  'meter of the first house pulled': withState(fogScene(), 'a.meter', { position: 'pulled' }),
  'main of the first house open': withState(fogScene(), 'a.main', { position: 'open' }),
  'transformer cutout open': withState(fogScene(), 'p2.cutout', { position: 'open' }),
  'secondary shorted, set still running': shorted(fogScene()),
  'tap grounded at the dead end, set still running': grounded(fogScene()),
  'tap grounded at the dead end, tap closed': grounded(closed(off(fogScene()))),
  'pole ground mended': withoutFault(withoutFault(fogScene(), 'bond'), 'copper'),
  'restored, nothing wrong left': closed(
    withState(['crack', 'burn', 'bond', 'copper', 'cord'].reduce(withoutFault, fogScene()), 'b.transfer-switch', {
      position: 'utility',
    }),
  ),
};

const near = (ours: Complex, theirs: Complex, nominal: number): number =>
  abs(sub(ours, theirs)) / Math.max(abs(theirs), FLOOR * nominal);

/** Our amperes and ngspice's, for each branch of an element. */
function branchesOf(element: NetworkElement, phasors: Phasors, answer: NgspiceAnswer): [string, Complex, Complex][] {
  const { id } = element;
  const found = (kind: string, role: string): Complex => {
    const current = answer.currents.get(spiceElement(kind, role, id).toLowerCase());
    if (current === undefined) throw new Error(`ngspice gives no current ${spiceElement(kind, role, id)}`);
    return current;
  };
  const volts = (node: string): Complex => (node === 'earth' ? ZERO : (answer.voltages.get(node) as Complex));
  switch (element.kind) {
    case 'impedance':
      return [[id, phasors.current(id), found('L', 'z')]];
    case 'source':
      return [[id, phasors.current(id), found('V', 's')]];
    case 'transformer':
      return element.windings.map((_, w) => [`${id}.${w}`, phasors.current(id, w), found('V', `w${w}`)]);
    case 'admittance':
      return [[id, phasors.current(id), mul(element.y, sub(volts(element.from), volts(element.to)))]];
  }
}

describe("every node voltage and branch current is ngspice's within 1e-6", () => {
  test.each(Object.keys(states))('%s', async (name) => {
    const world = states[name] as World;
    const { elements, network } = solveCircuit(world);
    const groups = new Set(network.groups);
    const angles = Object.entries(angleOf(world)).filter(([group]) => groups.has(group));
    const phasors = network.at(Object.fromEntries(angles));
    const answer = await runNgspice(netlistOf(world));

    const nodes = new Set(elements.flatMap(netsOf));
    nodes.delete('earth');
    expect([...answer.voltages.keys()].filter((node) => node !== 'earth').sort()).toEqual([...nodes].sort());
    const wrong: string[] = [];
    for (const node of nodes) {
      const error = near(phasors.voltage(node), answer.voltages.get(node) as Complex, NOMINAL_VOLTS);
      if (!(error <= TOLERANCE)) wrong.push(`${node}: ${error}`);
    }
    for (const element of elements) {
      for (const [branch, ours, theirs] of branchesOf(element, phasors, answer)) {
        const error = near(ours, theirs, NOMINAL_AMPERES);
        if (!(error <= TOLERANCE)) wrong.push(`${branch}: ${error}, ${abs(ours)} A, ${abs(theirs)} A`);
      }
    }
    expect(wrong).toEqual([]);
  });

  test('is a comparison that a changed element fails', async () => {
    const { network } = solveCircuit(withoutFault(fogScene(), 'crack'));
    const answer = await runNgspice(netlistOf(fogScene()));
    const theirs = answer.voltages.get('p2.stub') as Complex;
    expect(near(network.voltage('p2.stub'), theirs, NOMINAL_VOLTS)).toBeGreaterThan(1000 * TOLERANCE);
  });
});
