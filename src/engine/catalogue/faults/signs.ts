/** Ways to say how a mark is perceived; sizes in metres, all estimates unless an entry names a source. */
import type { FaultKind, SignKind } from '../types.ts';

type Values = FaultKind['values'];

/** A mark as big as must be resolved, and how far it runs. */
export const mark = (feature: string, words: string, size: number, extent = 8 * size): SignKind => ({
  id: feature,
  sense: 'see',
  feature,
  words,
  size,
  extent,
  shape: 'patch',
  contrast: 0.6,
  reflectance: 0.3,
  source: 'estimate',
});

/** A seam or a run, as wide as it must be resolved. */
export const strip = (feature: string, words: string, size: number, extent: number): SignKind => ({
  ...mark(feature, words, size, extent),
  strip: true,
});

/** A dark line as fine as a hair. */
export const hairline = (feature: string, words: string, extent: number): SignKind => ({
  ...mark(feature, words, 0.0005, extent),
  shape: 'line',
  contrast: 0.35,
  reflectance: 0.25,
});

/** What an act of looking into it brings out: sound, prod, inspect, read. */
export const tested = (by: string, words: string): SignKind => ({
  id: by,
  sense: 'test',
  by,
  words,
  source: 'common practice',
});

/** What somebody tells who is asked about a topic. */
export const told = (by: string, words: string): SignKind => ({
  id: `told-${by}`,
  sense: 'ask',
  by,
  words,
  source: 'common practice',
});

export const measured = (words: string): SignKind => ({
  id: 'reading',
  sense: 'measure',
  words,
  source: 'common practice',
});

/** A buzz that grows with the leak. */
export const buzz = (words: string, caption: string, level = 52): SignKind => ({
  id: 'buzz',
  sense: 'hear',
  words,
  sound: { sound: 'insulator-buzz', level, atM: 1, caption, follows: 'leakage' },
  source: 'estimate: no published level was found',
});

/** Ohms of a leak now and at its credible worst. */
export const ohms = (now: number, worst: number, doc: string): Values => ({
  ohms: { default: now, dimension: 'resistance', doc },
  credibleOhms: { default: worst, dimension: 'resistance', doc: 'The same at its credible worst' },
});

/** A leak between two terminals by those ohms. */
export const leak = (name: string, from: string, to: string): FaultKind['leaks'][number] => ({
  name,
  from,
  to,
  ohms: 'ohms',
  credibleOhms: 'credibleOhms',
});
