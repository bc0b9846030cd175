/** What a mechanism found between a reach and the World: an exposure before its causes are known. */
import type { PointId } from '../world/types.ts';
import type { Exposure } from './types.ts';

export interface Meeting extends Omit<Exposure, 'causes'> {
  readonly point: PointId | null;
  /** How bad at the credible worst and now, in the mechanism's own measure; more is worse, 0 is none. */
  readonly measure: number;
  readonly measureNow: number;
  /** The same at the credible worst with the time counted until a device ends it; absent where nothing ends it. */
  readonly timed?: number;
  /** What it is, one plain sentence. */
  readonly words: string;
}

const rank = { fatal: 3, serious: 2, minor: 1, damage: 0 } as const;

/** Whether `a` is worse than `b`. */
export const isWorse = (a: Meeting, b: Meeting): boolean =>
  a.potentiallyFatal !== b.potentiallyFatal
    ? a.potentiallyFatal
    : rank[a.severity] !== rank[b.severity]
      ? rank[a.severity] > rank[b.severity]
      : a.measure > b.measure;

/** One meeting a hazard, the worst; sorted by hazard. A strike or failed precondition of any of them is kept. */
export function worstOf(meetings: readonly Meeting[]): readonly Meeting[] {
  const worst = new Map<string, Meeting>();
  for (const meeting of meetings) {
    const known = worst.get(meeting.hazard);
    if (known === undefined) {
      worst.set(meeting.hazard, meeting);
      continue;
    }
    const kept = isWorse(meeting, known) ? meeting : known;
    const now = meeting.measureNow > known.measureNow ? meeting : known;
    worst.set(meeting.hazard, {
      ...kept,
      now: now.now,
      measureNow: now.measureNow,
      strikes: meeting.strikes || known.strikes,
      failed: [...new Set([...known.failed, ...meeting.failed])].sort(),
    });
  }
  return [...worst.values()].sort((a, b) => (a.hazard < b.hazard ? -1 : 1));
}
