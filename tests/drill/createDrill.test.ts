/** The machine adds nothing to a drill: the same acts folded without it give the same World and the same score. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { createDrill } from '../../src/drill/createDrill.ts';
import { stages } from '../../src/drill/types.ts';
import { worldHash } from '../../src/engine/acts/log.ts';
import { replay } from '../../src/engine/acts/replay.ts';
import type { Act } from '../../src/engine/acts/types.ts';
import { parse } from '../../src/engine/scenario/parse.ts';
import { score } from '../../src/engine/score/score.ts';
import { build } from '../../src/engine/world/build.ts';
import type { World } from '../../src/engine/world/types.ts';
import { root } from '../../src/setup/run.mjs';

const file = 'quarry-road-fog.yaml';
const parsed = parse(readFileSync(join(root, 'scenarios', file), 'utf8'), file);
if (!parsed.ok) throw new Error(parsed.problems.map(({ message }) => message).join('\n'));
const start = (): World => build(parsed.scenario, parsed.hash, 7);

const begin = (log?: Parameters<typeof createDrill>[0]['log']) => {
  const created = createDrill({ world: start(), seed: 7, log });
  if (!created.ok) throw new Error(created.problem.words);
  return created.drill;
};

const judgedElsewhere = (log?: Parameters<typeof createDrill>[0]['log']) => {
  const created = createDrill({ world: start(), seed: 7, log, judgedElsewhere: true });
  if (!created.ok) throw new Error(created.problem.words);
  return created.drill;
};

const acts: readonly Act[] = [
  { act: 'acknowledge' },
  { act: 'ask', who: 'dispatcher', about: 'history' },
  { act: 'park', at: 'clear' },
  { act: 'look', part: 'p2.insulator', aid: 'glass' },
  { act: 'call-finding', on: 'p2.insulator', condition: 'cracked' },
  { act: 'go', to: 'nowhere' },
  { act: 'plan', finding: 'f1', control: 'keep-clear', by: 'trainee' },
  { act: 'hand-over' },
];

describe('a drill', () => {
  test('gives the same World and score as its log folded without the machine', () => {
    const drill = begin();
    for (const act of acts) drill.send(act);
    const { log, world, score: judged, stage } = drill.snapshot();
    const alone = replay(start(), log);
    if (!alone.ok) throw new Error(alone.problem.words);
    expect(worldHash(alone.replay.end)).toBe(worldHash(world));
    expect(score(alone.replay)).toEqual(judged);
    expect(stage).toBe('debrief');
  });

  test('logs no refused act and says why it was refused', () => {
    const drill = begin();
    for (const act of acts.slice(0, 6)) drill.send(act);
    expect(drill.snapshot().refused).toBe('there is no such place');
    expect(drill.snapshot().log.entries).toHaveLength(5);
    drill.send(acts[6] as Act);
    expect(drill.snapshot().refused).toBeNull();
  });

  test('goes through stages that follow the World', () => {
    const drill = begin();
    const seen = [drill.snapshot().stage];
    for (const act of acts) {
      drill.send(act);
      seen.push(drill.snapshot().stage);
    }
    expect(seen).toEqual(['call', 'survey', 'survey', 'survey', 'survey', 'survey', 'survey', 'briefing', 'debrief']);
    for (const stage of seen) expect(stages).toContain(stage);
  });

  test('goes on from its log as if it had never stopped', () => {
    const whole = begin();
    for (const act of acts) whole.send(act);
    const first = begin();
    for (const act of acts.slice(0, 4)) first.send(act);
    const second = begin(JSON.parse(JSON.stringify(first.snapshot().log)));
    expect(second.snapshot().journal).toEqual(first.snapshot().journal);
    for (const act of acts.slice(4)) second.send(act);
    expect(second.snapshot().log).toEqual(whole.snapshot().log);
    expect(second.snapshot().score).toEqual(whole.snapshot().score);
  });

  test('tells a log whose hash does not fit instead of playing it', () => {
    const drill = begin();
    drill.send({ act: 'acknowledge' });
    const { log } = drill.snapshot();
    const entries = log.entries.map((entry) => ({ ...entry, hash: '0'.repeat(16) }));
    const created = createDrill({ world: start(), seed: 7, log: { ...log, entries } });
    expect(created).toMatchObject({ ok: false, problem: { problem: 'hash', entry: 0 } });
  });

  test('takes no act once it has ended', () => {
    const drill = begin();
    for (const act of acts) drill.send(act);
    const before = drill.snapshot();
    drill.send({ act: 'wait', minutes: 1 });
    expect(drill.snapshot()).toBe(before);
  });

  test('tells its listeners each act once, until they leave', () => {
    const drill = begin();
    const told: number[] = [];
    const leave = drill.subscribe(({ log }) => told.push(log.entries.length));
    drill.send({ act: 'acknowledge' });
    leave();
    drill.send({ act: 'park', at: 'clear' });
    expect(told).toEqual([1]);
  });
});

describe('a drill that is judged elsewhere', () => {
  test('ends without a score, takes no further act, and is the same as any once it was handed its score', () => {
    const drill = judgedElsewhere();
    const plain = begin();
    for (const each of [...acts, { act: 'hand-over' } as const]) {
      drill.send(each);
      plain.send(each);
    }
    expect(drill.snapshot()).toMatchObject({ stage: 'debrief', score: null });
    drill.send({ act: 'listen' });
    expect(drill.snapshot().log).toEqual(plain.snapshot().log);
    drill.judged(score(drill.replay()));
    expect(drill.snapshot()).toEqual(plain.snapshot());
  });

  test('waits as well when the log that it goes on with has ended', () => {
    const ended = begin();
    for (const each of [...acts, { act: 'hand-over' } as const]) ended.send(each);
    const drill = judgedElsewhere(ended.snapshot().log);
    expect(drill.snapshot()).toMatchObject({ stage: 'debrief', score: null });
  });

  test('takes no score before it has ended', () => {
    const drill = judgedElsewhere();
    const plain = begin();
    plain.send({ act: 'hand-over' });
    const { score: early } = plain.snapshot();
    if (early === null) throw new Error('an ended drill has no score');
    drill.judged(early);
    expect(drill.snapshot()).toMatchObject({ stage: 'call', score: null });
  });
});
