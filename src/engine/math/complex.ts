/** Complex numbers as plain data. Division by Smith's method (R. L. Smith, CACM 5(8), 1962), so that squares do not overflow. */
import { atan2, cos, hypot, sin } from './elementary.ts';

export interface Complex {
  readonly re: number;
  readonly im: number;
}

export const complex = (re: number, im = 0): Complex => ({ re, im });

export const ZERO: Complex = complex(0);
export const ONE: Complex = complex(1);

/** From a magnitude and an angle in radians. */
export const polar = (magnitude: number, radians: number): Complex =>
  complex(magnitude * cos(radians), magnitude * sin(radians));

export const add = (a: Complex, b: Complex): Complex => complex(a.re + b.re, a.im + b.im);
export const sub = (a: Complex, b: Complex): Complex => complex(a.re - b.re, a.im - b.im);
export const mul = (a: Complex, b: Complex): Complex => complex(a.re * b.re - a.im * b.im, a.re * b.im + a.im * b.re);
export const scale = (a: Complex, factor: number): Complex => complex(a.re * factor, a.im * factor);
export const conj = (a: Complex): Complex => complex(a.re, -a.im);

/** a / b; dividing by zero gives NaN or infinite parts, as for real numbers. */
export function div(a: Complex, b: Complex): Complex {
  if (Math.abs(b.re) >= Math.abs(b.im)) {
    const ratio = b.im / b.re;
    const denominator = b.re + b.im * ratio;
    return complex((a.re + a.im * ratio) / denominator, (a.im - a.re * ratio) / denominator);
  }
  const ratio = b.re / b.im;
  const denominator = b.re * ratio + b.im;
  return complex((a.re * ratio + a.im) / denominator, (a.im * ratio - a.re) / denominator);
}

export const abs = (a: Complex): number => hypot(a.re, a.im);

/** Angle in radians, in (-pi, pi]. */
export const arg = (a: Complex): number => atan2(a.im, a.re);
