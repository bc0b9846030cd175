import { expect, it } from 'vitest';
import scenarioText from '../../../scenarios/quarry-road-fog.yaml?raw';
import { worldHash } from '../../../src/engine/acts/log.ts';
import { parseLog } from '../../../src/engine/acts/logForm.ts';
import { replay } from '../../../src/engine/acts/replay.ts';
import { parse } from '../../../src/engine/scenario/parse.ts';
import { score } from '../../../src/engine/score/score.ts';
import { build } from '../../../src/engine/world/build.ts';
import careful from './careful.json?raw';
import { goldenOf } from './golden.ts';
import hasty from './hasty.json?raw';
import scores from './scores.json';
import stuck from './stuck.json?raw';

it.each<[keyof typeof scores, string]>([
  ['careful', careful],
  ['hasty', hasty],
  ['stuck', stuck],
])('%s.json leads to the committed hashes and score in the browser', (name, text) => {
  const parsed = parse(scenarioText, 'quarry-road-fog.yaml');
  const read = parseLog(text);
  if (!parsed.ok || !read.ok) throw new Error('the scenario or the log cannot be read');
  const replayed = replay(build(parsed.scenario, parsed.hash, read.log.seed), read.log);
  if (!replayed.ok) throw new Error(replayed.problem.words);
  expect(worldHash(replayed.replay.end)).toBe(read.log.entries.at(-1)?.hash);
  expect(goldenOf(score(replayed.replay))).toEqual(scores[name]);
});
