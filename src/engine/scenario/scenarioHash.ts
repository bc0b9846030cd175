/** The scenario's fingerprint: SHA-256 of the canonical JSON of the parsed scenario, so spelling and order do not count. */
import { hashOf } from '../math/hash.ts';
import type { Scenario } from './types.ts';

/** 64 hex digits. */
export const scenarioHash = (scenario: Scenario): string => hashOf(scenario);
