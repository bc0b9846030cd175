import { act } from '../../../src/engine/acts/act.ts';
import { appendEntry, newLog, worldHash } from '../../../src/engine/acts/log.ts';
import type { Act, Log, Replay, Step } from '../../../src/engine/acts/types.ts';
import type { Part, Score } from '../../../src/engine/score/types.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { launchReplay } from '../../logs/committed.ts';
import { start } from '../acts/scene.ts';

/** One of the committed logs of Quarry Road, replayed. */
export function committed(name: 'careful' | 'hasty' | 'stuck'): Replay {
  return launchReplay('quarry-road-fog', name);
}

/** A replay with one more act that must be possible. */
export function goOn(before: Replay, ...acts: readonly Act[]): Replay {
  return acts.reduce<Replay>((played, each) => {
    const result = act(played.end, each);
    if (!result.ok) throw new Error(`${JSON.stringify(each)}: ${result.reason}`);
    const log = appendEntry(played.log, each, result.world);
    const entry = { act: each, minute: result.world.clock.minute, hash: worldHash(result.world) };
    const { world: after, events, reach, exposures } = result;
    const step: Step = { entry, before: played.end, after, events, reach, exposures };
    return { log, start: played.start, steps: [...played.steps, step], end: after };
  }, before);
}

/** A drill in which nothing has been done yet, in the World given or that of Quarry Road. */
export function fresh(world: World = start(), par: Log['par'] = null): Replay {
  return { log: newLog(world, 1, par), start: world, steps: [], end: world };
}

/** A replay of these acts from the start. */
export const played = (...acts: readonly Act[]): Replay => goOn(fresh(), ...acts);

/** Value of a part, NaN where there was nothing to judge. */
export const value = (scored: Score, name: Part['name']): number => {
  const part = scored.parts.find((each) => each.name === name);
  if (part === undefined) throw new Error(`no part ${name}`);
  return part.value ?? Number.NaN;
};
/** Verdicts from worst to best. */
export const rank = { fail: 0, remarks: 1, pass: 2 } as const;
