// What a still morning sounds like: birds of no species, and fog dripping from wires and leaves.
import { exponential, sine } from './arithmetic.mjs';
import { add, echo, gate, highPass, like, lowPass, mix, noiseOn } from './tape.mjs';

/** A whistle whose pitch goes through `pitches` (Hz) in equal steps, a smooth turn at each. */
const whistle = (tape, at, seconds, pitches, force) => {
  const legs = pitches.length - 1;
  let turns = 0;
  add(tape, at, seconds, (t) => {
    const place = Math.min((t / seconds) * legs, legs - 1e-9);
    const leg = Math.max(0, Math.floor(place));
    const ease = gate(place - leg, 2, 1);
    turns += (pitches[leg] + (pitches[leg + 1] - pitches[leg]) * ease) / tape.rate;
    return force * gate(t, seconds, seconds * 0.3) * (sine(turns) + 0.06 * sine(2 * turns));
  });
};

/** Three invented birds, far apart and sparse, with the echo of a wood's edge. */
export const birds = (tape, chance) => {
  const near = (hertz) => hertz * (0.985 + 0.03 * chance());
  for (const at of [0.35, 4.7]) {
    whistle(tape, at, 0.26, [near(3350), near(3250), near(3300)], 0.8);
    whistle(tape, at + 0.34, 0.4, [near(2680), near(2620), near(2560)], 0.75);
  }
  for (const at of [2.1, 6.55]) {
    for (let k = 0; k < 6; k += 1) {
      whistle(tape, at + 0.1 * k, 0.075, [near(3900), near(4500), near(3600)], 0.35 + 0.05 * k);
    }
  }
  for (const at of [3.55, 7.7]) {
    whistle(tape, at, 0.11, [near(2200), near(3000)], 0.22);
    whistle(tape, at + 0.17, 0.16, [near(2900), near(2300), near(2500)], 0.25);
  }
  echo(tape, 2400, [
    [0.071, 0.3],
    [0.113, 0.24],
    [0.187, 0.2],
    [0.291, 0.13],
    [0.437, 0.08],
  ]);
};

/**
 * Drops. One that falls into water shuts in a bubble that rings, rising a little as it nears the surface (Minnaert);
 * one that falls on leaves or gravel is a short dull patter.
 */
export const fogDrip = (tape, chance) => {
  const [water, ground] = [like(tape), like(tape)];
  const seconds = tape.samples.length / tape.rate;
  for (let at = 0.2 * chance(); at < seconds; at += 0.25 + 0.75 * chance()) {
    const force = 0.35 + 0.65 * chance();
    if (chance() < 0.4) {
      const hertz = 900 + 1500 * chance();
      const decay = 0.012 + 0.016 * chance();
      const rise = (t) => sine(hertz * t * (1 + 2 * t));
      add(water, at, 0.2, (t) => force * gate(t, 1, 0.002) * exponential(-t / decay) * rise(t));
    } else {
      add(ground, at, 0.08, (t) => force * gate(t, 1, 0.001) * exponential(-t / 0.007) * (2 * chance() - 1));
    }
  }
  const air = lowPass(highPass(noiseOn(like(tape), chance), 150), 500);
  mix(tape, [
    [water, 1],
    [lowPass(ground, 1300), 0.75],
    [air, 0.06],
  ]);
};
