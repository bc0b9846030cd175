/** Specs that build every kind in every state and make, with points where a kind wants them. */
import { type Group, type Mesh, MeshStandardMaterial } from 'three';
import { hardware } from '../../../src/scene/hardware/registry.ts';
import type { PartSpec, Point } from '../../../src/scene/hardware/types.ts';
import { type Materials, materials } from '../../../src/scene/materials/materials.ts';

const courses: Readonly<Record<string, readonly Point[]>> = {
  'barrier-tape': [
    [0, 0, 1],
    [3, 0, 1],
    [3, 3, 1],
  ],
  'ground-set': [
    [0, 0, 1],
    [0.3, 0, 0.4],
    [1, 0, 1],
  ],
  guy: [
    [0, 0, 8],
    [-5, 0, 0.3],
  ],
  anchor: [
    [0, 0, 8],
    [-5, 0, 0.3],
  ],
  'guy-guard': [
    [0, 0, 8],
    [-5, 0, 0.3],
  ],
  'strain-insulator': [
    [0, 0, 8],
    [-5, 0, 0.3],
  ],
  'telecom-cable': [
    [0, 0, 6],
    [30, 0, 6],
  ],
  lead: [
    [0, 0, 1],
    [0.2, 0.1, 0.6],
    [0.5, 0.1, 0.4],
  ],
  triplex: [
    [0, 0, 7],
    [22, -6, 5],
  ],
  truck: [[-1, 6, 9]],
};

/** Every state and variant of a kind; a parted pole ground says where. */
export const specsOf = (kind: string): PartSpec[] => {
  const b = hardware[kind];
  if (!b) throw new Error(`no builder of ${kind}`);
  const parted = { partedFrom: 0.5, partedTo: 1.7 };
  return b.states.flatMap((state) =>
    b.variants.map((variant) => ({
      kind,
      state,
      variant,
      points: courses[kind] ?? [],
      size: kind === 'pole-ground' && state !== 'whole' ? parted : {},
    })),
  );
};

export const kinds = Object.keys(hardware).sort();

export const meshesOf = (part: Group): Mesh[] => part.children as Mesh[];

export const trianglesOf = (part: Group): number =>
  meshesOf(part).reduce((sum, m) => sum + (m.geometry.getIndex()?.count ?? 0) / 3, 0);

const coloured = ['wood', 'mark'];

/** A set of the same names without textures, for what is only measured: painting takes seconds. */
export const bare = Object.fromEntries(
  Object.keys(materials()).map((name) => [name, new MeshStandardMaterial({ vertexColors: coloured.includes(name) })]),
) as unknown as Materials;
