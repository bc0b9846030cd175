/**
 * How hard a scene is: the least margin by which its causes are made out (senses/light.ts), how many ways they may do
 * harm, how much only looks so, how long the shortest safe route is. Weights and limits of the grades are estimates,
 * set so that one plain fault in daylight is grade 1; they have not been tried on trainees.
 */
import type { Hazard } from '../hazards/types.ts';
import type { Proof } from '../proof/types.ts';
import { signsFrom } from '../senses/signsFrom.ts';
import type { World } from '../world/types.ts';
import type { Difficulty, Grade } from './types.ts';

/** Points for each cause by its margin: plain to see, seen by who looks, just made out, not by the naked eye. */
const pointsOf = (margin: number): number => (margin >= 3 ? 1 : margin >= 1.5 ? 1.5 : margin >= 1 ? 2 : 2.5);

/** Least points of grades 2 and 3. */
const SECOND = 3.5;
const THIRD = 6;

/** Best margin of the naked eye for each fault, from any place on the ground; none if nothing of it is made out. */
function marginsIn(world: World): ReadonlyMap<string, number> {
  const best = new Map<string, number>();
  for (const { id, aloft } of world.stands) {
    if (aloft !== null) continue;
    for (const { fault, sense, perceived, margin } of signsFrom(world, id, 'eyes')) {
      if (sense === 'see' && perceived) best.set(fault, Math.max(best.get(fault) ?? 0, margin));
    }
  }
  return best;
}

/** What is known before the proof. */
export interface Before {
  readonly points: number;
  readonly margin: number;
  readonly hazards: number;
  readonly lookAlikes: number;
}

/** Points without the route's. */
export function pointsBefore(
  world: World,
  causes: readonly string[],
  lookAlikes: number,
  hazards: readonly Hazard[],
): Before {
  const best = marginsIn(world);
  const margins = causes.map((fault) => best.get(fault) ?? 0);
  const ways = new Set(
    hazards.flatMap(({ causes: behind, mechanism }) => behind.map((each) => `${each}|${mechanism}`)),
  );
  return {
    points: margins.reduce((sum, margin) => sum + pointsOf(margin), 0) + ways.size * 0.25 + lookAlikes * 0.25,
    margin: margins.length === 0 ? 0 : Math.min(...margins),
    hazards: ways.size,
    lookAlikes,
  };
}

const gradeOf = (points: number): Grade => (points < SECOND ? 1 : points < THIRD ? 2 : 3);

/** Whether a scene with these points may still be of the grade: a route only adds to them. */
export const reachable = ({ points }: Before, grade: Grade): boolean => gradeOf(points) <= grade;

/** Grades a proved scene. */
export function difficultyOf({ points: before, margin, hazards, lookAlikes }: Before, proof: Proof): Difficulty {
  const acts = proof.par?.acts.length ?? 0;
  const points = before + acts / 20;
  return {
    grade: gradeOf(points),
    points: Math.round(points * 100) / 100,
    margin: Math.round(margin * 100) / 100,
    hazards,
    lookAlikes,
    acts,
  };
}
