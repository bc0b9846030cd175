/** Light that fog scatters round lit windows: a soft glow before each, stronger the thicker the air. */
import {
  AdditiveBlending,
  DataTexture,
  Group,
  LinearFilter,
  type Mesh,
  type Object3D,
  Sprite,
  SpriteMaterial,
  Vector3,
} from 'three';
import { panesOf } from './panes.ts';

const spot = (): DataTexture => {
  const n = 64;
  const data = new Uint8Array(n * n * 4);
  for (let i = 0; i < n * n; i++) {
    const r = Math.hypot((i % n) / (n - 1) - 0.5, Math.floor(i / n) / (n - 1) - 0.5) * 2;
    data.set([255, 255, 255, 255 * Math.max(0, 1 - r) ** 2.4], i * 4);
  }
  const texture = new DataTexture(data, n, n);
  texture.magFilter = LinearFilter;
  texture.minFilter = LinearFilter;
  texture.needsUpdate = true;
  return texture;
};

/** Middles of the separate lamps that one mesh holds: points nearer than a metre belong together. */
const middlesOf = (mesh: Mesh): readonly Vector3[] => {
  const position = mesh.geometry.getAttribute('position');
  const groups: { readonly sum: Vector3; n: number }[] = [];
  const p = new Vector3();
  mesh.updateWorldMatrix(true, false);
  for (let i = 0; i < position.count; i++) {
    p.fromBufferAttribute(position, i).applyMatrix4(mesh.matrixWorld);
    const near = groups.find(({ sum, n }) => sum.clone().divideScalar(n).distanceTo(p) < 1.05);
    if (near) {
      near.sum.add(p);
      near.n++;
    } else groups.push({ sum: p.clone(), n: 1 });
  }
  return groups.map(({ sum, n }) => sum.divideScalar(n));
};

export interface Halos {
  readonly group: Group;
  /** Finds what shines among objects. */
  follow(root: Object3D): void;
  /** Brightness of the glow in the picture's units, and the fog's extinction, per metre. */
  shine(level: number, extinction: number): void;
  /** Sets each glow before its window as seen by an eye: the air in between makes it, and dims it. */
  face(eye: Vector3): void;
  dispose(): void;
}

/** Halos of what is made of these materials; of them `flat` shines one way, as a pane does, the others all round. */
export const halosOf = (shining: readonly string[], flat: string): Halos => {
  const group = new Group();
  const texture = spot();
  const glow = (): SpriteMaterial =>
    new SpriteMaterial({
      map: texture,
      color: 0xffb566,
      blending: AdditiveBlending,
      depthWrite: false,
      transparent: true,
      fog: false,
    });
  let panes: { readonly at: Vector3; readonly out: Vector3 | null; readonly sprite: Sprite }[] = [];
  let strength = 0;
  let air = 0.02;
  const clear = (): void => {
    for (const { sprite } of panes) sprite.material.dispose();
    panes = [];
    group.clear();
  };
  return {
    group,
    follow: (root) => {
      clear();
      root.traverse((o) => {
        if (!shining.includes(o.name) || !(o as Mesh).isMesh) return;
        const found = o.name === flat ? panesOf(o as Mesh) : middlesOf(o as Mesh).map((at) => ({ at, out: null }));
        for (const { at, out } of found) {
          const sprite = new Sprite(glow());
          sprite.scale.setScalar(4.6);
          panes.push({ at, out, sprite });
          group.add(sprite);
        }
      });
    },
    shine: (level, extinction) => {
      strength = level;
      air = extinction;
    },
    face: (eye) => {
      for (const { at, out, sprite } of panes) {
        const far = at.distanceTo(eye);
        // A pane sends as much this way as it is turned this way; from behind its wall nothing comes.
        const turned = out === null ? 1 : Math.max(0, out.dot(eye.clone().sub(at)) / far);
        sprite.position.copy(at).lerp(eye, Math.min(0.5, 1.2 / far));
        const depth = air * far;
        sprite.material.opacity = strength * turned * depth * Math.exp(-depth);
        sprite.visible = sprite.material.opacity > 0.01;
      }
    },
    dispose: () => {
      clear();
      texture.dispose();
    },
  };
};
