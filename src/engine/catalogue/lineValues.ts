/** Electrical values of a span from its conductor and height: standards/lineImpedance.ts with the usual earth. */
import { capacitanceToEarth, selfImpedance } from '../standards/lineImpedance.ts';
import { conductorNamed } from './conductorNames.ts';

/** Ohm, ohm and farad per metre of one wire with earth return at a mean height in metres; soil in ohm metres. */
export const lineValues = (
  name: string,
  height: number,
  resistivity: number,
): { readonly ohmsPerM: number; readonly reactancePerM: number; readonly faradsPerM: number } => {
  const conductor = conductorNamed(name);
  const z = selfImpedance(conductor.ohmsPerMetre, conductor.gmr, { resistivity, frequency: 60 });
  return { ohmsPerM: z.re, reactancePerM: z.im, faradsPerM: capacitanceToEarth(height, conductor.diameter / 2) };
};
