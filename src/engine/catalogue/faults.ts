/**
 * Fault kinds and benign look-alikes. Sizes of signs are of the mark that must be resolved; where no source is named they are
 * estimates. The engine derives what a fault does; nothing here is an answer key.
 */
import { connectionFaults } from './faults/connections.ts';
import { crewFaults } from './faults/crew.ts';
import { deviceFaults } from './faults/devices.ts';
import { equipmentFaults } from './faults/equipment.ts';
import { groundFaults } from './faults/ground.ts';
import { hardwareFaults } from './faults/hardware.ts';
import { insulationFaults } from './faults/insulation.ts';
import { insulatorSights } from './faults/insulatorSights.ts';
import { lettingGoFaults } from './faults/lettingGo.ts';
import { lineSights } from './faults/lineSights.ts';
import { lookAlikes } from './faults/lookAlikes.ts';
import { looseFaults } from './faults/loose.ts';
import { lowSideFaults } from './faults/lowSide.ts';
import { plainSights } from './faults/plainSights.ts';
import { plantFaults } from './faults/plants.ts';
import { poleFaults } from './faults/pole.ts';
import { supportFaults } from './faults/poles.ts';
import { porcelainFaults } from './faults/porcelain.ts';
import { premisesFaults } from './faults/premises.ts';
import { siteFaults } from './faults/site.ts';
import { sourceNeutralFaults } from './faults/sourceNeutral.ts';
import { tankSights } from './faults/tankSights.ts';
import { tankFaults } from './faults/tanks.ts';
import { toolFaults } from './faults/tools.ts';
import { trafficFaults } from './faults/traffic.ts';
import { woodFaults } from './faults/wood.ts';
import { woodSights } from './faults/woodSights.ts';
import type { FaultKind } from './types.ts';

export const faultKinds: readonly FaultKind[] = [
  ...poleFaults,
  ...groundFaults,
  ...premisesFaults,
  ...equipmentFaults,
  ...insulationFaults,
  ...connectionFaults,
  ...sourceNeutralFaults,
  ...deviceFaults,
  ...woodFaults,
  ...plantFaults,
  ...lettingGoFaults,
  ...toolFaults,
  ...siteFaults,
  ...trafficFaults,
  ...crewFaults,
  ...supportFaults,
  ...hardwareFaults,
  ...porcelainFaults,
  ...tankFaults,
  ...lowSideFaults,
  ...looseFaults,
  ...lookAlikes,
  ...woodSights,
  ...insulatorSights,
  ...lineSights,
  ...tankSights,
  ...plainSights,
];

const byId = new Map(faultKinds.map((kind) => [kind.id, kind]));

export const isFaultKind = (id: string): boolean => byId.has(id);

/** The kind; throws on an unknown id, which a checked scenario cannot bring. */
export const faultKind = (id: string): FaultKind => {
  const kind = byId.get(id);
  if (kind === undefined) throw new Error(`no fault kind ${id}`);
  return kind;
};
