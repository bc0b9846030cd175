/** Minimum approach distance: the tables as printed, and the equations held against the tables. */
import { electricalComponent, minimumApproach, unqualifiedApproach } from '../standards/approachDistance.ts';
import { equationApproach, roundedUp } from '../standards/approachEquation.ts';
import { asPrinted, checkWriter, within } from './checkWriter.ts';
import { sources } from './sources.ts';
import type { Check } from './types.ts';

const exposures = ['phase-to-ground', 'phase-to-phase'] as const;

/** Line kV within the row, metres phase-to-ground and phase-to-phase as printed. */
type Row = readonly [number, number, number];

const tableR6: readonly Row[] = [
  [0.48, 0.33, 0.33],
  [4.16, 0.63, 0.63],
  [12.47, 0.65, 0.68],
  [34.5, 0.77, 0.89],
  [46, 0.84, 0.98],
  [69, 1, 1.2],
];
const tableR7: readonly Row[] = [
  [115, 1.13, 1.42],
  [138, 1.3, 1.64],
  [161, 1.46, 1.94],
  [230, 2.01, 3.08],
  [345, 3.41, 5.52],
  [400, 4.25, 6.81],
  [500, 5.07, 8.24],
  [765, 6.88, 11.38],
];

const model = 'approach distance';
const r6 = checkWriter(model, 'published value', `${sources.rule269}, Table R-6`);
const r7 = checkWriter(model, 'published value', `${sources.rule269}, Table R-7`);
const r5 = checkWriter(model, 'published value', `${sources.rule269}, Table R-6 note 1 with Table R-5`);
const b2 = checkWriter(model, 'published value', `${sources.rule269}, Appendix B, Table 2`);
const r333 = checkWriter(model, 'published value', `${sources.rule333}(c)(3)(i)`);
const equation = checkWriter('approach equation', 'published value', `${sources.rule269}, Table R-3 against R-6, R-7`);

const tabled = exposures.flatMap((exposure, column) => [
  ...tableR6.map((row) =>
    r6({
      id: `r6-${row[0]}-${exposure}`,
      quantity: `distance, ${exposure}`,
      input: `${row[0]} kV`,
      ours: () => minimumApproach(row[0] * 1000, exposure).metres,
      reference: column === 0 ? row[1] : row[2],
      unit: 'm',
      tolerance: asPrinted,
    }),
  ),
  ...tableR7.map((row) =>
    r7({
      id: `r7-${row[0]}-${exposure}`,
      quantity: `distance, ${exposure}`,
      input: `${row[0]} kV`,
      ours: () => minimumApproach(row[0] * 1000, exposure).metres,
      reference: column === 0 ? row[1] : row[2],
      unit: 'm',
      tolerance: asPrinted,
    }),
  ),
]);

const altitudes: readonly (readonly [number, number])[] = [
  [1600, 0.702],
  [2700, 0.7605],
  [4200, 0.845],
];
const high = altitudes.map(([altitude, reference]) =>
  r5({
    id: `altitude-${altitude}`,
    quantity: 'distance, phase-to-ground',
    input: `12.47 kV, ${altitude} m above the sea`,
    ours: () => minimumApproach(12470, 'phase-to-ground', altitude).metres,
    reference,
    unit: 'm',
    tolerance: within(0.0005),
  }),
);

const derivation: readonly (readonly [number, number])[] = [
  [15, 3.72],
  [36, 15.93],
  [46, 22.74],
  [72.5, 38.25],
];
const sparkover = derivation.map(([kilovolts, reference]) =>
  b2({
    id: `electrical-${kilovolts}`,
    quantity: 'electrical component, phase-to-ground',
    input: `${kilovolts} kV, overvoltage 3.0`,
    ours: () => 100 * (electricalComponent(kilovolts * 1000, 'phase-to-ground') ?? Number.NaN),
    reference,
    unit: 'cm',
    tolerance: within(0.05),
  }),
);

const unqualified = r333({
  id: 'unqualified',
  quantity: 'distance of an unqualified person',
  input: '7.2 kV to ground',
  ours: () => 100 * unqualifiedApproach(7200),
  reference: 305,
  unit: 'cm',
  tolerance: within(0.5),
});

const byEquation = exposures.flatMap((exposure, column) =>
  [...tableR6, ...tableR7].map((row) =>
    equation({
      id: `${row[0]}-${exposure}`,
      quantity: `distance by equation, up to the next cm, ${exposure}`,
      input: `${row[0]} kV, to 900 m`,
      ours: () => roundedUp(equationApproach(row[0] * 1000, exposure)),
      reference: column === 0 ? row[1] : row[2],
      unit: 'm',
      tolerance: asPrinted,
    }),
  ),
);

/** Checks of approach distances. */
export const approachChecks: readonly Check[] = [...tabled, ...high, ...sparkover, unqualified, ...byEquation];
