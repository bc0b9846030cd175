/** The system that feeds the line and the next device toward it, as written. */
import type { z } from 'zod';
import type { ScenarioSupply } from '../types.ts';
import { dotted, flag, group, number, pattern, quantity, text } from './field.ts';

const upstream = group('The next protective device toward the source.', {
  name: text({ doc: 'What the dispatcher calls it.', example: 'recloser R-21', most: 60 }),
  customers: number({ doc: 'Customers that it feeds.', example: 214, from: 1, to: 1_000_000, whole: true }),
  travel: quantity('duration', {
    doc: 'How long it takes to get there or have somebody there.',
    example: '20 min',
    from: '0 min',
    to: '12 h',
  }),
  recloses: flag({ doc: 'Whether it closes again by itself.', example: true }),
}).transform(({ name, customers, travel, recloses }) => ({ name, customers, travelMin: travel, recloses }));

const written = group('The system that feeds the line.', {
  system: pattern(/^\d+(?:\.\d+)?Y\/\d+(?:\.\d+)?$/, {
    doc: 'Multigrounded wye system: kilovolts phase to phase, Y, slash, kilovolts phase to ground.',
    example: '12.47Y/7.2',
    expected: 'a wye system such as 12.47Y/7.2',
  }),
  circuit: text({ doc: 'What the dispatcher calls the circuit.', example: 'Feeder 4271', most: 60 }),
  at: dotted({ doc: 'Net of a pole where the source feeds in.', example: 'p1.main' }),
  'fault-current': quantity('current', {
    doc: 'Available phase-to-ground fault current there.',
    example: '850 A',
    from: '10 A',
    to: '50 kA',
  }),
  'x-over-r': number({ doc: 'Reactance over resistance of the source.', example: 1.6, from: 0.1, to: 50 }).prefault(2),
  upstream,
});

/** `12.47Y/7.2` in volts, phase to phase and phase to ground. */
export const systemVolts = (system: string): { readonly lineVolts: number; readonly phaseVolts: number } => {
  const [line = '', phase = ''] = system.split('Y/');
  // Rounded to the volt: 12.47 * 1000 is not 12470 in binary.
  return { lineVolts: Math.round(Number(line) * 1000), phaseVolts: Math.round(Number(phase) * 1000) };
};

/** `supply` of the written form to `ScenarioSupply`. */
export const supplySchema = written.transform(
  (supply): ScenarioSupply => ({
    system: supply.system,
    ...systemVolts(supply.system),
    circuit: supply.circuit,
    at: supply.at,
    faultAmps: supply['fault-current'],
    xOverR: supply['x-over-r'],
    upstream: supply.upstream,
  }),
) satisfies z.ZodType<ScenarioSupply>;
