/**
 * LU factorisation of a sparse complex matrix (elimination.ts, or by a plan, follow.ts): factor once, solve for many
 * right-hand sides.
 */
import { Elimination } from './elimination.ts';
import { factorsIn, follow, hasPattern } from './follow.ts';
import type { Factors, Plan } from './plan.ts';
import { emptyRoom, type Room } from './room.ts';
import { type ComplexVector, type SparseMatrix, zeroVector } from './sparseMatrix.ts';
import { substituteOne } from './sweepOne.ts';

/** Fewer independent equations than unknowns: this column is free. */
export interface Singular {
  readonly singular: true;
  readonly column: number;
}

const state = new Elimination();

/** The factors that the elimination has left in its slots. */
function gathered(plan: Plan, room: Room): Factors {
  const { re, im } = state;
  const factors = factorsIn(room, plan);
  const { size, inverseRe, inverseIm, lower, upper } = factors;
  for (let k = 0; k < size; k++) {
    const slot = plan.pivotSlot[k] as number;
    const dRe = re[slot] as number;
    const dIm = im[slot] as number;
    const square = dRe * dRe + dIm * dIm;
    inverseRe[k] = dRe / square;
    inverseIm[k] = -dIm / square;
  }
  const { lowerSlot, upperSlot } = plan;
  for (let l = 0; l < lowerSlot.length; l++) {
    lower.re[l] = re[lowerSlot[l] as number] as number;
    lower.im[l] = im[lowerSlot[l] as number] as number;
  }
  for (let s = 0; s < upperSlot.length; s++) {
    upper.re[s] = re[upperSlot[s] as number] as number;
    upper.im[s] = im[upperSlot[s] as number] as number;
  }
  return factors;
}

const PLANS = 4;

/**
 * Factors of a square matrix whose rows and columns are of comparable size. They are in the room and last until the next
 * matrix there.
 */
export function factor(matrix: SparseMatrix, room: Room = emptyRoom()): Factors | Singular {
  const { plans: known } = matrix;
  for (let at = 0; at < known.length; at++) {
    const plan = known[at] as Plan;
    const factors = hasPattern(plan, matrix) ? follow(plan, matrix, room) : null;
    if (factors === null) continue;
    if (at > 0) known.unshift(...known.splice(at, 1));
    return factors;
  }
  const plan = state.run(matrix);
  if (typeof plan === 'number') return { singular: true, column: plan };
  known.unshift(plan);
  known.length = Math.min(known.length, PLANS);
  return gathered(plan, room);
}

/** Solution for one right-hand side, which stays untouched. */
export function backSubstitute(factors: Factors, b: ComplexVector): ComplexVector {
  const { size } = factors;
  const [from, to] = [new Float64Array(2 * size), new Float64Array(2 * size)];
  for (let i = 0; i < size; i++) {
    from[2 * i] = b.re[i] as number;
    from[2 * i + 1] = b.im[i] as number;
  }
  substituteOne(factors, from, to);
  const x = zeroVector(size);
  for (let i = 0; i < size; i++) {
    x.re[i] = to[2 * i] as number;
    x.im[i] = to[2 * i + 1] as number;
  }
  return x;
}
