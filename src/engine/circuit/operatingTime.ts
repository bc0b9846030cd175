/**
 * How long a current takes to operate a protective branch for certain: total clearing time of a fuse link, latest trip of
 * a breaker, trip of a recloser on the curve of its shot. Preloading, and what a device has warmed up before another one operated, are left out.
 */
import type { Protection } from '../catalogue/types.ts';
import { tripTime } from '../standards/breaker.ts';
import { clearTime, parseFuseLink } from '../standards/fuseLinks.ts';
import { recloserTrip } from '../standards/recloser.ts';
import { CircuitDefect } from './circuitDefect.ts';

/**
 * Seconds; Infinity where it need not operate. `shots`: trips that a recloser has made before. Throws a CircuitDefect for a
 * link or rating without a curve.
 */
export function operatingTime(part: string, protection: Protection, amperes: number, shots = 0): number {
  if (protection.curve === 'recloser') {
    const { fast = 0 } = protection.sequence ?? {};
    return recloserTrip(shots < fast ? 'fast' : 'slow', protection.rating, amperes);
  }
  if (protection.curve === 'breaker') return tripTime(protection.rating, amperes);
  const link = parseFuseLink(protection.link ?? `${protection.rating}K`);
  if (link === undefined) throw new CircuitDefect(part, `no curve for a fuse link '${protection.link}'`);
  return clearTime(link, amperes);
}
