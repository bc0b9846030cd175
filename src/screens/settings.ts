/** Settings of a device; anything kept that is not ours is as on the first visit. */
import type { Settings } from './types.ts';

export const freshSettings = (lessMotion: boolean): Settings => ({
  units: 'us',
  sound: true,
  volume: 0.8,
  lessMotion,
  brightness: 1,
  letterKeys: true,
  askSure: false,
});

/** Settings out of kept text. */
export const settingsFrom = (text: string | null, lessMotion: boolean): Settings => {
  const fresh = freshSettings(lessMotion);
  if (text === null) return fresh;
  let kept: unknown;
  try {
    kept = JSON.parse(text);
  } catch {
    return fresh; // a torn entry is replaced at the next change
  }
  if (typeof kept !== 'object' || kept === null) return fresh;
  const had = kept as Record<string, unknown>;
  const flag = (name: 'sound' | 'lessMotion' | 'letterKeys' | 'askSure'): boolean => {
    const value = had[name];
    return typeof value === 'boolean' ? value : fresh[name];
  };
  const { brightness, units, volume } = had;
  return {
    units: units === 'metric' || units === 'us' ? units : fresh.units,
    sound: flag('sound'),
    volume: typeof volume === 'number' && volume >= 0 && volume <= 1 ? volume : fresh.volume,
    lessMotion: flag('lessMotion'),
    brightness: typeof brightness === 'number' && brightness >= 0.5 && brightness <= 2 ? brightness : fresh.brightness,
    letterKeys: flag('letterKeys'),
    askSure: flag('askSure'),
  };
};
