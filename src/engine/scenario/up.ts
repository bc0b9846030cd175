/** Older written forms brought up to the present one, a step a version. */
import { oneOf, type Refusal, shown } from './problem.ts';

/** A file's data as a group of keys. */
export type Written = Readonly<Record<string, unknown>>;

/** Step n brings form n + 1 to form n + 2; it changes what changed and keeps the rest. */
export type Step = (written: Written) => Written;

/** Steps from form 1 on; the present form is one more than there are steps. */
export const steps: readonly Step[] = [];

/** The data in the present form, or why its form is not known. */
export const bringUp = (
  written: Written,
  chain: readonly Step[] = steps,
): { readonly ok: true; readonly written: Written } | { readonly ok: false; readonly refusal: Refusal } => {
  const present = chain.length + 1;
  const known = Array.from({ length: present }, (_, at) => String(at + 1));
  const { format } = written;
  const refuse = (found: string, { expected }: { expected: string }) => ({
    ok: false as const,
    refusal: { path: ['format'], found, expected: `${present === 1 ? 'the number ' : ''}${expected}` },
  });
  if (format === undefined) return refuse('no format number', oneOf(known, format));
  if (typeof format !== 'number' || !Number.isInteger(format) || format < 1)
    return refuse(shown(format), oneOf(known, format));
  if (format > present) return refuse(`format ${format} of a newer loose-tie`, oneOf(known, format));
  let brought = written;
  for (const [at, step] of chain.entries()) {
    if (at + 1 >= format) brought = { ...step(brought), format: at + 2 };
  }
  return { ok: true, written: brought };
};
