/**
 * Jobs as they are usually done, de-energized and grounded unless they say otherwise, each with its steps in order. Nothing
 * forces the order: a step done too early or left out has its consequence through the World. Order of making safe: 29 CFR
 * 1910.269(m)(3), (n)(5), (n)(6); briefing (c)(2); pole (q)(1); the rest is common practice, and employers' rules differ.
 */
import { assessmentJobs } from './jobs/assessment.ts';
import { equipmentJobs } from './jobs/equipment.ts';
import { lineJobs } from './jobs/line.ts';
import type { JobKind } from './types.ts';

export const jobKinds: readonly JobKind[] = [...equipmentJobs, ...lineJobs, ...assessmentJobs];

const byId = new Map(jobKinds.map((kind) => [kind.id, kind]));

export const isJobKind = (id: string): boolean => byId.has(id);

/** The job; throws on an unknown id. */
export const jobKind = (id: string): JobKind => {
  const kind = byId.get(id);
  if (kind === undefined) throw new Error(`no job ${id}`);
  return kind;
};
