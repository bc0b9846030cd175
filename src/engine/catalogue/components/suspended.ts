/**
 * A conductor hung under an arm: the string, and the clamp at its foot in which the conductor lies. Two 6 in bells or one polymer
 * insulator with its links, typical of 15 kV class hardware; lengths from memory, common practice.
 */
import type { ComponentKind } from '../types.ts';
import { suspension } from './insulators.ts';
import { plain, upright } from './shared.ts';

/** Metres from the eye in the arm down to the conductor. */
export const STRING = 0.46;

const { equipment: _, mounting: __, ...string } = suspension;

const hung: ComponentKind = {
  ...string,
  id: 'suspension-string',
  name: 'suspension string',
  holds: 'through',
  mounting: { belowM: 0.52, outM: 1.07 },
  points: { conductor: [0, 0, -STRING], yoke: [0, 0, -0.02] },
  solids: () => [upright(-STRING + 0.08, -0.04, 0.08)],
  features: suspension.features.map((feature) => ({
    ...feature,
    offset: feature.id === 'body' ? [0, 0, -0.22] : [0, 0, -0.05],
  })),
};

const clamp: ComponentKind = {
  ...plain,
  id: 'suspension-clamp',
  name: 'suspension clamp',
  ties: true,
  solids: () => [{ shape: 'cylinder', from: [-0.12, 0, 0], to: [0.12, 0, 0], radius: 0.03 }],
  features: [
    {
      id: 'keeper',
      healthy: 'keeper: drawn down evenly on the conductor by two U-bolts, nuts on, as far as made out',
      size: 0.008,
      offset: [0, 0, 0.01],
      side: 'any',
    },
  ],
  conditions: ['sound', 'loose', 'slipping', 'rusted'],
  mounting: { belowM: 0.98, outM: 1.07 },
  source: 'common practice',
};

export const suspendedKinds = [hung, clamp];
