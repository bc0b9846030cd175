/** Every check that needs no other program, in the order of the report. */
import { approachChecks } from './approachChecks.ts';
import { arcChecks } from './arcChecks.ts';
import { bodyChecks } from './bodyChecks.ts';
import { equipmentChecks } from './equipmentChecks.ts';
import { groundChecks } from './groundChecks.ts';
import { groundingChecks } from './groundingChecks.ts';
import { growthChecks } from './growthChecks.ts';
import { lineChecks } from './lineChecks.ts';
import { mechanicsChecks } from './mechanicsChecks.ts';
import { networkChecks } from './networkChecks.ts';
import { protectionChecks } from './protectionChecks.ts';
import { sensesChecks } from './sensesChecks.ts';
import { sourceChecks } from './sourceChecks.ts';
import type { Check } from './types.ts';

/** All of them. */
export const allChecks: readonly Check[] = [
  ...sourceChecks,
  ...lineChecks,
  ...networkChecks,
  ...protectionChecks,
  ...bodyChecks,
  ...arcChecks,
  ...groundChecks,
  ...groundingChecks,
  ...approachChecks,
  ...mechanicsChecks,
  ...growthChecks,
  ...equipmentChecks,
  ...sensesChecks,
];
