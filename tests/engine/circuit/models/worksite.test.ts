/** A scene's neutral as the ladder that it is, and where a worker stands between grounds: the scene's circuit against closed forms. */
import { describe, expect, test } from 'vitest';
import { solveCircuit } from '../../../../src/engine/circuit/solveCircuit.ts';
import { abs, add, type Complex, complex, div, sub } from '../../../../src/engine/math/complex.ts';
import {
  equipotential,
  groundsBeyondWorker,
  groundsTowardSource,
} from '../../../../src/engine/standards/workerVoltage.ts';
import { partById } from '../../../../src/engine/world/edit.ts';
import type { PointId, World } from '../../../../src/engine/world/types.ts';
import { withJumpers, withState } from '../scene.ts';
import { model, only } from './scenes.ts';

const beside = (...all: readonly Complex[]): Complex =>
  div(
    complex(1),
    all.reduce((sum, z) => add(sum, div(complex(1), z)), complex(0)),
  );

/** Series impedance of a span or of one wire of a drop. */
const ofLine = (world: World, part: string): Complex => {
  const { values } = partById(world, part);
  const [ohms = Number.NaN, reactance = Number.NaN] = [values.ohmsPerM, values.reactancePerM];
  return complex(ohms * (values.lengthM ?? 0), reactance * (values.lengthM ?? 0));
};

const whole = only(model('recloser'));
const open = withState(whole, 'p1.tap-cutout', { position: 'open', link: 'sound' });

describe('the neutral of a scene', () => {
  // Bond and wire of a pole ground 0.010 + j0.0014 ohm before its rod of 25 ohm; strap and X2 bond 0.002 to the houses.
  const rod = complex(25.01, 0.0014);
  const house = (name: string): Complex => add(complex(25), ofLine(open, `${name}.drop`));
  const upstream = (): Complex => complex(1.3243, 1.006);

  test('seen from its last pole is the ladder of spans, pole grounds and customers’ grounds, and the system’s behind it', () => {
    const at1 = beside(upstream(), rod);
    const at2 = beside(add(at1, ofLine(open, 's1.neutral')), rod, add(complex(0.002), beside(house('a'), house('b'))));
    const at3 = beside(add(at2, ofLine(open, 's2.neutral')), rod);
    const { zth } = solveCircuit(open).network.theveninBetween('p3.neutral', 'earth');
    expect(abs(sub(zth, at3))).toBeLessThan(2e-3 * abs(at3));
  });

  test('rises when a rung is taken out: a rod, a span toward the source, a house', () => {
    const seen = (world: World): number => abs(solveCircuit(world).network.theveninBetween('p3.neutral', 'earth').zth);
    const without = (part: string): World => ({ ...open, parts: open.parts.filter(({ id }) => id !== part) });
    for (const part of ['p3.ground-rod', 'p2.ground-rod', 'a.ground', 'b.ground']) {
      expect(seen(without(part)), part).toBeGreaterThan(1.005 * seen(open));
    }
    expect(seen(without('s1.neutral'))).toBeGreaterThan(3 * seen(open));
  });
});

describe('a worker at the pole when the tap is closed by mistake', () => {
  /** Metal of a pole that a ground joins: its phase, its neutral. */
  const set = (pole: string): readonly PointId[] => [`${pole}.neutral-spool/neutral`, phaseAt[pole] ?? ''];
  const phaseAt: Readonly<Record<string, PointId>> = {
    p1: 'p1.tap-cutout/bottom',
    p2: 'p2.insulator/conductor',
    p3: 'p3.deadend/conductor',
  };
  const worksite = (...poles: readonly string[]): World =>
    withJumpers(
      withState(withState(whole, 'p2.cutout', { position: 'open' }), 'p1.tap-cutout', { position: 'closed' }),
      poles.map(set),
    );
  const ohms = 1000;
  /** Volts across the worker at p2, and the fault current that runs to the grounds. */
  const worker = (world: World): { readonly volts: number; readonly fault: number } => {
    const solution = solveCircuit(world);
    return {
      volts: ohms * solution.bodyCurrent('p2.insulator/conductor', 'p2.neutral-spool/neutral', ohms),
      fault: solution.branchCurrent('p1.tap-cutout', 'link'),
    };
  };
  /** A ground: 1 milliohm and the reactance of its loop. */
  const jumper = abs(complex(1e-3, 1.3572e-3));

  test('beside a ground of their own has a volt or two: equipotential', () => {
    const { volts, fault } = worker(worksite('p2'));
    expect(fault).toBeGreaterThan(700);
    expect(Math.abs(volts / equipotential(fault, jumper, ohms).volts - 1)).toBeLessThan(0.02);
    expect(volts).toBeLessThan(3);
  });

  test('with a ground toward the source alone has no more than its drop', () => {
    const { volts, fault } = worker(worksite('p1'));
    const shared = { grounds: jumper, phase: 0, neutral: 0, ownJumper: 0 };
    expect(volts).toBeLessThan(1.05 * groundsTowardSource(fault, shared, ohms).volts);
    expect(volts).toBeGreaterThan(0.3 * groundsTowardSource(fault, shared, ohms).volts);
  });

  test('with a ground beyond alone has the drop of phase and neutral as well: tens of times as much', () => {
    const world = worksite('p3');
    const { volts, fault } = worker(world);
    const loop = add(ofLine(world, 's2.phase'), ofLine(world, 's2.neutral'));
    const foretold = groundsBeyondWorker(fault, { grounds: jumper, phase: abs(loop), neutral: 0, ownJumper: 0 }, ohms);
    expect(Math.abs(volts / foretold.volts - 1)).toBeLessThan(0.1);
    expect(volts).toBeGreaterThan(30 * worker(worksite('p2')).volts);
    expect(volts).toBeGreaterThan(50);
  });

  test('between two grounds, bracketed, has less than with the far one alone and far more than with one of their own', () => {
    const bracketed = worker(worksite('p1', 'p3')).volts;
    expect(bracketed).toBeLessThan(worker(worksite('p3')).volts);
    expect(bracketed).toBeGreaterThan(0.3 * worker(worksite('p2')).volts);
    expect(worker(worksite('p1', 'p2', 'p3')).volts).toBeLessThan(worker(worksite('p2')).volts);
  });
});
