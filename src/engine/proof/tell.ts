/** Traps as sentences: the act, what it meets at the credible worst, and what is behind it. */

import { faultKind } from '../catalogue/faults.ts';
import type { Exposure } from '../hazards/types.ts';
import { format, formatNumber } from '../units/formatQuantity.ts';
import type { Dimension } from '../units/unitTable.ts';
import { faultsOf } from '../world/edit.ts';
import type { World } from '../world/types.ts';
import type { Step } from './peek.ts';
import { type Bite, lessonsOf, MOST } from './traps.ts';
import type { Trap } from './types.ts';

const dimensions: Readonly<Record<string, Dimension>> = {
  V: 'voltage',
  A: 'current',
  m: 'length',
  'cal/cm2': 'arcEnergy',
};

function quantityWords({ quantities }: Exposure): string {
  const first = quantities.find(({ unit }) => unit === 'A') ?? quantities[0];
  if (first === undefined) return '';
  const dimension = dimensions[first.unit];
  const value = dimension ? format(first.value, dimension, 'metric') : `${formatNumber(first.value)} ${first.unit}`;
  return `: ${first.name} ${value}`;
}

function causeWords(world: World, causes: readonly string[]): string {
  const names = faultsOf(world)
    .filter(({ fault }) => causes.includes(fault.id))
    .map(({ fault }) => faultKind(fault.kind).name);
  return names.length === 0 ? '' : ` Behind it: ${[...new Set(names)].join(', ')}.`;
}

/** The ten shortest, each lesson once. */
export function tell(start: World, step: Step, bites: ReadonlyMap<string, Bite>): readonly Trap[] {
  return lessonsOf(bites)
    .slice(0, MOST)
    .map(({ hazard, minutes, acts, label }) => {
      let world = start;
      let exposures: readonly Exposure[] = [];
      for (const act of acts) {
        const result = step.act(world, act);
        world = result.world;
        exposures = result.ok ? result.exposures : [];
      }
      const exposure = exposures.find((each) => each.hazard === hazard) ?? exposures[0];
      const meets = exposure === undefined ? 'what it trusts fails' : `${exposure.mechanism}${quantityWords(exposure)}`;
      return {
        hazard,
        minutes,
        acts,
        words: `${label}: ${meets}.${exposure ? causeWords(start, exposure.causes) : ''}`,
      };
    });
}
