/** The verdict and its reasons, and what a hand-over owes. */
import { describe, expect, it } from 'vitest';
import type { Act, Replay } from '../../../src/engine/acts/types.ts';
import { score } from '../../../src/engine/score/score.ts';
import type { Score } from '../../../src/engine/score/types.ts';
import { byHand, go, tell } from '../../logs/quarry-road-fog/shorthand.ts';
import { committed, fresh, goOn, played, rank, value } from './logs.ts';

const logs = { careful: committed('careful'), hasty: committed('hasty'), stuck: committed('stuck') };

describe('the verdict', () => {
  const withPar = (replay: Replay, minutes: number): Replay => ({
    ...replay,
    log: {
      ...replay.log,
      par: { minutes, customerMinutes: minutes, scenarioHash: replay.log.scenarioHash, engine: replay.log.engine },
    },
  });

  it.each(Object.entries(logs))('of %s does not depend on par, the service part does', (name, replay) => {
    const [short, long] = [score(withPar(replay, 1)), score(withPar(replay, 10_000))];
    expect([short.verdict, short.reasons]).toEqual([long.verdict, long.reasons]);
    if (name === 'careful') expect(value(short, 'service')).toBeLessThan(value(long, 'service'));
    expect(short.parts[4]?.numbers.par).toBe(1);
    expect(score(replay).parts[4]?.numbers.par).toBeNull();
  });

  it('is a fail when the call is closed out with jumpers on', () => {
    const end = {
      ...logs.careful.end,
      jumpers: [{ id: 'j9', tool: 'ground-1', points: ['p1.neutral-spool/neutral'] }],
    };
    const left = score({ ...logs.careful, end });
    expect(left.verdict).toBe('fail');
    expect(left.reasons.join()).toMatch(/grounds or jumpers/);
    expect(left.exposures).toEqual([]);
  });

  it('is a remark when the call is left as it is', () => {
    expect(score(fresh()).verdict).toBe('remarks');
  });

  it('fails only for what could kill, a hit, or jumpers left on', () => {
    for (const each of Object.values(logs).map((each) => score(each))) {
      const fatal = each.exposures.some(({ potentiallyFatal }) => potentiallyFatal);
      expect(each.verdict === 'fail').toBe(fatal || each.end === 'struck');
    }
  });
});

describe('a hand-over', () => {
  const guarded: readonly Act[] = [
    { act: 'acknowledge' },
    { act: 'park', at: 'clear' },
    { act: 'engine', on: false },
    { act: 'guard', with: 'chocks' },
    { act: 'guard', with: 'cones' },
    { act: 'guard', with: 'keep-out' },
  ];
  const asked: readonly Act[] = [go('a.yard'), { act: 'ask', who: 'a.customer', about: 'generator' }];
  const verdictOf = (...acts: readonly Act[]): Score => score(played(...acts, { act: 'hand-over' }));

  it('with the public guarded and danger reported passes', () => {
    expect(verdictOf(...guarded, tell('dispatcher', 'public-danger')).verdict).toBe('pass');
  });

  it('owes the dispatcher the source that one knows of', () => {
    const silent = verdictOf(...guarded, ...asked, tell('dispatcher', 'public-danger'));
    expect([silent.verdict, silent.reasons]).toEqual([
      'remarks',
      ['You handed over without telling the dispatcher what you knew.'],
    ]);
    expect(verdictOf(...guarded, ...asked, tell('dispatcher', 'backfeed')).verdict).toBe('pass');
  });

  it('at once, with nothing guarded and nothing reported, is no pass', () => {
    const { verdict, reasons } = verdictOf({ act: 'acknowledge' }, { act: 'park', at: 'clear' });
    expect(verdict).toBe('fail');
    expect(reasons.join()).toMatch(/nobody kept away/);
  });

  it('owes a guard and a report, one of them alone is a remark', () => {
    const arrived: readonly Act[] = [{ act: 'acknowledge' }, { act: 'park', at: 'clear' }];
    const told = verdictOf(...arrived, tell('dispatcher', 'public-danger'));
    expect([told.verdict, told.reasons]).toEqual(['remarks', ['You handed over without keeping the public out.']]);
    expect(verdictOf(...guarded).verdict).toBe('remarks');
  });

  it('owes a tag to what one has opened', () => {
    const pulled: readonly Act[] = [
      ...guarded,
      ...asked,
      { act: 'check-tool', tool: 'gloves-1', check: 'air-test' },
      { act: 'wear', tool: 'gloves-1', on: true },
      { act: 'wear', tool: 'shield-1', on: true },
      byHand('a.meter', 'pull'),
      tell('dispatcher', 'backfeed'),
    ];
    const left = verdictOf(...pulled);
    expect(left.reasons).toEqual(['You left without a tag: meter, first house.']);
    expect(verdictOf(...pulled, { act: 'tag', part: 'a.meter', on: true }).verdict).toBe('pass');
  });

  it('never scores below going on alone', () => {
    const alone = score(
      goOn(played(...guarded, tell('dispatcher', 'public-danger')), go('p2.butt'), {
        act: 'touch',
        point: 'p2.ground-lead/low',
      }),
    );
    const over = verdictOf(...guarded, tell('dispatcher', 'public-danger'));
    expect(rank[over.verdict]).toBeGreaterThan(rank[alone.verdict]);
    for (const name of ['order', 'exposure', 'service'] as const)
      expect(value(over, name)).toBeGreaterThanOrEqual(value(alone, name));
  });
});
