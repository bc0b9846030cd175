/** Protective equipment: gloves, live-line tools, intervals. */
import {
  cuffGap,
  gloveClasses,
  gloveRatings,
  requiredGloveClass,
  rubberTestMonths,
  voltageToCover,
} from '../standards/gloves.ts';
import { designTest, inServiceTest, stickTestMonths } from '../standards/liveLineTools.ts';
import { asPrinted, checkWriter, relative } from './checkWriter.ts';
import { sources } from './sources.ts';
import type { Check } from './types.ts';

const i4 = checkWriter('gloves', 'published value', `${sources.rule137}, Table I-4`);
const i5 = checkWriter('gloves', 'published value', `${sources.rule137}, Table I-5`);
const cuffs = checkWriter('gloves', 'published value', sources.mil1025);
const j1 = checkWriter('live-line tools', 'published value', `${sources.rule269}, (j)(1)`);
const j2 = checkWriter('live-line tools', 'published value', `${sources.rule269}, (j)(2)(iii)`);

/** Maximum use and retest volts by class, as printed. */
const ratings: readonly (readonly [number, number])[] = [
  [500, 2500],
  [1000, 5000],
  [7500, 10000],
  [17000, 20000],
  [26500, 30000],
  [36000, 40000],
];
const classes = gloveClasses.flatMap((name, row) => [
  i4({
    id: `use-${name}`,
    quantity: 'maximum use voltage',
    input: `class ${name}`,
    ours: () => gloveRatings[name].maxUse,
    reference: ratings[row]?.[0] ?? Number.NaN,
    unit: 'V',
    tolerance: asPrinted,
  }),
  i4({
    id: `retest-${name}`,
    quantity: 'retest voltage',
    input: `class ${name}`,
    ours: () => gloveRatings[name].retest,
    reference: ratings[row]?.[1] ?? Number.NaN,
    unit: 'V',
    tolerance: asPrinted,
  }),
]);
const chosen = (
  [
    ['three-phase', true, 17000],
    ['phase-to-ground', false, 7500],
  ] as const
).map(([exposure, multiphase, reference]) =>
  i4({
    id: `chosen-${exposure}`,
    quantity: 'maximum use voltage of the class chosen',
    input: `12.47 kV, ${exposure} exposure`,
    ours: () => {
      const name = requiredGloveClass(voltageToCover(12470, multiphase));
      return name === undefined ? Number.NaN : gloveRatings[name].maxUse;
    },
    reference,
    unit: 'V',
    tolerance: asPrinted,
  }),
);
const intervals = (
  [
    ['gloves', 6],
    ['sleeves', 12],
    ['blankets', 12],
    ['unissued', 12],
  ] as const
).map(([what, reference]) =>
  i5({
    id: `interval-${what}`,
    quantity: 'test interval',
    input: what,
    ours: () => rubberTestMonths[what],
    reference,
    unit: 'months',
    tolerance: asPrinted,
  }),
);
const gaps = (
  [
    ['0', 25],
    ['1', 25],
    ['2', 50],
    ['3', 75],
    ['4', 100],
  ] as const
).map(([name, reference]) =>
  cuffs({
    id: `cuff-${name}`,
    quantity: 'bare rubber above the protector',
    input: `class ${name}`,
    ours: () => cuffGap[name] * 1000,
    reference,
    unit: 'mm',
    tolerance: asPrinted,
  }),
);

/** Volts per metre and seconds, design test, as printed. */
const sticks = (
  [
    ['fibreglass', 328100, 300, 246100],
    ['wood', 246100, 180, 164000],
  ] as const
).flatMap(([material, design, seconds, service]) => [
  j1({
    id: `design-${material}`,
    quantity: 'design test',
    input: `1 m of ${material}`,
    ours: () => designTest(material, 1).volts,
    reference: design,
    unit: 'V',
    tolerance: relative(0.0005),
  }),
  j1({
    id: `design-time-${material}`,
    quantity: 'duration of the design test',
    input: material,
    ours: () => designTest(material, 1).seconds,
    reference: seconds,
    unit: 's',
    tolerance: asPrinted,
  }),
  j2({
    id: `service-${material}`,
    quantity: 'in-service test',
    input: `1 m of ${material}`,
    ours: () => inServiceTest(material, 1).volts,
    reference: service,
    unit: 'V',
    tolerance: relative(0.0005),
  }),
  j2({
    id: `service-time-${material}`,
    quantity: 'duration of the in-service test',
    input: material,
    ours: () => inServiceTest(material, 1).seconds,
    reference: 60,
    unit: 's',
    tolerance: asPrinted,
  }),
]);
const interval = j2({
  id: 'interval',
  quantity: 'interval between examinations',
  input: 'tools used for primary protection',
  ours: () => stickTestMonths,
  reference: 24,
  unit: 'months',
  tolerance: asPrinted,
});

/** Checks of protective equipment. */
export const equipmentChecks: readonly Check[] = [...classes, ...chosen, ...intervals, ...gaps, ...sticks, interval];
