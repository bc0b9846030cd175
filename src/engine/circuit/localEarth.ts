/**
 * The ground that somebody stands on beside a part: raised by the currents that electrodes carry into the soil, each
 * taken as a hemisphere of its own resistance in uniform soil, V = rho I / (2 pi r), no higher than the electrode itself.
 * The feet are 1 m farther from each electrode than the part is (touch voltage of IEEE Std 80: 1 m). Left out: layers,
 * rods that hear each other, buried pipes, and the rise that the body's own current makes.
 */
import { abs, add, type Complex, scale, ZERO } from '../math/complex.ts';
import { hypot } from '../math/elementary.ts';
import type { Vec3 } from '../math/vec3.ts';
import { EARTH, type Phasors } from '../network/types.ts';
import { hemispherePotential } from '../standards/electrode.ts';
import type { World } from '../world/types.ts';
import { branchesOf, byId, elementId, netOf } from './elementsOf.ts';

/** Name that a kind gives its branch from metal into the soil. */
export const ELECTRODE = 'electrode';
const TOUCH_DISTANCE = 1;

/** A branch that carries current into the soil at a place. */
export interface Electrode {
  readonly element: string;
  readonly at: Vec3;
  /** Radius of the hemisphere of the same resistance, metres. */
  readonly radius: number;
}

/** Electrodes of a World as they stand, in order of parts. */
export function electrodesOf(world: World): Electrode[] {
  const found: Electrode[] = [];
  for (const part of [...world.parts].sort(byId)) {
    for (const branch of branchesOf(part)) {
      if (branch.name !== ELECTRODE || branch.type === 'transformer' || branch.type === 'source') continue;
      if (netOf(part, branch.between[1]) !== EARTH) continue;
      const ohms = branch.type === 'series' ? abs(branch.z) : 1 / abs(branch.y);
      const radius = world.site.resistivity / (2 * Math.PI * ohms);
      found.push({ element: elementId(part.id, branch.name), at: part.at, radius });
    }
  }
  return found;
}

/** Volts of the ground beside a place against remote earth, for one state of the network. */
export function groundPotential(
  electrodes: readonly Electrode[],
  resistivity: number,
  place: Vec3,
  phasors: Phasors,
): Complex {
  let sum = ZERO;
  for (const { element, at, radius } of electrodes) {
    const distance = Math.max(radius, TOUCH_DISTANCE + hypot(at[0] - place[0], at[1] - place[1]));
    sum = add(sum, scale(phasors.current(element), hemispherePotential(resistivity, 1, distance)));
  }
  return sum;
}
