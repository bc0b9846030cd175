/**
 * After what each symbol of the one-line is drawn. Neither standard could be read here: shapes and numbers are from memory of
 * IEC 60617 (numbers of the parts of 1996) and IEEE Std 315-1975 (ANSI Y32.2); where one-lines of the trade do otherwise, that is
 * said as common practice. Local drawing standards differ.
 */
import type { SymbolName } from './symbolOf.ts';

export interface SymbolSource {
  readonly name: string;
  /** Standard and number, or whose habit it is. */
  readonly after: string;
  readonly basis: 'standard, from memory' | 'common practice';
}

const standard = (name: string, after: string): SymbolSource => ({ name, after, basis: 'standard, from memory' });
const practice = (name: string, after: string): SymbolSource => ({ name, after, basis: 'common practice' });

export const symbolSources: Readonly<Record<SymbolName, SymbolSource>> = {
  system: practice(
    'line from the substation, or another line',
    'circle with one period, as one-lines have the utility',
  ),
  set: standard('engine set', 'IEC 60617 06-04-01, IEEE 315 13.1: G in a circle'),
  inverter: standard(
    'inverter, of a photovoltaic plant or a power supply',
    'IEC 60617 06-14-05: direct to alternating current',
  ),
  battery: practice('battery behind its inverter', 'cell of IEC 60617 06-15-01 in the converter of 06-14-05'),
  disconnector: standard(
    'disconnect, hot-line clamp',
    'IEC 60617 07-13-06: bar at the fixed contact; a clamp by common practice',
  ),
  'fuse-switch': standard('fused cutout', 'IEC 60617 07-21-08: fuse-disconnector; IEEE 315 9.1 for the fuse'),
  breaker: standard('breaker', 'IEC 60617 07-13-05: cross at the fixed contact; IEEE one-lines draw a square'),
  recloser: practice('recloser', 'breaker with an R beside it; IEEE one-lines draw a square or circle with R'),
  switch: standard(
    'switch, each side of a transfer switch',
    'IEC 60617 07-13-07: ring at the fixed contact; both sides drawn apart by common practice',
  ),
  meter: standard('meter', 'IEEE 315 12.1: WH in a circle; IEC 60617 08-04-03 has a square with a bar'),
  arrester: standard('arrester', 'IEC 60617 07-22-03: surge diverter'),
  load: practice('load', 'filled arrowhead, as one-lines have it'),
  electrode: standard('ground electrode', 'IEC 60617 02-15-01, IEEE 315 3.9: earth'),
  ladder: standard('all grounds beyond, as one impedance', 'IEC 60617 04-01-01: resistor, to earth'),
  line: standard('conductor', 'IEC 60617 03-01-01'),
  primary: standard('transformer, high side', 'IEC 60617 06-10-02, IEEE 315 6.4: windings as half circles'),
  secondary: standard(
    'transformer, low side',
    'the same; both halves of a centre-tapped winding are one in a one-line',
  ),
  regulator: standard('voltage regulator', 'IEEE 315 6.4 with 1.1: winding with the arrow of adjustability'),
  leak: practice('path of a leak', 'zigzag of IEEE 315 2.1, dashed: nobody put it there'),
  gap: practice('joint that is open', 'two ends with a stroke each'),
  impedance: standard('joint or conductor with its impedance', 'IEC 60617 04-01-01: resistor'),
  capacitor: standard('capacitor', 'IEC 60617 04-02-01; IEEE 315 2.2 has one plate curved'),
};
