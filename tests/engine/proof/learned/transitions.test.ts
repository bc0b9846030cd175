/**
 * Learned transitions against `act`: the same Worlds and the same exposures on drawn drills, the same Worlds reached by
 * an exhaustive search, and a read that goes unnoticed is found out.
 */
import { describe, expect, it } from 'vitest';
import { act } from '../../../../src/engine/acts/act.ts';
import { possibleActs } from '../../../../src/engine/acts/possibleActs.ts';
import type { ActName } from '../../../../src/engine/acts/types.ts';
import { exposuresOf, met } from '../../../../src/engine/hazards/exposuresOf.ts';
import { hashOf } from '../../../../src/engine/math/hash.ts';
import type { Judge } from '../../../../src/engine/proof/learned/engineParts.ts';
import { exploreAll } from '../../../../src/engine/proof/learned/exploreAll.ts';
import { memberNames } from '../../../../src/engine/proof/learned/members.ts';
import { calm, reduced } from '../../../../src/engine/proof/learned/reduced.ts';
import { Transitions } from '../../../../src/engine/proof/learned/transitions.ts';
import { trainee } from '../../../../src/engine/world/edit.ts';
import type { World } from '../../../../src/engine/world/types.ts';
import { disconnector } from '../planted.ts';
import { millLane, sceneOf } from '../scenes.ts';
import { differences } from './walks.ts';

describe('a drill drawn at random comes to the same Worlds and exposures as by act:', () => {
  it.each([
    ['mill-lane-refuse', 1],
    ['frost-hill-ice', 2],
    ['high-street-bucket', 3],
    ['night-lane-stop', 4],
  ])('%s', (name, seed) => {
    expect(differences(sceneOf(name), { seed, walks: 2, steps: 16 })).toEqual([]);
  });

  it('and a read that goes unnoticed is found out', () => {
    const dressed: Judge = (reach, before, after) => [
      ...exposuresOf(reach, before, after),
      ...(trainee(before).wearing.length === 0 ? [] : [{ hazard: 'dressed', strikes: false }]),
    ];
    // Kept by place alone, as if clothes had nothing to do with it.
    const kept = new Map<string, ReturnType<Judge>>();
    const hiding: Judge = (reach, before, after) => {
      const known = kept.get(reach.stand) ?? dressed(reach, before, after);
      kept.set(reach.stand, known);
      return known;
    };
    const walk = { seed: 5, walks: 3, steps: 20 };
    expect(differences(millLane(), { ...walk, judge: dressed, plainly: dressed })).toEqual([]);
    expect(differences(millLane(), { ...walk, judge: hiding, plainly: dressed })).not.toEqual([]);
  });
});

it('every member of a World either changes or is fixed for the drill', () => {
  const fixed = ['scenario', 'scenarioHash', 'stands', 'given'];
  expect(Object.keys(sceneOf('mill-lane-refuse')).sort()).toEqual([...memberNames, ...fixed].sort());
});

/** Every reduced World that `act` reaches by acts of the kinds. */
function reachedByAct(start: World, kinds: readonly ActName[], timing: Transitions['timing']): ReadonlySet<string> {
  const hashes = new Set<string>();
  const open: World[] = [{ ...start, chance: calm }];
  for (let world = open.pop(); world !== undefined; world = open.pop()) {
    const hash = hashOf(reduced(world, timing));
    if (hashes.has(hash)) continue;
    hashes.add(hash);
    for (const offer of possibleActs(world)) {
      if (kinds.includes(offer.act.act)) open.push({ ...act(world, offer.act).world, chance: calm });
    }
  }
  return hashes;
}

describe('an exhaustive search by learned transitions reaches what one by act reaches:', () => {
  it.each<readonly [string, readonly ActName[]]>([
    ['walking and dressing', ['park', 'wear', 'aloft', 'engine']],
    ['switching from one place', ['park', 'operate', 'brief']],
  ])('%s', (_, kinds) => {
    const start = act(millLane(disconnector), { act: 'acknowledge' }).world;
    const transitions = new Transitions(start, met);
    const worlds = new Set([hashOf(transitions.worldOf(transitions.start))]);
    const { end, states, runs } = exploreAll(transitions, kinds, {
      visit: (_from, _act, to) => {
        worlds.add(hashOf(transitions.worldOf(to)));
      },
    });
    expect(end).toBe('exhausted');
    expect(worlds.size).toBe(states);
    expect(worlds).toEqual(reachedByAct(start, kinds, transitions.timing));
    expect(runs).toBeGreaterThan(0);
  });
});

it('what is forgotten leaves the rest as it is', () => {
  const start = act(millLane(disconnector), { act: 'acknowledge' }).world;
  const [whole, less] = ([[], ['knowledge', 'paper']] as const).map((forgets) => {
    const transitions = new Transitions(start, null, forgets);
    const rests = new Set<string>();
    const { end, states } = exploreAll(transitions, ['park', 'listen'], {
      enter: (state) => {
        const { knowledge: _, paper: __, ...rest } = transitions.worldOf(state);
        rests.add(hashOf(rest));
      },
    });
    expect(end).toBe('exhausted');
    return { states, rests };
  });
  expect(less?.rests).toEqual(whole?.rests);
  expect(less?.states).toBe(less?.rests.size);
  expect(whole?.states).toBeGreaterThan(less?.states ?? 0);
});
