/** What pictures must know of the pole that carries them: its form, its line, the sides that things are kept to. */
import type { Part } from '../../engine/world/types.ts';
import type { Around } from './types.ts';

/** Azimuths of the pole's road and field side. */
export const road = -Math.PI / 2;
export const field = Math.PI / 2;
/** The pole ground runs down between field side and load side, away from the climbing space. */
export const groundSide = Math.PI / 4;
/** Radius of the small ACSR of a rural tap (#4 6/1: 6.35 mm over all). */
export const conductor = 0.0032;

/** Diameters and height that hardware wants of a pole. */
export const poleForm = (pole: Part | null): { height: number; topDiameter: number; groundDiameter: number } => ({
  height: pole?.values.heightM ?? 10.36,
  topDiameter: 2 * (pole?.values.topRadiusM ?? 0.1),
  groundDiameter: 2 * (pole?.values.buttRadiusM ?? 0.14),
});

/** Azimuth of the conductor that a pole's pin carries. */
export const lineAzimuth = (part: Part, around: Around): number => around.on(part.pole, 'tie')?.azimuth ?? 0;
