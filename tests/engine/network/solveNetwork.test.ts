import { describe, expect, test } from 'vitest';
import { abs, complex, div, mul, polar, sub } from '../../../src/engine/math/complex.ts';
import { RESIDUAL_BOUND, solveNetwork } from '../../../src/engine/network/solveNetwork.ts';
import { admittance, impedance, solved, source, transformer, winding } from './elements.ts';

const near = (value: { re: number; im: number }, re: number, im: number, tolerance = 1e-12): void => {
  expect(abs(sub(value, complex(re, im)))).toBeLessThanOrEqual(tolerance * Math.max(1, abs(complex(re, im))));
};

describe('closed forms', () => {
  test('a divider of 1 and 3 ohm halves nothing but splits one to three', () => {
    const s = solved([
      source('s', 'a', 'earth', complex(100)),
      impedance('r', 'a', 'b', 1),
      impedance('q', 'b', 'earth', 3),
    ]);
    near(s.voltage('b'), 75, 0);
    near(s.current('r'), 25, 0);
    near(s.current('s'), -25, 0);
    near(s.voltageBetween('a', 'b'), 25, 0);
    near(s.voltage('earth'), 0, 0);
  });

  test('a capacitor of 10 pF behind 1 megohm turns the phasor by its time constant', () => {
    const y = 2 * Math.PI * 60 * 10e-12;
    const s = solved([
      source('s', 'a', 'earth', complex(7200)),
      impedance('r', 'a', 'b', 1e6),
      admittance('c', 'b', 'earth', 0, y),
    ]);
    const expected = div(complex(7200), complex(1, 1e6 * y));
    near(s.voltage('b'), expected.re, expected.im);
    near(s.current('c'), mul(expected, complex(0, y)).re, mul(expected, complex(0, y)).im);
  });

  test('a source behind its impedance delivers emf over the sum', () => {
    const s = solved([source('s', 'a', 'earth', polar(120, 1), complex(1, 2)), impedance('l', 'a', 'earth', 3, -1)]);
    const expected = div(polar(120, 1), complex(4, 1));
    near(s.current('l'), expected.re, expected.im);
  });

  test('capacitive sharing: an isolated conductor takes the ratio of its capacitances', () => {
    const s = solved([
      source('s', 'a', 'earth', complex(7200)),
      admittance('up', 'a', 'b', 0, 1e-9),
      impedance('contact', 'b', 'c', 0.001),
      admittance('down', 'c', 'earth', 0, 3e-9),
    ]);
    const current = div(complex(7200), complex(0.001, -1 / 1e-9 - 1 / 3e-9));
    near(s.voltage('c'), 1800, 0, 1e-11);
    near(s.voltageBetween('b', 'c'), current.re * 0.001, current.im * 0.001);
    expect(abs(sub(s.current('contact'), current))).toBeLessThan(1e-12 * abs(current));
    expect(s.thevenin('c').zth.im).toBeCloseTo(-1 / 4e-9, 0);
  });

  const service = (load: number, unload: number) => [
    transformer('t', [winding('h', 'earth', 7200), winding('x1', 'earth', 120), winding('earth', 'x3', 120)]),
    impedance('l1', 'x1', 'earth', load),
    impedance('l3', 'x3', 'earth', unload),
  ];

  test('7200 to 120/120 forward: 60 to one in volts, one to 60 in amperes, legs in opposition', () => {
    const s = solved([...service(12, 24), source('s', 'h', 'earth', complex(7200))]);
    near(s.voltage('x1'), 120, 0);
    near(s.voltage('x3'), -120, 0);
    near(s.voltageBetween('x1', 'x3'), 240, 0);
    near(s.current('t', 1), -10, 0);
    near(s.current('t', 2), -5, 0);
    near(s.current('t', 0), 15 / 60, 0);
    near(s.thevenin('x1').voc, 120, 0);
  });

  test('the same transformer backward: 240 V on the legs stands as 7200 V on the open high side', () => {
    const s = solved([...service(12, 24), source('g', 'x1', 'x3', complex(240)), impedance('open', 'h', 'earth', 1e9)]);
    near(s.voltage('h'), 7200, 0);
    near(s.voltage('x1'), 120, 0, 1e-9);
  });

  test('the magnetising branch draws its current behind the impedance of winding 0', () => {
    const y = complex(1e-4, -2e-4);
    const s = solved([
      source('s', 'h', 'earth', complex(7200)),
      transformer('t', [winding('h', 'earth', 7200, 16, 25), winding('x', 'earth', 240)], y),
      impedance('open', 'x', 'earth', 1e12),
    ]);
    const expected = div(complex(7200), { re: 16 + div(complex(1), y).re, im: 25 + div(complex(1), y).im });
    near(s.current('t', 0), expected.re, expected.im, 1e-9);
  });
});

