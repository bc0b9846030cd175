/**
 * Light and weather that go together: no sun at night, snow in frost only, wet where it rains. Daylight by the usual
 * horizontal illuminances (full daylight 10 to 25 klx, overcast about 1 to 2 klx, dusk some lux, moonlight 0.05 to 0.3 lx;
 * common practice); fog is visibility below 1 km (WMO). Within these, the draws are estimates.
 */
import type { Draw } from './draw.ts';
import type { Bounds, Weather } from './types.ts';
import type { Group } from './written.ts';

type Light = Bounds['light'][number];

/** Lux under a clear sky. */
const clearLux: Readonly<Record<Light, readonly [number, number]>> = {
  day: [10000, 25000],
  dusk: [5, 40],
  night: [0, 0],
};
const MOON_LUX = 0.1;

/** Hours in which it is that light all year, away from the poles: dusk moves with the season. */
const hours: Readonly<Record<Exclude<Light, 'dusk'>, readonly number[]>> = {
  day: [9, 10, 11, 12, 13, 14],
  night: [0, 1, 2, 3, 22, 23],
};

const two = (n: number): string => (n < 10 ? `0${n}` : `${n}`);

/** Roughly when the sun is just down at middle northern latitudes, by month from January (estimate). */
const duskHours = [17, 18, 18, 20, 20, 21, 21, 20, 19, 18, 17, 16] as const;

/** Local time of the call that fits the light. */
export function timeFor(draw: Draw, light: Light, date: string): string {
  const month = Number(date.slice(5, 7));
  const hour = light === 'dusk' ? (duskHours[month - 1] ?? 18) : draw.one(hours[light]);
  return `${two(hour)}:${two(draw.whole(0, 11) * 5)}`;
}

interface Air {
  readonly visibility: readonly [least: number, most: number];
  readonly wetness: readonly [number, number];
  readonly precipitation: string;
  /** Share of the clear sky's light. */
  readonly share: number;
  readonly wind: readonly [number, number];
  readonly fahrenheit: readonly [number, number];
}

const airs: Readonly<Record<Weather, Air>> = {
  clear: {
    visibility: [100, 200],
    wetness: [0, 0],
    precipitation: 'none',
    share: 1,
    wind: [0, 12],
    fahrenheit: [45, 85],
  },
  overcast: {
    visibility: [60, 120],
    wetness: [0, 10],
    precipitation: 'none',
    share: 0.2,
    wind: [2, 15],
    fahrenheit: [40, 75],
  },
  fog: {
    visibility: [1, 6],
    wetness: [20, 50],
    precipitation: 'none',
    share: 0.15,
    wind: [0, 3],
    fahrenheit: [36, 60],
  },
  drizzle: {
    visibility: [15, 50],
    wetness: [50, 80],
    precipitation: 'drizzle',
    share: 0.15,
    wind: [0, 10],
    fahrenheit: [38, 65],
  },
  rain: {
    visibility: [10, 40],
    wetness: [80, 100],
    precipitation: 'rain',
    share: 0.1,
    wind: [4, 18],
    fahrenheit: [40, 70],
  },
  snow: {
    visibility: [4, 20],
    wetness: [10, 40],
    precipitation: 'snow',
    share: 0.15,
    wind: [2, 12],
    fahrenheit: [20, 31],
  },
};

/** Months in which it may snow where the scenes are, north of the tropics (estimate). */
const snowMonths = [11, 12, 1, 2, 3];

/** Weather of the bounds that may come on a date. */
export const weathersOn = (weathers: readonly Weather[], date: string): readonly Weather[] =>
  weathers.filter((each) => each !== 'snow' || snowMonths.includes(Number(date.slice(5, 7))));

/** The keys of `site` that say so. */
export function siteOf(draw: Draw, light: Light, weather: Weather): Group {
  const air = airs[weather];
  const lux = light === 'night' ? MOON_LUX * 100 : draw.whole(...clearLux[light]);
  const sky = light === 'night' ? (lux * air.share) / 100 : Math.max(1, Math.round(lux * air.share));
  return {
    light,
    sky: `${Number(sky.toFixed(3))} lx`,
    visibility: `${draw.whole(...air.visibility) * 100} m`,
    wetness: `${draw.whole(...air.wetness)} %`,
    wind: `${draw.whole(...air.wind)} mph`,
    precipitation: air.precipitation,
    temperature: `${draw.whole(...air.fahrenheit)} °F`,
  };
}
