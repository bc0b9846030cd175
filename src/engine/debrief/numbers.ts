/** The numbers of the five parts, each with its name and unit. */
import type { Part, Score } from '../score/types.ts';
import { format, formatNumber } from '../units/formatQuantity.ts';

type Form = (value: number) => string;
const count: Form = (value) => formatNumber(value);
const index: Form = (value) => formatNumber(value);
const share: Form = (value) => `${formatNumber(100 * value)} %`;
const minutes: Form = (value) => format(value, 'duration', 'metric');
const customerMinutes: Form = (value) => `${formatNumber(value, 6)} customer-minutes`;

/** By part, in the order in which they are shown. */
const labels: Readonly<Record<Part['name'], Readonly<Record<string, readonly [label: string, form: Form]>>>> = {
  recognition: {
    hits: ['causes found', count],
    misses: ['causes missed', count],
    missesFatal: ['of these causes that can kill', count],
    missesOther: ['of these lesser ones', count],
    falseCalls: ['calls of what was not there', count],
    lookAlikes: ['look-alikes', count],
    lookAlikesCalled: ['look-alikes called', count],
    lookAlikesLetBe: ['look-alikes let be', count],
    strayCalls: ['calls of what was neither cause nor look-alike', count],
    hitRateLow: ['share of causes found, 95 % interval from', share],
    hitRateHigh: ['share of causes found, 95 % interval to', share],
    falseCallRateLow: ['share of look-alikes called, 95 % interval from', share],
    falseCallRateHigh: ['share of look-alikes called, 95 % interval to', share],
    sensitivity: ['sensitivity d\u2032', index],
    criterion: ['bias c (below 0: calls readily)', index],
    lookedNotCalled: ['missed with a sign perceived', count],
    lookedInVain: ['missed after a look that could not tell', count],
    neverLooked: ['missed without a look', count],
  },
  order: {
    coverage: ['share of causes perceived before hands-on', share],
    causesPerceived: ['causes perceived before hands-on', count],
    causesToPerceive: ['causes that could be', count],
    partsLookedOver: ['parts looked over before hands-on', count],
    partsInScene: ['parts in the scene', count],
    handsOnActs: ['hands-on acts', count],
    causesMet: ['causes whose hazards an act came near', count],
    causesMetTooEarly: ['of these before they were known', count],
    exposingActs: ['acts that exposed somebody', count],
    exposingBeforeKnown: ['of these before their causes were known', count],
    minuteOfFirstHandsOn: ['first hands-on act after', minutes],
  },
  control: {
    hazardsMet: ['hazards met', count],
    held: ['held by a control', count],
    planned: ['controls that held and had been planned', count],
    improvised: ['controls that held and had not', count],
    overControls: ['covers and supports that held nothing', count],
    overControlMinutes: ['time that they took', minutes],
  },
  exposure: {
    exposures: ['exposures', count],
    potentiallyFatal: ['that could have been fatal', count],
  },
  service: {
    minutes: ['time taken', minutes],
    customerMinutes: ['without service', customerMinutes],
    customersOut: ['customers without service at the end', count],
    restored: ['customers restored', count],
    par: ['proven par', minutes],
    parCustomerMinutes: ['proven par without service', customerMinutes],
  },
};

/** One line a number, 'order: hands-on acts 4'; numbers that do not apply are left out. */
export const numbersOf = (parts: readonly Part[]): readonly string[] =>
  parts.flatMap(({ name, numbers }) =>
    Object.entries(numbers).flatMap(([key, value]) => {
      const entry = labels[name][key];
      if (entry === undefined) throw new Error(`no words for the number ${key} of ${name}`);
      const [label, form] = entry;
      return value === null ? [] : [`${name}: ${label} ${form(value)}`];
    }),
  );

/** Stated confidence in numbers: the Brier score and its parts after Murphy; nothing where none was stated. */
export const confidenceLines = ({ confidence }: Score): readonly string[] => {
  if (confidence === null) return [];
  const { asked, right, meanSure, score, reliability, resolution, uncertainty } = confidence;
  return [
    `confidence: calls with one ${count(asked)}, of these right ${count(right)}`,
    `confidence: mean ${share(meanSure)}`,
    `confidence: Brier score ${index(score)} = reliability ${index(reliability)} \u2212 resolution ${index(resolution)} + uncertainty ${index(uncertainty)}`,
  ];
};
