/** The system that feeds the line and the next device toward it, as written. */
import type { z } from 'zod';
import { phaseWords } from '../../catalogue/phaseNets.ts';
import type { ScenarioSupply } from '../types.ts';
import { choice, defined, dotted, flag, group, number, pattern, quantity, text } from './field.ts';

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

const recloser = group('The upstream device as a recloser of the scene, out of sight.', {
  'pick-up': quantity('current', { doc: 'Pick-up of its phase trip.', example: '100 A', from: '5 A', to: '5 kA' }),
  fast: number({ doc: 'Fast trips before the slow ones.', example: 1, from: 0, to: 4, whole: true }).prefault(1),
  blocked: flag({ doc: 'Whether its reclosing is blocked already.', example: false }).prefault(false),
}).transform((read) => ({ pickUpA: read['pick-up'], fast: read.fast, blocked: read.blocked }));

const written = group('The system that feeds the line.', {
  system: pattern(/^\d+(?:\.\d+)?(?:Y\/\d+(?:\.\d+)?|-delta)$/, {
    doc: 'Multigrounded wye: kilovolts phase to phase, Y, slash, kilovolts phase to ground; or kilovolts and -delta.',
    example: '12.47Y/7.2',
    expected: 'a system such as 12.47Y/7.2 or 4.8-delta',
  }),
  circuit: text({ doc: 'What the dispatcher calls the circuit.', example: 'Feeder 4271', most: 60 }),
  at: dotted({ doc: 'Net of a pole where the source feeds in.', example: 'p1.main' }),
  'fault-current': quantity('current', {
    doc: 'Available phase-to-ground fault current there; of a delta, of three phases.',
    example: '850 A',
    from: '10 A',
    to: '50 kA',
  }),
  'x-over-r': number({ doc: 'Reactance over resistance of the source.', example: 1.6, from: 0.1, to: 50 }).prefault(2),
  phases: choice(phaseWords, {
    doc: 'Phases that come in there, each on the net with its letter; one on the net itself if left out.',
    example: 'abc',
  }).optional(),
  'three-phase-fault-current': quantity('current', {
    doc: 'Available fault current of three phases there; like the one to ground if left out.',
    example: '1.1 kA',
    from: '10 A',
    to: '50 kA',
  }).optional(),
  recloser: recloser.optional(),
  upstream,
});

/** `12.47Y/7.2` in volts, phase to phase and phase to ground. */
export const systemVolts = (system: string): { readonly lineVolts: number; readonly phaseVolts: number } => {
  const [line = '', phase = String(Number.parseFloat(system) / Math.sqrt(3))] = system
    .replace('-delta', '')
    .split('Y/');
  // Rounded to the volt: 12.47 * 1000 is not 12470 in binary.
  return { lineVolts: Math.round(Number(line) * 1000), phaseVolts: Math.round(Number(phase) * 1000) };
};

/** `supply` of the written form to `ScenarioSupply`. */
export const supplySchema = written.transform((supply): ScenarioSupply => {
  const delta = supply.system.endsWith('-delta') ? true : undefined;
  return defined({
    system: supply.system,
    ...systemVolts(supply.system),
    circuit: supply.circuit,
    at: supply.at,
    faultAmps: supply['fault-current'],
    xOverR: supply['x-over-r'],
    delta,
    phases: supply.phases ?? (delta && 'abc'),
    threePhaseAmps: supply['three-phase-fault-current'],
    recloser: supply.recloser,
    upstream: supply.upstream,
  });
}) satisfies z.ZodType<ScenarioSupply>;
