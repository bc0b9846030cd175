/**
 * The scenario's fingerprint: SHA-256 of the canonical JSON of the parsed scenario, so spelling and order do not count. Notes
 * for the instructor change no drill, so they do not count either: a log and a par stay good when a note is added.
 */
import { hashOf } from '../math/hash.ts';
import type { Scenario } from './types.ts';

/** 64 hex digits. */
export const scenarioHash = ({ instructor: _, ...drill }: Scenario): string => hashOf(drill);
