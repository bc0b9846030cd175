import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { act } from '../../../src/engine/acts/act.ts';
import { worldHash } from '../../../src/engine/acts/log.ts';
import { hazardsIn } from '../../../src/engine/hazards/hazardsIn.ts';
import { partIdsOf } from '../../../src/engine/world/build.ts';
import { frozen, quarryRoad, start } from '../acts/scene.ts';
import { built, shuffled, yaml } from './shuffled.ts';

const byIds = (list: readonly { readonly id: string }[]): readonly string[] => list.map(({ id }) => id);

describe('the World of Quarry Road', () => {
  it('is plain JSON and the same at each build', () => {
    const world = start();
    expect(JSON.parse(JSON.stringify(world))).toEqual(world);
    expect(worldHash(start())).toBe(worldHash(world));
  });

  it('keeps its lists by id in code-unit order, each id once', () => {
    const { parts, stands, people, tools } = start();
    for (const list of [parts, stands, people, tools]) {
      const ids = byIds(list);
      expect(ids).toEqual([...new Set(ids)].sort());
    }
    for (const { faults } of [...parts, ...tools]) expect(byIds(faults)).toEqual([...byIds(faults)].sort());
    expect(byIds(parts)).toEqual(partIdsOf(quarryRoad().scenario));
  });

  it('numbers a tool only where it has its like on the truck', () => {
    const namesOf = (kind: string): readonly string[] =>
      start()
        .tools.filter((tool) => tool.kind === kind)
        .map(({ name }) => name);
    expect(namesOf('detector')).toEqual(['voltage detector 1', 'voltage detector 2']);
    expect(namesOf('face-shield')).toEqual(['arc-rated face shield']);
  });

  it('is not edited by anything that reads it', () => {
    const world = frozen(start());
    const before = JSON.stringify(world);
    hazardsIn(world);
    expect(act(world, { act: 'acknowledge' }).ok).toBe(true);
    expect(JSON.stringify(world)).toBe(before);
  });

  it('differs by its seed in nothing but chance', () => {
    const [one, two] = [start(1), start(2)];
    expect(one.chance).not.toEqual(two.chance);
    expect({ ...one, chance: null }).toEqual({ ...two, chance: null });
  });

  it('has joined nets only: each is met by two terminals, save those that end in the open', () => {
    const met = new Map<string, number>();
    for (const { nets } of start().parts) for (const net of Object.values(nets)) met.set(net, (met.get(net) ?? 0) + 1);
    const single = [...met].filter(([net, count]) => count < 2 && !net.includes('.w')).map(([net]) => net);
    // Pins and yokes lead into wood, a wire's middle is its own, and nothing hangs on the ground of a bare pole.
    expect(
      single.filter((net) => !/^p[123]\.(pin|yoke|stub-low|upper|guy-top|guy-low)$|^p2\.arrester\.base$/.test(net)),
    ).toEqual([]);
    expect(single).not.toContain('p2.pin');
    expect(single).not.toContain('p2.upper');
  });

  it('is the same to the last bit however the lists of its file are ordered, and so are its hazards', () => {
    const world = built(yaml);
    const hash = worldHash(world);
    const hazards = hazardsIn(world);
    const orders = [
      (list: readonly unknown[]) => [...list].reverse(),
      (list: readonly unknown[]) => [...list.slice(1), ...list.slice(0, 1)],
    ];
    for (const order of orders) {
      const again = built(shuffled(order));
      expect(worldHash(again)).toBe(hash);
      expect(hazardsIn(again)).toEqual(hazards);
    }
    fc.assert(
      fc.property(fc.infiniteStream(fc.nat()), (numbers) => {
        const keyed = (list: readonly unknown[]) =>
          list
            .map((item) => [numbers.next().value ?? 0, item] as const)
            .sort(([a], [b]) => a - b)
            .map(([, item]) => item);
        return worldHash(built(shuffled(keyed))) === hash;
      }),
      { seed: 7, numRuns: 8 },
    );
  });
});
