/**
 * Solutions with iterative refinement, judged by the componentwise backward error: the largest ratio, over all
 * equations, of what is left over to the sum of the magnitudes of the equation's own terms (Oettli & Prager 1964;
 * Arioli, Demmel & Duff 1989). A small equation, a body's microamperes, is so held as strictly as a large one.
 */
import { type Factors, substitute } from './complexLu.ts';
import { type ComplexVector, type Scaling, type SparseMatrix, zeroVector } from './sparseMatrix.ts';

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

/** Room for one solution after another; nothing in it outlives a call. */
interface Scratch {
  readonly size: number;
  /** The solution, and the one that may become it. */
  x: ComplexVector;
  next: ComplexVector;
  readonly scaled: ComplexVector;
  /** What is left over, and the sum of the magnitudes of each equation's terms. */
  readonly r: ComplexVector;
  readonly terms: Float64Array;
}

const scratchOf = (size: number): Scratch => ({
  size,
  x: zeroVector(size),
  next: zeroVector(size),
  scaled: zeroVector(size),
  r: zeroVector(size),
  terms: new Float64Array(size),
});

let scratch = scratchOf(0);

interface Judged {
  readonly residual: number;
  readonly worstRow: number;
}

/** Writes b - matrix x to `r`. */
function leftover(matrix: SparseMatrix, scaling: Scaling, x: ComplexVector, b: ComplexVector): Judged {
  const { size, start, end, columns, re, im } = matrix;
  const { r, terms } = scratch;
  const { re: outRe, im: outIm } = r;
  const { re: inRe, im: inIm } = x;
  const rowScaling = scaling.row;
  let largest = 0;
  for (let i = 0; i < size; i++) {
    let sRe = b.re[i] as number;
    let sIm = b.im[i] as number;
    let all = Math.abs(sRe) + Math.abs(sIm);
    const to = end[i] as number;
    for (let t = start[i] as number; t < to; t++) {
      const aRe = re[t] as number;
      const aIm = im[t] as number;
      const j = columns[t] as number;
      const xRe = inRe[j] as number;
      const xIm = inIm[j] as number;
      sRe -= aRe * xRe - aIm * xIm;
      sIm -= aRe * xIm + aIm * xRe;
      all += (Math.abs(aRe) + Math.abs(aIm)) * (Math.abs(xRe) + Math.abs(xIm));
    }
    outRe[i] = sRe;
    outIm[i] = sIm;
    terms[i] = all;
    largest = Math.max(largest, all * (rowScaling[i] as number));
  }
  let residual = 0;
  let worstRow = 0;
  for (let i = 0; i < size; i++) {
    const over = Math.abs(outRe[i] as number) + Math.abs(outIm[i] as number);
    if (over === 0) continue;
    const ratio = over / Math.max(terms[i] as number, (NOTHING * largest) / (rowScaling[i] as number));
    // Written so that a NaN counts as the worst.
    if (!(ratio <= residual)) {
      residual = Number.isNaN(ratio) ? Number.POSITIVE_INFINITY : ratio;
      worstRow = i;
    }
  }
  return { residual, worstRow };
}

/** Writes to `out` what solves for r. */
function correct(factors: Factors, scaling: Scaling, r: ComplexVector, out: ComplexVector): void {
  const { size } = factors;
  const { scaled } = scratch;
  for (let i = 0; i < size; i++) {
    const factor = scaling.row[i] as number;
    scaled.re[i] = (r.re[i] as number) * factor;
    scaled.im[i] = (r.im[i] as number) * factor;
  }
  substitute(factors, scaled, out);
  for (let j = 0; j < size; j++) {
    const factor = scaling.column[j] as number;
    out.re[j] = (out.re[j] as number) * factor;
    out.im[j] = (out.im[j] as number) * factor;
  }
}

function addTo(sum: Float64Array, other: Float64Array, size: number): void {
  for (let i = 0; i < size; i++) sum[i] = (other[i] as number) + (sum[i] as number);
}

/** Solves matrix x = b with the factors of the scaled matrix; refines at least once, until rounding is all that is left. */
export function solveRefined(matrix: SparseMatrix, scaling: Scaling, factors: Factors, b: ComplexVector): Refined {
  const { size } = matrix;
  if (size > scratch.size) scratch = scratchOf(2 * size);
  correct(factors, scaling, b, scratch.x);
  let judged = leftover(matrix, scaling, scratch.x, b);
  for (let step = 0; step < STEPS && judged.residual > 0; step++) {
    if (step > 0 && judged.residual <= GOOD) break;
    const { x, next } = scratch;
    correct(factors, scaling, scratch.r, next);
    addTo(next.re, x.re, size);
    addTo(next.im, x.im, size);
    const better = leftover(matrix, scaling, next, b);
    if (!(better.residual <= Math.max(judged.residual, GOOD))) break;
    scratch.x = next;
    scratch.next = x;
    judged = better;
  }
  const { re, im } = scratch.x;
  return { x: { re: re.slice(0, size), im: im.slice(0, size) }, ...judged };
}
