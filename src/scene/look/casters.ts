/** The layer that the cameras of shadows look at, and no other camera. */
import type { Object3D } from 'three';

export const CASTERS = 1;

/** Lets what stands by itself throw its own shadow. */
export const castsItself = (root: Object3D): void => {
  root.traverse((o) => {
    if (o.castShadow) o.layers.enable(CASTERS);
  });
};
