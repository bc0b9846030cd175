/** Runs a deck written by spiceDeck in ngspice (compiled to WebAssembly by eecircuit-engine) and reads the answer back. */
import type { Simulation } from 'eecircuit-engine';
import type { Complex } from '../../engine/math/complex.ts';
import { nodeFromSpice } from '../../engine/network/spiceNames.ts';

export interface NgspiceAnswer {
  /** Volts to earth, by our own node names. */
  readonly voltages: ReadonlyMap<string, Complex>;
  /** Amperes by ngspice's own names, such as v_... of a source: only branches to which ngspice gives a current. */
  readonly currents: ReadonlyMap<string, Complex>;
}

let started: Promise<Simulation> | undefined;

/** Loaded when first asked for: 42 MB that no other verb needs. */
async function start(): Promise<Simulation> {
  const engine = await import('eecircuit-engine');
  const simulation = new engine.Simulation();
  await simulation.start();
  return simulation;
}

/** Node voltages and branch currents of an AC analysis at one frequency; throws on any error that ngspice reports. */
export async function runNgspice(deck: string): Promise<NgspiceAnswer> {
  started ??= start();
  const simulation = await started;
  simulation.setNetList(deck);
  const result = await simulation.runSim();
  const errors = simulation.getError();
  if (errors.length > 0) throw new Error(`ngspice: ${errors.join('; ')}`);
  if (result.dataType !== 'complex' || result.data.length === 0) throw new Error('ngspice gave no AC data');
  const voltages = new Map<string, Complex>();
  const currents = new Map<string, Complex>();
  for (const { name, type, values } of result.data) {
    const value = values[0];
    if (value === undefined) throw new Error(`ngspice gave no value for ${name}`);
    const phasor = { re: value.real, im: value.img };
    const inner = /^[vi]\((.*)\)$/.exec(name)?.[1] ?? name;
    if (type === 'current') currents.set(inner.replace('#branch', ''), phasor);
    const node = nodeFromSpice(inner);
    if (type === 'voltage' && node !== undefined) voltages.set(node, phasor);
  }
  if (voltages.size === 0) throw new Error('ngspice gave no node voltage');
  return { voltages, currents };
}
