// What is struck, shut or bursts, once.
import { exponential, sine } from './arithmetic.mjs';
import { add, echo, gate, highPass, like, lowPass, mix, noiseOn, shape, struck } from './tape.mjs';

const burst = (tape, chance, at, decay, force = 1) =>
  add(tape, at, 14 * decay, (t) => force * gate(t, 15 * decay, 0.0006) * exponential(-t / decay) * (2 * chance() - 1));

/** Hammer on sound wood: the shell rings, a little, and the blow is bright. */
export const hammerSound = (tape, chance) => {
  const [ring, blow] = [like(tape), like(tape)];
  const modes = [
    [236, 0.05, 1],
    [431, 0.042, 0.8],
    [782, 0.03, 0.55],
    [1265, 0.018, 0.4],
    [2050, 0.009, 0.25],
  ];
  add(ring, 0.005, 0.5, (t) => struck(t, modes));
  burst(blow, chance, 0.005, 0.003);
  mix(tape, [
    [ring, 1],
    [highPass(blow, 900), 0.35],
  ]);
};

/** Hammer on wood that has gone soft inside: low, short, nothing rings. */
export const hammerDull = (tape, chance) => {
  const [thud, blow] = [like(tape), like(tape)];
  const modes = [
    [128, 0.02, 1],
    [219, 0.014, 0.85],
    [387, 0.01, 0.7],
    [560, 0.006, 0.45],
  ];
  add(thud, 0.005, 0.4, (t) => struck(t, modes));
  burst(blow, chance, 0.005, 0.006);
  mix(tape, [
    [thud, 1],
    [lowPass(lowPass(blow, 700), 700), 0.4],
  ]);
};

const bang = (tape, chance, { crack, tail, dull, thump, low }) => {
  const [front, gas, body] = [like(tape), like(tape), like(tape)];
  burst(front, chance, 0.004, crack);
  burst(gas, chance, 0.005, tail);
  add(body, 0.004, 10 * thump, (t) => gate(t, 12 * thump, 0.002) * exponential(-t / thump) * sine(low * t));
  mix(tape, [
    [lowPass(front, dull * 2.5), 0.8],
    [lowPass(lowPass(gas, dull), dull), 0.7],
    [body, 1],
  ]);
  let peak = 0;
  for (const x of tape.samples) peak = Math.max(peak, Math.abs(x));
  for (let k = 0; k < tape.samples.length; k += 1) {
    const x = tape.samples[k] / peak;
    tape.samples[k] = (4 * x) / (1 + 3 * Math.abs(x)); // the ear, too, takes a report's front as less than it is
  }
};

/** An expulsion fuse: a report, the gas that leaves the tube, and what the trees send back. */
export const fuseBang = (tape, chance) => {
  bang(tape, chance, { crack: 0.004, tail: 0.05, dull: 2200, thump: 0.05, low: 82 });
  echo(tape, 900, [
    [0.137, 0.16],
    [0.213, 0.1],
    [0.331, 0.09],
    [0.469, 0.05],
  ]);
};

/** A short dull crack. */
export const flash = (tape, chance) =>
  bang(tape, chance, { crack: 0.003, tail: 0.018, dull: 900, thump: 0.03, low: 68 });

/** A fuse tube swung home: latch, hinge and porcelain, then a little rattle. */
export const cutoutClose = (tape, chance) => {
  const [metal, body] = [like(tape), like(tape)];
  for (const [at, force] of [
    [0.005, 1],
    [0.024, 0.6],
    [0.079, 0.22],
    [0.118, 0.1],
  ]) {
    const modes = [
      [618, 0.02, force],
      [1343, 0.026, 0.8 * force],
      [2217, 0.02, 0.6 * force],
      [3490, 0.012, 0.45 * force],
    ];
    add(metal, at, 0.3, (t) => struck(t, modes));
    burst(body, chance, at, 0.004, force);
  }
  add(body, 0.005, 0.3, (t) => struck(t, [[294, 0.018, 1.2]]));
  mix(tape, [
    [metal, 1],
    [body, 0.6],
  ]);
};

/**
 * A moulded-case breaker that trips: the latch lets go, the springs throw the contacts open against their stop, and the plastic case
 * and the sheet steel of the panel answer. No bang: what it breaks is in the chamber.
 */
export const breakerTrip = (tape, chance) => {
  const [metal, box] = [like(tape), like(tape)];
  for (const [at, force] of [
    [0.005, 0.45],
    [0.0115, 1],
    [0.031, 0.28],
  ]) {
    add(metal, at, 0.12, (t) =>
      struck(t, [
        [1240, 0.007, force],
        [2310, 0.005, 0.7 * force],
        [3870, 0.003, 0.5 * force],
      ]),
    );
    burst(metal, chance, at, 0.0016, force);
    add(box, at, 0.25, (t) =>
      struck(t, [
        [176, 0.03, 0.8 * force],
        [342, 0.024, force],
        [611, 0.016, 0.6 * force],
      ]),
    );
  }
  mix(tape, [
    [metal, 0.8],
    [box, 1],
  ]);
};

/** A tap changer in its tank: the motor winds a spring, the contacts go over with one clack, oil and steel take the top off it; then quiet. */
export const tapChange = (tape, chance) => {
  const [motor, clack] = [like(tape), like(tape)];
  add(motor, 0.3, 0.9, (t) => gate(t, 0.9, 0.12) * (sine(118 * t) + 0.5 * sine(236 * t) + 0.4 * (2 * chance() - 1)));
  add(clack, 1.16, 0.5, (t) =>
    struck(t, [
      [148, 0.05, 1],
      [291, 0.04, 0.9],
      [520, 0.022, 0.6],
      [905, 0.012, 0.35],
    ]),
  );
  burst(clack, chance, 1.16, 0.004, 0.6);
  mix(tape, [
    [lowPass(motor, 600), 0.16],
    [lowPass(clack, 1800), 1],
  ]);
};

/** Meter blades entering their jaws: two small clicks. */
export const meterClick = (tape, chance) => {
  const blow = like(tape);
  for (const [at, force] of [
    [0.005, 0.7],
    [0.052, 1],
  ]) {
    const modes = [
      [1790, 0.006, force],
      [3120, 0.005, 0.7 * force],
      [4710, 0.004, 0.5 * force],
    ];
    add(tape, at, 0.1, (t) => struck(t, modes));
    burst(blow, chance, at, 0.0015, force);
  }
  mix(tape, [[blow, 0.05]]);
};

/** A cloth drawn along a fibreglass pole, there and back. */
export const stickWipe = (tape, chance) => {
  const rub = highPass(lowPass(noiseOn(like(tape), chance), 4200), 900);
  shape(rub, (t) => gate(t - 0.02, 0.5, 0.18) + 0.8 * gate(t - 0.62, 0.5, 0.18));
  mix(tape, [[rub, 1]]);
};
