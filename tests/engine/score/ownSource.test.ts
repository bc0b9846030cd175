import { expect, it } from 'vitest';
import { laidIn, sourcePremisesOf } from '../../../src/engine/score/known.ts';
import { build } from '../../../src/engine/world/build.ts';
import { scenarioIn, shippedFolder, textOf } from '../scenario/read.ts';

const premisesIn = (name: string): readonly (string | null)[] => {
  const { scenario, hash } = scenarioIn(textOf(shippedFolder, name));
  const world = build(scenario, hash, 1);
  return laidIn(world).map((laid) => sourcePremisesOf(world, laid));
};

it('a service without its neutral is no source of the customer', () => {
  expect(premisesIn('church-close-dim.yaml').filter((premises) => premises !== null)).toEqual([]);
});

it('a plant that holds alone is one, running or stopped', () => {
  expect(premisesIn('sunny-bank-plant.yaml')).toContain('a');
});
