/**
 * Nominal distribution systems of the United States, by line and phase volts, and what flows into a bolted fault. Phase
 * volts are those printed on equipment of the system (IEEE C57.12.20 style, as listed in a public distribution data
 * model); they are the line volts over root three, rounded. 4.8 kV delta: from memory. Faults: Thevenin source behind a loop
 * impedance; three-phase V/Z1, phase to ground 3V/(Z1 + Z2 + Z0 + 3 Zf), phase to phase (line volts)/(Z1 + Z2). Left
 * out: arc resistance unless given as Zf, load before the fault, direct-current offset, motors.
 */
import { abs, add, type Complex, complex, scale } from '../math/complex.ts';
import type { Amperes, Ohms, Volts } from '../units/quantities.ts';

/** One nominal system; a delta has no phase volts to a neutral. */
export interface NominalSystem {
  readonly id: string;
  readonly line: Volts;
  readonly connection: 'multigrounded-wye' | 'delta';
  /** Volts to neutral as printed; of a delta, undefined. */
  readonly phase: Volts | undefined;
}

const wye = (id: string, line: Volts, phase: Volts): NominalSystem => ({
  id,
  line,
  connection: 'multigrounded-wye',
  phase,
});

/** The systems known, by rising line volts. */
export const nominalSystems: readonly NominalSystem[] = [
  wye('4.16Y/2.4', 4160, 2400),
  { id: '4.8-delta', line: 4800, connection: 'delta', phase: undefined },
  wye('12.47Y/7.2', 12470, 7200),
  wye('13.2Y/7.62', 13200, 7620),
  wye('13.8Y/7.97', 13800, 7970),
  wye('24.94Y/14.4', 24940, 14400),
  wye('34.5Y/19.92', 34500, 19920),
];

/** The system of an id; undefined if unknown. */
export const systemById = (id: string): NominalSystem | undefined => nominalSystems.find((system) => system.id === id);

/** Volts of a sound phase to earth: line over root three, of a delta with its stray capacitances in balance as well. */
export const phaseToEarth = ({ line }: NominalSystem): Volts => line / Math.sqrt(3);

/** Volts of the sound phases to earth while another is grounded solidly: line volts on a delta, unchanged on a multigrounded wye. */
export const soundPhaseInFault = (system: NominalSystem): Volts =>
  system.connection === 'delta' ? system.line : phaseToEarth(system);

/** Impedance behind `volts` that lets `fault` amperes flow at the ratio `xOverR`. */
export const sourceImpedance = (volts: Volts, fault: Amperes, xOverR: number): Complex => {
  const r = volts / fault / Math.sqrt(1 + xOverR * xOverR);
  return complex(r, r * xOverR);
};

/** Amperes of a bolted fault round a loop. */
export const loopFault = (volts: Volts, loop: Complex): Amperes => volts / abs(loop);

/** Sequence impedances in ohms at the fault. */
export interface SequenceImpedances {
  readonly z1: Complex;
  readonly z2: Complex;
  readonly z0: Complex;
}

/** Amperes of a three-phase fault. */
export const threePhaseFault = (phase: Volts, { z1 }: SequenceImpedances): Amperes => phase / abs(z1);

/** Amperes of one phase to ground through `fault` ohms. */
export const phaseToGroundFault = (phase: Volts, { z1, z2, z0 }: SequenceImpedances, fault: Ohms = 0): Amperes =>
  (3 * phase) / abs(add(add(z1, z2), add(z0, complex(3 * fault))));

/** Amperes from phase to phase. */
export const phaseToPhaseFault = (phase: Volts, { z1, z2 }: SequenceImpedances): Amperes =>
  (Math.sqrt(3) * phase) / abs(add(z1, z2));

/** Sequence impedances of a line transposed: (self - mutual, self - mutual, self + 2 mutual), from phase impedances. */
export const transposed = (self: Complex, mutual: Complex): SequenceImpedances => {
  const z1 = add(self, scale(mutual, -1));
  return { z1, z2: z1, z0: add(self, scale(mutual, 2)) };
};
