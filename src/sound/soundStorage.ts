// Mute and volume, kept between visits under one key.

/** Where settings are kept; localStorage with getItem and setItem fits after renaming. */
export interface SoundStorage {
  get(key: string): string | null;
  set(key: string, value: string): void;
}

/** What is kept. */
export interface SoundSettings {
  readonly muted: boolean;
  readonly volume: number;
}

/** The key in the storage. */
export const SOUND_KEY = 'loose-tie.sound';

const FRESH: SoundSettings = { muted: false, volume: 0.8 };

/** The kept settings; what is not there or not ours is as on the first visit. */
export const readSettings = (storage: SoundStorage | undefined): SoundSettings => {
  const text = storage?.get(SOUND_KEY) ?? null;
  if (text === null) return FRESH;
  let kept: unknown;
  try {
    kept = JSON.parse(text);
  } catch {
    return FRESH; // a torn or foreign entry is replaced at the next change
  }
  if (typeof kept !== 'object' || kept === null) return FRESH;
  const { muted, volume } = kept as Partial<Record<keyof SoundSettings, unknown>>;
  return {
    muted: typeof muted === 'boolean' ? muted : FRESH.muted,
    volume: typeof volume === 'number' && volume >= 0 && volume <= 1 ? volume : FRESH.volume,
  };
};

/** Keeps the settings. */
export const writeSettings = (storage: SoundStorage | undefined, settings: SoundSettings): void =>
  storage?.set(SOUND_KEY, JSON.stringify(settings));
