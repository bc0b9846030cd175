/**
 * The proof's explorer against XState's own graph utilities on the same scenario: the same start, the same acts by the
 * same `act`, so many scenes expanded by each in turn. Ours tells scenes apart by the key of the proof; theirs once as
 * it comes, by JSON text, once by our key, which leaves the two searches alone. Then what a short proof costs as devices,
 * faults and tools are added. Circuits met before are remembered in all rows; processor time, ratios in one run.
 */
import { bench, describe, expect } from 'vitest';
import { fromTransition } from 'xstate';
import { getAdjacencyMap } from 'xstate/graph';
import { act } from '../../src/engine/acts/act.ts';
import { possibleActs } from '../../src/engine/acts/possibleActs.ts';
import { standHere } from '../../src/engine/acts/presence.ts';
import type { Act } from '../../src/engine/acts/types.ts';
import { hazardsIn } from '../../src/engine/hazards/hazardsIn.ts';
import { physicalKey } from '../../src/engine/proof/canonicalKey.ts';
import { explore } from '../../src/engine/proof/explore.ts';
import { prove } from '../../src/engine/proof/prove.ts';
import type { World } from '../../src/engine/world/types.ts';
import { disconnector, lay } from '../engine/proof/planted.ts';
import { millLane } from '../engine/proof/scenes.ts';
import { timed } from './timed.ts';

const SCENES = 12;

/** Acts that change where one stands or what is switched; looks and talk only grow what is known. */
const changing = new Set<Act['act']>(['go', 'operate', 'park', 'wear', 'engine']);
const actsIn = (world: World): readonly Act[] =>
  possibleActs(world)
    .map((offer) => offer.act)
    .filter((each) => changing.has(each.act));

const start = act(millLane(disconnector), { act: 'acknowledge' }).world;
const keyOf = (world: World): string =>
  `${physicalKey(world)}|${standHere(world)?.id}|${world.truck.place}|${world.truck.engine}`;

interface Count {
  scenes: number;
  transitions: number;
}

function ours(): Count {
  const { states, transitions } = explore<World, Act>({
    start,
    key: keyOf,
    done: () => false,
    limit: SCENES + 1,
    next: (world) =>
      actsIn(world).flatMap((by) => {
        const result = act(world, by);
        return result.ok ? [{ to: result.world, cost: 1, by }] : [];
      }),
  });
  return { scenes: states - 1, transitions };
}

const machine = fromTransition((world: World, each: { type: 'act'; by: Act }) => act(world, each.by).world, start);

function theirs(serialize: (world: World) => string): Count {
  const count: Count = { scenes: 0, transitions: 0 };
  getAdjacencyMap(machine, {
    events: ({ context }) => {
      if (count.scenes >= SCENES) return [];
      count.scenes++;
      const events = actsIn(context).map((by) => ({ type: 'act' as const, by }));
      count.transitions += events.length;
      return events;
    },
    serializeState: ({ context }) => serialize(context),
    limit: 100_000,
  });
  return count;
}

/** Times one way of exploring and says scenes and transitions a second. */
function exploring(name: string, way: () => Count): void {
  const watch = timed(name);
  let spent = 0;
  const counted: Count = { scenes: 0, transitions: 0 };
  bench(
    name,
    () => {
      const began = watch.begin();
      const { scenes, transitions } = way();
      watch.end(began);
      counted.scenes += scenes;
      counted.transitions += transitions;
      spent += (watch.begin().cpu - began.cpu) / 1000;
    },
    {
      setup: () => {
        watch.setup();
        spent = 0;
        Object.assign(counted, { scenes: 0, transitions: 0 });
      },
      teardown: (task, mode) => {
        watch.teardown(task, mode);
        if (mode !== 'run') return;
        const rate = (each: number): string => (each / spent).toFixed(0);
        console.log(
          `${name}: ${rate(counted.scenes)} scenes and ${rate(counted.transitions)} acts a second of processor time`,
        );
      },
      time: 0,
      warmupTime: 0,
      warmupIterations: 2,
      iterations: ROUNDS,
    },
  );
}
const ROUNDS = 8;

describe(`${SCENES} scenes of Mill Lane explored`, () => {
  exploring('XState getAdjacencyMap, scenes told apart by JSON', () => theirs(JSON.stringify));
  exploring('XState getAdjacencyMap, scenes told apart by our key', () => theirs(keyOf));
  exploring('explored by the proof', ours);
});

const decay = '{ id: decay, kind: pole-groundline-decay, on: p2.pole }';
const tie = '{ id: tie, kind: tie-broken, on: p2.tie }';
const stick = '  - { id: stick-1, kind: stick, tested: 2025-08-04 }';
const arrester = '  - { id: p2.arrester, kind: arrester, side: road }';

describe('a short proof as the scene grows', () => {
  const scenes: readonly (readonly [name: string, world: World])[] = [
    ['as it is', millLane()],
    ['one fault', millLane(lay(decay))],
    ['two faults', millLane(lay(`${decay}\n  - ${tie}`))],
    ['two sticks more', millLane([stick, `${stick}\n${stick.replace('-1', '-2')}\n${stick.replace('-1', '-3')}`])],
    ['an arrester more', millLane([arrester, `${arrester}\n${arrester.replaceAll('p2', 'p3')}`])],
  ];
  for (const [name, world] of scenes) {
    const watch = timed(name);
    bench(
      name,
      () => {
        const began = watch.begin();
        const { states, transitions } = prove(world, { seed: 1, most: 500, tries: 1 });
        watch.end(began);
        expect(transitions).toBeGreaterThan(0);
        console.log(
          `${name}: ${world.parts.length} parts, ${hazardsIn(world).length} hazards, ${world.tools.length} tools: ${states} scenes, ${transitions} acts`,
        );
      },
      { ...watch, time: 0, warmupTime: 0, warmupIterations: 1, iterations: 2 },
    );
  }
});
