/** What two Worlds must share to share a solution. */
import { describe, expect, test } from 'vitest';
import { angleOf } from '../../../src/engine/circuit/angleOf.ts';
import { circuitKey } from '../../../src/engine/circuit/circuitKey.ts';
import { Memo } from '../../../src/engine/circuit/memo.ts';
import { solveCircuit } from '../../../src/engine/circuit/solveCircuit.ts';
import { withoutFault, withPart } from '../../../src/engine/world/edit.ts';
import { fogScene, withJumpers, withState } from './scene.ts';

describe('the key', () => {
  const key = circuitKey(fogScene());
  const points = ['p3.neutral-spool/neutral', 'p3.deadend/conductor'];

  test('is the same for a copy, for another order of parts, and whatever the circuit does not read', () => {
    const world = fogScene();
    expect(circuitKey(JSON.parse(JSON.stringify(world)))).toBe(key);
    expect(circuitKey({ ...world, parts: [...world.parts].reverse() })).toBe(key);
    expect(circuitKey(withPart(world, 'p1.tap-cutout', { tags: ['hold'], supported: true }))).toBe(key);
    expect(circuitKey({ ...fogScene(7), clock: { minute: 40 } })).toBe(key);
    expect(circuitKey(withoutFault(world, 'stain'))).toBe(key);
  });

  test('differs by a state, a fault that opens or leaks, a jumper, the soil', () => {
    const world = fogScene();
    const others = [
      withState(world, 'p2.cutout', { position: 'open' }),
      withoutFault(world, 'crack'),
      withoutFault(world, 'bond'),
      withJumpers(world, [points]),
      withJumpers(world, [points, points]),
      { ...world, site: { ...world.site, resistivity: 100 } },
    ].map(circuitKey);
    expect(new Set([key, ...others]).size).toBe(others.length + 1);
  });

  test('makes equal Worlds share one solution', () => {
    expect(solveCircuit(fogScene(3))).toBe(solveCircuit(fogScene(4)));
    expect(solveCircuit(fogScene(), { credible: true })).not.toBe(solveCircuit(fogScene()));
  });
});

describe('the memory', () => {
  test('keeps at most its limit, and drops what was not used for longest', () => {
    const made: string[] = [];
    const memo = new Memo<string>(2);
    const get = (name: string): string =>
      memo.get(name, () => {
        made.push(name);
        return name;
      });
    for (const name of ['a', 'b', 'a', 'c', 'a', 'b']) expect(get(name)).toBe(name);
    expect(made).toEqual(['a', 'b', 'c', 'b']);
  });
});

describe('the angle of a replay', () => {
  test('is fixed by the seed, zero for the system, and does not depend on what else runs', () => {
    const angles = angleOf(fogScene(1));
    expect(angleOf(fogScene(1))).toEqual(angles);
    expect(Object.keys(angles)).toEqual(['a.generator', 'b.generator', 'system']);
    expect(angles.system).toBe(0);
    expect(angleOf(fogScene(2))['a.generator']).not.toBe(angles['a.generator']);
    const alone = angleOf(withState(fogScene(1), 'b.generator', { run: 'stopped' }));
    expect(alone).toEqual({ 'a.generator': angles['a.generator'], system: 0 });
  });
});
