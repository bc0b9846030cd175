/**
 * A log played again from a fresh World, each hash compared. The first thing that does not fit ends it, said plainly:
 * another scenario, another engine version, an act that was impossible, a World that came out otherwise.
 */
import type { World } from '../world/types.ts';
import { act } from './act.ts';
import { worldHash } from './log.ts';
import type { Log, Replay, Step } from './types.ts';
import { engineVersion } from './version.ts';

export interface ReplayProblem {
  readonly problem: 'scenario' | 'engine' | 'refused' | 'minute' | 'hash';
  /** Index of the entry that did not fit; null: the header. */
  readonly entry: number | null;
  readonly words: string;
}

export type Replayed =
  | { readonly ok: true; readonly replay: Replay }
  | { readonly ok: false; readonly problem: ReplayProblem };

const fail = (problem: ReplayProblem['problem'], entry: number | null, words: string): Replayed => ({
  ok: false,
  problem: { problem, entry, words },
});

/** Folds the log over `start`, the World built of the log's scenario with the log's seed. */
export function replay(start: World, log: Log): Replayed {
  if (log.scenario !== start.scenario || log.scenarioHash !== start.scenarioHash) {
    return fail(
      'scenario',
      null,
      `made for scenario ${log.scenario} (${log.scenarioHash.slice(0, 16)}), not for this one`,
    );
  }
  if (log.engine !== engineVersion) {
    return fail('engine', null, `made by another engine version: ${log.engine}, this is ${engineVersion}`);
  }
  const steps: Step[] = [];
  let before = start;
  for (const [index, entry] of log.entries.entries()) {
    const result = act(before, entry.act);
    const which = `entry ${index + 1} (${entry.act.act})`;
    if (!result.ok) return fail('refused', index, `${which} is impossible: ${result.reason}`);
    const { world: after, events, reach, exposures } = result;
    if (after.clock.minute !== entry.minute) {
      return fail('minute', index, `${which} ends at minute ${after.clock.minute}, the log says ${entry.minute}`);
    }
    if (worldHash(after) !== entry.hash)
      return fail('hash', index, `${which} leads to another world than the log says`);
    steps.push({ entry, before, after, events, reach, exposures });
    before = after;
  }
  return { ok: true, replay: { log, start, steps, end: before } };
}
