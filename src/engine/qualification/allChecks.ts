/** Every check that needs no other program, in the order of the report. */
import { approachChecks } from './approachChecks.ts';
import { arcChecks } from './arcChecks.ts';
import { asymmetryChecks } from './asymmetryChecks.ts';
import { barrierChecks } from './barrierChecks.ts';
import { bodyChecks } from './bodyChecks.ts';
import { drawnArcChecks } from './drawnArcChecks.ts';
import { equipmentChecks } from './equipmentChecks.ts';
import { fallChecks } from './fallChecks.ts';
import { fuseChecks } from './fuseChecks.ts';
import { groundChecks } from './groundChecks.ts';
import { groundingChecks } from './groundingChecks.ts';
import { growthChecks } from './growthChecks.ts';
import { lineChecks } from './lineChecks.ts';
import { networkChecks } from './networkChecks.ts';
import { poleChecks } from './poleChecks.ts';
import { protectionChecks } from './protectionChecks.ts';
import { sensesChecks } from './sensesChecks.ts';
import { shockChecks } from './shockChecks.ts';
import { sourceChecks } from './sourceChecks.ts';
import { sourceNeutralChecks } from './sourceNeutralChecks.ts';
import { spanChecks } from './spanChecks.ts';
import { steppedChecks } from './steppedChecks.ts';
import { systemChecks } from './systemChecks.ts';
import type { Check } from './types.ts';

/** All of them. */
export const allChecks: readonly Check[] = [
  ...systemChecks,
  ...sourceChecks,
  ...sourceNeutralChecks,
  ...lineChecks,
  ...networkChecks,
  ...fuseChecks,
  ...protectionChecks,
  ...steppedChecks,
  ...bodyChecks,
  ...shockChecks,
  ...barrierChecks,
  ...arcChecks,
  ...drawnArcChecks,
  ...groundChecks,
  ...groundingChecks,
  ...asymmetryChecks,
  ...approachChecks,
  ...spanChecks,
  ...poleChecks,
  ...fallChecks,
  ...growthChecks,
  ...equipmentChecks,
  ...sensesChecks,
];
