/** Small worlds of real kinds whose volts and amperes can be worked out by hand. */
import { describe, expect, test } from 'vitest';
import { elementsOf } from '../../../src/engine/circuit/elementsOf.ts';
import { FLOOR_CAPACITANCE, JUMPER } from '../../../src/engine/circuit/impedances.ts';
import { solveCircuit } from '../../../src/engine/circuit/solveCircuit.ts';
import { abs, add, type Complex, complex, div, ONE, scale } from '../../../src/engine/math/complex.ts';
import { laid, piece, tinyWorld } from './scene.ts';

const OMEGA = 2 * Math.PI * 60;
const stiff = { ohms: 1e-3, reactance: 1e-3 };
const source = (values: Record<string, number> = stiff) =>
  piece('s', 'system-source', { nets: { line: 'line', neutral: 'earth' }, values });
const inverse = (z: Complex): Complex => div(ONE, z);

describe('a cracked insulator', () => {
  const insulator = piece('i', 'pin-insulator', { nets: { conductor: 'line', pin: 'pin' } }, [
    laid('pin-insulator-cracked', { ohms: 150e3, credibleOhms: 2e3 }),
  ]);
  const world = tinyWorld([source(), insulator]);
  const body = (ohms: number): Complex => add(complex(1 / 2e9 + 1 / ohms), complex(0, OMEGA * 10e-12));
  const wood = complex(1 / 2e6, OMEGA * 5e-12);
  const pinVolts = (ohms: number): number => abs(scale(div(body(ohms), add(body(ohms), wood)), 7200));

  test('divides the volts between crack and wood', () => {
    expect(solveCircuit(world).point('i/pin').volts).toBeCloseTo(pinVolts(150e3), 2);
  });

  test('drives through 1 kilohm what its Thevenin impedance lets through', () => {
    const zth = inverse(add(body(150e3), wood));
    const expected = pinVolts(150e3) / abs(add(zth, complex(1000)));
    expect(solveCircuit(world).point('i/pin').throughKilohm).toBeCloseTo(expected, 7);
    expect(solveCircuit(world).bodyCurrent('i/pin', 'earth', 1000)).toBeCloseTo(expected, 7);
  });

  test('takes its credible ohms only when asked, for all faults or for those named', () => {
    const credible = pinVolts(2e3);
    expect(solveCircuit(world, { credible: true }).point('i/pin').volts).toBeCloseTo(credible, 1);
    expect(solveCircuit(world, { credible: ['pin-insulator-cracked'] }).point('i/pin').volts).toBeCloseTo(credible, 1);
    expect(solveCircuit(world, { credible: ['another'] }).point('i/pin').volts).toBeCloseTo(pinVolts(150e3), 1);
  });

  test('gives its leak as a branch of the part', () => {
    const solution = solveCircuit(world);
    const across = solution.between('i/conductor', 'i/pin');
    expect(solution.branchCurrent('i', 'crack')).toBeCloseTo(across / 150e3, 8);
  });
});

describe('a bridge', () => {
  test('of 1 kilohm between two points carries what bodyCurrent foretells', () => {
    const insulator = piece('i', 'pin-insulator', { nets: { conductor: 'line', pin: 'pin' } }, [
      laid('pin-insulator-cracked', { ohms: 150e3 }),
    ]);
    const world = tinyWorld([source(), insulator]);
    const foretold = solveCircuit(world).bodyCurrent('i/conductor', 'i/pin', 1000);
    const bridged = solveCircuit(world, { bridges: [{ from: 'i/conductor', to: 'i/pin', ohms: 1000 }] });
    expect(bridged.branchCurrent('bridge', '1')).toBeCloseTo(foretold, 9);
    expect(bridged.between('i/conductor', 'i/pin')).toBeCloseTo(foretold * 1000, 6);
  });
});

describe('a net without a path', () => {
  const world = tinyWorld([source(), piece('spool', 'neutral-spool', { nets: { neutral: 'alone' } })]);

  test('gets the floor capacitance, stands at nothing and is not live', () => {
    const stray = elementsOf(world).find(({ id }) => id === 'stray:alone');
    expect(stray).toMatchObject({ from: 'alone', to: 'earth', y: FLOOR_CAPACITANCE });
    expect(solveCircuit(world).point('spool/neutral')).toMatchObject({ volts: 0, live: false, sources: [] });
  });

  test('is about 7 pF, that of a metre of wire', () => {
    expect(FLOOR_CAPACITANCE.im / OMEGA).toBeGreaterThan(6e-12);
    expect(FLOOR_CAPACITANCE.im / OMEGA).toBeLessThan(8e-12);
  });

  test('is not given one when a part states its capacitance to earth', () => {
    expect(elementsOf(world).some(({ id }) => id === 'stray:line')).toBe(false);
  });
});

