/**
 * Overhead conductors: size, weight, resistance, GMR, rated strength, all in SI; conversions are exact.
 * ACSR dimensions, weights and small-size strengths: manufacturers' tables as published; GMR and its companion
 * resistance per mile: IEEE test-feeder wire data; #4 resistance: AC at 50 C of the published table. Strength of ACSR
 * 4/0 and 336.4, and of hard-drawn copper: from memory (`strengthRead` false). Copper GMR: 0.7788 r of a solid round
 * wire; copper resistance: area and the IACS resistivity (1.7241e-8 ohm m at 20 C), soft-drawn. Left out: all-
 * aluminium and other alloys, compact strands, resistance at other temperatures.
 */
import type { Kilograms, Metres, Newtons, Ohms } from '../units/quantities.ts';

/** One bare conductor; per-length values are per metre. */
export interface Conductor {
  readonly id: string;
  readonly name: string;
  readonly diameter: Metres;
  readonly kilogramsPerMetre: Kilograms;
  readonly ohmsPerMetre: Ohms;
  readonly gmr: Metres;
  readonly strength: Newtons | undefined;
  readonly strengthRead: boolean;
}

const inch: Metres = 0.0254;
const foot: Metres = 0.3048;
const mile: Metres = 1609.344;
const poundPerThousandFeet = 0.45359237 / 304.8;
const poundForce: Newtons = 4.4482216152605;
const circularMil = (Math.PI / 4) * 0.0000254 * 0.0000254;

/** IACS resistivities at 20 C in ohm metres: copper 100 %, aluminium 1350 61 %. */
export const resistivity = { copper: 1.7241e-8, aluminium: 1.7241e-8 / 0.61 } as const;

/** DC resistance per metre at 20 C from the area in circular mils. */
export const resistancePerMetre = (metal: keyof typeof resistivity, circularMils: number): Ohms =>
  resistivity[metal] / (circularMils * circularMil);

const acsr = (
  size: string,
  stranding: string,
  diameterInches: number,
  poundsPerThousand: number,
  ohmsPerMile: number,
  gmrFeet: number,
  poundsStrength: number,
  strengthRead: boolean,
): Conductor => ({
  id: `acsr-${size}`,
  name: `ACSR ${size} ${stranding}`,
  diameter: diameterInches * inch,
  kilogramsPerMetre: poundsPerThousand * poundPerThousandFeet,
  ohmsPerMetre: ohmsPerMile / mile,
  gmr: gmrFeet * foot,
  strength: poundsStrength * poundForce,
  strengthRead,
});

const copper = (
  size: string,
  diameterInches: number,
  poundsPerThousand: number,
  mils: number,
  pounds?: number,
): Conductor => ({
  id: `copper-${size}`,
  name: `copper ${size}`,
  diameter: diameterInches * inch,
  kilogramsPerMetre: poundsPerThousand * poundPerThousandFeet,
  ohmsPerMetre: resistancePerMetre('copper', mils),
  gmr: (0.7788 * diameterInches * inch) / 2,
  strength: pounds === undefined ? undefined : pounds * poundForce,
  strengthRead: false,
});

/** The conductors known, by size. */
export const conductors: readonly Conductor[] = [
  acsr('4', '6/1', 0.25, 57.4, 0.479 * 5.28, 0.00437, 1860, true),
  acsr('2', '6/1', 0.316, 91.3, 1.65, 0.00418, 2850, true),
  acsr('1/0', '6/1', 0.398, 145.3, 1.12, 0.00446, 4380, true),
  acsr('2/0', '6/1', 0.447, 183, 0.895, 0.0051, 5293, true),
  acsr('4/0', '6/1', 0.563, 290, 0.592, 0.00814, 8350, false),
  acsr('336.4', '26/7', 0.72, 463, 0.306, 0.0244, 14100, false),
  copper('6', 0.162, 79.46, 26250, 1280),
  copper('4', 0.2043, 126.4, 41740, 1970),
  copper('2', 0.2576, 200.9, 66370),
  copper('1/0', 0.3249, 319.5, 105500),
  copper('4/0', 0.46, 640.5, 211600),
];

/** The conductor of an id such as `acsr-1/0`; undefined if unknown. */
export const conductorById = (id: string): Conductor | undefined => conductors.find((conductor) => conductor.id === id);

/** Weights of insulated service cable per metre: quadruplex and duplex read, triplex worked out as quadruplex less one phase wire. */
export const triplexKilogramsPerMetre: Readonly<Record<'4' | '2' | '1/0' | '4/0', Kilograms>> = {
  '4': 172 * poundPerThousandFeet,
  '2': 262 * poundPerThousandFeet,
  '1/0': 414 * poundPerThousandFeet,
  '4/0': 789 * poundPerThousandFeet,
};
