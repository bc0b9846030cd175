/**
 * Names for plain numbers, so that a signature says its unit. SI inside the engine, with four exceptions
 * that follow the trade: drill time in minutes, temperature in degrees Celsius, sound level in decibels,
 * and incident (arc) energy in cal/cm2, the unit stamped on clothing.
 */

/** Length, position or distance in metres. */
export type Metres = number;
/** Electric potential difference in volts, RMS unless said otherwise. */
export type Volts = number;
/** Current in amperes, RMS unless said otherwise. */
export type Amperes = number;
/** Resistance, reactance or impedance magnitude in ohms. */
export type Ohms = number;
/** Conductance, susceptance or admittance magnitude in siemens. */
export type Siemens = number;
/** Earth or wood resistivity in ohm metres. */
export type OhmMetres = number;
/** Capacitance in farads. */
export type Farads = number;
/** Real power in watts. */
export type Watts = number;
/** Apparent power in volt-amperes. */
export type VoltAmperes = number;
/** Physical time (melting, clearing, shock) in seconds. */
export type Seconds = number;
/** Drill time in minutes. */
export type Minutes = number;
/** Frequency in hertz. */
export type Hertz = number;
/** Mass in kilograms. */
export type Kilograms = number;
/** Mass of a conductor by length in kilograms per metre. */
export type KilogramsPerMetre = number;
/** Force or tension in newtons. */
export type Newtons = number;
/** Bending moment in newton metres. */
export type NewtonMetres = number;
/** Stress or strength in pascals. */
export type Pascals = number;
/** Wind or vehicle speed in metres per second. */
export type MetresPerSecond = number;
/** Air or conductor temperature in degrees Celsius. */
export type Celsius = number;
/** Illuminance in lux. */
export type Lux = number;
/** Luminance in candelas per square metre. */
export type CandelasPerM2 = number;
/** Sound level in decibels (A-weighted unless said otherwise). */
export type Decibels = number;
/** Energy in joules. */
export type Joules = number;
/** Incident energy of an arc in calories per square centimetre (1 cal/cm2 = 41 840 J/m2). */
export type CaloriesPerCm2 = number;
/** Plane angle in radians. */
export type Radians = number;
/** A part of one: 5 % is 0.05. */
export type Fraction = number;
/** A calendar day as `YYYY-MM-DD`. */
export type IsoDate = string;
