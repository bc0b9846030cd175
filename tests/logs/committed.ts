/** The launch scenarios as Worlds, and the logs that are committed beside their drills, replayed. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseLog } from '../../src/engine/acts/logForm.ts';
import { replay } from '../../src/engine/acts/replay.ts';
import type { Replay } from '../../src/engine/acts/types.ts';
import { parse } from '../../src/engine/scenario/parse.ts';
import { build } from '../../src/engine/world/build.ts';
import type { World } from '../../src/engine/world/types.ts';

const at = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/** Ids of all launch scenarios, sorted. */
export const launchIds: readonly string[] = readdirSync(at('../../scenarios/'))
  .filter((file) => file.endsWith('.yaml'))
  .map((file) => file.replace('.yaml', ''))
  .sort();

export const launchWorld = (id: string, seed = 1): World => {
  const parsed = parse(readFileSync(at(`../../scenarios/${id}.yaml`), 'utf8'), `${id}.yaml`);
  if (!parsed.ok) throw new Error(parsed.problems.map(({ message }) => message).join('\n'));
  return build(parsed.scenario, parsed.hash, seed);
};

const replayed = new Map<string, Replay>();

/** A committed log of a launch scenario, replayed once a worker; throws where it does not replay. */
export const launchReplay = (id: string, name: string): Replay => {
  const known = replayed.get(`${id}/${name}`) ?? replayOf(id, name);
  replayed.set(`${id}/${name}`, known);
  return known;
};

const replayOf = (id: string, name: string): Replay => {
  const parsed = parseLog(readFileSync(at(`./${id}/${name}.json`), 'utf8'));
  if (!parsed.ok) throw new Error(parsed.problems.join('\n'));
  const result = replay(launchWorld(id, parsed.log.seed), parsed.log);
  if (!result.ok) throw new Error(result.problem.words);
  return result.replay;
};
