/** Simulated trainees: they get no fault list, their luck is seeded, and the careful one does as it should. */
import { describe, expect, it } from 'vitest';
import { score } from '../../../src/engine/score/score.ts';
import { habitOf, habits } from '../../../src/engine/trainees/habits.ts';
import { sceneOf, takeDrill } from '../../../src/engine/trainees/takeDrill.ts';
import { allFaultsOf, meaningsOf } from '../../../src/engine/trainees/trade.ts';
import { isAsExpected, type PairReport } from '../../../src/engine/trainees/trial.ts';
import { wheres } from '../../../src/engine/trainees/types.ts';
import { whereIn } from '../../../src/engine/trainees/where.ts';
import { start } from '../acts/scene.ts';

const world = start(1);

describe('what a trainee is given', () => {
  it('holds no fault, state or sign of the scene', () => {
    const drill = takeDrill(world, habitOf('stops-after-first'), '1/1');
    const text = JSON.stringify(sceneOf(drill.end));
    for (const { id, kind } of [...world.parts, ...world.tools].flatMap(({ faults }) => faults)) {
      // A finding that the trainee called may bear the word of a fault kind; the fault itself may not be there.
      expect(text).not.toContain(`"kind":"${kind}"`);
      expect(text).not.toContain(`"${id}/`);
    }
    expect(text).not.toMatch(/"(faults|state|seen|sign)"/);
  });
});

describe('the trade’s dictionary', () => {
  it('names what such words mean on such a part, and nothing on another', () => {
    const words = 'Pin insulator: skirts: brown glaze, wet, a fine dark line from the head down across two rims.';
    expect(meaningsOf('pin-insulator', words).map(({ condition }) => condition)).toContain('cracked');
    expect(meaningsOf('transformer', words)).toEqual([]);
    expect(meaningsOf('pin-insulator', 'skirts: brown glaze, even, no marks made out')).toEqual([]);
    expect(allFaultsOf('pole')).not.toContain('sound');
  });
});

describe('a trainee', () => {
  it('does the same with the same luck and not with another', () => {
    const acts = (seed: string): unknown => takeDrill(world, habitOf('stops-after-first'), seed).log.entries;
    expect(acts('1/1')).toEqual(acts('1/1'));
    expect(acts('1/1')).not.toEqual(acts('1/2'));
  });

  it('who is careful finds at least seven of eight here, exposes nobody and passes by handing over', () => {
    const scored = score(takeDrill(world, habitOf('careful'), '1/1'));
    expect(scored.causes.filter(({ found }) => found).length).toBeGreaterThanOrEqual(7);
    expect([scored.exposures, scored.verdict, scored.end]).toEqual([[], 'pass', 'handed-over']);
    expect(scored.findings.filter(({ outcome }) => outcome === 'false-call')).toEqual([]);
  });

  it('who rushes is exposed', () => {
    const scored = score(takeDrill(world, habitOf('rushes-obvious'), '1/1'));
    expect(scored.verdict).toBe('fail');
    expect(scored.exposures.length).toBeGreaterThan(0);
  });
});

describe('habits', () => {
  it('each say what they do and, but for the careful one, what they should spoil', () => {
    for (const { id, words, spoils } of habits) {
      expect(words).toMatch(/^[A-Z].+\.$/);
      expect(spoils.length > 0).toBe(id !== 'careful');
    }
  });

  it('can all show on Quarry Road, told by what lies there', () => {
    expect([...whereIn(world)].sort()).toEqual([...wheres].sort());
    const bare = { ...world, parts: world.parts.map((part) => ({ ...part, faults: [] })), tools: [] };
    expect(whereIn(bare)).not.toContain('a-hidden-cause');
  });
});

it('a pair is as expected from an area of 0.95 where it should differ, and near one half where not', () => {
  const pair = (expected: PairReport['expected'], auc: number | null): boolean =>
    isAsExpected({
      habit: 'careful',
      against: 'random',
      part: 'order',
      expected,
      where: 'anywhere',
      scenes: [],
      compared: auc === null ? 0 : 9,
      auc,
      low: null,
      high: null,
    });
  expect([
    pair('differs', 0.96),
    pair('differs', 0.94),
    pair('same', 0.55),
    pair('same', 0.7),
    pair('same', null),
  ]).toEqual([true, false, true, false, true]);
});