describe('groups of sources out of step', () => {
  const elements = [
    source('s', 'a', 'earth', complex(7200), complex(1), 'system'),
    source('g', 'b', 'earth', complex(0, 7000), complex(1), 'generator'),
    impedance('m', 'a', 'm', 1),
    impedance('n', 'm', 'b', 1),
  ];

  test('contributions add up to the whole', () => {
    const s = solved(elements);
    expect(s.groups).toEqual(['generator', 'system']);
    near(s.contribution('system').voltage('m'), 3600, 0);
    near(s.contribution('generator').voltage('m'), 0, 3500);
    near(s.voltage('m'), 3600, 3500);
  });

  test('turning a group turns its part', () => {
    near(
      solved(elements)
        .at({ generator: -Math.PI / 2 })
        .voltage('m'),
      7100,
      0,
    );
    near(
      solved(elements)
        .at({ generator: Math.PI / 2 })
        .voltage('m'),
      100,
      0,
      1e-9,
    );
  });

  test('the worst angle opens the sum of the magnitudes', () => {
    const s = solved(elements);
    expect(s.worst('m')).toBeCloseTo(7100, 8);
    expect(s.worstCurrent('m')).toBeCloseTo((7200 + 7000) / 4, 8);
    expect(s.worstBetween('a', 'b')).toBeCloseTo((7200 + 7000) / 2, 8);
    expect(s.theveninBetween('a', 'b').worst).toBeCloseTo((7200 + 7000) / 2, 8);
    const seen = Array.from({ length: 361 }, (_, i) => abs(s.at({ generator: (i * Math.PI) / 180 }).voltage('m')));
    expect(Math.max(...seen)).toBeLessThanOrEqual(s.worst('m') * (1 + 1e-12));
    expect(Math.max(...seen)).toBeGreaterThan(s.worst('m') * 0.9999);
  });

  test('open contact between two groups shows the volts across it', () => {
    const s = solved([
      source('s', 'line', 'earth', complex(7200), complex(1), 'system'),
      source('g', 'load', 'earth', complex(7100), complex(1), 'generator'),
      admittance('gap', 'line', 'load', 0, 1e-10),
    ]);
    expect(s.worstBetween('line', 'load')).toBeCloseTo(14300, 3);
    expect(abs(s.voltageBetween('line', 'load'))).toBeCloseTo(100, 3);
  });
});

describe('thevenin', () => {
  const elements = [
    source('s', 'a', 'earth', complex(7200), complex(0.4, 2.4)),
    impedance('line', 'a', 'b', 3, 6),
    impedance('leak', 'b', 'c', 2e5),
    impedance('butt', 'c', 'earth', 25),
  ];

  test('predicts the current of a body put between the two nodes', () => {
    const { voc, zth } = solved(elements).theveninBetween('c', 'earth');
    const predicted = div(voc, complex(zth.re + 1000, zth.im));
    const actual = solved([...elements, impedance('body', 'c', 'earth', 1000)]).current('body');
    near(predicted, actual.re, actual.im);
    const across = solved(elements).theveninBetween('b', 'c');
    const contact = solved([...elements, impedance('body', 'b', 'c', 1000)]).current('body');
    near(div(across.voc, complex(across.zth.re + 1000, across.zth.im)), contact.re, contact.im);
  });

  test('earth seen from earth is nothing', () => {
    expect(solved(elements).thevenin('earth')).toEqual({ voc: complex(0), zth: complex(0), worst: 0 });
  });
});

