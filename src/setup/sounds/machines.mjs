// What runs: a portable generator's engine, and iron and wet porcelain on a 60 Hz system.
import { exponential, sine } from './arithmetic.mjs';
import { add, fill, highPass, like, lowPass, mix, noiseOn, resonate, shape, struck } from './tape.mjs';

/**
 * One cylinder, four strokes, 3600 rpm: the shaft turns 60 times a second and fires every second turn, so everything
 * that belongs to the burning repeats at 30 Hz. Blowdown pulses through a muffler's modes, exhaust hiss in step with
 * them (a small outlet radiates little below its size, hence the high pass), two valves and the piston's slap a cycle,
 * nine fan blades (540 Hz), and the alternator's iron (120 Hz).
 */
export const generator = (tape, chance) => {
  const firing = 1 / 30;
  const [pulses, breath, clatter] = [like(tape), like(tape), like(tape)];
  const firings = Math.round(tape.samples.length / tape.rate / firing);
  for (let k = 0; k < firings; k += 1) {
    const at = k * firing + (chance() - 0.5) * 0.0002;
    const strength = 0.88 + 0.24 * chance();
    add(pulses, at, firing, (t) => strength * (t / 0.0015) * exponential(1 - t / 0.0015));
    add(breath, at, firing, (t) => strength * exponential(-t / 0.009) * (2 * chance() - 1));
    for (const [turn, force] of [
      [0.02, 1],
      [0.31, 0.45],
      [0.67, 0.6],
    ]) {
      const hit = force * (0.7 + 0.6 * chance());
      const modes = [
        [1870, 0.0021, hit],
        [3140, 0.0015, 0.7 * hit],
        [4660, 0.001, 0.5 * hit],
      ];
      add(clatter, at + turn * firing + (chance() - 0.5) * 0.0003, 0.012, (t) => struck(t, modes));
    }
  }
  const muffled = resonate(highPass(highPass(pulses, 55), 55), [
    [90, 3, 1],
    [152, 4, 0.75],
    [270, 5, 0.55],
    [421, 6, 0.4],
    [664, 6, 0.28],
    [980, 6, 0.16],
  ]);
  const hiss = resonate(breath, [
    [700, 1.2, 1],
    [1500, 1.2, 0.6],
  ]);
  const fan = lowPass(highPass(noiseOn(like(tape), chance), 250), 1800);
  const turning = fill(like(tape), (t) => sine(540 * t) + 0.5 * sine(1080 * t) + 0.9 * sine(120 * t));
  mix(tape, [
    [muffled, 1],
    [hiss, 0.3],
    [clatter, 0.16],
    [fan, 0.16],
    [turning, 0.12],
  ]);
};

/**
 * Leakage over wet porcelain. It discharges near each peak of the voltage, twice a cycle, so the sound stands at 120 Hz:
 * a buzz rich in harmonics, crackle in bursts about the peaks (harder on one polarity), hiss in step. Dry bands form
 * and are wetted again, so that the crackle comes and goes.
 */
export const insulatorBuzz = (tape, chance) => {
  const peaks = Math.round((tape.samples.length / tape.rate) * 120);
  const buzz = fill(like(tape), (t) => {
    let sum = 0;
    for (let h = 1; h <= 24; h += 1) sum += (sine(120 * h * t + 0.13 * h * h) * (1 + 0.04 * h)) / h;
    return sum;
  });
  const sparks = like(tape);
  let wet = 0;
  for (let k = 0; k < peaks; k += 1) {
    wet = chance() < 0.03 ? 3 + 4 * chance() : wet * 0.86;
    const polarity = k % 2 === 0 ? 1 : -0.7;
    const count = Math.floor(1.2 + wet + 2 * chance());
    for (let spark = 0; spark < count; spark += 1) {
      const late = (chance() + chance() + chance() - 1.5) * 0.0011;
      const force = polarity * chance() * chance();
      add(sparks, k / 120 + late, 0.0002, () => force);
    }
  }
  const crackle = resonate(sparks, [
    [1900, 1.6, 0.7],
    [3700, 1.8, 1],
    [6300, 2, 0.8],
  ]);
  const hiss = shape(highPass(noiseOn(like(tape), chance), 2500), (t) => {
    const near = sine(120 * t + 0.25);
    return 0.08 + (near > 0 ? near * near * near : 0);
  });
  mix(tape, [
    [buzz, 1],
    [crackle, 0.55],
    [hiss, 0.22],
  ]);
};

/**
 * A core that stretches and slackens with each half cycle: 120 Hz and its harmonics, falling, with a loose lamination
 * faintly rattling at the crests.
 */
export const transformerHum = (tape, chance) => {
  const hum = fill(like(tape), (t) => {
    const low = sine(120 * t) + 0.5 * sine(240 * t + 0.1) + 0.34 * sine(360 * t + 0.3);
    return low + 0.15 * sine(480 * t + 0.7) + 0.07 * sine(600 * t + 0.2);
  });
  const rattle = shape(resonate(noiseOn(like(tape), chance), [[1100, 2, 1]]), (t) => {
    const crest = sine(120 * t);
    return crest > 0.6 ? crest - 0.6 : 0;
  });
  mix(tape, [
    [hum, 1],
    [rattle, 0.03],
  ]);
};
