/**
 * Solutions with iterative refinement, judged by the componentwise backward error: the largest ratio, over all
 * equations, of what is left over to the sum of the magnitudes of the equation's own terms (Oettli & Prager 1964;
 * Arioli, Demmel & Duff 1989). A small equation, a body's microamperes, is so held as strictly as a large one.
 */
import { backSubstitute, type Factors } from './complexLu.ts';
import {
  type ComplexVector,
  type Scaling,
  type SparseMatrix,
  type SparseRow,
  size1,
  zeroVector,
} from './sparseMatrix.ts';

/** Refinement stops here; rounding alone leaves about 1e-15. */
const GOOD = 1e-14;
const STEPS = 4;
/** An equation is judged as if its terms were at least this fraction of the largest in the network: below is rounding. */
const NOTHING = 1e-18;

export interface Refined {
  readonly x: ComplexVector;
  readonly residual: number;
  /** The equation with the largest residual. */
  readonly worstRow: number;
}

interface Leftover {
  readonly r: ComplexVector;
  readonly residual: number;
  readonly worstRow: number;
}

function leftover(matrix: SparseMatrix, scaling: Scaling, x: ComplexVector, b: ComplexVector): Leftover {
  const r = zeroVector(matrix.length);
  const terms = new Float64Array(matrix.length);
  let largest = 0;
  for (let i = 0; i < matrix.length; i++) {
    const { columns, re, im } = matrix[i] as SparseRow;
    let sRe = b.re[i] as number;
    let sIm = b.im[i] as number;
    let sum = size1(sRe, sIm);
    for (let t = 0; t < columns.length; t++) {
      const aRe = re[t] as number;
      const aIm = im[t] as number;
      const xRe = x.re[columns[t] as number] as number;
      const xIm = x.im[columns[t] as number] as number;
      sRe -= aRe * xRe - aIm * xIm;
      sIm -= aRe * xIm + aIm * xRe;
      sum += size1(aRe, aIm) * size1(xRe, xIm);
    }
    r.re[i] = sRe;
    r.im[i] = sIm;
    terms[i] = sum;
    largest = Math.max(largest, sum * (scaling.row[i] as number));
  }
  let residual = 0;
  let worstRow = 0;
  for (let i = 0; i < matrix.length; i++) {
    const size = size1(r.re[i] as number, r.im[i] as number);
    if (size === 0) continue;
    const ratio = size / Math.max(terms[i] as number, (NOTHING * largest) / (scaling.row[i] as number));
    // Written so that a NaN counts as the worst.
    if (!(ratio <= residual)) {
      residual = Number.isNaN(ratio) ? Number.POSITIVE_INFINITY : ratio;
      worstRow = i;
    }
  }
  return { r, residual, worstRow };
}

function correction(factors: Factors, scaling: Scaling, r: ComplexVector): ComplexVector {
  const b = zeroVector(factors.size);
  for (let i = 0; i < factors.size; i++) {
    b.re[i] = (r.re[i] as number) * (scaling.row[i] as number);
    b.im[i] = (r.im[i] as number) * (scaling.row[i] as number);
  }
  const y = backSubstitute(factors, b);
  for (let j = 0; j < factors.size; j++) {
    y.re[j] = (y.re[j] as number) * (scaling.column[j] as number);
    y.im[j] = (y.im[j] as number) * (scaling.column[j] as number);
  }
  return y;
}

/** Solves matrix x = b with the factors of the scaled matrix; refines at least once, until rounding is all that is left. */
export function solveRefined(matrix: SparseMatrix, scaling: Scaling, factors: Factors, b: ComplexVector): Refined {
  let x = correction(factors, scaling, b);
  let left = leftover(matrix, scaling, x, b);
  for (let step = 0; step < STEPS && left.residual > 0; step++) {
    if (step > 0 && left.residual <= GOOD) break;
    const d = correction(factors, scaling, left.r);
    const next = { re: x.re.map((v, i) => v + (d.re[i] as number)), im: x.im.map((v, i) => v + (d.im[i] as number)) };
    const nextLeft = leftover(matrix, scaling, next, b);
    if (!(nextLeft.residual <= Math.max(left.residual, GOOD))) break;
    x = next;
    left = nextLeft;
  }
  return { x, residual: left.residual, worstRow: left.worstRow };
}
