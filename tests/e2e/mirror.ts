/** The same drill beside the page: names the button of an act and says what the page must come to. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { createDrill } from '../../src/drill/createDrill.ts';
import type { Drill } from '../../src/drill/types.ts';
import { parseLog } from '../../src/engine/acts/logForm.ts';
import { replay } from '../../src/engine/acts/replay.ts';
import type { Act, Log, OfferedAct } from '../../src/engine/acts/types.ts';
import { canonicalJson } from '../../src/engine/math/hash.ts';
import { parse } from '../../src/engine/scenario/parse.ts';
import { score } from '../../src/engine/score/score.ts';
import type { Score } from '../../src/engine/score/types.ts';
import { build } from '../../src/engine/world/build.ts';
import type { World } from '../../src/engine/world/types.ts';
import { root } from '../../src/setup/run.mjs';

const file = 'quarry-road-fog.yaml';
const parsed = parse(readFileSync(join(root, 'scenarios', file), 'utf8'), file);

const start = (seed: number): World => {
  if (!parsed.ok) throw new Error(parsed.problems.map(({ message }) => message).join('\n'));
  return build(parsed.scenario, parsed.hash, seed);
};

/** A drill that goes where the page's log went. */
export const mirrorOf = (log: Log): Drill => {
  const created = createDrill({ world: start(log.seed), seed: log.seed, log });
  if (!created.ok) throw new Error(created.problem.words);
  return created.drill;
};

/** The act as it is offered now. */
export const offerOf = (drill: Drill, act: Act): OfferedAct => {
  const wanted = canonicalJson(act);
  const offer = drill.offers().find((each) => canonicalJson(each.act) === wanted);
  if (!offer) throw new Error(`not on offer: ${wanted}`);
  return offer;
};

/** The acts of a recorded drill, without how sure one was, which the page asks for only on wish. */
export const actsOf = (name: string): readonly Act[] => {
  const read = parseLog(readFileSync(join(root, 'tests', 'logs', 'quarry-road-fog', `${name}.json`), 'utf8'));
  if (!read.ok) throw new Error(read.problems.join('\n'));
  return read.log.entries.map(({ act }) => {
    if (act.act !== 'call-finding') return act;
    const { confidence: _, ...rest } = act;
    return rest;
  });
};

/** The score of a log file, by replay alone. */
export const scoreOfText = (text: string): Score => {
  const read = parseLog(text);
  if (!read.ok) throw new Error(read.problems.join('\n'));
  const replayed = replay(start(read.log.seed), read.log);
  if (!replayed.ok) throw new Error(replayed.problem.words);
  return score(replayed.replay);
};
