/**
 * How well a mark shows from an eye: light of sky or lamp, air, magnification, by standards/acuity.ts. The glass is a hand-held
 * 8 x; the lamp is a headlamp with a 100 m beam (equipment figures, from memory).
 */
import {
  binocularTransmission,
  handHeldPart,
  lampIlluminance,
  lineRatio,
  luminance,
  patchRatio,
  type Sight,
} from '../standards/acuity.ts';
import type { Site } from '../world/types.ts';
import type { Aid } from './types.ts';

const MAGNIFICATION = 8 * handHeldPart;
const BEAM = 100;
/** Overcast noon and clear air, to ask what is lacking. */
const DAYLIGHT = 10000;
const CLEAR = 50000;

export interface Mark {
  readonly size: number;
  readonly shape: 'line' | 'patch';
  readonly contrast: number;
  readonly reflectance: number;
}

const sightOf = (mark: Mark, distance: number, site: Site, aid: Aid): Sight => ({
  size: mark.size,
  distance,
  contrast: mark.contrast,
  luminance: luminance(
    site.skyLux + (aid === 'lamp' ? lampIlluminance(BEAM, distance) : 0),
    mark.reflectance,
    aid === 'glass' ? binocularTransmission : 1,
  ),
  magnification: aid === 'glass' ? MAGNIFICATION : 1,
  visibility: site.visibilityM,
});

/** Made out from 1. */
export const marginOf = (mark: Mark, distance: number, site: Site, aid: Aid): number => {
  const sight = sightOf(mark, distance, site, aid);
  return mark.shape === 'line' ? lineRatio(sight) : patchRatio(sight);
};

/** What keeps a mark from being made out: with light it would be, with clear air it would be, or it is too small from here. */
export const lacking = (mark: Mark, distance: number, site: Site, aid: Aid): 'too dark' | 'fog' | 'too small' => {
  const shows = (better: Partial<Site>): boolean => marginOf(mark, distance, { ...site, ...better }, aid) >= 1;
  if (shows({ skyLux: DAYLIGHT })) return 'too dark';
  return shows({ skyLux: DAYLIGHT, visibilityM: CLEAR }) ? 'fog' : 'too small';
};
