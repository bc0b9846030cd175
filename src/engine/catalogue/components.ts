/** Component kinds by id. */
import { armKinds } from './components/arm.ts';
import { bankKinds } from './components/bank.ts';
import { coupledLineKinds } from './components/coupledLine.ts';
import { fittingKinds } from './components/fittings.ts';
import { groundingKinds } from './components/grounding.ts';
import { guyKinds } from './components/guying.ts';
import { insulatorKinds } from './components/insulators.ts';
import { inverterKinds } from './components/inverter.ts';
import { jointUseKinds } from './components/jointUse.ts';
import { lineKinds } from './components/line.ts';
import { lineGearKinds } from './components/lineGear.ts';
import { lowSideKinds } from './components/lowSide.ts';
import { ownPlantKinds } from './components/ownPlant.ts';
import { ownSetKinds } from './components/ownSet.ts';
import { poleKinds } from './components/pole.ts';
import { premisesKinds } from './components/premises.ts';
import { supplyKinds } from './components/supply.ts';
import { suspendedKinds } from './components/suspended.ts';
import { switchingKinds } from './components/switching.ts';
import { transformerKinds } from './components/transformer.ts';
import type { ComponentKind } from './types.ts';

export const componentKinds: readonly ComponentKind[] = [
  ...poleKinds,
  ...switchingKinds,
  ...groundingKinds,
  ...transformerKinds,
  ...lineKinds,
  ...premisesKinds,
  ...ownSetKinds,
  ...armKinds,
  ...bankKinds,
  ...coupledLineKinds,
  ...inverterKinds,
  ...ownPlantKinds,
  ...supplyKinds,
  ...guyKinds,
  ...insulatorKinds,
  ...suspendedKinds,
  ...fittingKinds,
  ...lineGearKinds,
  ...lowSideKinds,
  ...jointUseKinds,
];

const byId = new Map(componentKinds.map((kind) => [kind.id, kind]));

export const isComponentKind = (id: string): boolean => byId.has(id);

/** The kind; throws on an unknown id, which a checked scenario cannot bring. */
export const componentKind = (id: string): ComponentKind => {
  const kind = byId.get(id);
  if (kind === undefined) throw new Error(`no component kind ${id}`);
  return kind;
};
