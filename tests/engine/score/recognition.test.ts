import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judgeFindings } from '../../../src/engine/score/judgeFindings.ts';
import { laidIn } from '../../../src/engine/score/known.ts';
import { recognitionPart } from '../../../src/engine/score/recognition.ts';
import type { JudgedCause, JudgedFinding, JudgedLookAlike } from '../../../src/engine/score/types.ts';
import { find, go, look } from '../../logs/quarry-road-fog/shorthand.ts';
import { goOn, played } from './logs.ts';

const cause = (i: number, found: boolean, weight = 3): JudgedCause => ({
  cause: `c${i}`,
  kind: 'tie-broken',
  on: 'p2.tie',
  severity: 'fatal',
  weight,
  found,
  minute: found ? 1 : null,
  lookedNotCalled: false,
  missedBy: found ? null : 'never-looked',
  perceivableFrom: [],
  hazards: [],
});
const lookAlike = (i: number, called: boolean): JudgedLookAlike => ({
  lookAlike: `l${i}`,
  kind: 'water-stain',
  on: 'p2.pole',
  called,
  perceived: true,
  tellApart: '',
});
const falseCall = (i: number): JudgedFinding => ({
  finding: `f${i}`,
  on: 'p2.pole',
  condition: 'leaning',
  minute: 1,
  outcome: 'false-call',
  cause: null,
});
const range = (count: number): readonly number[] => Array.from({ length: count }, (_, i) => i);
const part = (hits: number, signals: number, called: number, noise: number, falseCalls = called) =>
  recognitionPart(
    range(signals).map((i) => cause(i, i < hits)),
    range(noise).map((i) => lookAlike(i, i < called)),
    range(falseCalls).map(falseCall),
  );

describe('sensitivity and bias of the part', () => {
  it("are d' 1.002793 and c -0.401960 for 82 of 100 and 46 of 100 (statpsych manual, log-linear correction)", () => {
    const { numbers } = part(82, 100, 46, 100);
    expect(numbers.sensitivity).toBeCloseTo(1.002793, 6);
    expect(numbers.criterion).toBeCloseTo(-0.4019603, 6);
  });

  // Computed with scipy from the same formula: shared/reference/detection.json.
  it.each([
    [8, 8, 0, 6, 3.058453, -0.063993],
    [0, 8, 0, 6, -0.127985, 1.529226],
    [5, 8, 2, 6, 0.648323, 0.041945],
  ])('stay finite in a small drill: %i of %i found, %i of %i look-alikes called', (...row) => {
    const [hits, signals, called, noise, sensitivity, criterion] = row;
    const { numbers } = part(hits, signals, called, noise);
    expect(numbers.sensitivity).toBeCloseTo(sensitivity, 6);
    expect(numbers.criterion).toBeCloseTo(criterion, 6);
  });

  // Newcombe 1998, Table I, method 3.
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('stand beside the Wilson interval of %i found of %i: %f to %f', (hits, signals, low, high) => {
    const { numbers } = part(hits, signals, 0, 3);
    expect(numbers.hitRateLow).toBeCloseTo(low, 4);
    expect(numbers.hitRateHigh).toBeCloseTo(high, 4);
  });
});

describe('the value', () => {
  const counts = fc.record({
    signals: fc.integer({ min: 1, max: 12 }),
    hits: fc.nat({ max: 12 }),
    falseCalls: fc.nat({ max: 12 }),
  });

  it('is never raised by a cause missed or a false call more, nor by a hit taken back', () => {
    fc.assert(
      fc.property(counts, ({ signals, hits: some, falseCalls }) => {
        const hits = Math.min(some, signals);
        const value = part(hits, signals, 0, 3, falseCalls).value ?? Number.NaN;
        expect(part(hits, signals + 1, 0, 3, falseCalls).value).toBeLessThanOrEqual(value);
        expect(part(hits, signals, 0, 3, falseCalls + 1).value).toBeLessThanOrEqual(value);
        if (hits > 0) expect(part(hits - 1, signals, 0, 3, falseCalls).value).toBeLessThanOrEqual(value);
      }),
      { seed: 4 },
    );
  });

  it('weighs what is found by the worst that it can do', () => {
    const some = (light: boolean) => recognitionPart([cause(0, light, 1), cause(1, !light, 3)], [], []).value;
    expect(some(true)).toBeCloseTo(0.25, 12);
    expect(some(false)).toBeCloseTo(0.75, 12);
  });

  it('is whole where nothing was wrong and nothing was called, and half after one false call', () => {
    expect(recognitionPart([], [lookAlike(0, false)], []).value).toBe(1);
    expect(recognitionPart([], [lookAlike(0, true)], [falseCall(0)]).value).toBeCloseTo(1 / 2, 12);
  });
});

