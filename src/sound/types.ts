// What is heard, as plain data: the engine says which sounds reach the ear, how loud and from where.

/** Sounds that go on; their files are seamless loops. */
export const loopNames = [
  'bees',
  'birds',
  'dog',
  'drizzle',
  'fog-drip',
  'generator',
  'insulator-buzz',
  'rain',
  'tap-change',
  'traffic',
  'transformer-hum',
  'truck-engine',
  'wind-wires',
] as const;

/** Sounds that happen once. */
export const onceNames = [
  'breaker-trip',
  'cutout-close',
  'detector-tone',
  'dispatcher-tone',
  'flash',
  'fuse-bang',
  'hammer-dull',
  'hammer-sound',
  'meter-click',
  'radio-squelch',
  'stick-wipe',
  'thunder',
] as const;

export type LoopName = (typeof loopNames)[number];
export type OnceName = (typeof onceNames)[number];
/** A sound's name is its file's: assets/sounds/<name>.wav. */
export type SoundName = LoopName | OnceName;

/** An angle in radians. */
export type Radians = number;
/** A-weighted sound level in dB re 20 µPa. */
export type DecibelsA = number;

/**
 * A sound that goes on and reaches the ear. `bearing` is seen from the stand: 0 where the view looks at yaw 0, positive
 * to the right; null comes from all round (fog, birds). `caption` describes and does not diagnose.
 */
export interface HeardSound {
  readonly id: string;
  readonly sound: LoopName;
  readonly level: DecibelsA;
  readonly bearing: Radians | null;
  readonly caption: string;
  /** Speed and note against the file's: what labours runs slower; 1 if not said. */
  readonly pace?: number;
}

/** Where a single sound comes from, how loud, and other words for it than the usual ones. */
export interface OnceOptions {
  readonly bearing?: Radians | null;
  readonly level?: DecibelsA;
  readonly caption?: string;
}

/** A line to show for a sound. */
export interface Caption {
  readonly id: string;
  readonly sound: SoundName;
  readonly text: string;
}
