/** Trees stand as the season has them, and ice on the ground is dull under cloud. */
import type { InstancedMesh, Mesh, MeshStandardMaterial } from 'three';
import { describe, expect, it } from 'vitest';
import { materials } from '../../../src/scene/materials/materials.ts';
import { grownIn } from '../../../src/scene/place/grown.ts';
import { landOf } from '../../../src/scene/place/land.ts';
import { placeOf } from '../../../src/scene/place/setting.ts';
import type { Room } from '../../../src/scene/place/types.ts';

const anywhere: Room = { free: () => true, clear: () => true, past: () => true };
const set = materials();
const place = placeOf('woods', anywhere, false);

/** Which of these are hung on trees at so many degrees Celsius. */
const hungAt = (celsius: number) => {
  const { group } = grownIn(set, place, celsius, () => true, 10);
  const maps = (group.children as InstancedMesh[]).map(({ material }) => (material as MeshStandardMaterial).map);
  return {
    leaves: maps.includes(set.leaves.map),
    twigs: maps.includes(set.twigs.map),
    needles: maps.includes(set.needles.map),
  };
};

describe('in the cold', () => {
  it('broad leaves are shed and twigs show, while needles stay', () => {
    expect(hungAt(-2)).toEqual({ leaves: false, twigs: true, needles: true });
    expect(hungAt(15)).toEqual({ leaves: true, twigs: false, needles: true });
  });

  it('iced ground is smoother than bare ground and no mirror', () => {
    const roughest = (iced: boolean): number => {
      const land = landOf(set, place);
      land.soak(set, 0.4, 0, false, iced);
      return ((land.group.children[0] as Mesh).material as MeshStandardMaterial).roughness;
    };
    expect(roughest(true)).toBeLessThan(roughest(false));
    expect(roughest(true)).toBeGreaterThan(0.6);
  });

  it('snow that falls lies on ground, road and blades, and on nothing when it is gone', () => {
    const land = landOf(set, place);
    const grown = grownIn(set, place, -2, () => true, 10);
    const lying = (): readonly number[] =>
      [...land.group.children, ...grown.group.children]
        .map((mesh) => (mesh as Mesh).material as MeshStandardMaterial)
        .map((material) => {
          const shader = { uniforms: {} as Record<string, { value: number }>, vertexShader: '', fragmentShader: '' };
          material.onBeforeCompile(shader as never, null as never);
          return shader.uniforms.lying?.value ?? Number.NaN;
        })
        .filter((depth) => !Number.isNaN(depth));
    land.soak(set, 0, 1);
    grown.soak(false, 1);
    expect(lying().length).toBeGreaterThan(5);
    expect(new Set(lying())).toEqual(new Set([1]));
    land.soak(set, 0, 0);
    grown.soak(false, 0);
    expect(new Set(lying())).toEqual(new Set([0]));
  });
});
