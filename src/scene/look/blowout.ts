/**
 * How far wind swings a span out of its plane: tan of the angle = wind pressure on the conductor over its weight, q = 0.613 v²
 * (Pa, standard air; the ordinary form of ASCE 74), drag 1. Gusts: two slow sines of a quarter of it, chosen by eye.
 */

/** Diameter, m, and weight, N/m, of small ACSR (Swan: 6.35 mm, 85.4 kg/km). */
const wireForm = { diameter: 0.00635, weight: 0.0854 * 9.81 } as const;

/** Blowout angle in steady wind, radians. */
export const blowout = (windMs: number): number =>
  Math.atan((0.613 * windMs * windMs * wireForm.diameter) / wireForm.weight);

/** Shared by all thin wires: sideways and upward share of the sag by which a span is out of its plane now. */
export const sway = { value: new Float32Array([0, 0]) };

/** Sets the swing for a wind after so many seconds; at 0 it hangs steady. */
export const swing = (windMs: number, seconds: number): void => {
  const steady = blowout(windMs);
  const gust = seconds === 0 ? 0 : 0.25 * (Math.sin(1.1 * seconds) * 0.6 + Math.sin(2.3 * seconds + 1) * 0.4);
  const angle = steady * (1 + gust);
  sway.value[0] = Math.sin(angle);
  sway.value[1] = 1 - Math.cos(angle);
};
