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
import type { Part, World } from '../world/types.ts';
import { branchesOf, elementId, netOf, partsById } from './elementsOf.ts';

/** Name that a kind gives its branch from metal into the soil. */
export const ELECTRODE = 'electrode';
const TOUCH_DISTANCE = 1;

/** A branch that carries current into the soil at a place. */
export interface Electrode {
  readonly element: string;
  readonly at: Vec3;
  readonly ohms: number;
}

const none: readonly Electrode[] = [];
const electrodesKept = new WeakMap<Part, readonly Electrode[]>();

function electrodesOn(part: Part): readonly Electrode[] {
  const kept = electrodesKept.get(part);
  if (kept !== undefined) return kept;
  const found: Electrode[] = [];
  for (const branch of branchesOf(part)) {
    if (branch.name !== ELECTRODE || branch.type === 'transformer' || branch.type === 'source') continue;
    if (netOf(part, branch.between[1]) !== EARTH) continue;
    const ohms = branch.type === 'series' ? abs(branch.z) : 1 / abs(branch.y);
    found.push({ element: elementId(part.id, branch.name), at: part.at, ohms });
  }
  const electrodes = found.length === 0 ? none : found;
  electrodesKept.set(part, electrodes);
  return electrodes;
}

/** Electrodes of a World as they stand, in order of parts. */
export function electrodesOf(world: World): Electrode[] {
  const found: Electrode[] = [];
  for (const part of partsById(world)) found.push(...electrodesOn(part));
  return found;
}

/** Volts that an ampere into the electrode gives the ground beside a place. */
function voltsPerAmpere({ at, ohms }: Electrode, resistivity: number, place: Vec3): number {
  const radius = resistivity / (2 * Math.PI * ohms);
  const distance = Math.max(radius, TOUCH_DISTANCE + hypot(at[0] - place[0], at[1] - place[1]));
  return hemispherePotential(resistivity, 1, distance);
}

interface Share {
  readonly resistivity: number;
  readonly volts: number;
}

// Electrodes and places stay where they are while circuits come and go.
const sharesKept = new WeakMap<Electrode, WeakMap<Vec3, Share>>();

function share(electrode: Electrode, resistivity: number, place: Vec3): number {
  const places = sharesKept.get(electrode) ?? new WeakMap<Vec3, Share>();
  sharesKept.set(electrode, places);
  const known = places.get(place);
  if (known?.resistivity === resistivity) return known.volts;
  const volts = voltsPerAmpere(electrode, resistivity, place);
  places.set(place, { resistivity, volts });
  return volts;
}

/** Volts of the ground beside a place against remote earth, for one state of the network. */
export function groundPotential(
  electrodes: readonly Electrode[],
  resistivity: number,
  place: Vec3,
  phasors: Phasors,
): Complex {
  let sum = ZERO;
  for (const electrode of electrodes) {
    sum = add(sum, scale(phasors.current(electrode.element), share(electrode, resistivity, place)));
  }
  return sum;
}
