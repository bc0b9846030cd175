/** The neutral open toward the substation, laid in a World: against a worked case, and Millman's theorem by hand. */
import { solveCircuit } from '../circuit/solveCircuit.ts';
import type { Part, World } from '../world/types.ts';
import { bare, bareWorld } from './bareWorld.ts';
import { checkWriter, relative } from './checkWriter.ts';
import { sources } from './sources.ts';
import type { Check } from './types.ts';

const model = 'open neutral toward the substation';
const worked = checkWriter(model, 'independent program', sources.ngspice);
const byHand = checkWriter(model, 'common practice', 'Ohm’s law and Millman’s theorem, worked by hand');

const opened = (part: Part): Part => ({
  ...part,
  faults: [{ id: 'open', kind: 'source-neutral-open', side: 'any', to: null, values: {} }],
});

const stiff = (ladderOhms: number) => ({ ohms: 1e-3, reactance: 0, ladderOhms, ladderReactance: 0 });
const rod = (ohms: number): Part => bare('r', 'ground-rod', { nets: { rod: 'n' }, values: { ohms } });

/** A transformer of 25 kVA from the phase to the neutral n, and watts across its legs. */
const unit = (phase: string, watts: number): readonly Part[] => [
  bare(`t${phase}`, 'transformer', { nets: { h1: phase, tank: 'n', x1: `${phase}1`, x2: 'n', x3: `${phase}3` } }),
  bare(`l${phase}`, 'household-load', {
    nets: { bus1: `${phase}1`, bus2: `${phase}3`, n: 'n' },
    values: { leg1W: 0, leg2W: 0, bothW: watts },
  }),
];

const tap = (rodOhms: number, ladderOhms: number): World =>
  bareWorld([
    opened(bare('s', 'system-source', { nets: { line: 'a', neutral: 'n' }, values: stiff(ladderOhms) })),
    rod(rodOhms),
    ...unit('a', 5000),
  ]);

const phases = bareWorld([
  opened(
    bare('s', 'system-source-wye', {
      nets: { a: 'a', b: 'b', c: 'c', neutral: 'n', star: 'star' },
      values: stiff(10),
    }),
  ),
  rod(990),
  ...unit('a', 10_000),
  ...unit('b', 2_000),
  ...unit('c', 2_000),
]);
const three = 'three phases of 7200 V, 10, 2 and 2 kW, rod of 990 ohm, ladder of 10 ohm';

/** Checks of the open neutral toward the substation. */
export const sourceNeutralChecks: readonly Check[] = [
  worked({
    id: 'body',
    quantity: 'current through 1000 ohm that is the only way to earth',
    input: '25 kVA with 5 kW across its legs, source grounded',
    ours: () => solveCircuit(tap(1000, 1e-3)).branchCurrent('r', 'electrode'),
    reference: 0.6490018,
    unit: 'A',
    tolerance: relative(2e-3),
  }),
  byHand({
    id: 'neutral',
    quantity: 'volts of the neutral: 7200 V over 10 368, 400 and 600 ohm',
    input: '5 kW, rod of 400 ohm, ladder of 600 ohm',
    ours: () => solveCircuit(tap(400, 600)).network.worst('n'),
    reference: 253.3,
    unit: 'V',
    tolerance: relative(0.03),
  }),
  byHand({
    id: 'shift',
    quantity: 'volts of the neutral to remote earth: 0.99 of 1.1111 A over 1.27006 mS',
    input: three,
    ours: () => solveCircuit(phases).network.worst('n'),
    reference: 866.1,
    unit: 'V',
    tolerance: relative(0.02),
  }),
  byHand({
    id: 'heavy-leg',
    quantity: 'volts of a leg on the heavy phase: (7200 - 874.9) over 60',
    input: three,
    ours: () => solveCircuit(phases).between('la/bus1', 'la/n'),
    reference: 105.4,
    unit: 'V',
    tolerance: relative(0.02),
  }),
  byHand({
    id: 'light-leg',
    quantity: 'volts of a leg on a light phase',
    input: three,
    ours: () => solveCircuit(phases).between('lb/bus1', 'lb/n'),
    reference: 127.9,
    unit: 'V',
    tolerance: relative(0.02),
  }),
];
