/** How clouded the sky of a site is drawn. */
import { expect, it } from 'vitest';
import { cloudsOf } from '../../src/scene/look/clouds.ts';
import { airOf } from '../../src/scene/look/sky.ts';
import { sceneOf } from '../engine/proof/scenes.ts';

const { site } = sceneOf('sunny-bank-plant');
const sky = (change: Partial<typeof site>) => cloudsOf({ ...site, ...change }, airOf({ ...site, ...change }));

it('covers the sky the more, the less light comes from it by day', () => {
  expect(sky({ skyLux: 60_000 }).cover).toBe(0);
  expect(sky({ skyLux: 20_000 }).cover).toBeCloseTo(Math.log10(3), 6);
  expect(sky({ skyLux: 6000 }).cover).toBe(1);
});

it('covers all of it where something falls, whatever the light', () => {
  expect(sky({ skyLux: 60_000, precipitation: 'rain' }).cover).toBe(1);
  expect(sky({ light: 'night', skyLux: 0.3, precipitation: 'snow' }).cover).toBe(1);
});

it('shows no cloud through fog', () => {
  expect(sky({ visibilityM: 160 }).seen).toBe(0);
  expect(sky({ visibilityM: 10_000 }).seen).toBe(1);
});
