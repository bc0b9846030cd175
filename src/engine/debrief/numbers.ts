/** The numbers of the five parts, each with its name and unit. */
import type { Part } from '../score/types.ts';
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
    falseCalls: ['calls of what was not there', count],
    lookAlikes: ['look-alikes', count],
    lookAlikesCalled: ['look-alikes called', count],
    hitRateLow: ['share of causes found, 95 % interval from', share],
    hitRateHigh: ['share of causes found, 95 % interval to', share],
    sensitivity: ['sensitivity d\u2032', index],
    criterion: ['bias c (below 0: calls readily)', index],
    lookedNotCalled: ['signs perceived and not called', count],
  },
  order: {
    coverage: ['causes perceived before hands-on', share],
    handsOnActs: ['hands-on acts', count],
    exposingActs: ['acts that exposed somebody', count],
    exposingBeforeKnown: ['of these before their causes were known', count],
    minuteOfFirstHandsOn: ['first hands-on act after', minutes],
  },
  control: {
    hazardsMet: ['hazards met', count],
    held: ['held by a control', count],
    planned: ['controls that held and had been planned', count],
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
