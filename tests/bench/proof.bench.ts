/**
 * The proof's exploration against XState's own graph utilities on the same scenario: the same start, the same acts. Theirs
 * steps by `act` and tells scenes apart once as it comes, by JSON text, once by our reduced form, which leaves the two
 * searches alone; it stops after a few scenes, for it could not finish. Ours goes on by learned transitions, from nothing
 * learned, every run of the engine and every circuit included. Then what everything reachable costs as devices, hazards
 * and tools are added. Processor time, ratios in one run.
 */
import { bench, describe, expect } from 'vitest';
import { fromTransition } from 'xstate';
import { getAdjacencyMap } from 'xstate/graph';
import { act } from '../../src/engine/acts/act.ts';
import { possibleActs } from '../../src/engine/acts/possibleActs.ts';
import type { Act, ActName } from '../../src/engine/acts/types.ts';
import { met } from '../../src/engine/hazards/exposuresOf.ts';
import { hazardsIn } from '../../src/engine/hazards/hazardsIn.ts';
import { canonicalJson } from '../../src/engine/math/hash.ts';
import { exploreAll } from '../../src/engine/proof/learned/exploreAll.ts';
import { reduced } from '../../src/engine/proof/learned/reduced.ts';
import { Transitions } from '../../src/engine/proof/learned/transitions.ts';
import type { World } from '../../src/engine/world/types.ts';
import { disconnector, lay } from '../engine/proof/planted.ts';
import { millLane } from '../engine/proof/scenes.ts';
import { timed } from './timed.ts';

/** Scenes that XState is let expand, and ours. */
const THEIRS = 12;
const OURS = 120_000;

const kinds: readonly ActName[] = ['park', 'go', 'engine', 'wear', 'operate', 'guard', 'check-tool', 'brief', 'tell'];
const actsIn = (world: World): readonly Act[] =>
  possibleActs(world)
    .map((offer) => offer.act)
    .filter((each) => kinds.includes(each.act));

const start = act(millLane(disconnector), { act: 'acknowledge' }).world;
const { timing } = new Transitions(start, null);

interface Count {
  scenes: number;
  transitions: number;
}

const machine = fromTransition((world: World, each: { type: 'act'; by: Act }) => act(world, each.by).world, start);

function theirs(serialize: (world: World) => string): Count {
  const count: Count = { scenes: 0, transitions: 0 };
  getAdjacencyMap(machine, {
    events: ({ context }) => {
      if (count.scenes >= THEIRS) return [];
      count.scenes++;
      const events = actsIn(context).map((by) => ({ type: 'act' as const, by }));
      count.transitions += events.length;
      return events;
    },
    serializeState: ({ context }) => serialize(context),
    limit: 1_000_000,
  });
  return count;
}

function ours(): Count {
  const { states, transitions, runs } = exploreAll(new Transitions(start, met), kinds, { states: OURS });
  const { rss } = process.memoryUsage();
  console.log(
    `${states} scenes, ${transitions} acts, ${runs} runs of the engine: ${((100 * (transitions - runs)) / transitions).toFixed(2)} % learned before; ${Math.round(rss / 1e6)} MB in all`,
  );
  return { scenes: states, transitions };
}

/** Scenes a second of processor time, by name. */
const rates = new Map<string, number>();

/** Times one way of exploring and says scenes and transitions a second. */
function exploring(name: string, way: () => Count, iterations: number): void {
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
        const rate = counted.scenes / spent;
        const ratios = [...rates].map(
          ([other, each]) => `\n  ${(rate / each).toPrecision(3)} times the scenes a second of: ${other}`,
        );
        rates.set(name, rate);
        console.log(
          `${name}: ${rate.toFixed(0)} scenes and ${(counted.transitions / spent).toFixed(0)} acts a second of processor time${ratios.join('')}`,
        );
      },
      time: 0,
      warmupTime: 0,
      warmupIterations: iterations > 1 ? 1 : 0,
      iterations,
    },
  );
}

describe('scenes of Mill Lane explored', () => {
  exploring('XState getAdjacencyMap, scenes told apart by JSON', () => theirs(JSON.stringify), 6);
  exploring(
    'XState getAdjacencyMap, scenes told apart by our reduced form',
    () => theirs((world) => canonicalJson(reduced(world, timing))),
    6,
  );
  exploring('explored by the proof', ours, 1);
});

const decay = '{ id: decay, kind: pole-groundline-decay, on: p2.pole }';
const tie = '{ id: tie, kind: tie-broken, on: p2.tie }';
const stick = '  - { id: stick-1, kind: stick, tested: 2025-08-04 }';
const cutout = '  - { id: p3.cutout, kind: cutout, side: source, values: { link-amps: 6 A }, words: { link: 6K } }';
const arrester = '  - { id: p2.arrester, kind: arrester, side: road }';

/** Acts of the growing scenes: everything reachable by them is explored. */
const few: readonly ActName[] = ['park', 'go', 'wear', 'operate'];

describe('everything reachable by walking, dressing and switching, as the scene grows', () => {
  const scenes: readonly (readonly [name: string, world: World])[] = [
    ['as it is', millLane()],
    ['one hazard', millLane(lay(decay))],
    ['two hazards', millLane(lay(`${decay}\n  - ${tie}`))],
    ['two sticks more', millLane([stick, `${stick}\n${stick.replace('-1', '-2')}\n${stick.replace('-1', '-3')}`])],
    ['a belt more', millLane([stick, `${stick}\n  - { id: belt-1, kind: fall-arrest }`])],
    ['a cutout more', millLane([arrester, `${arrester}\n${cutout}`])],
  ];
  let first = { states: 0, runs: 0 };
  for (const [name, world] of scenes) {
    const watch = timed(name);
    bench(
      name,
      () => {
        const called = act(world, { act: 'acknowledge' }).world;
        const began = watch.begin();
        const { end, states, transitions, runs } = exploreAll(new Transitions(called, met), few);
        watch.end(began);
        expect(end).toBe('exhausted');
        if (first.states === 0) first = { states, runs };
        const times = (value: number, by: number): string => `${(value / by).toFixed(2)} times`;
        console.log(
          `${name}: ${world.parts.length} parts, ${hazardsIn(world).length} hazards, ${world.tools.length} tools: ` +
            `${states} scenes (${times(states, first.states)}), ${transitions} acts, ${runs} runs of the engine (${times(runs, first.runs)})`,
        );
      },
      { ...watch, time: 0, warmupTime: 0, warmupIterations: 0, iterations: 1 },
    );
  }
});
