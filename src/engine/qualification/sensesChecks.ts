/** What can be seen and heard, and how a trainee's calls are counted. */
import {
  acuity,
  angularSize,
  contrastThroughAir,
  lampIlluminance,
  lineRatio,
  luminance,
  patchRatio,
} from '../standards/acuity.ts';
import { heardMargin, levelAt, levelFromPower, sumLevels, windBackground } from '../standards/hearing.ts';
import { inverseNormal } from '../standards/inverseNormal.ts';
import { bark, maskAt } from '../standards/masking.ts';
import { aPrime, detection } from '../standards/signalDetection.ts';
import { wilsonInterval } from '../standards/wilson.ts';
import { checkWriter, relative, within } from './checkWriter.ts';
import type { Check } from './types.ts';

const ophthalmic = checkWriter(
  'seeing',
  'published value',
  'ophthalmology texts: a 20/20 letter is 8.87 mm at 20 ft, 5 arcmin',
);
const fl1 = checkWriter('seeing', 'published value', 'ANSI/NEMA FL 1 practice: 0.25 lx at the beam distance');
const formula = checkWriter(
  'seeing',
  'independent program',
  'Ikeda, Noda and Yamaguchi formula, evaluated with a Python program',
);
const koschmieder = checkWriter('seeing', 'from memory', 'Koschmieder: 2 % contrast at the visibility, from memory');
const spread = checkWriter(
  'seeing',
  'published value',
  'Hecht and Mintz 1939, J. Gen. Physiol. 22(5) 593, abstract: 1 % contrast',
);
const seeing = [
  ophthalmic({
    id: 'letter',
    quantity: 'angle of a letter',
    input: '8.87 mm at 20 ft',
    ours: () => angularSize(0.00887, 6.096),
    reference: 5,
    unit: 'arcmin',
    tolerance: relative(0.001),
  }),
  fl1({
    id: 'lamp',
    quantity: 'light of a lamp at its beam distance',
    input: '100 m',
    ours: () => lampIlluminance(100, 100),
    reference: 0.25,
    unit: 'lx',
    tolerance: relative(1e-9),
  }),
  ...(
    [
      [0.01, 100, 0.148],
      [1, 100, 0.8475],
      [100, 100, 1.8116],
      [10, 50, 0.9919],
      [1, 20, 0.3579],
    ] as const
  ).map(([light, percent, reference]) =>
    formula({
      id: `acuity-${light}-${percent}`,
      quantity: 'decimal acuity',
      input: `${light} cd/m2, contrast ${percent} %`,
      ours: () => acuity(light, percent / 100),
      reference,
      unit: '1',
      tolerance: within(0.0002),
    }),
  ),
  formula({
    id: 'mark',
    quantity: 'ratio of a mark to the smallest seen, lamp',
    input: '3 mm at 12 m, reflectance 0.3, contrast 50 %, beam distance 100 m',
    ours: () =>
      patchRatio({ size: 0.003, distance: 12, contrast: 0.5, luminance: luminance(lampIlluminance(100, 12), 0.3) }),
    reference: 0.58,
    unit: '1',
    tolerance: within(0.005),
  }),
  koschmieder({
    id: 'fog',
    quantity: 'contrast left at the visibility',
    input: 'contrast 1',
    ours: () => 100 * contrastThroughAir(1, 200, 200),
    reference: 2,
    unit: '%',
    tolerance: within(0.005),
  }),
  spread({
    id: 'line',
    quantity: 'contrast at which a line as wide as the eye’s spread is just seen, best light',
    input: '1.5 arcmin, 1000 cd/m2',
    ours: () => 100 / (lineRatio({ size: 0.0004363323, distance: 1, contrast: 1, luminance: 1000 }) * 1),
    reference: 1,
    unit: '%',
    tolerance: relative(0.001),
  }),
];

const power = checkWriter(
  'hearing',
  'published value',
  'page on European limits for generators: 97 dB is 72 dB(A) at 7 m',
);
const iso = checkWriter('hearing', 'published value', 'ISO 9613-2 as worked in a noise-prediction manual');
const boersma = checkWriter(
  'hearing',
  'published value',
  'Boersma 1997, J. Acoust. Soc. Am. 101(4) 2104-2110, abstract',
);
const hand = checkWriter('hearing', 'common practice', 'levels added by hand');
const step = checkWriter('hearing', 'from memory', 'just audible: 1 dB on the background, from memory');
const zwicker = checkWriter(
  'hearing',
  'from memory',
  'Zwicker 1961, J. Acoust. Soc. Am. 33, 248: edges of the critical bands, from memory',
);
const terhardt = checkWriter('hearing', 'from memory', 'Terhardt 1979, slopes of masking, from memory, worked by hand');
const masking = [
  ...(
    [
      [200, 2],
      [510, 5],
      [1080, 9],
      [2000, 13],
      [4400, 18],
    ] as const
  ).map(([frequency, reference]) =>
    zwicker({
      id: `bark-${frequency}`,
      quantity: 'critical-band rate',
      input: `${frequency} Hz`,
      ours: () => bark(frequency),
      reference,
      unit: 'Bark',
      tolerance: within(0.06),
    }),
  ),
  terhardt({
    id: 'mask-below',
    quantity: 'mask of a tone at 1080 Hz of 60 dB, 0.960 Bark below at 27 dB a Bark',
    input: '920 Hz',
    ours: () => maskAt(60, 1080, 920),
    reference: 34.07,
    unit: 'dB',
    tolerance: within(0.02),
  }),
  terhardt({
    id: 'mask-above',
    quantity: 'mask of a tone at 1080 Hz of 60 dB, 1.017 Bark above at 24 + 0.213 - 12 dB a Bark',
    input: '1270 Hz',
    ours: () => maskAt(60, 1080, 1270),
    reference: 47.585,
    unit: 'dB',
    tolerance: within(0.02),
  }),
];

