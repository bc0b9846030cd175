/** The numbers of the five parts in lines: counts always, beside each rate its count and 95 % interval, times and customer-minutes. */
import type { Confidence, Part, Score } from '../score/types.ts';
import { format, formatNumber } from '../units/formatQuantity.ts';
import type { NumberLines } from './types.ts';

type Numbers = Part['numbers'];

const percent = (share: number): string => `${formatNumber(100 * share, 2)} %`;
const minutes = (value: number): string => format(value, 'duration', 'metric');
const customerMinutes = (value: number): string => `${formatNumber(value, 6)} customer-minutes`;
const index = (value: number): string => formatNumber(value, 2);

/** '4 of 6 (67 %; 95 % interval 30 % to 90 %)'; without trials the count alone. */
const rate = (hits: number, trials: number, low: number | null, high: number | null): string =>
  trials === 0 || low === null || high === null
    ? `${hits} of ${trials}`
    : `${hits} of ${trials} (${percent(hits / trials)}; 95 % interval ${percent(low)} to ${percent(high)})`;

type Tell = (n: (name: string) => number, maybe: (name: string) => number | null) => readonly string[];

const tell: Readonly<Record<Part['name'], Tell>> = {
  recognition: (n, maybe) => [
    `Causes found: ${rate(n('hits'), n('hits') + n('misses'), maybe('hitRateLow'), maybe('hitRateHigh'))}`,
    `Causes missed: ${n('misses')}, of these ${n('missesFatal')} that can kill and ${n('missesOther')} lesser`,
    `Missed with a sign perceived ${n('lookedNotCalled')}, after a look that could not tell ${n('lookedInVain')}, without a look ${n('neverLooked')}`,
    `Look-alikes called: ${rate(n('lookAlikesCalled'), n('lookAlikes'), maybe('falseCallRateLow'), maybe('falseCallRateHigh'))}`,
    `Look-alikes let be: ${n('lookAlikesLetBe')}, of these ${n('lookAlikesNotMet')} never come upon`,
    `Calls of what was not there: ${n('falseCalls')}, of these ${n('strayCalls')} on neither cause nor look-alike`,
    `Sensitivity d\u2032 ${index(n('sensitivity'))}, bias c ${index(n('criterion'))} (below 0: calls readily); rough with so few things`,
  ],
  order: (n, maybe) => [
    `Causes perceived before hands-on: ${rate(n('causesPerceived'), n('causesToPerceive'), maybe('coverageLow'), maybe('coverageHigh'))}`,
    `Parts looked over before hands-on: ${n('partsLookedOver')} of ${n('partsInScene')}`,
    `Hands-on acts: ${n('handsOnActs')}${firstAfter(maybe('minuteOfFirstHandsOn'))}`,
    `Causes whose hazards an act came near: ${n('causesMet')}, of these ${n('causesMetTooEarly')} not known by then`,
    `Acts that exposed somebody: ${n('exposingActs')}, of these ${n('exposingBeforeKnown')} before the causes were known`,
  ],
  control: (n, maybe) => [
    `Hazards met and held at that moment: ${rate(n('held'), n('hazardsMet'), maybe('heldLow'), maybe('heldHigh'))}`,
    `Controls that held: ${n('planned')} planned, ${n('improvised')} improvised`,
    `Of these by elimination ${n('elimination')}, substitution ${n('substitution')}, engineering ${n('engineering')}, rules and warnings ${n('administrative')}, what one wears ${n('ppe')}`,
    `Covers and supports that held nothing: ${n('overControls')}${n('overControls') > 0 ? `, which took ${minutes(n('overControlMinutes'))}` : ''}`,
  ],
  exposure: (n) => [`Exposures: ${n('exposures')}, of these ${n('potentiallyFatal')} that could have been fatal`],
  service: (n, maybe) => [
    `Time taken: ${minutes(n('minutes'))}${maybe('par') === null ? '; no par is proven' : beside(maybe('par'), minutes)}`,
    `Without service: ${customerMinutes(n('customerMinutes'))}${beside(maybe('parCustomerMinutes'), customerMinutes)}`,
    `Customers restored: ${n('restored')}; without service at the end: ${n('customersOut')}`,
  ],
};

const firstAfter = (minute: number | null): string => (minute === null ? '' : `, the first after ${minutes(minute)}`);

const beside = (par: number | null, form: (value: number) => string): string =>
  par === null ? '' : ` (proven par ${form(par)})`;

const linesOf = (name: Part['name'], numbers: Numbers): readonly string[] => {
  const maybe = (key: string): number | null => {
    const value = numbers[key];
    if (value === undefined) throw new Error(`${name} has no number ${key}`);
    return value;
  };
  return tell[name]((key) => maybe(key) ?? 0, maybe);
};

/** Stated confidence in numbers: the Brier score and its parts after Murphy. */
const confidenceLines = (confidence: Confidence): readonly string[] => {
  const { asked, right, rightLow, rightHigh, meanSure, score, reliability, resolution, uncertainty } = confidence;
  return [
    `Calls with one that were right: ${rate(right, asked, rightLow, rightHigh)}`,
    `Mean confidence stated: ${percent(meanSure)}`,
    `Brier score ${index(score)} (0 is best) = reliability ${index(reliability)} \u2212 resolution ${index(resolution)} + uncertainty ${index(uncertainty)}`,
  ];
};

/** Lines by part, and those of the confidence where some was stated. */
export const numbersOf = ({ parts, confidence }: Pick<Score, 'parts' | 'confidence'>): readonly NumberLines[] => [
  ...parts.map(({ name, numbers }) => ({ part: name, lines: linesOf(name, numbers) })),
  ...(confidence === null ? [] : [{ part: 'confidence', lines: confidenceLines(confidence) }]),
];
