// What weather, road and yard sound like: rain of two strengths, wind in wires, far thunder, cars, a diesel at idle, bees, a dog.
import { exponential, sine } from './arithmetic.mjs';
import { add, echo, fill, gate, highPass, like, lowPass, mix, noiseOn, resonate, shape, struck } from './tape.mjs';

/** Drops on leaves, road and hood: short patters of many sizes over the hiss of all the far ones together. */
const falling = (tape, chance, aSecond, hiss) => {
  const [near, far] = [like(tape), highPass(noiseOn(like(tape), chance), 900)];
  const seconds = tape.samples.length / tape.rate;
  for (let k = 0; k < aSecond * seconds; k += 1) {
    const force = 0.15 + chance() * chance() * chance();
    const decay = 0.002 + 0.005 * chance();
    add(
      near,
      seconds * chance(),
      0.05,
      (t) => force * gate(t, 1, 0.0006) * exponential(-t / decay) * (2 * chance() - 1),
    );
  }
  mix(tape, [
    [lowPass(near, 3200), 1],
    [lowPass(far, 4200), hiss],
  ]);
};

/** Few drops, each heard. */
export const drizzle = (tape, chance) => falling(tape, chance, 60, 0.35);

/** So many that they run together. */
export const rain = (tape, chance) => falling(tape, chance, 700, 1.1);

/**
 * Vortices leave a wire at the Strouhal frequency, 0.2 v/d: for 6 m/s and 6.35 mm 189 Hz; a neutral and gusts put others
 * beside it. Each tone wavers as the wind does. Under them the low rush about the ears.
 */
export const windWires = (tape, chance) => {
  const seconds = tape.samples.length / tape.rate;
  const rush = shape(lowPass(lowPass(noiseOn(like(tape), chance), 320), 500), (t) => 0.7 + 0.3 * sine(t / seconds));
  const tones = [
    [189, 26, 1, 1],
    [236, 30, 0.6, 2],
    [148, 22, 0.7, 3],
  ].map(([hertz, quality, weight, turns]) => [
    shape(
      resonate(noiseOn(like(tape), chance), [[hertz, quality, 1]]),
      (t) => 0.55 + 0.45 * sine((turns * t) / seconds + 0.3 * turns),
    ),
    weight,
  ]);
  mix(tape, [[rush, 1], ...tones]);
};

/** A stroke some kilometres away: no crack left, only the roll, the near end of the channel first and loudest. */
export const thunder = (tape, chance) => {
  const roll = highPass(highPass(lowPass(lowPass(noiseOn(like(tape), chance), 420), 520), 90), 90);
  const claps = Array.from({ length: 7 }, (_, k) => [
    0.25 * k + 0.2 * chance(),
    (1 - 0.1 * k) * (0.5 + 0.7 * chance()),
  ]);
  shape(roll, (t) => {
    let sum = 0;
    for (const [at, force] of claps) if (t > at) sum += force * gate(t - at, 9, 0.08) * exponential(-(t - at) / 0.5);
    return sum;
  });
  mix(tape, [[roll, 1]]);
  echo(tape, 300, [
    [0.31, 0.5],
    [0.72, 0.35],
  ]);
};

/** One car after another on a wet road: tyres come and go, the engine under them. */
export const traffic = (tape, chance) => {
  const seconds = tape.samples.length / tape.rate;
  const by = (t, at, width) => {
    const d = ((t - at + 1.5 * seconds) % seconds) - seconds / 2;
    return 1 / (1 + (d / width) ** 2);
  };
  const tyres = shape(
    resonate(noiseOn(like(tape), chance), [
      [900, 0.8, 1],
      [1700, 0.9, 0.5],
    ]),
    (t) => by(t, 0.3 * seconds, 0.34) + 0.6 * by(t, 0.8 * seconds, 0.5),
  );
  const engine = shape(
    lowPass(noiseOn(like(tape), chance), 190),
    (t) => by(t, 0.31 * seconds, 0.5) + 0.5 * by(t, 0.81 * seconds, 0.6),
  );
  mix(tape, [
    [tyres, 1],
    [engine, 0.7],
  ]);
};

/** Six cylinders, four strokes, 700 rpm: 35 firings a second; each a knock of the block, and the fan's slow rush. */
export const truckEngine = (tape, chance) => {
  const seconds = tape.samples.length / tape.rate;
  const knocks = like(tape);
  const pulses = like(tape);
  const count = Math.round(35 * seconds);
  for (let k = 0; k < count; k += 1) {
    const force = (k % 6 === 0 ? 1.25 : 0.9) * (0.85 + 0.3 * chance());
    add(pulses, k / 35, 1 / 35, (t) => force * (t / 0.004) * exponential(1 - t / 0.004));
    add(knocks, k / 35 + 0.0005 * chance(), 0.03, (t) =>
      struck(t, [
        [820, 0.006, force],
        [1460, 0.004, 0.7 * force],
        [2380, 0.003, 0.4 * force],
      ]),
    );
  }
  const muffled = resonate(highPass(pulses, 30), [
    [70, 2, 1],
    [140, 3, 0.6],
    [290, 3, 0.3],
  ]);
  mix(tape, [
    [muffled, 1],
    [knocks, 0.35],
    [lowPass(noiseOn(like(tape), chance), 700), 0.2],
  ]);
};

/** Wings at some 230 beats a second, many of them, none in step. */
export const bees = (tape, chance) => {
  const seconds = tape.samples.length / tape.rate;
  const swarm = like(tape);
  for (let k = 0; k < 14; k += 1) {
    const beats = Math.round((215 + 34 * chance()) * seconds) / seconds;
    const phase = chance();
    const waver = 1 + Math.floor(4 * chance());
    fill(swarm, (t) => {
      const near = 0.55 + 0.45 * sine((waver * t) / seconds + phase);
      let sum = 0;
      for (let h = 1; h <= 7; h += 1) sum += sine(beats * h * t + h * phase) / h;
      return near * sum;
    });
  }
  mix(tape, [
    [
      resonate(swarm, [
        [260, 2, 1],
        [520, 2, 0.8],
        [1100, 2, 0.4],
      ]),
      1,
    ],
  ]);
};

/** Three barks: a rough falling tone through the formants of a throat, and the yard's echo. */
export const dog = (tape, chance) => {
  const voice = like(tape);
  for (const at of [0.12, 0.5, 1.35]) {
    const base = 310 + 40 * chance();
    let turns = 0;
    add(voice, at, 0.19, (t) => {
      turns += (base * (1.25 - 1.6 * t)) / tape.rate;
      let sum = 0;
      for (let h = 1; h <= 9; h += 1) sum += sine(h * turns) / Math.sqrt(h);
      return gate(t, 0.19, 0.02) * exponential(-t / 0.12) * (sum + 1.2 * (2 * chance() - 1));
    });
  }
  mix(tape, [
    [
      resonate(voice, [
        [520, 3, 1],
        [1150, 4, 0.9],
        [2300, 5, 0.35],
      ]),
      1,
    ],
  ]);
  echo(tape, 1800, [
    [0.09, 0.22],
    [0.21, 0.12],
  ]);
};
