/** What `circuit --json` prints, as a schema that its JSON Schema is generated from. SI units. */
import { z } from 'zod';

const text = z.string().min(1);
const quantity = z.number().nonnegative();

const operation = z.strictObject({
  part: text,
  branch: text.describe('branch of the part that opened'),
  amperes: quantity,
  seconds: quantity.describe('time to operate, counted from the operation before'),
});

const point = z.strictObject({
  point: text.describe('<part>/<terminal>'),
  part: text,
  terminal: text,
  node: text.describe('electrical net'),
  bare: z.boolean().describe('bare metal, not insulated or enclosed'),
  volts: quantity.describe('open circuit, to local earth, worst angle between sources not in step'),
  throughKilohm: quantity.describe('amperes through the test resistance to local earth, worst angle'),
  live: z.boolean(),
  sources: z.array(text).describe('synchronism groups that hold it alive, largest first'),
});

const part = z.strictObject({
  part: text,
  name: text,
  volts: quantity.describe('highest of its terminals'),
  throughKilohm: quantity.describe('highest of its terminals'),
  live: z.boolean(),
});

const branch = z.strictObject({
  part: text,
  branch: text,
  winding: z.int().nonnegative().nullable(),
  amperes: quantity.describe('worst angle'),
});

/** Schema of the report on one state of a scene's circuit. */
export const circuitReportSchema = z.strictObject({
  report: z.literal('loose-tie-circuit'),
  version: z.literal(1),
  scenario: text,
  scenarioHash: text,
  seed: z.int(),
  set: z.array(z.strictObject({ part: text, state: text, value: text })).describe('states set, in order'),
  grounded: z.array(z.array(text)).describe('points joined by jumpers'),
  mended: z.array(text).describe('faults taken away'),
  operations: z.array(operation).describe('protective devices that operated, in order'),
  groups: z.array(text).describe('synchronism groups of the running sources'),
  angles: z.record(text, z.number()).describe('radians at which they meet in this replay, and in the netlist'),
  limits: z
    .strictObject({ volts: quantity, amperes: quantity, ohms: quantity, source: text })
    .describe('live: both are reached'),
  parts: z.array(part),
  points: z.array(point),
  branches: z.array(branch),
  netlist: z.string().optional().describe('SPICE deck of the same circuit'),
});

export type CircuitReport = z.infer<typeof circuitReportSchema>;
