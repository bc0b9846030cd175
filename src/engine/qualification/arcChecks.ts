/** Arc energy: the rule's table, its worked example, and the continuous estimate held against other cells of the table. */
import { arcClothingFrom, estimateArcEnergy, leeArcEnergy, tabledArcEnergy } from '../standards/arcEnergy.ts';
import { asPrinted, checkWriter, relative } from './checkWriter.ts';
import { sources } from './sources.ts';
import type { Check } from './types.ts';

const table = `${sources.rule269}, Appendix E, Table 6`;
const tabled = checkWriter('arc energy by table', 'published value', table);
const estimated = checkWriter('arc energy estimate', 'published value', table);
const clothing = checkWriter('arc energy by table', 'published value', `${sources.rule269}, (l)(8)(iv)(D)`);
const lee = checkWriter('arc energy estimate', 'from memory', 'Lee equation, R. H. Lee 1982, from memory');

/** Line kV, kA, cycles for 4, 5, 8 and 12 cal/cm2 as printed. */
const rows: readonly (readonly [number, number, readonly [number, number, number, number]])[] = [
  [12.47, 5, [46, 58, 92, 138]],
  [12.47, 10, [18, 22, 36, 54]],
  [12.47, 15, [10, 12, 20, 30]],
  [12.47, 20, [6, 8, 13, 19]],
  [24.94, 5, [28, 34, 55, 83]],
  [24.94, 10, [11, 14, 23, 34]],
  [34.5, 5, [21, 26, 42, 62]],
  [34.5, 10, [9, 11, 18, 26]],
  [46, 5, [16, 20, 32, 48]],
  [46, 10, [7, 9, 14, 21]],
];
const columns = [4, 5, 8, 12] as const;

const column = (kilovolts: number, kiloamperes: number, cycles: number): number =>
  tabledArcEnergy(kilovolts * 1000, kiloamperes * 1000, cycles / 60)?.calories ?? Number.NaN;

const cells = rows.slice(0, 4).flatMap(([kilovolts, kiloamperes, cycles]) =>
  cycles.map((allowed, k) =>
    tabled({
      id: `${kilovolts}-${kiloamperes}-${allowed}`,
      quantity: 'lowest column that covers the fault',
      input: `${kilovolts} kV, ${kiloamperes} kA, ${allowed} cycles`,
      ours: () => column(kilovolts, kiloamperes, allowed),
      reference: columns[k] ?? Number.NaN,
      unit: 'cal/cm2',
      tolerance: asPrinted,
    }),
  ),
);

const example = tabled({
  id: 'example',
  quantity: 'lowest column that covers the fault',
  input: '12.47 kV, 8 kA, 10 cycles: the worked example of Appendix E, III.A',
  ours: () => column(12.47, 8, 10),
  reference: 4,
  unit: 'cal/cm2',
  tolerance: asPrinted,
});

const threshold = clothing({
  id: 'clothing',
  quantity: 'energy above which clothing is flame resistant',
  input: 'none',
  ours: () => arcClothingFrom,
  reference: 2,
  unit: 'cal/cm2',
  tolerance: asPrinted,
});

// The estimate is made from the 12 cal/cm2 column; the other columns are outside values for it.
const estimates = rows
  .filter(([, kiloamperes]) => kiloamperes <= 10)
  .flatMap(([kilovolts, kiloamperes, cycles]) =>
    [0, 2].map((k) =>
      estimated({
        id: `${kilovolts}-${kiloamperes}-${columns[k]}`,
        quantity: `energy at 380 mm, from the 12 cal/cm2 column`,
        input: `${kilovolts} kV, ${kiloamperes} kA, ${cycles[k]} cycles`,
        ours: () =>
          estimateArcEnergy(kilovolts * 1000, kiloamperes * 1000, (cycles[k] ?? 0) / 60)?.calories ?? Number.NaN,
        reference: columns[k] ?? Number.NaN,
        unit: 'cal/cm2',
        tolerance: relative(0.05),
      }),
    ),
  );

const byLee = lee({
  id: 'lee',
  quantity: 'energy of an arc in open air',
  input: '480 V, 20 kA, 0.1 s, 455 mm',
  ours: () => leeArcEnergy(480, 20000, 0.1, 0.455).calories,
  reference: 2.374,
  unit: 'cal/cm2',
  tolerance: relative(0.001),
});

/** Checks of arc energy. */
export const arcChecks: readonly Check[] = [...cells, example, threshold, ...estimates, byLee];
