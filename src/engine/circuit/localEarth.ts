/**
 * The ground that somebody stands on beside a part: raised by the currents that electrodes carry into the soil, each
 * taken as a hemisphere of its own resistance in uniform soil, V = rho I / (2 pi r), no higher than the electrode itself.
 * The feet are 1 m farther from each electrode than the part is (touch voltage of IEEE Std 80: 1 m). A conductor that lies
 * on the ground is an electrode at the nearest place of it. Left out: layers, electrodes that hear each other, buried
 * pipes, that a lying conductor spreads its current along its length, and the rise that the body's own current makes.
 */
import { faultKind } from '../catalogue/faults.ts';
import { abs, add, type Complex, complex, scale, ZERO } from '../math/complex.ts';
import { hypot } from '../math/elementary.ts';
import { dot, lerp, sub, type Vec3 } from '../math/vec3.ts';
import { EARTH, type Phasors } from '../network/types.ts';
import { hemispherePotential } from '../standards/electrode.ts';
import type { Metres, Volts } from '../units/quantities.ts';
import { lyingAt } from '../world/lying.ts';
import type { Part, World } from '../world/types.ts';
import { branchesOf, elementId, netOf, partsById } from './elementsOf.ts';

/** Name that a kind gives its branch from metal into the soil; with '-b' after it, at the part's other end. */
export const ELECTRODE = 'electrode';
const ELECTRODE_B = 'electrode-b';
const TOUCH_DISTANCE = 1;

/** A branch that carries current into the soil at a place. */
export interface Electrode {
  readonly element: string;
  readonly at: Vec3;
  /** Its other end, if it lies along the ground. */
  readonly to: Vec3 | null;
  readonly ohms: number;
  /** The same at the credible worst. */
  readonly leastOhms: number;
  /** Metal that has come down, not one that was driven. */
  readonly lies: boolean;
}

const none: readonly Electrode[] = [];
const electrodesKept = new WeakMap<Part, readonly Electrode[]>();

/** Pieces of a parted conductor on the ground. */
function lyingOn(part: Part): readonly Electrode[] {
  return part.faults.flatMap((fault) =>
    faultKind(fault.kind).leaks.flatMap(({ name, from, ohms, credibleOhms, soil }) => {
      const piece = soil ? lyingAt(part, from) : null;
      if (piece?.foot == null) return [];
      const ohmsOf = (of: string): number =>
        fault.values[of] ?? faultKind(fault.kind).values[of]?.default ?? Number.POSITIVE_INFINITY;
      const value = ohmsOf(ohms);
      const leastOhms = credibleOhms === undefined ? value : Math.min(value, ohmsOf(credibleOhms));
      return [
        { element: elementId(part.id, name), at: piece.foot, to: piece.free, ohms: value, leastOhms, lies: true },
      ];
    }),
  );
}

function electrodesOn(part: Part): readonly Electrode[] {
  const kept = electrodesKept.get(part);
  if (kept !== undefined) return kept;
  const found: Electrode[] = [];
  for (const branch of branchesOf(part)) {
    if (branch.name !== ELECTRODE && branch.name !== ELECTRODE_B) continue;
    if (branch.type === 'transformer' || branch.type === 'source') continue;
    if (netOf(part, branch.between[1]) !== EARTH) continue;
    const ohms = branch.type === 'series' ? abs(branch.z) : 1 / abs(branch.y);
    const at = branch.name === ELECTRODE_B && part.end !== null ? part.end : part.at;
    found.push({
      element: elementId(part.id, branch.name),
      at,
      to: null,
      ohms,
      leastOhms: ohms,
      lies: part.end !== null,
    });
  }
  found.push(...lyingOn(part));
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

/** The place of the electrode nearest to another, along the ground. */
export function nearestOn({ at, to }: Electrode, place: Vec3): Vec3 {
  if (to === null) return at;
  const along = sub(to, at);
  const squared = dot(along, along);
  const t = squared > 0 ? Math.min(1, Math.max(0, dot(sub(place, at), along) / squared)) : 0;
  return lerp(at, to, t);
}

/** Volts that an ampere into the electrode gives the ground so far from the feet's nearest place of it. */
function voltsPerAmpere(electrode: Electrode, resistivity: number, place: Vec3, beside: Metres): number {
  const radius = resistivity / (2 * Math.PI * electrode.ohms);
  const [x, y] = nearestOn(electrode, [place[0], place[1], 0]);
  return hemispherePotential(resistivity, 1, Math.max(radius, beside + hypot(x - place[0], y - place[1])));
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
  const volts = voltsPerAmpere(electrode, resistivity, place, TOUCH_DISTANCE);
  places.set(place, { resistivity, volts });
  return volts;
}

/** Volts of the ground beside a place against remote earth; the current of each electrode in one state of the network. */
export function groundPotential(
  electrodes: readonly Electrode[],
  resistivity: number,
  place: Vec3,
  currents: readonly Complex[],
): Complex {
  let re = 0;
  let im = 0;
  for (let i = 0; i < electrodes.length; i++) {
    const amperes = currents[i] as Complex;
    const volts = share(electrodes[i] as Electrode, resistivity, place);
    re += amperes.re * volts;
    im += amperes.im * volts;
  }
  return complex(re, im);
}

/** Volts of the ground where a foot stands against remote earth, for one state of the network. */
export function footPotential(
  electrodes: readonly Electrode[],
  resistivity: number,
  foot: Vec3,
  phasors: Phasors,
): Complex {
  let sum = ZERO;
  for (const electrode of electrodes) {
    sum = add(sum, scale(phasors.current(electrode.element), voltsPerAmpere(electrode, resistivity, foot, 0)));
  }
  return sum;
}

/** No more can stand between two feet while no electrode is at more than so many volts: all of them at that, none against another. */
export function mostStep(
  electrodes: readonly Electrode[],
  resistivity: number,
  [a, b]: readonly [Vec3, Vec3],
  volts: Volts,
): Volts {
  let sum = 0;
  for (const electrode of electrodes) {
    const apart = voltsPerAmpere(electrode, resistivity, a, 0) - voltsPerAmpere(electrode, resistivity, b, 0);
    sum += Math.abs(apart) * (volts / electrode.leastOhms);
  }
  return sum;
}
