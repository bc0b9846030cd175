/**
 * Circuits to be solved by us and by an independent program: a scene as it starts and in seeded device states, and seeded
 * networks. The engine runs no other program; who compares them brings its answers (comparePhasors).
 */
import { componentKind } from '../catalogue/components.ts';
import { angleOf } from '../circuit/angleOf.ts';
import { solveCircuit } from '../circuit/solveCircuit.ts';
import { nextInteger, type RandomState, seedFrom } from '../math/random.ts';
import type { NetworkElement } from '../network/types.ts';
import { withPart } from '../world/edit.ts';
import type { World } from '../world/types.ts';
import { randomNetwork } from './randomNetwork.ts';

/** One circuit, and what its differences are measured against. */
export interface NetworkCase {
  readonly id: string;
  readonly model: string;
  readonly input: string;
  readonly elements: readonly NetworkElement[];
  /** Turn of each synchronism group in radians. */
  readonly angles: Readonly<Record<string, number>>;
  readonly nominalVolts: number;
  readonly nominalAmperes: number;
}

/** Phase to ground of the usual system, for networks that have none; rated amperes of 25 kVA at 240 V. */
const NOMINAL_VOLTS = 7200;
const NOMINAL_AMPERES = 25_000 / 240;

/** Seeded states tried of each scene. */
export const sceneStates = 30;

/** Seeded networks tried. */
export const randomNetworks = 200;

/** Each part put into a state drawn by the seed, part by part in order of ids. */
const inRandomStates = (world: World, seed: string): World => {
  let random: RandomState = seedFrom(seed);
  let next = world;
  for (const { id, kind } of [...world.parts].sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0))) {
    const state: Record<string, string> = {};
    for (const [name, values] of Object.entries(componentKind(kind).states)) {
      const [drawn, after] = nextInteger(random, 0, values.length - 1);
      random = after;
      state[name] = values[drawn] as string;
    }
    if (Object.keys(state).length > 0) next = withPart(next, id, { state });
  }
  return next;
};

const sceneCase = (world: World, id: string, input: string): NetworkCase => ({
  id,
  model: 'scene circuits',
  input,
  // The very elements that are solved, current-limited sources as they came out.
  elements: solveCircuit(world).elements,
  angles: angleOf(world),
  nominalVolts: world.given.supply.lineVolts / Math.sqrt(3),
  nominalAmperes: NOMINAL_AMPERES,
});

/** A scene as it starts and in seeded states. */
export const sceneCases = (world: World, count = sceneStates): readonly NetworkCase[] => [
  sceneCase(world, `scene-circuits.${world.scenario}-start`, `${world.scenario} as it starts`),
  ...Array.from({ length: count }, (_, k) =>
    sceneCase(
      inRandomStates(world, `states ${k + 1}`),
      `scene-circuits.${world.scenario}-${k + 1}`,
      `${world.scenario}, device states of seed ${k + 1}`,
    ),
  ),
];

/** Seeded networks. */
export const randomCases = (count = randomNetworks): readonly NetworkCase[] =>
  Array.from({ length: count }, (_, k) => {
    const elements = randomNetwork(k + 1);
    return {
      id: `random-networks.${k + 1}`,
      model: 'random networks',
      input: `seed ${k + 1}, ${elements.length} elements`,
      elements,
      angles: { generator: 2.1, inverter: -1 },
      nominalVolts: NOMINAL_VOLTS,
      nominalAmperes: NOMINAL_AMPERES,
    };
  });
