/** Small shapes that component entries share. */
import { type Complex, complex } from '../../math/complex.ts';
import type { Branch, ComponentKind, PartView, Solid } from '../types.ts';

/** Angular frequency of 60 Hz, radians per second. */
export const OMEGA = 376.99111843077515;

/** A bolted or clamped joint: a milliohm and a little reactance (common practice, order of magnitude). */
export const JOINT: Complex = complex(1e-3, 1e-4);

/** Admittance of a capacitance with a leakage in parallel: farads, ohms. */
export const leakage = (farads: number, ohms: number): Complex => complex(1 / ohms, OMEGA * farads);

export const joint = (name: string, from: string, to: string, z: Complex = JOINT): Branch => ({
  type: 'series',
  name,
  between: [from, to],
  z,
});

export const shunt = (name: string, from: string, to: string, y: Complex): Branch => ({
  type: 'shunt',
  name,
  between: [from, to],
  y,
});

/** A value of the part, or the kind's default; entries name only values that they declare. */
export const valueIn = (kind: Pick<ComponentKind, 'values'>, part: PartView, name: string): number => {
  const value = part.values[name] ?? kind.values[name]?.default;
  if (value === undefined) throw new Error(`${part.kind} declares no value ${name}`);
  return value;
};

export const isIn = (part: PartView, state: string, position: string): boolean => part.state[state] === position;

/** What a fault says of a source whose neutral is open toward the scene (faults/sourceNeutral.ts); no source is built so. */
export const byEarth = { return: 'earth' } as const;

export const returnsByEarth = (part: PartView): boolean => part.words.return === byEarth.return;

/** What a crew may call on the line toward the substation. */
export const sourceConditions = ['sound', 'open-neutral'] as const;

export const upright = (fromZ: number, toZ: number, radius: number): Extract<Solid, { shape: 'cylinder' }> => ({
  shape: 'cylinder',
  from: [0, 0, fromZ],
  to: [0, 0, toZ],
  radius,
});

/** What most kinds leave out. */
export const plain = {
  nets: {},
  points: {},
  endPoints: [],
  terminals: [],
  states: {},
  values: {},
  words: {},
  branches: (): readonly Branch[] => [],
  trueWhen: [],
  othersMay: [],
  operations: [],
} as const;
