import { expect, it } from 'vitest';
import { exposuresOf } from '../../../src/engine/hazards/exposuresOf.ts';
import type { Exposure, Reach } from '../../../src/engine/hazards/types.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { fogScene } from '../circuit/scene.ts';
import { at, ready, setStopped, tapOut } from './fog.ts';

const scene = ready(fogScene());
const points = ['p1.neutral-spool/neutral', 's1.phase/a'] as const;

/** The first clamp on the neutral, the second on the conductor, by stick from the ground. */
const grounding = (world: World): Reach => ({
  ...at(world, 'p1.butt'),
  switches: {
    part: 's1.phase',
    makes: [points[0], points[1]],
    breaks: null,
    through: { stick: 'stick-1', gloves: null },
    clamps: points,
  },
});

const flashes = (world: World): readonly Exposure[] =>
  exposuresOf(grounding(world), world, world).filter(({ mechanism }) => mechanism === 'flash');

it('a ground put on a tap that a set holds alive is a short, with the current of the solution', () => {
  const [flash] = flashes(scene);
  expect(flash?.causes).toEqual(['cord']);
  expect(flash?.failed).toContain('tested-dead');
  expect(flash?.now.find(({ unit }) => unit === 'A')?.value).toBeGreaterThan(1);
});

it('is judged by what others may still close, the set stopped or not', () => {
  expect(flashes(setStopped(scene)).length).toBe(1);
});

it('is none on a tap whose tube is out and whose sources are apart', () => {
  expect(flashes(tapOut(scene))).toEqual([]);
});
