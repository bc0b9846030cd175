/** What falls and blows, as the picture needs it: read from the site, with words of its own for sites that do not say. */
import { faultKind } from '../../engine/catalogue/faults.ts';
import type { Site } from '../../engine/world/types.ts';

export interface Air {
  /** 0 to 1, of rain and of snow. */
  readonly rain: number;
  readonly snow: number;
  readonly windMs: number;
  readonly lightning: boolean;
  readonly flooded: boolean;
  /** A clear skin of ice on all that stands outside. */
  readonly iced: boolean;
  readonly traffic: Site['traffic'];
}

interface Falling {
  readonly precipitation?: string;
  readonly lightning?: string;
  readonly flooded?: boolean;
}

const rains: Readonly<Record<string, number>> = { drizzle: 0.35, rain: 1, ice: 0.5 };

/** Precipitation, wind and what else moves, of a site. */
export const airOf = (site: Site & Falling): Air => ({
  rain: rains[site.precipitation ?? 'none'] ?? 0,
  snow: site.precipitation === 'snow' ? 1 : 0,
  windMs: site.windMs,
  lightning: site.lightning !== undefined && site.lightning !== 'none',
  flooded: site.flooded === true,
  iced: site.precipitation === 'ice' || site.faults.some(({ kind }) => faultKind(kind).conditions.includes('iced')),
  traffic: site.traffic,
});
