/** The streetlight that burns throws its light on the road; there is one at most. */
import { type Object3D, type Scene, SpotLight } from 'three';
import type { PartData } from '../hardware/types.ts';

/** Against a lit window's brightness: some 1300 cd straight down (4000 lm over a half space, an estimate) as the headlamp is counted. */
const STRENGTH = 140;

/** Finds it among objects, and takes away the light of the one before; `level`: brightness in the picture's units. */
export const streetLightIn = (scene: Scene): ((root: Object3D, level: number) => void) => {
  let street: SpotLight | null = null;
  return (root, level) => {
    street?.removeFromParent();
    street?.target.removeFromParent();
    street = null;
    root.traverse((o) => {
      const data = o.userData as Partial<PartData>;
      const at = data.points?.lamp;
      if (street !== null || data.kind !== 'streetlight' || data.state !== 'lit' || !at) return;
      street = new SpotLight(0xffc88a, STRENGTH * level, 45, 1.15, 0.9, 1.7);
      street.position.set(at[0] + o.position.x, at[1] + o.position.y, at[2] + o.position.z);
      street.target.position.copy(street.position).setZ(0);
      scene.add(street, street.target);
    });
  };
};
