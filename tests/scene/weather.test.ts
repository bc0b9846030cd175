import { describe, expect, it } from 'vitest';
import { blowout, sway, swing } from '../../src/scene/look/blowout.ts';
import { airOf } from '../../src/scene/look/sky.ts';
import { stormOf } from '../../src/scene/look/storm.ts';
import { followSun, sunWay } from '../../src/scene/look/sun.ts';
import { fogWorld } from './fogWorld.ts';

const { site } = fogWorld();

describe('wind in a span', () => {
  it('swings it by pressure over weight, less than a right angle', () => {
    // 10 m/s: 61.3 Pa on 6.35 mm is 0.389 N/m against 0.838 N/m of weight (Swan, 85.4 kg/km).
    expect((blowout(10) * 180) / Math.PI).toBeCloseTo(24.9, 1);
    expect(blowout(0)).toBe(0);
    expect(blowout(60)).toBeLessThan(Math.PI / 2);
  });

  it('hangs steady at rest, and a gust stays within half of it', () => {
    swing(8, 0);
    const steady = sway.value[0] as number;
    for (let s = 0.1; s < 30; s += 0.1) {
      swing(8, s);
      expect(sway.value[0] as number).toBeGreaterThan(0.5 * steady);
      expect(sway.value[0] as number).toBeLessThan(1.5 * steady);
    }
  });
});

it('lightning never flashes oftener than three times a second, and mostly not at all', () => {
  const storm = stormOf(23);
  let rises = 0;
  let before = 0;
  let dark = 0;
  let since = 9;
  for (let i = 0; i < 120 * 60; i++) {
    const now = storm.step(1 / 60);
    since += 1 / 60;
    if (now > 0.02 && before <= 0.02) {
      expect(since).toBeGreaterThan(1 / 3);
      since = 0;
      rises++;
    }
    if (now === 0) dark++;
    before = now;
  }
  expect(rises).toBeGreaterThan(4);
  expect(dark / (120 * 60)).toBeGreaterThan(0.9);
});

it('dawn is on the side of the load, dusk on that of the source, and night has no warm side', () => {
  followSun('dawn');
  expect(sunWay[0]).toBeGreaterThan(0);
  followSun('dusk');
  expect(sunWay[0]).toBeLessThan(0);
  followSun('night');
  expect(sunWay[3]).toBe(0);
});

it('reads what falls from the site, and nothing from one that does not say', () => {
  expect(airOf(site)).toMatchObject({ snow: 0, lightning: false, flooded: false });
  const stormy = { ...site, precipitation: 'rain', lightning: 'near', flooded: true } as typeof site;
  expect(airOf(stormy)).toMatchObject({ rain: 1, snow: 0, lightning: true, flooded: true });
  const drizzle = { ...site, precipitation: 'drizzle' } as typeof site;
  expect(airOf(drizzle).rain).toBeLessThan(airOf(stormy).rain);
});
