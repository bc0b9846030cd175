/** Lines of several phases, deltas, secondaries and customers' plant as written: what is read, and what is refused. */
import { describe, expect, test } from 'vitest';
import { modelText } from '../circuit/models/scenes.ts';
import { messagesIn, scenarioIn } from './read.ts';

const changed = (name: string, from: string, to: string): string => {
  const text = modelText(name);
  if (!text.includes(from)) throw new Error(`${name} has no ${from}`);
  return text.replace(from, to);
};
const refusal = (name: string, from: string, to: string): string => messagesIn(changed(name, from, to)).join('\n');

describe('what is read', () => {
  test('a delta has three phases if nothing is said, and its volts to the star point', () => {
    const { supply } = scenarioIn(modelText('delta')).scenario;
    expect(supply).toMatchObject({ delta: true, phases: 'abc', lineVolts: 4800, phaseVolts: 2771 });
  });

  test('a wye keeps nothing of what it does not say, so that older files keep their hash', () => {
    const { scenario } = scenarioIn(changed('island', 'system: 24.94Y/14.4', 'system: 12.47Y/7.2'));
    expect(Object.keys(scenario.supply).sort()).toEqual([
      'at',
      'circuit',
      'faultAmps',
      'lineVolts',
      'phaseVolts',
      'system',
      'upstream',
      'xOverR',
    ]);
    expect(Object.keys(scenario.spans[0] ?? {})).not.toContain('phases');
  });

  test('secondaries are there only when written', () => {
    expect(scenarioIn(modelText('island')).scenario.secondaries).toHaveLength(1);
    expect('secondaries' in scenarioIn(modelText('delta')).scenario).toBe(false);
  });
});

describe('what is refused', () => {
  test('a span of three phases to a pole that has no arm for them', () => {
    expect(
      refusal(
        'wye-bank',
        'number: W-3, x: 50 m, length: 45 ft, framing: arm-deadend',
        'number: W-3, x: 50 m, length: 45 ft, framing: tangent',
      ),
    ).toContain('"p3.main-a", a net on which nothing of the pole stands');
  });

  test('more wires between two poles than can be coupled', () => {
    const beside =
      '  - { id: s5, from: p1.other, to: p2.other, conductor: Swan, sag: 2 ft, beside: { across: 0.9 m, below: 1 m } }\n';
    expect(refusal('wye-bank', '  - { id: s4,', `${beside}  - { id: s4,`)).toContain(
      '6 wires between two poles; expected at most 5',
    );
  });

  test('an inverter on a cord, and a set on a breaker of its own', () => {
    expect(refusal('island', 'connection: panel-breaker', 'connection: panel-cord')).toContain(
      'a connection of an inverter',
    );
    expect(refusal('island', 'connection: none', 'connection: panel-breaker')).toContain('a connection of a set');
  });

  test('an interlock without a position, and a position where nothing switches', () => {
    expect(refusal('recloser', 'connection: interlock, transfer: utility', 'connection: interlock')).toContain(
      'own.transfer: found nothing',
    );
    expect(refusal('island', 'connection: none', 'connection: none, transfer: utility')).toContain(
      'nothing there switches it',
    );
  });

  test('secondary conductors from a pole to itself, or to none', () => {
    expect(refusal('island', 'id: q1, from: p2, to: p3', 'id: q1, from: p2, to: p2')).toContain('both ends on p2');
    expect(refusal('island', 'id: q1, from: p2, to: p3', 'id: q1, from: p2, to: p9')).toContain('a pole');
  });

  test('phases and systems that are none', () => {
    expect(refusal('wye-bank', 'phases: abc', 'phases: abd')).toContain('"abd"');
    expect(refusal('delta', 'system: 4.8-delta', 'system: 4.8 delta')).toContain(
      'a system such as 12.47Y/7.2 or 4.8-delta',
    );
  });
});
