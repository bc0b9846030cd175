/**
 * The catalogue describes surfaces as they look on a wet day; where everything is dry they are said to be. What is wet of
 * itself (a run of oil from a seam, grass with a puddle) stays as written.
 */
import type { Site } from '../world/types.ts';

export const asItIs = (words: string, { wetness }: Pick<Site, 'wetness'>): string =>
  wetness > 0
    ? words
    : words.replace(/wet in places/, 'dry').replace(/((?:, |: )|(?:glaze|sheds) )wet(?=,|;|$)/g, '$1dry');
