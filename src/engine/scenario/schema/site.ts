/** Light, weather, soil and noise, as written. */
import type { z } from 'zod';
import { precipitations, type ScenarioSite, settings } from '../types.ts';
import { choice, defined, flag, group, list, quantity } from './field.ts';

const sky = () =>
  quantity('illuminance', {
    doc: 'Horizontal illuminance from the sky.',
    example: '25 lx',
    from: '0 lx',
    to: '150 klx',
  });
const visibility = () =>
  quantity('length', {
    doc: 'Meteorological visibility; fog is below 1 km.',
    example: '160 m',
    from: '5 m',
    to: '100 km',
  });
const wetness = () =>
  quantity('percent', {
    doc: 'How wet surfaces are: 0 % dry, 100 % streaming.',
    example: '70 %',
    from: '0 %',
    to: '100 %',
  });
const wind = () =>
  quantity('speed', { doc: 'Steady wind across the line.', example: '2 mph', from: '0 m/s', to: '60 m/s' });
const precipitation = () => choice(precipitations, { doc: 'What falls from the sky.', example: 'drizzle' });
const lightning = () =>
  choice(['none', 'near'], { doc: 'Thunderstorm near enough to be heard, or none.', example: 'none' });
const flooded = () => flag({ doc: 'Whether water stands on the ground.', example: false });
const traffic = () => choice(['none', 'light', 'heavy'], { doc: 'Traffic past the truck.', example: 'none' });

const change = group('A change of weather or light; what is not named stays.', {
  after: quantity('duration', {
    doc: 'Time since the call was acknowledged.',
    example: '15 min',
    from: '1 min',
    to: '24 h',
  }),
  sky: sky().optional(),
  visibility: visibility().optional(),
  wetness: wetness().optional(),
  wind: wind().optional(),
  precipitation: precipitation().optional(),
  lightning: lightning().optional(),
  flooded: flooded().optional(),
  traffic: traffic().optional(),
}).transform(({ after, sky: skyLux, visibility: visibilityM, wind: windMs, ...rest }) =>
  defined({ atMinute: after, skyLux, visibilityM, windMs, ...rest }),
);

const written = group('Light, weather, ground, traffic and noise at the place.', {
  setting: choice(settings, {
    doc: 'What kind of place it is, for the picture only: trees, houses, paving. Unnamed: farmland.',
    example: 'street',
  }).optional(),
  light: choice(['day', 'dusk', 'dawn', 'night'], { doc: 'Time of day as the scene shows it.', example: 'dawn' }),
  sky: sky(),
  visibility: visibility().prefault('10 km'),
  wetness: wetness().prefault('0 %'),
  wind: wind().prefault('0 mph'),
  'wind-limit': quantity('speed', {
    doc: "Wind above which nobody goes aloft: the lift's limit or the employer's rule.",
    example: '30 mph',
    from: '5 m/s',
    to: '30 m/s',
  }).prefault('30 mph'),
  precipitation: precipitation().prefault('none'),
  lightning: lightning().prefault('none'),
  flooded: flooded().prefault(false),
  temperature: quantity('temperature', {
    doc: 'Air temperature.',
    example: '46 °F',
    from: '-50 °C',
    to: '55 °C',
  }).prefault('15 °C'),
  soil: quantity('resistivity', {
    doc: 'Resistivity of the soil, uniform.',
    example: '150 ohm m',
    from: '1 ohm m',
    to: '100000 ohm m',
  }).prefault('100 ohm m'),
  altitude: quantity('length', {
    doc: 'Height above sea level; it lengthens approach distances above 900 m.',
    example: '820 ft',
    from: '-430 m',
    to: '6000 m',
  }).prefault('0 m'),
  background: quantity('level', {
    doc: 'Background noise, A-weighted.',
    example: '34 dB',
    from: '10 dB',
    to: '120 dB',
  }).prefault('35 dB'),
  traffic: traffic().prefault('none'),
  'traffic-speed': quantity('speed', {
    doc: 'How fast the traffic goes past.',
    example: '35 mph',
    from: '5 mph',
    to: '80 mph',
  }).prefault('35 mph'),
  weather: list(change, { doc: 'Changes of weather and light, each minute once.', most: 24 }).prefault([]),
});

/** `site` of the written form to `ScenarioSite`. */
export const siteSchema = written.transform(
  (site): ScenarioSite => ({
    ...(site.setting === undefined ? {} : { setting: site.setting }),
    light: site.light,
    skyLux: site.sky,
    visibilityM: site.visibility,
    wetness: site.wetness,
    windMs: site.wind,
    windLimitMs: site['wind-limit'],
    precipitation: site.precipitation,
    lightning: site.lightning,
    flooded: site.flooded,
    temperatureC: site.temperature,
    resistivity: site.soil,
    altitudeM: site.altitude,
    backgroundDb: site.background,
    traffic: site.traffic,
    trafficMs: site['traffic-speed'],
    weather: [...site.weather].sort((a, b) => a.atMinute - b.atMinute),
  }),
) satisfies z.ZodType<ScenarioSite>;
