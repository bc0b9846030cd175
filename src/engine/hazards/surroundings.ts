/** Mechanisms of what is round the line: weather, water, road, other people, animals, how the line recloses. */
import { animals } from './animals.ts';
import { flooded } from './flooded.ts';
import { others } from './others.ts';
import { reclosing } from './reclosing.ts';
import { traffic } from './traffic.ts';
import { weather } from './weather.ts';

/** In a fixed order. */
export const surroundings = [weather, flooded, traffic, others, animals, reclosing] as const;
