/** Each fault kind of line, pole and equipment does electrically what its words say. */
import { describe, expect, test } from 'vitest';
import { faultKind, faultKinds } from '../../../../src/engine/catalogue/faults.ts';
import { elementId, elementsOf } from '../../../../src/engine/circuit/elementsOf.ts';
import { settle } from '../../../../src/engine/circuit/settle.ts';
import { solveCircuit } from '../../../../src/engine/circuit/solveCircuit.ts';
import { abs } from '../../../../src/engine/math/complex.ts';
import { faultsOf, partById, withoutFault } from '../../../../src/engine/world/edit.ts';
import { lyingAt } from '../../../../src/engine/world/lying.ts';
import type { World } from '../../../../src/engine/world/types.ts';
import { benchWith, cases, laidOnEquipment } from '../../catalogue/bench.ts';
import { withState } from '../scene.ts';
import { model, modelNames, only } from './scenes.ts';

const inModels = modelNames.flatMap((name) =>
  faultsOf(model(name)).map(({ on, fault }) => ({
    name,
    on,
    fault,
    sound: () => only(model(name), 'holds'),
    laid: () => only(model(name), 'holds', fault.id),
  })),
);
// What no model scene holds lies on a bench of its own, beside what it needs there.
const onBenches = cases
  .filter(({ kind }) => !inModels.some(({ fault }) => fault.kind === kind))
  .map((each) => {
    const laid = benchWith(each);
    const it = faultsOf(laid).find(({ fault }) => fault.id === 'it');
    if (it === undefined) throw new Error(`${each.kind} is not laid`);
    return { name: 'a bench', ...it, sound: () => withoutFault(laid, 'it'), laid: () => laid };
  });
const all = [...inModels, ...onBenches];
const electrical = all.filter(({ fault }) => {
  const { opens, leaks } = faultKind(fault.kind);
  return opens.length + leaks.length > 0;
});
const near = (value: number, expected: number, part: number): void =>
  expect(Math.abs(value / expected - 1)).toBeLessThan(part);

test('the scenes and benches hold each kind of equipment that opens, leaks or changes a state or a word', () => {
  const held = new Set(all.map(({ fault }) => fault.kind));
  const wanted = faultKinds.filter(
    ({ id, opens, leaks, sets, words }) => laidOnEquipment(id) && (opens.length + leaks.length > 0 || sets || words),
  );
  expect(wanted.map(({ id }) => id).filter((id) => !held.has(id))).toEqual([]);
});

describe.each(electrical)('$fault.kind in $name', ({ on, fault, ...scene }) => {
  const kind = faultKind(fault.kind);
  const [sound, laid] = [scene.sound(), scene.laid()] as const;
  const ids = (world: World): Set<string> => new Set(elementsOf(world).map(({ id }) => id));

  test('takes its branches out and puts its leaks in, nothing else, and credibly carries more', () => {
    const gone = kind.opens.map((branch) => elementId(on, branch));
    // A piece that hangs clear of the ground leads nothing into it.
    const leaks = kind.leaks.filter(({ soil, from }) => !soil || lyingAt(partById(laid, on), from) !== null);
    expect(leaks.length).toBe(kind.leaks.some(({ soil }) => soil) ? 1 : kind.leaks.length);
    const added = leaks.map(({ name: leak }) => elementId(on, leak));
    for (const id of gone) expect(ids(laid).has(id)).toBe(false);
    for (const id of added) expect([ids(sound).has(id), ids(laid).has(id)]).toEqual([false, true]);
    for (const { name: leak } of leaks) {
      const now = solveCircuit(laid).branchCurrent(on, leak);
      const flashed = solveCircuit(laid, { credible: true }).branchCurrent(on, leak);
      expect(now).toBeGreaterThan(0);
      expect(flashed).toBeGreaterThanOrEqual(now);
    }
  });
});

test('a contaminated pin leaks what ohms and wood in series let through', () => {
  const solution = solveCircuit(only(model('wye-bank'), 'crust'));
  const across = solution.between('p2.insulator-a/conductor', 'p2.insulator-a/pin');
  near(solution.branchCurrent('p2.insulator-a', 'crust'), across / 500e3, 1e-6);
  expect(solution.point('p2.insulator-a/pin').live).toBe(true);
});

test('a track along the arm brings the leak of an arm pin to the pole top', () => {
  const volts = (...kept: string[]): number =>
    solveCircuit(only(model('wye-bank'), ...kept)).point('p2.insulator-b/pin').volts;
  expect(volts('crust', 'track')).toBeGreaterThan(1.01 * volts('crust'));
});

test('a hung tube holds no load and keeps the far side alive through its bore', () => {
  const solution = solveCircuit(only(model('open-wye'), 'hung'));
  expect(solution.point('p2.cutout-c/bottom').volts).toBeGreaterThan(500);
  expect(solution.point('p2.cutout-c/bottom').volts).toBeLessThan(6000);
  near(solveCircuit(only(model('open-wye'))).point('p2.cutout-c/bottom').volts, 7200, 0.01);
});

test('an arrester that failed short blows the link before it when it is welded', () => {
  const world = withState(only(model('island'), 'short'), 'p1.tap-cutout', { position: 'closed' });
  const welded = {
    ...world,
    parts: world.parts.map((part) =>
      part.id === 'p2.arrester' ? { ...part, faults: part.faults.map((f) => ({ ...f, values: { ohms: 1 } })) } : part,
    ),
  };
  expect(settle(withState(welded, 'a.photovoltaic', { run: 'stopped' })).operations[0]).toMatchObject({
    part: 'p1.tap-cutout',
    branch: 'link',
  });
});

test('a disconnector that operated takes the blocks out: only what a stray capacitance draws flows to the base', () => {
  const blocks = (...kept: string[]): number =>
    solveCircuit(only(model('recloser'), ...kept)).branchCurrent('p2.arrester', 'blocks');
  expect(blocks()).toBeGreaterThan(1e-5);
  expect(blocks('disc')).toBeLessThan(1e-6 * blocks());
});

test('an oversize link is what the circuit has as long as the fault lies there', () => {
  const link = (world: World): number => {
    const shorted = {
      ...world,
      jumpers: [{ id: 'j', tool: 'g', points: ['p2.cutout-a/bottom', 'p2.ground-bond/neutral'] }],
    };
    return settle(shorted).operations.find(({ part }) => part === 'p2.cutout-a')?.seconds ?? Number.POSITIVE_INFINITY;
  };
  expect(link(only(model('open-wye'), 'large'))).toBeGreaterThan(1.3 * link(only(model('open-wye'))));
});

test('strap and upper lead off together leave the tank to a voltage', () => {
  const tank = (...kept: string[]): number =>
    abs(solveCircuit(only(model('recloser'), ...kept)).network.voltage('p2.tank'));
  expect(tank('strap')).toBeLessThan(2 * tank());
  expect(tank('strap', 'upper')).toBeGreaterThan(5 * tank());
});

test('a broken ground lead takes the rod out of the circuit', () => {
  expect(solveCircuit(only(model('island'), 'holds', 'lead')).branchCurrent('p3.ground-rod', 'electrode')).toBeLessThan(
    1e-6,
  );
  expect(solveCircuit(only(model('island'), 'holds')).branchCurrent('p3.ground-rod', 'electrode')).toBeGreaterThan(
    1e-4,
  );
});
