/** The reader: written form to SI, the same for every spelling and order. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parse as readYaml, stringify } from 'yaml';
import { componentKinds } from '../../../src/engine/catalogue/components.ts';
import { canonicalJson } from '../../../src/engine/math/hash.ts';
import { parse } from '../../../src/engine/scenario/parse.ts';
import { scenarioHash } from '../../../src/engine/scenario/scenarioHash.ts';
import { filesIn, folder, messagesIn, read, scenarioIn, shippedFolder, textOf } from './read.ts';

const small = textOf(folder, 'small.yaml');
const shipped = textOf(shippedFolder, 'quarry-road-fog.yaml');
const replaced = (from: string, to: string, text = small): string => {
  if (!text.includes(from)) throw new Error(`nothing to replace: ${from}`);
  return text.replace(from, to);
};

describe('shipped scenarios', () => {
  test.each(filesIn(shippedFolder))('%s has no problem, and its id is its file name', (name) => {
    expect(messagesIn(textOf(shippedFolder, name))).toEqual([]);
    expect(scenarioIn(textOf(shippedFolder, name)).scenario.id).toBe(name.replace('.yaml', ''));
  });
});

describe('what is read', () => {
  test('quantities become SI: metres, volts, amperes, minutes, degrees Celsius', () => {
    const weather = 'sky: 20 klx\n  wind: 2 mph\n  temperature: 46 °F\n  wetness: 70 %';
    const { scenario } = scenarioIn(replaced('sky: 20 klx', weather));
    // 1 ft = 0.3048 m, 1 mph = 0.44704 m/s (NIST SP 811); 46 °F = (46 - 32) / 1.8 °C.
    expect(scenario.poles[1]).toMatchObject({ id: 'p2', x: 45, y: 0, lengthM: 12.192, class: '4', framing: 'tangent' });
    expect(scenario.site).toMatchObject({ skyLux: 20_000, windMs: 2 * 0.44704 });
    expect(scenario.site.temperatureC).toBeCloseTo(14 / 1.8, 12);
    expect(scenario.site.wetness).toBeCloseTo(0.7, 12);
    expect(scenario.supply).toMatchObject({ lineVolts: 12_470, phaseVolts: 7200, faultAmps: 1000, xOverR: 2 });
    expect(scenario.supply.upstream.travelMin).toBe(10);
  });

  test('values of equipment and faults are read by the dimension that their kind declares', () => {
    const rated = replaced('kind: transformer', 'kind: transformer, values: { va: 15 kVA, primary-volts: 7.2 kV }');
    const leaking = replaced('on: p2.insulator', 'on: p2.insulator, values: { credible-ohms: 1.5 kohm }', rated);
    const { scenario } = scenarioIn(leaking);
    expect(scenario.equipment.find(({ id }) => id === 'p2.transformer')?.values).toEqual({
      va: 15_000,
      primaryVolts: 7200,
    });
    expect(scenario.faults[0]?.values).toEqual({ credibleOhms: 1500 });
  });

  test('what is left out takes the defaults of the form', () => {
    const { scenario } = scenarioIn(small);
    expect(scenario.site).toMatchObject({
      visibilityM: 10_000,
      wetness: 0,
      resistivity: 100,
      traffic: 'none',
      weather: [],
    });
    expect(scenario.crew).toEqual({ secondMin: 0, secondName: 'the second worker', today: '2026-05-04' });
    expect(scenario.spans[0]).toMatchObject({ conductor: 'Swan', neutral: 'Swan' });
    expect(scenario.premises[0]).toMatchObject({ loadW: [0, 0, 0], main: 'closed', says: {} });
  });

  test('the result is plain JSON data without undefined values', () => {
    const { scenario } = scenarioIn(shipped);
    expect(JSON.parse(JSON.stringify(scenario))).toEqual(scenario);
    expect(() => canonicalJson(scenario)).not.toThrow();
  });

  test('a less-than sign between numbers is text, not markup', () => {
    const { scenario } = scenarioIn(replaced('Find the cause and restore.', '5 < 6, and salt & pepper.'));
    expect(scenario.job.words).toBe('5 < 6, and salt & pepper.');
  });

  test('a byte order mark and carriage returns change nothing', () => {
    expect(scenarioIn(`\ufeff${small.replaceAll('\n', '\r\n')}`)).toEqual(scenarioIn(small));
  });
});

describe('the hash', () => {
  test('is the hash of the parsed scenario', () => {
    const { scenario, hash } = scenarioIn(shipped);
    expect(hash).toBe(scenarioHash(scenario));
    expect(hash).toMatch(/^[\da-f]{64}$/);
  });

  test('is the same for another spelling of the same length', () => {
    const metric = replaced('length: 40 ft, framing: tap', 'length: 12.192 m, framing: tap');
    expect(scenarioIn(metric).hash).toBe(scenarioIn(small).hash);
  });

  test('is another for another length', () => {
    const longer = replaced('length: 40 ft, framing: tap', 'length: 45 ft, framing: tap');
    expect(scenarioIn(longer).hash).not.toBe(scenarioIn(small).hash);
  });

  test('does not hang on the order of keys, nor of lists whose order means nothing', () => {
    const whole = readYaml(shipped) as Record<string, unknown>;
    const { hash } = scenarioIn(shipped);
    const free = ['poles', 'spans', 'equipment', 'premises', 'tools', 'faults', 'look-alikes'];
    const shuffled = <T>(list: readonly T[]) => fc.shuffledSubarray([...list], { minLength: list.length });
    const orders = fc.record({
      keys: shuffled(Object.keys(whole)),
      lists: fc.record(Object.fromEntries(free.map((key) => [key, shuffled(whole[key] as unknown[])]))),
    });
    fc.assert(
      fc.property(orders, ({ keys, lists }) => {
        const mixed = Object.fromEntries(keys.map((key) => [key, lists[key] ?? whole[key]]));
        expect(scenarioIn(stringify(mixed)).hash).toBe(hash);
      }),
      { numRuns: 15 },
    );
  });

  test('hangs on the order of the ticket history', () => {
    const history = 'customers-out: 1\n  ticket-history: [first, second]';
    const turned = 'customers-out: 1\n  ticket-history: [second, first]';
    const [a, b] = [history, turned].map((lines) => scenarioIn(replaced('customers-out: 1', lines)).hash);
    expect(a).not.toBe(b);
  });
});

describe('problems', () => {
  test('of different sections are told together, in order of place', () => {
    const text = replaced('x: 45 m', 'x: 45', replaced('kind: stick', 'kind: stik', replaced('grade: 1', 'grade: 9')));
    const lines = messagesIn(text).map((message) => Number(message.split(':')[0]));
    expect(lines).toHaveLength(3);
    expect(lines).toEqual([...lines].sort((a, b) => a - b));
  });

  test('name the file that was handed in', () => {
    const parsed = read('[]', 'somewhere/else.yaml');
    expect(parsed).toMatchObject({ ok: false, problems: [{ file: 'somewhere/else.yaml', line: 1, column: 1 }] });
  });

  test('of parts are not told when the parts of the scene are not known', () => {
    const text = replaced('on: p2.insulator', 'on: p2.insulater');
    expect(parse(text, 'x.yaml').ok).toBe(true);
    expect(read(text).ok).toBe(false);
  });
});

describe('a scenario without problems can be built', () => {
  test.each(componentKinds.map(({ id }) => id))('with a %s named as equipment', (kind) => {
    const named = replaced('  - { id: p2.cutout, kind: cutout }', `  - { id: p2.cutout, kind: ${kind} }`);
    expect(() => read(named)).not.toThrow();
  });

  test.each(['tap', 'tangent', 'deadend'])('with both poles framed as %s', (framing) => {
    const framed = small.replaceAll(/framing: \w+/g, `framing: ${framing}`).replace('on: p2.insulator', 'on: p2.x');
    expect(() => read(framed)).not.toThrow();
  });
});
