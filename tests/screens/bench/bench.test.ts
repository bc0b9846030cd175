/** What the bench does to a World, against the circuit solved directly. */
import { describe, expect, test } from 'vitest';
import { settle } from '../../../src/engine/circuit/settle.ts';
import { solveCircuit } from '../../../src/engine/circuit/solveCircuit.ts';
import { partById, withPart } from '../../../src/engine/world/edit.ts';
import {
  amperesIn,
  clampOff,
  clampOn,
  devicesOn,
  isClosed,
  mend,
  openBench,
  otherWay,
  put,
  readBus,
  refusal,
} from '../../../src/screens/bench/bench.ts';
import { operationsOf, operationWords, partName } from '../../../src/screens/bench/benchWords.ts';
import { graphOf } from '../../../src/screens/bench/circuitGraph.ts';
import { whyOf } from '../../../src/screens/bench/why.ts';
import { offered, quarryRoad, worldOf } from './scene.ts';

const start = worldOf(quarryRoad);
const graph = graphOf(start);
const bus = (id: string) => {
  const found = graph.buses.find((each) => each.id === id);
  if (!found) throw new Error(`no bus ${id}`);
  return found;
};
const edge = (part: string, branch: string) => {
  const found = graph.edges.find((each) => each.part === part && each.branches.includes(branch));
  if (!found) throw new Error(`no edge ${part} ${branch}`);
  return found;
};

describe('the bench', () => {
  test('reads at each bus what the circuit says of its highest point', () => {
    const { solution } = openBench(start);
    const direct = solveCircuit(start);
    expect(readBus({ world: start, solution }, bus('p2.phase')).worst.volts).toBe(
      Math.max(
        ...['p2.insulator/conductor', 'p2.clamp/line', 's1.phase/b', 's2.phase/a'].map((id) => direct.point(id).volts),
      ),
    );
    expect(readBus({ world: start, solution }, bus('p2.x1')).legs).toHaveLength(2);
  });

  test('stops the backfeed when the set stops, the meter is pulled, or the main is opened', () => {
    for (const [part, state] of [
      ['a.generator', { run: 'stopped' }],
      ['a.meter', { position: 'pulled' }],
      ['a.main', { position: 'open' }],
      ['a.cord', { position: 'unplugged' }],
    ] as const) {
      const after = put(openBench(start), part, state);
      expect(readBus(openBench(start), bus('p2.phase')).worst.live).toBe(true);
      expect(readBus(after, bus('p2.phase')).worst.live, part).toBe(false);
    }
  });

  test('closes a cutout with a blown link by putting in a new one', () => {
    const tap = edge('p1.tap-cutout', 'link');
    expect(otherWay(start, tap)).toEqual({ position: 'closed', link: 'sound' });
  });

  test('turns every device of every scenario the other way and back', () => {
    for (const each of offered) {
      const world = worldOf(each);
      for (const device of graphOf(world).edges) {
        const state = otherWay(world, device);
        if (state === null) continue;
        const turned = withPart(world, device.part, { state });
        expect(isClosed(turned, device), device.id).toBe(!isClosed(world, device));
        const back = otherWay(turned, device);
        expect(back && isClosed(withPart(turned, device.part, { state: back }), device), device.id).toBe(
          isClosed(world, device),
        );
      }
    }
  });

  test('lets protection operate as settle does, and says which device, at how much and how fast', () => {
    const closed = put(openBench(start), 'p1.tap-cutout', { position: 'closed', link: 'sound' });
    const direct = settle(withPart(start, 'p1.tap-cutout', { state: { position: 'closed', link: 'sound' } }));
    expect(closed.operations).toEqual(direct.operations);
    expect(closed.operations.length).toBeGreaterThan(0);
    expect(operationsOf(closed)[0]).toMatch(
      /^Engine set, first house: its 30 A breaker tripped on \d+ A within .+ m?s\.$/,
    );
    expect(partById(closed.world, 'a.generator').state.breaker).toBe('open');
  });

  test('puts a ground on and takes it off, and refuses two clamps on one piece of metal', () => {
    const points = ['p2.neutral-spool/neutral', 'p2.insulator/conductor'] as const;
    const on = clampOn(openBench(start), points);
    expect(readBus(on, bus('p2.phase')).worst.live).toBe(false);
    expect(on.world.jumpers).toHaveLength(1);
    const off = clampOff(on, on.world.jumpers[0]?.id ?? '');
    expect(off.world.jumpers).toEqual([]);
    expect(refusal(on, ['p2.insulator/conductor', 'p2.clamp/line'])).toContain('same metal');
    expect(() => clampOn(on, ['p2.insulator/conductor', 'p2.clamp/line'])).toThrow('same metal');
  });

  test('mends a leak and a joint: no current through the one, the other carries again', () => {
    const bench = openBench(start);
    expect(amperesIn(bench, edge('p2.insulator', 'crack'))).toBeGreaterThan(1e-3);
    const dry = mend(bench, 'crack');
    expect(amperesIn(dry, edge('p2.insulator', 'crack'))).toBe(0);
    const joined = mend(bench, 'bond');
    expect(isClosed(joined.world, edge('p2.ground-bond', 'lead'))).toBe(true);
    expect(readBus(bench, bus('p2.stub')).worst.live).toBe(true);
    expect(readBus(joined, bus('p2.stub')).worst.live).toBe(false);
  });

  test('goes back to where it was before a change', () => {
    const bench = openBench(start);
    expect(put(bench, 'a.main', { position: 'open' }).before).toBe(bench);
  });
});

