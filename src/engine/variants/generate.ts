/**
 * Variants by a seed. Each number of a seed is drawn for by itself, by a generator of its own, until a draw is good, so
 * that numbers may be worked on apart, in any order, by any number of workers, and give the same files. Bases are taken
 * in turn. A twin of an earlier number is drawn again once all are there (`settled`), in their order. That holds for one
 * version of this program: what may be drawn, and what is thrown away for what, belongs to the draw.
 */
import { type Base, type Bounds, type Grade, plainBounds, type Rejection, rejections, type Variant } from './types.ts';
import { variantFrom } from './variantFrom.ts';

export interface GenerateOptions {
  readonly seed: number;
  readonly bases: readonly Base[];
  readonly grade?: Grade;
  readonly bounds?: Bounds;
  /** Draws for a number before it is given up. */
  readonly most?: number;
  readonly tell?: (draws: number) => void;
}

/** How often what was thrown away, and for which reasons. */
export type Counts = Readonly<Record<Rejection, Readonly<Record<string, number>>>>;

/** What became of a number. */
export interface Made {
  readonly number: number;
  /** Null: given up. */
  readonly variant: Variant | null;
  readonly draws: number;
  readonly rejected: Counts;
}

const MOST = 40;

const none = (): Counts => Object.fromEntries(rejections.map((name) => [name, {}])) as Counts;

/** One more for a reason. */
const counted = (counts: Counts, is: Rejection, why: string): Counts => ({
  ...counts,
  [is]: { ...counts[is], [why]: (counts[is][why] ?? 0) + 1 },
});

/** Counts of several numbers together. */
export const summed = (all: readonly Counts[]): Counts =>
  all.reduce((sum, counts) => {
    let now = sum;
    for (const name of rejections) {
      for (const [why, times] of Object.entries(counts[name])) {
        now = { ...now, [name]: { ...now[name], [why]: (now[name][why] ?? 0) + times } };
      }
    }
    return now;
  }, none());

/** The variant of a number, drawn for from draw `after` on. */
export function variantAt(options: GenerateOptions, number: number, after = 0): Made {
  const { seed, bases, grade, bounds = plainBounds, most = MOST, tell } = options;
  const base = bases[(number - 1) % bases.length];
  if (base === undefined) throw new Error('no base to draw from');
  let rejected = none();
  for (let draws = after; draws < most; draws++) {
    tell?.(draws);
    const outcome = variantFrom({ base, bounds, seed, number, draw: draws, ...(grade === undefined ? {} : { grade }) });
    if ('variant' in outcome) return { number, variant: outcome.variant, draws: draws + 1, rejected };
    rejected = counted(rejected, outcome.rejected.is, outcome.rejected.why);
  }
  return { number, variant: null, draws: most, rejected };
}

/** What two variants have in common if they are twins: all but their names. */
const faceOf = ({ scenario }: Variant): string => JSON.stringify({ ...scenario, id: '', title: '' });

/** Numbers in their order, twins drawn again. */
export function settled(options: GenerateOptions, made: readonly Made[]): readonly Made[] {
  const faces = new Set<string>();
  return [...made]
    .sort((a, b) => a.number - b.number)
    .map((each) => {
      let now = each;
      while (now.variant !== null && faces.has(faceOf(now.variant))) {
        const again = variantAt(options, now.number, now.draws);
        const rejected = counted(summed([now.rejected, again.rejected]), 'twin', 'the same as an earlier one');
        now = { ...again, rejected };
      }
      if (now.variant !== null) faces.add(faceOf(now.variant));
      return now;
    });
}

/** Variants numbered from 1; fewer than asked for where draws run out. */
export const generate = (options: GenerateOptions, count: number): readonly Made[] =>
  settled(
    options,
    Array.from({ length: count }, (_, i) => variantAt(options, i + 1)),
  );

/** Draws in which a variant of the base's own grade is looked for. */
const ALIKE = 12;

/** The variant of one scenario by a seed: of its own grade if one is found soon, else of any. */
export function another(base: Base, grade: Grade, seed: number, tell?: (draws: number) => void): Made {
  const options = { seed, bases: [base], ...(tell === undefined ? {} : { tell }) };
  const alike = variantAt({ ...options, grade, most: ALIKE }, 1);
  return alike.variant === null ? variantAt(options, 1) : alike;
}
