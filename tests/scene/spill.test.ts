/** Light out of lit windows: the panes found, and what falls on the ground before them. */
import { type Mesh, type MeshBasicMaterial, Vector3 } from 'three';
import { describe, expect, it } from 'vitest';
import { hardware } from '../../src/scene/hardware/registry.ts';
import { halosOf } from '../../src/scene/look/halo.ts';
import { panesIn } from '../../src/scene/look/panes.ts';
import { type Pane, spillOf, spillOn } from '../../src/scene/look/spill.ts';
import { materials } from '../../src/scene/materials/materials.ts';

const houseAt = (state: string, side: number, at: readonly [number, number, number] = [0, 0, 0]) => {
  const house = hardware.house?.({ kind: 'house', state, side }, materials());
  if (house === undefined) throw new Error('no house');
  house.position.set(...at);
  return house;
};
const pane: Pane = { at: new Vector3(0, 0, 1.8), out: new Vector3(0, -1, 0), width: 1, height: 1 };

describe('panes of a house', () => {
  it('are none where nobody has light', () => expect(panesIn(houseAt('dark', 0), 'windowLit')).toEqual([]));

  it.each([0, 0.7, 2.5])('look away from it, however it is turned (%s rad)', (side) => {
    const home = new Vector3(30, 12, 0);
    const panes = panesIn(houseAt('lit', side, [30, 12, 0]), 'windowLit');
    expect(panes.length).toBeGreaterThan(5);
    for (const { at, out, width, height } of panes) {
      // In the wall's own plane: its middle is as far out as its wall, which is half of a side of the house.
      const off = at.clone().sub(home).dot(out);
      expect([3.7, 5].some((half) => Math.abs(off - half) < 0.15)).toBe(true);
      expect(width).toBeGreaterThan(0.4);
      expect(height).toBeGreaterThan(0.3);
    }
  });
});

describe('the light on the ground', () => {
  it('is that of a small plane source: E = L A cos cos / r² (inverse square and cosine laws), given back by 0.2', () => {
    // Two metres out and 1.8 m down: cosines 2/2.691 and 1.8/2.691.
    const lux = 1 * (2 / 2.6907) * (1.8 / 2.6907) * (1 / 2.6907 ** 2);
    expect(spillOf(pane, 2, 0, 1.8)).toBeCloseTo((0.2 / Math.PI) * lux, 5);
    expect(spillOf(pane, 20, 0, 1.8) / spillOf(pane, 40, 0, 1.8)).toBeGreaterThan(6);
  });

  it('lies before the pane and not behind it, and is not drawn by day', () => {
    const spill = spillOn();
    spill.follow([pane]);
    const sheet = (spill.group.children[0] as Mesh).geometry;
    sheet.computeBoundingBox();
    expect(sheet.boundingBox?.max.y).toBeLessThan(0);
    spill.shine(0.6, 0.02);
    expect(spill.group.visible).toBe(true);
    spill.shine(0.01, 0.02);
    expect(spill.group.visible).toBe(false);
  });
});

describe('the glow of windows in fog', () => {
  it('comes from the panes that are turned to the eye', () => {
    const halos = halosOf(['windowLit'], 'windowLit');
    const house = houseAt('lit', 0);
    halos.follow(house);
    halos.shine(1, 0.02);
    const shown = (): number => halos.group.children.filter(({ visible }) => visible).length;
    const all = panesIn(house, 'windowLit');
    for (const eye of [new Vector3(30, 0, 2), new Vector3(-30, 0, 2), new Vector3(12, 25, 2)]) {
      halos.face(eye);
      const turned = all.filter(({ at, out }) => out.dot(eye.clone().sub(at).normalize()) > 0.05);
      expect(shown()).toBe(turned.length);
      expect(shown()).toBeLessThan(all.length);
    }
  });

  it('is not laid on the ground a second time by the air before it', () => {
    const spill = spillOn();
    spill.follow([pane]);
    expect(((spill.group.children[0] as Mesh).material as MeshBasicMaterial).fog).toBe(false);
  });
});
