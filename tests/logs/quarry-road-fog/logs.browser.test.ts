import { expect, it } from 'vitest';
import scenarioText from '../../../scenarios/quarry-road-fog.yaml?raw';
import { worldHash } from '../../../src/engine/acts/log.ts';
import { parseLog } from '../../../src/engine/acts/logForm.ts';
import { replay } from '../../../src/engine/acts/replay.ts';
import { parse } from '../../../src/engine/scenario/parse.ts';
import { build } from '../../../src/engine/world/build.ts';
import careful from './careful.json?raw';
import hasty from './hasty.json?raw';
import stuck from './stuck.json?raw';

it.each([
  ['careful', careful],
  ['hasty', hasty],
  ['stuck', stuck],
])('%s.json leads to the committed hashes in the browser, act by act', (_name, text) => {
  const parsed = parse(scenarioText, 'quarry-road-fog.yaml');
  const read = parseLog(text);
  if (!parsed.ok || !read.ok) throw new Error('the scenario or the log cannot be read');
  const replayed = replay(build(parsed.scenario, parsed.hash, read.log.seed), read.log);
  if (!replayed.ok) throw new Error(replayed.problem.words);
  expect(worldHash(replayed.replay.end)).toBe(read.log.entries.at(-1)?.hash);
});
