/**
 * A route made shorter: deeds left out, and moved beside others at the same place, as long as it still ends well, until
 * neither helps. Every route tried is walked by `act` (walkThrough.ts). What comes out cannot be shortened by one such
 * step; that no other route is shorter it does not say. Routes met on the way that no other beats in both minutes and
 * customer-minutes make the front.
 */
import type { World } from '../world/types.ts';
import type { Means } from './peek.ts';
import type { Deed } from './places.ts';
import { atStart, deedFurther, type Stage } from './walkThrough.ts';

/** A route walked to its end. */
export interface Walked {
  readonly deeds: readonly Deed[];
  readonly end: Stage;
}

export interface Shortened {
  readonly best: Walked;
  /** Minutes ascending, customer-minutes descending. */
  readonly front: readonly Walked[];
  readonly walked: number;
}

export const minutesIn = ({ end }: Walked): number => end.world.clock.minute;

/** Walks routes and remembers how the last good one went, so that only what changed is walked again. */
class Walker {
  walked = 0;
  private stages: readonly Stage[] = [];
  private deeds: readonly Deed[] = [];
  private readonly means: Means;
  private readonly start: World;
  private readonly wanted: readonly string[];
  private readonly ends: (stage: Stage) => boolean;

  constructor(means: Means, start: World, wanted: readonly string[], ends: (stage: Stage) => boolean) {
    this.means = means;
    this.start = start;
    this.wanted = wanted;
    this.ends = ends;
  }

  /** The route walked; null when it does not hold, or takes longer than `most` minutes. */
  walk(deeds: readonly Deed[], most: number): Walked | null {
    this.walked++;
    let same = 0;
    while (same < deeds.length && deeds[same] === this.deeds[same]) same++;
    const stages = this.stages.slice(0, same);
    let now = stages.at(-1) ?? atStart(this.start);
    for (const deed of deeds.slice(same)) {
      const next = deedFurther(this.means, now, deed, this.wanted);
      if (next === null || next.world.clock.minute > most) return null;
      stages.push(next);
      now = next;
    }
    if (!this.ends(now)) return null;
    return { deeds, end: now };
  }

  /** Keeps how this route went. */
  keep(walked: Walked): void {
    const stages: Stage[] = [];
    let now = atStart(this.start);
    for (const [i, deed] of walked.deeds.entries()) {
      const known =
        deed === this.deeds[i] && stages.length === i && this.deeds.slice(0, i).every((d, j) => d === walked.deeds[j])
          ? this.stages[i]
          : undefined;
      const next = known ?? deedFurther(this.means, now, deed, this.wanted);
      if (next === null) throw new Error('a route that held does not hold');
      stages.push(next);
      now = next;
    }
    this.stages = stages;
    this.deeds = walked.deeds;
  }
}

const isBetter = (a: Walked, b: Walked): boolean => {
  const [minutes, others] = [minutesIn(a), minutesIn(b)];
  if (minutes !== others) return minutes < others;
  if (a.end.customerMinutes !== b.end.customerMinutes) return a.end.customerMinutes < b.end.customerMinutes;
  return a.end.acts.length < b.end.acts.length;
};

/** Those that no other beats in both. */
export function frontOf(routes: readonly Walked[]): readonly Walked[] {
  const sorted = [...routes].sort(
    (a, b) => minutesIn(a) - minutesIn(b) || a.end.customerMinutes - b.end.customerMinutes,
  );
  let least = Number.POSITIVE_INFINITY;
  return sorted.filter(({ end }) => {
    const isOn = end.customerMinutes < least;
    least = Math.min(least, end.customerMinutes);
    return isOn;
  });
}

/** Every list with one deed less, then every one with a deed moved beside another at its place. */
function* changes(deeds: readonly Deed[]): Generator<readonly Deed[]> {
  for (let i = deeds.length - 1; i >= 0; i--) yield [...deeds.slice(0, i), ...deeds.slice(i + 1)];
  for (const [i, deed] of deeds.entries()) {
    if (deed.at === null && deed.act.act !== 'clearance') continue;
    const others = [...deeds.slice(0, i), ...deeds.slice(i + 1)];
    for (const [j, other] of others.entries()) {
      const beside = other.at === deed.at && (j < i - 1 || j >= i);
      if (!beside && deed.at !== null) continue;
      yield [...others.slice(0, j + 1), deed, ...others.slice(j + 1)];
    }
  }
}

/** Shortens a route that holds; `tries` bounds how many are walked. */
export function shorten(
  means: Means,
  start: World,
  deeds: readonly Deed[],
  wanted: readonly string[],
  ends: (stage: Stage) => boolean,
  tries: number,
): Shortened | null {
  const walker = new Walker(means, start, wanted, ends);
  const first = walker.walk(deeds, Number.POSITIVE_INFINITY);
  if (first === null) return null;
  walker.keep(first);
  let best = first;
  const front: Walked[] = [first];
  for (let improved = true; improved && walker.walked < tries; ) {
    improved = false;
    for (const changed of changes(best.deeds)) {
      if (walker.walked >= tries) break;
      const walked = walker.walk(changed, minutesIn(best));
      if (walked === null || !isBetter(walked, best)) continue;
      front.push(walked);
      best = walked;
      walker.keep(walked);
      improved = true;
      break;
    }
  }
  return { best, front: frontOf(front), walked: walker.walked };
}