describe('what operated, in words', () => {
  const world = (id: string) => {
    const found = offered.find(({ scenario }) => scenario.id === id);
    if (!found) throw new Error(`no scenario ${id}`);
    return worldOf(found);
  };

  test('a recloser says when it closes again or that it is locked out, a relay at how many volts', () => {
    const scene = world('model-recloser');
    const part = scene.parts.find(({ kind }) => kind.endsWith('recloser'))?.id ?? '';
    const shot = { part, branch: 'contacts', amperes: 800, seconds: 0.05 };
    expect(operationWords(scene, { ...shot, closesAfter: 2 })).toMatch(
      /tripped on 800 A within 50 ms and closes again after 2 s\.$/,
    );
    expect(operationWords(scene, { ...shot, closesAfter: null })).toMatch(/and is locked out\.$/);
    expect(operationWords(start, { part: 'p2.cutout', branch: 'link', amperes: 96, seconds: 0.4 })).toBe(
      'Fused cutout, pole QR-14: its 6K link melted and cleared 96 A within 400 ms.',
    );
    expect(operationWords(start, { part: 'a.generator', branch: 'stalls', amperes: 0, seconds: 2, volts: 40 })).toBe(
      'Engine set, first house: stalls, 40 V for 2 s.',
    );
  });
});

describe('why these volts', () => {
  const only = (bench: ReturnType<typeof openBench>) => {
    const [why] = whyOf(bench);
    if (!why) throw new Error('no transformer');
    return why;
  };

  test('multiplies a half of the low side by the turns, as the circuit then shows', () => {
    const bench = openBench(start);
    const half = bench.solution.between('p2.transformer/x1', 'p2.transformer/x2');
    const high = bench.solution.between('p2.transformer/h1', 'p2.transformer/tank');
    expect(high / half).toBeCloseTo(7200 / 120, 0);
    expect(only(bench).now).toContain(`60 × ${Math.round(half)} V`);
    expect(only(bench).now).toContain('Backfed by the engine set, first house.');
  });

  test('tells of the short what solving it with the short on gives', () => {
    const bench = openBench(start);
    const world = {
      ...start,
      jumpers: [
        { id: 't', tool: 'secondary-short', points: ['p2.transformer/x2', 'p2.transformer/x1', 'p2.transformer/x3'] },
      ],
    };
    const volts = solveCircuit(world).point('p2.transformer/h1').volts;
    expect(only(bench).short).toContain(`H1 would fall to ${Math.round(volts)} V at once`);
    expect(settle(world).operations[0]?.part).toBe('a.generator');
    expect(only(bench).short).toContain('30 A breaker tripped');
  });

  test('says that nothing feeds it, or that the system does', () => {
    const dead = put(openBench(start), 'a.generator', { run: 'stopped' });
    expect(only(dead)).toMatchObject({ now: 'Nothing feeds it: neither side is live.', short: null });
    const fed = put(dead, 'p1.tap-cutout', { position: 'closed', link: 'sound' });
    expect(only(fed).now).toMatch(/^The system feeds it\. 7\.\d+ kV/);
  });
});

test('devices that are called alike in one place are told apart by number, in every scenario', () => {
  for (const each of offered) {
    const world = worldOf(each);
    const names = devicesOn(world, world).map((part) => partName(world, part));
    expect(new Set(names).size, each.scenario.id).toBe(names.length);
  }
});
