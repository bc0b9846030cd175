/**
 * How hard a scene is: the least margin by which its causes are made out (senses/light.ts), how many ways they may do
 * harm, how much only looks so, how long the shortest safe route is. Weights and limits of the grades are estimates,
 * set so that one plain fault in daylight is grade 1; they have not been tried on trainees.
 */
import type { Hazard } from '../hazards/types.ts';
import type { Proof } from '../proof/types.ts';
import { signsFrom } from '../senses/signsFrom.ts';
import type { World } from '../world/types.ts';
import type { Difficulty } from './types.ts';

/** Points for each cause by its margin: plain to see, seen by who looks, just made out, not by the naked eye. */
const pointsOf = (margin: number): number => (margin >= 3 ? 1 : margin >= 1.5 ? 1.5 : margin >= 1 ? 2 : 2.5);

/** Least points of grades 2 and 3. */
const SECOND = 3.5;
const THIRD = 6;

/** Best margin of the naked eye for a fault, from any place on the ground; 0 if nothing of it is made out. */
function marginFor(world: World, fault: string): number {
  const margins = world.stands
    .filter(({ aloft }) => aloft === null)
    .flatMap(({ id }) => signsFrom(world, id, 'eyes'))
    .filter((sign) => sign.fault === fault && sign.sense === 'see' && sign.perceived)
    .map(({ margin }) => margin);
  return Math.max(0, ...margins);
}

/** Grades a proved scene. */
export function difficultyOf(
  world: World,
  causes: readonly string[],
  lookAlikes: number,
  hazards: readonly Hazard[],
  proof: Proof,
): Difficulty {
  const margins = causes.map((fault) => marginFor(world, fault));
  const ways = new Set(
    hazards.flatMap(({ causes: behind, mechanism }) => behind.map((each) => `${each}|${mechanism}`)),
  );
  const acts = proof.par?.acts.length ?? 0;
  const points =
    margins.reduce((sum, margin) => sum + pointsOf(margin), 0) + ways.size * 0.25 + lookAlikes * 0.25 + acts / 20;
  return {
    grade: points < SECOND ? 1 : points < THIRD ? 2 : 3,
    points: Math.round(points * 100) / 100,
    margin: Math.round(Math.min(...margins) * 100) / 100,
    hazards: ways.size,
    lookAlikes,
    acts,
  };
}