describe('a finding', () => {
  const there = [
    { act: 'acknowledge' },
    { act: 'park', at: 'clear' },
    { act: 'engine', on: false },
    go('p2.field'),
  ] as const;
  const looked = played(...there, ...look('glass', 'p2.insulator', 'p2.pole', 'p2.tie'));
  const outcome = (before: typeof looked, on: string, condition: string) => {
    const after = goOn(before, find(on, condition));
    const judged = judgeFindings(
      after,
      laidIn(after.start).filter(({ fault }) => !['stain', 'own-set', 'scar'].includes(fault.id)),
    );
    return [judged.at(-1)?.outcome, judged.at(-1)?.cause];
  };

  it('hits when it names a cause of which a sign could be perceived', () => {
    expect(outcome(looked, 'p2.insulator', 'cracked')).toEqual(['hit', 'crack']);
    expect(outcome(looked, 'p2.pole', 'burn-track')).toEqual(['hit', 'burn']);
  });

  it('of a cause that nothing could tell from where the trainee has been is no hit and no false call', () => {
    expect(outcome(looked, 'a.cord', 'feeding-panel')).toEqual(['not-perceivable', 'cord']);
    expect(outcome(looked, 'stick-2', 'out-of-test')).toEqual(['not-perceivable', 'old-stick']);
  });

  it('of what is not there is a false call', () => {
    expect(outcome(looked, 'p2.arrester', 'cracked')).toEqual(['false-call', null]);
    expect(outcome(looked, 'p2.pole', 'groundline-decay')).toEqual(['false-call', null]);
  });

  it('of what holds by the state of a device or tool is right without being a hazard', () => {
    expect(outcome(looked, 'p1.tap-cutout', 'fuse-operated')).toEqual(['correct-no-hazard', null]);
    expect(outcome(looked, 'stick-1', 'wet')).toEqual(['correct-no-hazard', null]);
  });

  it('that a part is fine is right of a fine one and a false call of one that bears a cause', () => {
    expect(outcome(looked, 'p2.arrester', 'sound')).toEqual(['correct-no-hazard', null]);
    expect(outcome(looked, 'p2.insulator', 'sound')).toEqual(['false-call', null]);
    expect(outcome(looked, 'p2.pole', 'water-stain')).toEqual(['correct-no-hazard', null]);
    expect(outcome(looked, 'p2.pole', 'old-scar')).toEqual(['false-call', null]);
    expect(outcome(looked, 'p2.pole', 'sound')).toEqual(['false-call', null]);
  });

  it('of a line held alive hits its source after a test has shown voltage, whatever is called alive', () => {
    const tested = goOn(
      played({ act: 'acknowledge' }, { act: 'park', at: 'clear' }, { act: 'engine', on: false }),
      { act: 'check-tool', tool: 'stick-1', check: 'wipe' },
      { act: 'check-tool', tool: 'detector-1', check: 'self-test' },
      go('p1.butt'),
      { act: 'test', point: 'p1.tap-cutout/bottom', tool: 'detector-1', stick: 'stick-1' },
    );
    expect(tested.end.knowledge.readings.at(-1)?.shows).toBe('voltage');
    expect(outcome(tested, 's1.phase', 'live-by-backfeed')).toEqual(['hit', 'cord']);
  });

  it('withdrawn does not count', () => {
    const back = goOn(looked, find('p2.arrester', 'cracked'));
    const id = back.end.paper.findings.at(-1)?.id ?? '';
    expect(judgeFindings(goOn(back, { act: 'withdraw-finding', finding: id }), laidIn(back.start))).toEqual([]);
  });
});
