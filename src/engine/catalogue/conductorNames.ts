/** Code words of ACSR, as line crews say them, and the sizes that they stand for (King Wire and Southwire tables). */
import { type Conductor, conductorById } from '../standards/conductors.ts';

export const conductorNames: Readonly<Record<string, string>> = {
  Linnet: 'acsr-336.4',
  Penguin: 'acsr-4/0',
  Quail: 'acsr-2/0',
  Raven: 'acsr-1/0',
  Sparrow: 'acsr-2',
  Swan: 'acsr-4',
};

/** The conductor of a code word or id; throws on an unknown one, which a checked scenario cannot bring. */
export const conductorNamed = (name: string): Conductor => {
  const conductor = conductorById(conductorNames[name] ?? name);
  if (conductor === undefined) throw new Error(`no conductor ${name}`);
  return conductor;
};
