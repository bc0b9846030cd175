/**
 * The reductions of the survey against a search without them: every look at every part by every aid, every question,
 * every check, sounding and prodding, one act at a time by `act`, until all causes are perceived. Same minutes.
 */
import { expect, it } from 'vitest';
import { act } from '../../../src/engine/acts/act.ts';
import { kinds } from '../../../src/engine/acts/kinds.ts';
import { looksFrom } from '../../../src/engine/acts/possibleActs.ts';
import { standHere } from '../../../src/engine/acts/presence.ts';
import type { Act } from '../../../src/engine/acts/types.ts';
import { explore } from '../../../src/engine/proof/explore.ts';
import { arrive } from '../../../src/engine/proof/findRoute.ts';
import { Means } from '../../../src/engine/proof/peek.ts';
import { harmful, surveyOf, unseen, vantagesOf } from '../../../src/engine/proof/survey.ts';
import { perceivedOf } from '../../../src/engine/proof/walkThrough.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { lay } from './planted.ts';
import { millLane } from './scenes.ts';

const surveying = ['go', 'listen', 'ask', 'check-tool', 'sound', 'prod'] as const;

const actsIn = (world: World): readonly Act[] => [
  ...surveying.flatMap((name) => kinds[name].offers(world).map((offer) => offer.act)),
  ...looksFrom(world).map((offer) => offer.act),
];

it('finds the same minutes as a search that tries every act', () => {
  const start = millLane(
    lay('{ id: decay, kind: pole-groundline-decay, on: p2.pole }\n  - { id: tie, kind: tie-broken, on: p2.tie }'),
  );
  const arrived = arrive(new Means(start), start)?.stage.world;
  const here = arrived && standHere(arrived);
  if (!arrived || !here) throw new Error('nobody arrives');
  const laid = harmful(arrived);
  const ids = laid.map(({ fault }) => fault.id);
  const vantages = vantagesOf(arrived, laid);
  expect(unseen(vantages, laid)).toEqual([]);
  const reduced = surveyOf(arrived, vantages, here);
  const glasses = ({ knowledge }: World): string =>
    [...new Set(knowledge.looks.filter(({ aid }) => aid === 'glass').map(({ stand }) => stand))].sort().join();
  const whole = explore<World, Act>({
    start: arrived,
    // What is perceived unasked on arrival comes with the act that brought one there.
    key: (world) => `${standHere(world)?.id}|${perceivedOf(world, ids).join()}|${glasses(world)}`,
    done: (world) => perceivedOf(world, ids).length === ids.length,
    next: (world) =>
      actsIn(world).flatMap((by) => {
        const result = act(world, by);
        return result.ok ? [{ to: result.world, cost: result.world.clock.minute - world.clock.minute, by }] : [];
      }),
    limit: 400,
  });
  expect(whole.end).toBe('done');
  expect(reduced.minutes).toBe(whole.cost);
  expect(reduced.transitions).toBeLessThan(whole.transitions);
});
