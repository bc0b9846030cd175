/**
 * Weights and thresholds of judging, with their reasons, in one place. They are our own choices: no published measure for line
 * crews was found. A verdict never depends on par.
 */
import type { Severity } from '../catalogue/types.ts';

/** What missing a cause weighs, by the worst that it can do. */
export const severityWeight: Readonly<Record<Severity, number>> = { fatal: 3, serious: 2, minor: 1, damage: 0.5 };

/** How much a control counts by its place in the hierarchy: what is gone cannot fail, what is worn can. */
export const levelWeight: Readonly<Record<string, number>> = {
  elimination: 1,
  substitution: 0.95,
  engineering: 0.9,
  administrative: 0.7,
  ppe: 0.6,
};

/** A control that nobody had planned works as well but was luck of the moment. */
export const improvised = 0.9;

/** What one exposure that could not have been fatal costs of the exposure part. */
export const exposureCost = 0.2;

/** Order is half what had been perceived before hands went on, half whether an act exposed somebody before its causes were known. */
export const coverageShare = 0.5;
