/** Findings on the site, on people and on the ticket, and who is left standing at a hand-over. */
import { describe, expect, it } from 'vitest';
import { act } from '../../../src/engine/acts/act.ts';
import { appendEntry, newLog } from '../../../src/engine/acts/log.ts';
import { replay } from '../../../src/engine/acts/replay.ts';
import type { Act } from '../../../src/engine/acts/types.ts';
import { score } from '../../../src/engine/score/score.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { arrive, crewWorld } from '../hazards/crewScene.ts';

function scored(start: World, ...acts: readonly Act[]) {
  let [world, log] = [start, newLog(start, 1)];
  for (const each of acts) {
    const result = act(world, each);
    if (!result.ok) throw new Error(`${JSON.stringify(each)}: ${result.reason}`);
    world = result.world;
    log = appendEntry(log, each, world);
  }
  const replayed = replay(start, log);
  if (!replayed.ok) throw new Error(replayed.problem.words);
  return score(replayed.replay);
}

const call = (on: string, condition: string): Act => ({ act: 'call-finding', on, condition });

describe('findings beside the line', () => {
  it('hit a fault of the site, of somebody and of the ticket', () => {
    const start = crewWorld({ faults: ['gale', 'onlooker', 'number'], people: ['neighbour'], blocked: true });
    const { findings } = scored(
      start,
      { act: 'ask', who: 'dispatcher', about: 'circuit' },
      ...arrive,
      call('site', 'wind-too-strong'),
      call('neighbour', 'in-drop-zone'),
      call('ticket', 'wrong-number'),
      call('site', 'lightning'),
      { act: 'hand-over' },
    );
    expect(findings.map(({ outcome, cause }) => [outcome, cause])).toEqual([
      ['hit', 'gale'],
      ['hit', 'onlooker'],
      ['hit', 'number'],
      ['false-call', null],
    ]);
  });

  it('are right without a fault where it stands so', () => {
    const { findings } = scored(
      crewWorld({ site: { flooded: true }, blocked: true }),
      ...arrive,
      call('site', 'flooded'),
      call('second', 'missing'),
      { act: 'hand-over' },
    );
    expect(findings.map(({ outcome }) => outcome)).toEqual(['correct-no-hazard', 'correct-no-hazard']);
  });
});

it('a hand-over owes that nobody of the public is left in reach', () => {
  const start = crewWorld({ faults: ['onlooker'], people: ['neighbour'], blocked: true });
  const owes = (...acts: readonly Act[]) => scored(start, ...arrive, ...acts, { act: 'hand-over' }).reasons.join(' ');
  expect(owes()).toContain('a neighbour in reach');
  expect(owes({ act: 'guard', with: 'keep-out' })).not.toContain('a neighbour in reach');
});
