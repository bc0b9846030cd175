/** The catalogue as plain data, for pages and tools that read no code: kinds with their words, without circuits and solids. */
import { componentKinds } from './components.ts';
import { conditions, personConditions, siteConditions, toolConditions } from './conditions.ts';
import { briefingTopics, controlKinds } from './controls.ts';
import { faultKinds } from './faults.ts';
import { jobKinds } from './jobs.ts';
import { repairKinds } from './repairs.ts';
import { toolKinds } from './tools.ts';
import type { ComponentKind } from './types.ts';

const plainComponent = ({
  branches: _branches,
  watches: _watches,
  solids: _solids,
  sound: _sound,
  ...data
}: ComponentKind) => data;

/** Everything in the catalogue that is data, lists in their own order; SI units. */
export const plainCatalogue = () => ({
  format: 1,
  components: componentKinds.map(plainComponent),
  faults: faultKinds,
  conditions,
  toolConditions,
  siteConditions,
  personConditions,
  tools: toolKinds,
  controls: controlKinds,
  repairs: repairKinds,
  jobs: jobKinds,
  briefingTopics,
});
