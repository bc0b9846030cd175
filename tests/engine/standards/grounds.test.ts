/** Closed forms of protective grounds and of a grounded neutral against the network solver. */
import { describe, expect, it } from 'vitest';
import { abs, complex, sub } from '../../../src/engine/math/complex.ts';
import { endlessLadder, ladderOf, midLine } from '../../../src/engine/standards/neutralLadder.ts';
import {
  equipotential,
  groundsBeyondWorker,
  groundsTowardSource,
  remoteEarth,
} from '../../../src/engine/standards/workerVoltage.ts';
import { impedance, solved, source } from '../network/elements.ts';

/** A current of `amperes` into `node`: a source behind an impedance that dwarfs all else. */
const stiff = (node: string, amperes: number) => source('s', node, 'earth', complex(amperes * 1e9), complex(1e9));

describe("the worker's voltage", () => {
  const set = { grounds: 0.002, phase: 0.03, neutral: 0.04, ownJumper: 0.001 };

  it('beside one jumper is what the solver gives', () => {
    const s = solved([
      stiff('a', 8000),
      impedance('jumper', 'a', 'earth', 0.0015),
      impedance('worker', 'a', 'earth', 1000),
    ]);
    expect(equipotential(8000, 0.0015, 1000).amperes).toBeCloseTo(abs(s.current('worker')), 8);
  });

  it('beyond grounds toward the source is what the solver gives', () => {
    const s = solved([
      stiff('g', 8000),
      impedance('grounds', 'g', 'earth', set.grounds),
      impedance('phase', 'g', 'w', set.phase),
      impedance('worker', 'w', 'v', 1000),
      impedance('own', 'v', 'u', set.ownJumper),
      impedance('neutral', 'u', 'earth', set.neutral),
    ]);
    expect(groundsTowardSource(8000, set, 1000).volts).toBeCloseTo(1000 * abs(s.current('worker')), 6);
  });

  it('between the source and the grounds is what the solver gives, and many times as much', () => {
    const s = solved([
      stiff('w', 8000),
      impedance('phase', 'w', 'g', set.phase),
      impedance('grounds', 'g', 'h', set.grounds),
      impedance('neutral', 'h', 'earth', set.neutral),
      impedance('worker', 'w', 'v', 1000),
      impedance('own', 'v', 'earth', set.ownJumper),
    ]);
    const beyond = groundsBeyondWorker(8000, set, 1000);
    expect(beyond.volts).toBeCloseTo(1000 * abs(s.current('worker')), 5);
    expect(beyond.volts).toBeGreaterThan(30 * groundsTowardSource(8000, set, 1000).volts);
  });

  it('on another earth is nearly the whole rise of the electrode', () => {
    const { volts } = remoteEarth(200, 25, 1000, 20);
    expect(volts).toBeGreaterThan(0.94 * 200 * 25);
    expect(volts).toBeLessThan(200 * 25);
  });
});

describe('a multigrounded neutral', () => {
  const z = complex(0.03, 0.1);

  it('is the ladder that the solver finds, open or ended', () => {
    const rungs = (count: number) =>
      Array.from({ length: count }, (_, k) => [
        impedance(`z${k}`, `l${k}`, `l${k + 1}`, z.re, z.im),
        impedance(`r${k}`, `l${k + 1}`, 'earth', 20),
      ]).flat();
    expect(abs(sub(ladderOf(12, z, 20), solved(rungs(12)).thevenin('l0').zth))).toBeLessThan(1e-9);
    const ended = solved([...rungs(5), impedance('end', 'l5', 'earth', 0.5, 0.1)]).thevenin('l0').zth;
    expect(abs(sub(ladderOf(5, z, 20, complex(0.5, 0.1)), ended))).toBeLessThan(1e-9);
  });

  it('comes to the endless one with many sections, from both sides at a pole in the middle', () => {
    expect(abs(sub(ladderOf(400, z, 20), endlessLadder(z, 20)))).toBeLessThan(1e-9);
    expect(abs(midLine(endlessLadder(z, 20), 20))).toBeLessThan(abs(endlessLadder(z, 20)) / 2);
    expect(() => ladderOf(0, z, 20)).toThrow(RangeError);
  });
});
