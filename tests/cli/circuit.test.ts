/** `loose-tie circuit`: the state asked for, its report, its deck, and what bad use is told. */
import Ajv from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { readTextFile } from '../../src/cli/io.ts';
import { run } from '../../src/cli/run.ts';
import { type CircuitReport, circuitReportSchema } from '../../src/cli/schemas/circuitReport.ts';
import { register } from '../../src/cli/verbs/circuit.ts';
import { runNgspice } from '../oracle/ngspice.ts';

const scenario = 'scenarios/quarry-road-fog.yaml';

type Outcome = { code: number; out: string; err: string };

const circuitReading = async (readFile: (path: string) => string, args: readonly string[]): Promise<Outcome> => {
  let out = '';
  let err = '';
  const code = await run(['circuit', ...args], [register], {
    stdout: (part) => {
      out += part;
    },
    stderr: (part) => {
      err += part;
    },
    readFile,
  });
  return { code, out, err };
};

const circuit = (...args: string[]): Promise<Outcome> => circuitReading(readTextFile, args);

const report = async (...args: string[]): Promise<CircuitReport> => {
  const { code, out, err } = await circuit(scenario, '--json', ...args);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  return circuitReportSchema.parse(JSON.parse(out));
};

const voltsAt = ({ points }: CircuitReport, id: string): number => {
  const found = points.find(({ point }) => point === id);
  if (found === undefined) throw new Error(`no ${id}`);
  return found.volts;
};

describe('the report', () => {
  test('lists every terminal of every part once, and every part that has one', async () => {
    const { points, parts } = await report();
    expect(new Set(points.map(({ point }) => point)).size).toBe(points.length);
    expect(parts.map(({ part }) => part)).toEqual([...new Set(points.map(({ part }) => part))]);
    expect(parts.length).toBeGreaterThan(20);
  });

  test('fits the JSON Schema that is generated from its own schema', async () => {
    const valid = new Ajv({ strict: false }).compile(z.toJSONSchema(circuitReportSchema));
    expect(valid(await report('--netlist')), JSON.stringify(valid.errors)).toBe(true);
    expect(valid({ ...(await report()), groups: 'system' })).toBe(false);
  });

  test('says in a table, for people, what is alive and by which source', async () => {
    const { code, out } = await circuit(scenario);
    expect(code).toBe(0);
    expect(out).toMatch(/^p1\.tap-cutout +bottom +7\.08 kV +4\.14 A +LIVE +a\.generator$/m);
    expect(out).toMatch(/^p2\.neutral-spool +neutral +\S+ mV +\S+ µA +dead$/m);
    expect(out).toContain('no permission to touch');
  });
});

describe('a state that is set', () => {
  test('by the short form puts the other states of the part to what they are in service', async () => {
    const { set, points } = await report('--set', 'p1.tap-cutout=closed', '--set', 'a.generator=stopped');
    expect(set).toContainEqual({ part: 'p1.tap-cutout', state: 'link', value: 'sound' });
    expect(points.find(({ point }) => point === 'p2.cutout/top')?.sources).toEqual(['system']);
  });

  test('by the long form leaves the others, so that a cutout closed on a melted link carries nothing', async () => {
    const answer = await report('--set', 'p1.tap-cutout.position=closed', '--set', 'a.generator=stopped');
    expect(voltsAt(answer, 'p2.cutout/top')).toBeLessThan(50);
  });

  test('may be a jumper or a fault mended', async () => {
    const jumper = 'p3.neutral-spool/neutral+p3.deadend/conductor';
    const grounded = await report('--ground', jumper, '--mend', 'crack');
    expect(grounded.grounded).toEqual([jumper.split('+')]);
    expect(voltsAt(grounded, 'p2.ground-lead/top')).toBeLessThan(50);
    expect(grounded.operations.map(({ part }) => part)).toContain('a.generator');
  });
});

describe('the deck', () => {
  test('is the circuit that was solved, after protection operated: ngspice reads the same volts out of it', async () => {
    const asked = ['--set', 'p1.tap-cutout=closed', '--set', 'a.generator=stopped'];
    const { out } = await circuit(scenario, '--netlist', ...asked);
    const { points, operations } = await report(...asked);
    expect(operations.length).toBeGreaterThan(0);
    const { voltages } = await runNgspice(out);
    for (const { node, point, volts } of points.filter(({ part }) => part === 'p1.tap-cutout')) {
      const phasor = voltages.get(node);
      expect(Math.hypot(phasor?.re ?? 0, phasor?.im ?? 0), point).toBeCloseTo(volts, -1);
    }
  });

  test('stands in the JSON when both are asked for', async () => {
    const { netlist } = await report('--netlist');
    expect(netlist).toBe((await circuit(scenario, '--netlist')).out);
  });

  test('turns with the seed only where sources are not in step', async () => {
    const one = await report('--seed', '1');
    const two = await report('--seed', '2');
    expect(one.angles.system).toBe(0);
    expect(one.angles['a.generator']).not.toBe(two.angles['a.generator']);
    expect(one.points).toEqual(two.points);
  });
});

describe('bad use', () => {
  const refused = async (...args: string[]): Promise<string> => {
    const { code, out, err } = await circuit(...args);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    return err;
  };

  test('names the nearest part', async () => {
    expect(await refused(scenario, '--set', 'p1.tap-cutot=closed')).toContain("did you mean 'p1.tap-cutout'?");
  });

  test('names the nearest value and the nearest state', async () => {
    expect(await refused(scenario, '--set', 'p1.tap-cutout=closd')).toContain("did you mean 'closed'?");
    expect(await refused(scenario, '--set', 'p1.tap-cutout.positon=open')).toContain("did you mean 'position'?");
    expect(await refused(scenario, '--set', 'p1.tap-cutout.link=bown')).toContain("did you mean 'blown'?");
  });

  test('is a part without states, a set without a value, a fault or point that is not there', async () => {
    expect(await refused(scenario, '--set', 'p2.pole=up')).toContain('no states');
    expect(await refused(scenario, '--set', 'p1.tap-cutout')).toContain('expected part=value');
    expect(await refused(scenario, '--mend', 'crak')).toContain("did you mean 'crack'?");
    expect(await refused(scenario, '--ground', 'p2.neutral-spool/neutral')).toContain('two points or more');
    expect(await refused(scenario, '--ground', 'p2.cutout/tip+p2.cutout/bottom')).toContain("did you mean 'top'?");
  });

  test('is a file that is no scenario, and every problem is told with its line', async () => {
    const err = await refused('tests/cli/circuit.test.ts');
    expect(err).toMatch(/circuit\.test\.ts:\d+:\d+ found /);
  });

  test('is a scenario that lays a fault on a part that the scene lacks', async () => {
    const text = readTextFile(scenario).replace('on: p2.insulator', 'on: p2.insulatr');
    const { code, err } = await circuitReading(() => text, ['other.yaml']);
    expect(code).toBe(2);
    expect(err).toContain('p2.insulatr');
  });
});
