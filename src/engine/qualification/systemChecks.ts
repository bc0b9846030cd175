/** Nominal systems and what flows into a fault. */
import { complex } from '../math/complex.ts';
import {
  loopFault,
  type NominalSystem,
  phaseToEarth,
  phaseToGroundFault,
  soundPhaseInFault,
  sourceImpedance,
  systemById,
  threePhaseFault,
} from '../standards/systems.ts';
import { asPrinted, checkWriter, relative, within } from './checkWriter.ts';
import { sources } from './sources.ts';
import type { Check } from './types.ts';

const printed = checkWriter(
  'systems',
  'published value',
  'grid-data-models, transformer catalogue: voltages of four-wire systems',
);
const remembered = checkWriter('systems', 'from memory', 'ANSI C84.1 and delta practice, from memory');
const worked = checkWriter('systems', 'independent program', sources.ngspice);
const hand = checkWriter('systems', 'common practice', 'symmetrical components, worked by hand');

const wyes: readonly (readonly [string, number])[] = [
  ['4.16Y/2.4', 2400],
  ['12.47Y/7.2', 7200],
  ['13.2Y/7.62', 7620],
  ['13.8Y/7.97', 7970],
  ['24.94Y/14.4', 14400],
  ['34.5Y/19.92', 19920],
];
const volts = (id: string, read: (system: NominalSystem) => number): number => {
  const system = systemById(id);
  return system ? read(system) : Number.NaN;
};
const phases = wyes.map(([id, reference]) =>
  printed({
    id: `phase-${id.replace('/', '-')}`,
    quantity: 'volts to neutral from the line volts (printed to the nearest ten)',
    input: `${id} kV`,
    ours: () => volts(id, phaseToEarth),
    reference,
    unit: 'V',
    tolerance: within(5),
  }),
);
const z = sourceImpedance(7200, 3000, 6);
const balanced = { z1: complex(0, 1), z2: complex(0, 1), z0: complex(0, 4) };
const faults = [
  remembered({
    id: 'delta-sound',
    quantity: 'sound phase to earth while one is grounded',
    input: '4.8 kV delta',
    ours: () => volts('4.8-delta', soundPhaseInFault),
    reference: 4800,
    unit: 'V',
    tolerance: asPrinted,
  }),
  worked({
    id: 'source-r',
    quantity: 'source resistance',
    input: '7200 V, 3 kA, X/R 6',
    ours: () => z.re,
    reference: 0.3945576,
    unit: 'ohm',
    tolerance: relative(1e-6),
  }),
  worked({
    id: 'source-x',
    quantity: 'source reactance',
    input: 'the same',
    ours: () => z.im,
    reference: 2.3673454,
    unit: 'ohm',
    tolerance: relative(1e-6),
  }),
  worked({
    id: 'jumper',
    quantity: 'fault over 1 milliohm and a return of 0.5 + j0.6 ohm',
    input: 'the same source',
    ours: () => loopFault(7200, complex(z.re + 0.501, z.im + 0.6)),
    reference: 2322.2,
    unit: 'A',
    tolerance: relative(0.01),
  }),
  hand({
    id: 'three-phase',
    quantity: 'three-phase fault',
    input: '7200 V, Z1 = Z2 = j1 ohm, Z0 = j4 ohm',
    ours: () => threePhaseFault(7200, balanced),
    reference: 7200,
    unit: 'A',
    tolerance: relative(1e-9),
  }),
  hand({
    id: 'phase-to-ground',
    quantity: 'fault of one phase to ground',
    input: 'the same: 3 times 7200 over 6 ohm',
    ours: () => phaseToGroundFault(7200, balanced),
    reference: 3600,
    unit: 'A',
    tolerance: relative(1e-9),
  }),
];

/** Checks of systems. */
export const systemChecks: readonly Check[] = [...phases, ...faults];
