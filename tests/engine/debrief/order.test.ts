/** Exposures against knowledge, and the briefing held against what is there, on the drills of Quarry Road. */
import { describe, expect, it } from 'vitest';
import type { Act } from '../../../src/engine/acts/types.ts';
import { explain } from '../../../src/engine/debrief/explain.ts';
import { laidIn, perceived } from '../../../src/engine/score/known.ts';
import { score } from '../../../src/engine/score/score.ts';
import { find } from '../../logs/shorthand.ts';
import { committed, goOn, played } from '../score/logs.ts';

const drills = Object.fromEntries(
  (['careful', 'hasty', 'stuck'] as const).map((name) => {
    const replay = committed(name);
    return [name, { replay, debrief: explain(replay, score(replay)) }];
  }),
);
const debriefOf = (name: 'careful' | 'hasty' | 'stuck') => {
  const drill = drills[name];
  if (drill === undefined) throw new Error(name);
  return drill;
};

describe('the picture of order', () => {
  it('has a lane a cause; the careful drill perceived, then called, then came near', () => {
    const { debrief } = debriefOf('careful');
    expect(debrief.order.lanes.map(({ cause }) => cause)).toEqual(debrief.hazards.map(({ cause }) => cause));
    for (const { perceived: seen, called, met } of debrief.order.lanes) {
      expect(seen).not.toBeNull();
      expect(called).toBeGreaterThanOrEqual(seen ?? Number.POSITIVE_INFINITY);
      if (met !== null) expect(met).toBeGreaterThanOrEqual(called ?? Number.POSITIVE_INFINITY);
    }
    expect(debrief.order.handsOn).toBe(37);
  });

  it('puts a first sign where a walk through every step finds it', () => {
    const { replay, debrief } = debriefOf('stuck');
    for (const laid of laidIn(replay.start)) {
      const lane = debrief.order.lanes.find(({ cause }) => cause === laid.fault.id);
      if (lane === undefined) continue;
      const step = replay.steps.find(({ after }) => perceived(after, replay, laid));
      expect(lane.perceived).toBe(step?.after.clock.minute ?? null);
    }
  });

  it('shows what the hasty drill came near before it was known', () => {
    const { debrief } = debriefOf('hasty');
    const early = debrief.order.lanes.filter(({ known }) => !known);
    expect(early.length).toBeGreaterThan(2);
    expect(early.some(({ exposures }) => exposures.some(({ fatal }) => fatal))).toBe(true);
  });
});

describe('the briefing', () => {
  it('of the careful drill went through all five subjects with a control that works for each cause', () => {
    const { debrief } = debriefOf('careful');
    expect(debrief.briefing[0]).toMatch(/^Held at \d\d:\d\d, with .*; all five subjects\.$/);
    expect(debrief.briefing[1]).toMatch(/^(All 8|[5-7] of the 8) causes stood on the sheet with a control that works/);
  });

  it('says which subjects were gone through with nothing written under them', () => {
    const arrived: readonly Act[] = [{ act: 'acknowledge' }, { act: 'park', at: 'clear' }];
    const held = goOn(
      played(...arrived, find('p2.tie', 'tie-broken')),
      { act: 'plan', finding: null, control: 'deenergize-ground', by: 'trainee' },
      { act: 'brief', topics: ['hazards', 'energy-controls', 'precautions'], rescue: false },
      { act: 'hand-over' },
    );
    expect(explain(held, score(held)).briefing.slice(0, 2)).toEqual([
      'Held at 05:57, alone; left out: work procedures involved, protective equipment.',
      'Gone through with nothing written under it: special precautions.',
    ]);
  });

  it('that was never held is said so where there was work', () => {
    expect(debriefOf('hasty').debrief.briefing).toEqual(['No job briefing was held before the work.']);
    expect(debriefOf('stuck').debrief.briefing).toEqual([]);
  });
});
