// The list of all sounds: how long, how often sampled, looped or not, and who draws it.
// Each is brought to one loudness (A-weighted, loudest 125 ms), so that at run time the level at the ear alone decides;
// a sound of sharp peaks that would pass PEAK at that loudness stays below it instead.
import { chanceFrom } from './arithmetic.mjs';
import { loudestA } from './loudness.mjs';
import { generator, insulatorBuzz, transformerHum } from './machines.mjs';
import { birds, fogDrip } from './outdoors.mjs';
import {
  breakerTrip,
  cutoutClose,
  flash,
  fuseBang,
  hammerDull,
  hammerSound,
  meterClick,
  stickWipe,
  tapChange,
} from './strokes.mjs';
import { gate, shape, tapeOf } from './tape.mjs';
import { detectorTone, dispatcherTone, radioSquelch } from './tones.mjs';
import { wavFrom } from './wav.mjs';
import { bees, dog, drizzle, rain, thunder, traffic, truckEngine, windWires } from './weather.mjs';

const FULL = 22050;
const HALF = 11025; // for long, sparse sounds that hold nothing above 5 kHz

/** RMS to full scale that every sound's loudest 125 ms comes to: -24 dB. */
export const LOUDNESS = 0.0631;

/** No sample goes beyond this: -1.4 dB. */
export const PEAK = 0.85;

/** name, seconds, samples a second, loop, who draws it. */
export const sounds = [
  ['bees', 1.5, HALF, true, bees],
  ['birds', 8.8, HALF, true, birds],
  ['breaker-trip', 0.4, FULL, false, breakerTrip],
  ['cutout-close', 0.5, FULL, false, cutoutClose],
  ['detector-tone', 1, FULL, false, detectorTone],
  ['dispatcher-tone', 0.5, FULL, false, dispatcherTone],
  ['dog', 2.5, HALF, true, dog],
  ['drizzle', 2, HALF, true, drizzle],
  ['flash', 0.4, FULL, false, flash],
  ['fog-drip', 8.8, HALF, true, fogDrip],
  ['fuse-bang', 1.1, FULL, false, fuseBang],
  ['generator', 4, FULL, true, generator],
  ['hammer-dull', 0.35, FULL, false, hammerDull],
  ['hammer-sound', 0.5, FULL, false, hammerSound],
  ['insulator-buzz', 4, FULL, true, insulatorBuzz],
  ['meter-click', 0.25, FULL, false, meterClick],
  ['radio-squelch', 0.55, FULL, false, radioSquelch],
  ['rain', 2.5, HALF, true, rain],
  ['stick-wipe', 1.2, FULL, false, stickWipe],
  ['tap-change', 5, HALF, true, tapChange],
  ['thunder', 3, HALF, false, thunder],
  ['traffic', 4, HALF, true, traffic],
  ['transformer-hum', 2, FULL, true, transformerHum],
  ['truck-engine', 2, HALF, true, truckEngine],
  ['wind-wires', 3, HALF, true, windWires],
];

const draw = ([name, seconds, rate, loop, drawn]) => {
  const tape = tapeOf(seconds, rate, loop);
  drawn(tape, chanceFrom(name));
  if (!loop) shape(tape, (t) => gate(t + 1, seconds + 1, 0.03));
  let peak = 0;
  for (const x of tape.samples) peak = Math.max(peak, Math.abs(x));
  const gain = Math.min(LOUDNESS / loudestA(tape), PEAK / peak);
  for (let k = 0; k < tape.samples.length; k += 1) tape.samples[k] *= gain;
  return tape;
};

/** File name to bytes, for every sound. */
export const makeSounds = () => new Map(sounds.map((sound) => [`${sound[0]}.wav`, wavFrom(draw(sound))]));
