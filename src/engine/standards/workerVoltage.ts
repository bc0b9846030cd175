/**
 * Volts across a worker beside protective grounds when the line comes alive. Equipotential: the worker stands in parallel
 * with one jumper. Bracketed: grounds stand spans away, and the worker closes a loop over the phase and neutral between. All
 * as current dividers of resistances (Encyclopedia of Grounding, CA09040E, page 61: worksite remote from the grounds,
 * toward the source and away from it). Remote: the line is held by a ground elsewhere, the worker
 * stands on an earth of its own, so that the whole rise of that ground is across them. Left out: reactance and
 * coupling of the loop, which raise the true figure with distance; contact resistance; the arc before clamps hold. For the
 * report: a scene computes the same through its whole circuit (hazards/contact.ts tells the worker's volts in the state in
 * which somebody closes the line), and tests/engine/circuit/models/worksite.test.ts holds the two against each other.
 */
import type { Amperes, Ohms, Volts } from '../units/quantities.ts';

/** What the worker carries. */
export interface WorkerShare {
  readonly amperes: Amperes;
  readonly volts: Volts;
}

const share = (fault: Amperes, beside: Ohms, worker: Ohms, inLoop: Ohms): WorkerShare => {
  const amperes = (fault * beside) / (beside + inLoop + worker);
  return { amperes, volts: amperes * worker };
};

/** One jumper in parallel with the worker. */
export const equipotential = (fault: Amperes, jumper: Ohms, worker: Ohms): WorkerShare =>
  share(fault, jumper, worker, 0);

/** Grounds some spans away: resistances of the full set, of phase and of neutral over that distance, and of the worker's own jumper in series with the body. */
export interface RemoteGrounds {
  readonly grounds: Ohms;
  readonly phase: Ohms;
  readonly neutral: Ohms;
  readonly ownJumper: Ohms;
}

/** Grounds between the worker and the source: only the drop of the full set is across the worker's loop. */
export const groundsTowardSource = (fault: Amperes, set: RemoteGrounds, worker: Ohms): WorkerShare =>
  share(fault, set.grounds, worker, set.phase + set.neutral + set.ownJumper);

/** The worker between the source and the grounds: the fault current runs past over phase, set and neutral, a situation to avoid. */
export const groundsBeyondWorker = (fault: Amperes, set: RemoteGrounds, worker: Ohms): WorkerShare =>
  share(fault, set.phase + set.grounds + set.neutral, worker, set.ownJumper);

/** A worker on an earth apart from the one that carries the fault: the rise of that electrode, less what the worker's own footing takes. */
export const remoteEarth = (fault: Amperes, electrode: Ohms, worker: Ohms, footing: Ohms): WorkerShare =>
  share(fault, electrode, worker, footing);
