/** The growth of a track: fractal dimension measured on seeded patterns. */
import { type GrownCell, growInDisc, massDimension } from '../standards/breakdownGrowth.ts';
import { checkWriter, relative } from './checkWriter.ts';
import type { Check } from './types.ts';

const radius = 32;
const patterns = 6;
const outer = 13;

const grown = (eta: number): readonly (readonly GrownCell[])[] =>
  Array.from({ length: patterns }, (_, k) => growInDisc(radius, eta, `disc ${k}`));

const course = checkWriter('breakdown growth', 'published value', 'Yale fractal course, dielectric breakdown page');
const critical = checkWriter(
  'breakdown growth',
  'published value',
  'Mathiesen, Jensen et al.: no longer fractal from eta 4.0 +/- 0.3, abstract',
);
const eden = checkWriter(
  'breakdown growth',
  'common practice',
  'growth at random is compact (Eden growth): dimension 2',
);

const measured = `${patterns} patterns to a rim at ${radius} cells, mass from 3 to ${outer} cells`;

/** Checks of growth. */
export const growthChecks: readonly Check[] = [
  course({
    id: 'eta-1',
    quantity: 'fractal dimension, eta 1',
    input: measured,
    ours: () => massDimension(grown(1), 3, outer),
    reference: 1.7,
    unit: '1',
    tolerance: relative(0.05),
  }),
  critical({
    id: 'eta-6',
    quantity: 'dimension beyond the critical eta: a line',
    input: `eta 6, ${measured}`,
    ours: () => massDimension(grown(6), 3, outer),
    reference: 1,
    unit: '1',
    tolerance: relative(0.05),
  }),
  eden({
    id: 'eta-0',
    quantity: 'dimension without a field',
    input: `eta 0, 2 patterns to a rim at 20 cells, mass from 3 to 10 cells`,
    ours: () => massDimension([growInDisc(20, 0, 'eden 0'), growInDisc(20, 0, 'eden 1')], 3, 10),
    reference: 2,
    unit: '1',
    tolerance: relative(0.05),
  }),
];