const hearing = [
  power({
    id: 'generator',
    quantity: 'level at 7 m over hard ground',
    input: 'sound power 97 dB',
    ours: () => levelFromPower(97, 7, true),
    reference: 72,
    unit: 'dB(A)',
    tolerance: within(0.15),
  }),
  iso({
    id: 'free-field',
    quantity: 'level at 100 m, less 0.2 dB of air absorption',
    input: 'sound power 100 dB, free field',
    ours: () => levelFromPower(100, 100, false) - 0.2,
    reference: 48.8,
    unit: 'dB',
    tolerance: within(0.01),
  }),
  boersma({
    id: 'wind',
    quantity: 'background of open grassland at 1 m/s',
    input: '22.6 lg v + 22.7',
    ours: () => windBackground(1),
    reference: 22.7,
    unit: 'dB(A)',
    tolerance: within(0.01),
  }),
  hand({
    id: 'doubling',
    quantity: 'level at twice the distance',
    input: '72 dB at 7 m',
    ours: () => levelAt(72, 7, 14),
    reference: 65.979,
    unit: 'dB',
    tolerance: within(0.001),
  }),
  hand({
    id: 'sum',
    quantity: 'two equal levels together',
    input: '60 dB and 60 dB',
    ours: () => sumLevels([60, 60]),
    reference: 63.0103,
    unit: 'dB',
    tolerance: within(0.0001),
  }),
  step({
    id: 'margin',
    quantity: 'level below the background that is just heard',
    input: '10 lg(10^0.1 - 1)',
    ours: () => heardMargin,
    reference: -5.868,
    unit: 'dB',
    tolerance: within(0.001),
  }),
];

const manual = checkWriter('signal detection', 'published value', 'statpsych manual, signal(82, 46, 100, 100)');
const newcombe = checkWriter('signal detection', 'published value', 'Newcombe 1998, Table I, Wilson score interval');
const scipy = checkWriter('signal detection', 'independent program', 'SciPy');
const trials = { hits: 82, signals: 100, falseCalls: 46, noise: 100 };
const intervals: readonly (readonly [number, number, number, number])[] = [
  [81, 263, 0.2553, 0.3662],
  [15, 148, 0.0624, 0.1605],
  [1, 29, 0.0061, 0.1718],
];
const counting = [
  ...(
    [
      ['hitRate', 0.8168317],
      ['falseCallRate', 0.460396],
      ['sensitivity', 1.002793],
      ['criterion', -0.4019603],
    ] as const
  ).map(([name, reference]) =>
    manual({
      id: name.toLowerCase(),
      quantity: name,
      input: '82 of 100 hits, 46 of 100 false calls, log-linear',
      ours: () => detection(trials)[name],
      reference,
      unit: '1',
      tolerance: within(1e-6),
    }),
  ),
  ...intervals.flatMap(([hits, count, lower, upper]) => [
    newcombe({
      id: `wilson-${hits}-${count}-lower`,
      quantity: 'lower bound, 95 %',
      input: `${hits} of ${count}`,
      ours: () => wilsonInterval(hits, count).lower,
      reference: lower,
      unit: '1',
      tolerance: within(0.00006),
    }),
    newcombe({
      id: `wilson-${hits}-${count}-upper`,
      quantity: 'upper bound, 95 %',
      input: `${hits} of ${count}`,
      ours: () => wilsonInterval(hits, count).upper,
      reference: upper,
      unit: '1',
      tolerance: within(0.00006),
    }),
  ]),
  scipy({
    id: 'a-prime',
    quantity: 'A’',
    input: 'hit rate 0.8, false call rate 0.4',
    ours: () => aPrime(0.8, 0.4),
    reference: 0.791667,
    unit: '1',
    tolerance: within(1e-6),
  }),
  scipy({
    id: 'quantile',
    quantity: 'normal quantile of 0.975',
    input: '0.975',
    ours: () => inverseNormal(0.975),
    reference: 1.959963984540054,
    unit: '1',
    tolerance: within(1e-14),
  }),
];

/** Checks of the senses and of counting calls. */
export const sensesChecks: readonly Check[] = [...seeing, ...hearing, ...masking, ...counting];
