/** The model scenes against ngspice, as found and in states of their devices, the deck built of the very elements that are solved. */
import { describe, expect, test } from 'vitest';
import { angleOf } from '../../../../src/engine/circuit/angleOf.ts';
import { netsOf } from '../../../../src/engine/circuit/elementsOf.ts';
import { netlistOf } from '../../../../src/engine/circuit/netlistOf.ts';
import { settle } from '../../../../src/engine/circuit/settle.ts';
import { solveCircuit } from '../../../../src/engine/circuit/solveCircuit.ts';
import { abs, type Complex, mul, sub, ZERO } from '../../../../src/engine/math/complex.ts';
import { spiceElement } from '../../../../src/engine/network/spiceNames.ts';
import type { NetworkElement, Phasors } from '../../../../src/engine/network/types.ts';
import { withPart } from '../../../../src/engine/world/edit.ts';
import type { World } from '../../../../src/engine/world/types.ts';
import { runNgspice } from '../../../oracle/ngspice.ts';
import { laid, withJumpers, withState } from '../scene.ts';
import { model, modelNames, only } from './scenes.ts';

const TOLERANCE = 1e-6;
const FLOOR = 1e-6;

const tapClosed = (world: World): World => withState(world, 'p1.tap-cutout', { position: 'closed' });
const neutralOpen = (name: string): World =>
  withPart(only(model(name)), 'p1.source', { faults: [laid('source-neutral-open')] });
const states: Readonly<Record<string, () => World>> = {
  ...Object.fromEntries(modelNames.map((name) => [`${name}, as found`, () => model(name)])),
  ...Object.fromEntries(modelNames.map((name) => [`${name}, nothing wrong`, () => only(model(name))])),
  ...Object.fromEntries(modelNames.map((name) => [`${name}, come to rest`, () => settle(model(name)).world])),
  'island, tap closed on the plant out of step': () => tapClosed(model('island')),
  'island, low side shorted, plant at its limit': () =>
    withJumpers(model('island'), [['p2.transformer/x1', 'p2.transformer/x2', 'p2.transformer/x3']]),
  'recloser, faulted beyond the link': () =>
    withJumpers(model('recloser'), [['p3.deadend/conductor', 'p3.neutral-spool/neutral']]),
  'delta, one phase grounded': () => withJumpers(model('delta'), [['p1.insulator-a/conductor', 'p1.ground-lead/foot']]),
  'delta, battery on the house': () => withState(model('delta'), 'a.transfer-switch', { position: 'generator' }),
  'recloser, neutral open toward the substation': () => neutralOpen('recloser'),
  'wye bank, neutral open toward the substation': () => neutralOpen('wye-bank'),
  'open wye, governed set overloaded': () => withJumpers(model('open-wye'), [['a.meter/load1', 'a.meter/n']]),
};

const near = (ours: Complex, theirs: Complex, nominal: number): number =>
  abs(sub(ours, theirs)) / Math.max(abs(theirs), FLOOR * nominal);

/** Ours and ngspice's names of the currents that both give, per element. */
function currentsOf(element: NetworkElement, phasors: Phasors): [string, Complex][] {
  const { id } = element;
  switch (element.kind) {
    case 'impedance':
      // A capacitance in place of a negative reactance has no current in ngspice; its neighbours' currents show it.
      return element.z.im > 0 ? [[spiceElement('L', 'z', id), phasors.current(id)]] : [];
    case 'source':
      return [[spiceElement('V', 's', id), phasors.current(id)]];
    case 'transformer':
      return element.windings.map((_, w): [string, Complex] => [
        spiceElement('V', `w${w}`, id),
        phasors.current(id, w),
      ]);
    case 'admittance':
      return [];
  }
}

describe("every node voltage and branch current of a model scene is ngspice's within 1e-6", () => {
  test.each(Object.keys(states))('%s', async (name) => {
    const world = (states[name] as () => World)();
    const { elements, network } = solveCircuit(world);
    const angles = Object.entries(angleOf(world)).filter(([group]) => network.groups.includes(group));
    const phasors = network.at(Object.fromEntries(angles));
    const answer = await runNgspice(netlistOf(world));
    const { lineVolts } = world.given.supply;
    const nodes = new Set(elements.flatMap(netsOf));
    nodes.delete('earth');
    const wrong: string[] = [];
    for (const node of nodes) {
      const theirs = answer.voltages.get(node);
      const error = theirs === undefined ? Number.POSITIVE_INFINITY : near(phasors.voltage(node), theirs, lineVolts);
      if (!(error <= TOLERANCE)) wrong.push(`${node}: ${error}`);
    }
    const volts = (node: string): Complex => (node === 'earth' ? ZERO : (answer.voltages.get(node) as Complex));
    for (const element of elements) {
      if (element.kind === 'admittance') {
        const theirs = mul(element.y, sub(volts(element.from), volts(element.to)));
        const error = near(phasors.current(element.id), theirs, 25_000 / 240);
        if (!(error <= TOLERANCE)) wrong.push(`${element.id}: ${error}`);
      }
      for (const [branch, ours] of currentsOf(element, phasors)) {
        const theirs = answer.currents.get(branch.toLowerCase());
        // Nominal amperes: 25 kVA at 240 V.
        const error = theirs === undefined ? Number.POSITIVE_INFINITY : near(ours, theirs, 25_000 / 240);
        if (!(error <= TOLERANCE)) wrong.push(`${branch}: ${error}, ${abs(ours)} A`);
      }
    }
    expect(wrong).toEqual([]);
  });
});
