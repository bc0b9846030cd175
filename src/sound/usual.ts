// How loud a single sound is at the ear, and its words, when nobody says otherwise. Levels are common sense, not
// measured: they only set these sounds apart from each other (60 dB(A) plays at full).
import type { DecibelsA, OnceName } from './types.ts';

/** Level and caption of each single sound. */
export const usual: Readonly<Record<OnceName, { readonly level: DecibelsA; readonly caption: string }>> = {
  'breaker-trip': { level: 52, caption: 'a snap' },
  'cutout-close': { level: 57, caption: 'a metal clack' },
  'detector-tone': { level: 55, caption: 'four beeps' },
  'dispatcher-tone': { level: 52, caption: 'two rising notes on the radio' },
  flash: { level: 60, caption: 'a short crack' },
  'fuse-bang': { level: 60, caption: 'a bang' },
  'hammer-dull': { level: 57, caption: 'a dull thud' },
  'hammer-sound': { level: 57, caption: 'a ringing knock' },
  'meter-click': { level: 48, caption: 'two clicks' },
  'radio-squelch': { level: 50, caption: 'a burst of radio hiss' },
  thunder: { level: 50, caption: 'a long low roll, far off' },
  'stick-wipe': { level: 46, caption: 'cloth rubbing along a pole' },
};