describe('failures', () => {
  test('an island without a path to earth is named', () => {
    const failure = solveNetwork([
      source('s', 'a', 'earth', complex(1), complex(1)),
      impedance('r', 'c', 'b', 1),
      admittance('none', 'b', 'earth', 0),
    ]);
    expect(failure).toEqual({ ok: false, reason: 'singular', island: ['b', 'c'], node: 'b' });
  });

  test('a secondary that touches nothing else is an island, though its core is shared', () => {
    const failure = solveNetwork([
      source('s', 'h', 'earth', complex(1), complex(1)),
      transformer('t', [winding('h', 'earth', 60, 1), winding('x', 'y', 1, 1)], complex(1e-5)),
    ]);
    expect(failure).toMatchObject({ reason: 'singular', island: ['x', 'y'] });
  });

  test('a core without magnetising admittance and all windings open is named, and no zero given', () => {
    const failure = solveNetwork([
      source('s', 'a', 'earth', complex(1), complex(1)),
      transformer('t', [winding('h', 'earth', 60, 16, 25), winding('x', 'earth', 1, 0.01, 0.004)]),
    ]);
    expect(failure).toMatchObject({ ok: false, reason: 'singular', island: [] });
    expect(['t', 'h', 'x']).toContain(
      (failure as { element?: string; node?: string }).element ?? (failure as { node?: string }).node,
    );
  });

  test('two stiff sources side by side are named', () => {
    const failure = solveNetwork([source('p', 'a', 'earth', complex(120)), source('q', 'a', 'earth', complex(121))]);
    expect(failure).toMatchObject({ ok: false, reason: 'singular', island: [] });
    expect(['p', 'q']).toContain((failure as { element?: string }).element);
  });

  test('a coil exactly in resonance with a capacitor is singular, not infinite', () => {
    const failure = solveNetwork([impedance('l', 'a', 'earth', 0, 8), admittance('c', 'a', 'earth', 0, 0.125)]);
    expect(failure).toMatchObject({ ok: false, reason: 'singular', island: [] });
  });

  test.each([
    ['zero impedance', [impedance('bad', 'a', 'earth', 0)], 'its impedance is zero'],
    ['not finite', [impedance('bad', 'a', 'earth', Number.NaN)], 'its impedance is not finite'],
    ['admittance', [admittance('bad', 'a', 'earth', Number.POSITIVE_INFINITY)], 'its admittance is not finite'],
    ['emf', [source('bad', 'a', 'earth', complex(Number.NaN))], 'its emf or impedance is not finite'],
    ['no winding', [transformer('bad', [])], 'it has no winding'],
    ['turns', [transformer('bad', [winding('a', 'earth', 0)])], 'the turns of a winding are not a positive number'],
    [
      'winding',
      [transformer('bad', [winding('a', 'earth', 1, Number.NaN)])],
      'the impedance of a winding is not finite',
    ],
    [
      'core',
      [transformer('bad', [winding('a', 'earth', 1)], complex(Number.NaN))],
      'its magnetising admittance is not finite',
    ],
    ['id twice', [impedance('bad', 'a', 'earth', 1), admittance('bad', 'a', 'earth', 1)], 'its id is used twice'],
  ])('an element that means nothing is refused: %s', (_, elements, detail) => {
    expect(solveNetwork(elements)).toEqual({ ok: false, reason: 'invalid', element: 'bad', detail });
  });

  test('asking for what is not there throws instead of answering zero', () => {
    const s = solved([
      source('s', 'a', 'earth', complex(1), complex(1)),
      transformer('t', [winding('a', 'earth', 1, 1)], complex(1)),
    ]);
    expect(() => s.voltage('b')).toThrow(RangeError);
    expect(() => s.worst('b')).toThrow(RangeError);
    expect(() => s.thevenin('b')).toThrow(RangeError);
    expect(() => s.current('r')).toThrow(RangeError);
    expect(() => s.current('t')).toThrow(RangeError);
    expect(() => s.current('t', 1)).toThrow(RangeError);
    expect(() => s.current('s', 0)).toThrow(RangeError);
    expect(() => s.contribution('generator')).toThrow(RangeError);
    expect(() => solved([impedance('r', 'a', 'earth', 1)]).worst('b')).toThrow(RangeError);
  });
});

test('milliohms, picofarads and kilovolts in one network leave next to no residual', () => {
  const chain = Array.from({ length: 20 }, (_, i) =>
    impedance(`z${i}`, `n${i}`, `n${i + 1}`, i % 2 === 0 ? 1e-3 : 0.3),
  );
  const s = solved([
    ...chain,
    source('s', 'a', 'earth', complex(7200), complex(1)),
    admittance('near', 'a', 'n0', 0, 4e-10),
    admittance('far', 'n20', 'earth', 0, 12e-10),
  ]);
  expect(s.residual).toBeLessThan(1e-13);
  expect(RESIDUAL_BOUND).toBeLessThanOrEqual(1e-9);
  const current = div(complex(7200), complex(1 + 10 * 0.301, -1 / 4e-10 - 1 / 12e-10));
  near(s.voltage('n20'), mul(current, complex(0, -1 / 12e-10)).re, mul(current, complex(0, -1 / 12e-10)).im);
  for (const { id } of chain) expect(abs(sub(s.current(id), current))).toBeLessThan(1e-12 * abs(current));
});
