/** Light and weather that go together, over many draws. */
import { expect, it } from 'vitest';
import { parseQuantity } from '../../../src/engine/units/parseQuantity.ts';
import { Draw } from '../../../src/engine/variants/draw.ts';
import { plainBounds, weathers } from '../../../src/engine/variants/types.ts';
import { siteOf, timeFor, weathersOn } from '../../../src/engine/variants/weather.ts';

const si = (text: unknown, dimension: 'temperature' | 'illuminance' | 'percent' | 'length'): number => {
  const read = parseQuantity(String(text), dimension);
  if (!read.ok) throw new Error(String(text));
  return read.value;
};

const draws = Array.from({ length: 60 }, (_, i) => new Draw(`weather ${i}`));
const drawn = draws.flatMap((draw) =>
  plainBounds.light.flatMap((light) =>
    weathers.map((weather) => ({ light, weather, site: siteOf(draw, light, weather) })),
  ),
);

it('snow falls in frost only, and rain in none', () => {
  for (const { site } of drawn) {
    const celsius = si(site.temperature, 'temperature');
    if (site.precipitation === 'snow') expect(celsius).toBeLessThan(0);
    if (site.precipitation === 'rain') expect(celsius).toBeGreaterThan(0);
  }
});

it('it is wet where it rains, fog is thicker than a kilometre, and night is dark', () => {
  for (const { light, weather, site } of drawn) {
    if (weather === 'rain') expect(si(site.wetness, 'percent')).toBeGreaterThanOrEqual(0.8);
    if (weather === 'fog') expect(si(site.visibility, 'length')).toBeLessThan(1000);
    expect(si(site.sky, 'illuminance') < 1).toBe(light === 'night');
  }
});

it('no snow comes in summer, and the hour fits the light', () => {
  expect(weathersOn(weathers, '2026-07-01')).not.toContain('snow');
  expect(weathersOn(weathers, '2026-01-09')).toContain('snow');
  for (const draw of draws) {
    expect(timeFor(draw, 'day', '2026-12-20')).toMatch(/^(09|1[0-4]):\d[05]$/);
    expect(timeFor(draw, 'night', '2026-06-20')).toMatch(/^(0[0-3]|2[23]):\d[05]$/);
  }
});
