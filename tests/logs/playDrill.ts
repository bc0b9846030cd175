import { act } from '../../src/engine/acts/act.ts';
import { appendEntry, newLog } from '../../src/engine/acts/log.ts';
import { possibleActs } from '../../src/engine/acts/possibleActs.ts';
import type { Act, Log, Replay, Step } from '../../src/engine/acts/types.ts';
import { canonicalJson } from '../../src/engine/math/hash.ts';
import type { World } from '../../src/engine/world/types.ts';

/** What is chosen on a form, not from the list of acts. */
const onForms = new Set(['look', 'call-finding', 'plan', 'brief']);

const isOffered = (world: World, sent: Act): boolean => {
  if (onForms.has(sent.act)) return true;
  const text = canonicalJson(sent);
  return possibleActs(world).some((offer) => canonicalJson(offer.act) === text);
};

/** Plays acts in a fresh World; throws on the first that is refused or was not on offer. */
export function playDrill(start: World, acts: readonly Act[], seed: number): Replay {
  let [end, log]: [World, Log] = [start, newLog(start, seed)];
  const steps: Step[] = [];
  for (const each of acts) {
    if (!isOffered(end, each)) throw new Error(`not on offer after ${steps.length} acts: ${JSON.stringify(each)}`);
    const result = act(end, each);
    if (!result.ok) throw new Error(`refused after ${steps.length} acts: ${JSON.stringify(each)}: ${result.reason}`);
    const { world: after, events, reach, exposures } = result;
    log = appendEntry(log, each, after);
    const entry = log.entries.at(-1);
    if (entry === undefined) throw new Error('an entry was appended');
    steps.push({ entry, before: end, after, events, reach, exposures });
    end = after;
  }
  return { log, start, steps, end };
}
