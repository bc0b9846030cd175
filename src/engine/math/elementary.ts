/**
 * The only elementary functions the engine may call. ECMAScript leaves the last bits of Math.sin, exp, pow and the like
 * to each browser; these packages compute them with plain IEEE 754 arithmetic (after FreeBSD msun), so every browser
 * and Node give the same bits.
 */
import stdAcos from '@stdlib/math-base-special-acos';
import stdAsin from '@stdlib/math-base-special-asin';
import stdAtan2 from '@stdlib/math-base-special-atan2';
import stdCos from '@stdlib/math-base-special-cos';
import stdExp from '@stdlib/math-base-special-exp';
import stdHypot from '@stdlib/math-base-special-hypot';
import stdLn from '@stdlib/math-base-special-ln';
import stdLog10 from '@stdlib/math-base-special-log10';
import stdPow from '@stdlib/math-base-special-pow';
import stdSin from '@stdlib/math-base-special-sin';
import stdTan from '@stdlib/math-base-special-tan';

type Unary = (x: number) => number;
type Binary = (x: number, y: number) => number;

/** Sine of an angle in radians. */
export const sin: Unary = stdSin;
/** Cosine of an angle in radians. */
export const cos: Unary = stdCos;
/** Tangent of an angle in radians. */
export const tan: Unary = stdTan;
/** Angle in radians of the point (x, y), called as atan2(y, x). */
export const atan2: Binary = stdAtan2;
/** Arc cosine in radians; NaN outside [-1, 1]. */
export const acos: Unary = stdAcos;
/** Arc sine in radians; NaN outside [-1, 1]. */
export const asin: Unary = stdAsin;
/** e raised to x. */
export const exp: Unary = stdExp;
/** Natural logarithm; NaN below zero. */
export const ln: Unary = stdLn;
/** Decimal logarithm; NaN below zero. */
export const log10: Unary = stdLog10;
/** x raised to y. */
export const pow: Binary = stdPow;
/** Square root of x² + y² without overflow. */
export const hypot: Binary = stdHypot;