describe('a 25 kVA service transformer', () => {
  const transformer = piece('t', 'transformer', { nets: { h1: 'line', tank: 'earth', x1: 'x1', x2: 'n', x3: 'x3' } });

  // 7200 / 60 by turns; the magnetising current of 1.93 % over 1.6 + j1.5 % takes less than 0.1 %.
  test('gives 120 and 240 V from 7200 V', () => {
    const solution = solveCircuit(tinyWorld([source(), transformer]));
    expect(solution.between('t/x1', 't/x2') / 120).toBeCloseTo(1, 3);
    expect(solution.between('t/x1', 't/x3') / 240).toBeCloseTo(1, 3);
  });

  // Z = (1.60 + j1.51) % of 240^2 / 25000, plus the jumper; half the winding: 1.5 R + j1.2 X on the 120 V base.
  test('short-circuited between its legs, and from a leg to neutral, delivers what its per cent impedance lets through', () => {
    const bolted = solveCircuit(tinyWorld([source(), transformer], [['t/x1', 't/x3']]));
    const z240 = scale(complex(0.016, 0.0151), (240 * 240) / 25000);
    expect(bolted.branchCurrent('jumper-1', '1') / (240 / abs(add(z240, JUMPER)))).toBeCloseTo(1, 3);
    const half = solveCircuit(tinyWorld([source(), transformer], [['t/x1', 't/x2']]));
    const z120 = scale(complex(1.5 * 0.016, 1.2 * 0.0151), (120 * 120) / 25000);
    expect(half.branchCurrent('jumper-1', '1') / (120 / abs(add(z120, JUMPER)))).toBeCloseTo(1, 3);
  });

  // The worked case "backfeed-open" (6.5 kVA set, 1 megohm leak) gives 7121.8 V by ngspice and by a nodal program; the
  // capacitances and breakers of these parts, absent there, are worth a few volts.
  test('fed from its secondary by a 6.5 kVA set raises its primary to 7.12 kV', () => {
    const set = piece('g', 'generator', { nets: { g1: 'x1', g2: 'x3', n: 'n', w1: 'w1', w2: 'w2' } });
    const bond = piece('b', 'ground-rod', { nets: { rod: 'n' }, values: { ohms: 0.5 } });
    const open = { ...transformer, nets: { ...transformer.nets, h1: 'h', tank: 'n' } };
    const solution = solveCircuit(tinyWorld([open, set, bond]));
    expect(solution.between('t/h1', 't/tank') / 7121.8).toBeCloseTo(1, 2);
    expect(solution.point('t/h1')).toMatchObject({ live: true, sources: ['g'] });
  });
});

describe('the ground beside an electrode', () => {
  test('rises with the current that it carries, so that its touch volts are less than its own', () => {
    const rod = piece('r', 'ground-rod', { nets: { rod: 'line' }, values: { ohms: 25 } });
    const world = tinyWorld([source({ ohms: 15, reactance: 0 }), rod]);
    const amperes = 7200 / (15 + 25);
    // rho I / (2 pi r) at 1 m in 150 ohm m.
    const ground = (world.site.resistivity * amperes) / (2 * Math.PI);
    expect(solveCircuit(world).branchCurrent('r', 'electrode')).toBeCloseTo(amperes, 3);
    expect(solveCircuit(world).between('r/rod', 'earth')).toBeCloseTo(25 * amperes - ground, 2);
  });

  test('is never above the electrode itself', () => {
    const rod = piece('r', 'ground-rod', { nets: { rod: 'line' }, values: { ohms: 5 } });
    expect(solveCircuit(tinyWorld([source(), rod])).point('r/rod').volts).toBeCloseTo(7200 - 7200, -1);
  });

  test('is hardly raised ten metres away', () => {
    const rod = piece('r', 'ground-rod', { nets: { rod: 'line' }, values: { ohms: 25 } });
    const far = piece('far', 'ground-rod', { nets: { rod: 'line' }, values: { ohms: 1e9 }, at: [10, 0, 0] });
    const solution = solveCircuit(tinyWorld([source(), rod, far]));
    const ground = (150 * (7200 / 25)) / (2 * Math.PI * 11);
    expect(solution.point('far/rod').volts / (7200 - ground)).toBeCloseTo(1, 2);
  });
});

describe('live', () => {
  test('wants volts and current both: a net held only by picofarads is not, nor is one of a few volts', () => {
    const stray = piece('i', 'pin-insulator', { nets: { conductor: 'line', pin: 'pin' } });
    const { volts, throughKilohm, live } = solveCircuit(tinyWorld([source(), stray])).point('i/pin');
    expect({ volts: volts > 50, current: throughKilohm > 1e-3, live }).toEqual({
      volts: true,
      current: false,
      live: false,
    });
    const low = solveCircuit(tinyWorld([source({ ...stiff, volts: 10 })])).point('s/line');
    expect({ volts: low.volts > 50, current: low.throughKilohm > 1e-3, live: low.live }).toEqual({
      volts: false,
      current: true,
      live: false,
    });
  });
});

describe('what is not there', () => {
  const world = tinyWorld([
    source(),
    piece('c', 'cutout', { nets: { top: 'line', bottom: 'b' }, state: { position: 'open' } }),
  ]);

  test('carries nothing if it is an open branch of a part', () => {
    expect(solveCircuit(world).branchCurrent('c', 'link')).toBe(0);
  });

  test('is a defect if no state of the part has such a branch, or no such part or point is there', () => {
    const solution = solveCircuit(world);
    expect(() => solution.branchCurrent('c', 'lnik')).toThrow("c: has no branch 'lnik' in any state");
    expect(() => solution.branchCurrent('d', 'link')).toThrow('d: no such part');
    expect(() => solution.point('c/middle')).toThrow("c: has no net on terminal 'middle'");
    expect(() => solution.point('d/top')).toThrow('d/top: no such point');
  });
});

describe('a circuit that cannot be solved', () => {
  test('is a defect that names the part', () => {
    const broken = piece('r', 'ground-rod', { nets: { rod: 'line' }, values: { ohms: 0 } });
    expect(() => solveCircuit(tinyWorld([source(), broken]))).toThrow(/^r:electrode: /);
    const leak = piece('i', 'pin-insulator', { nets: { conductor: 'line', pin: 'pin' } }, [
      laid('pin-insulator-cracked', { ohms: 0 }),
    ]);
    expect(() => solveCircuit(tinyWorld([source(), leak]))).toThrow("pin-insulator-cracked: leak 'crack' has no ohms");
  });
});
