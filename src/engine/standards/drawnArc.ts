/**
 * The arc that is drawn when a contact opens under load. Volts along a long arc in open air: Warrington's formula,
 * R = 28710 L / I^1.4 (ohms, metres, amperes; A. R. van C. Warrington, as given in GEC's Protective Relays Application
 * Guide, 1987; read in a public calculator's help, the exponent from memory), so 28710 / I^0.4 volts a metre. The load is
 * taken as a resistance that lets `load` amperes flow: what the arc takes, the load loses, and beyond one length no current
 * satisfies both, and it goes out. There i = (0.4/1.4) of the load and L = V (1 - 0.4/1.4) i^0.4 / 28710. Measured on
 * faults of hundreds of amperes; at a few amperes it is an estimate. Wind, inductive load, and re-striking lengthen it.
 * Plain contacts: no interrupting rating at all; common practice uses them for the exciting current of a transformer and
 * the charging current of a short line (a maker's page on arcing horns, read). The limit of 0.3 A lies above the exciting
 * current of the usual pole units by the table of transformer.ts (100 kVA at 7.2 kV: 0.2 A; 167 kVA would take 0.39
 * A). Left out: arcs to other phases and metal, capacitive current.
 */
import { pow } from '../math/elementary.ts';
import type { Amperes, Metres, Ohms, Volts } from '../units/quantities.ts';

const gradient = 28710;
const exponent = 0.4;
const share = exponent / (1 + exponent);

/** Resistance of an arc in open air, Warrington. */
export const arcResistance = (length: Metres, current: Amperes): Ohms =>
  (gradient * length) / pow(current, 1 + exponent);

/** Longest arc that a resistive load of `load` amperes at `volts` holds up; an estimate. */
export const drawnArc = (volts: Volts, load: Amperes): Metres =>
  load > 0 ? (volts * (1 - share) * pow(share * load, exponent)) / gradient : 0;

/** What a plain contact is trusted to break on primary: exciting current, common practice. */
export const plainBreak: Amperes = 0.3;
