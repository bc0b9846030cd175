/** A studio for hardware: one part on a plain ground, by day or by the lamp of whoever looks, and what its pixels say. */
import {
  AmbientLight,
  type Box3,
  Color,
  DirectionalLight,
  type Object3D,
  PerspectiveCamera,
  PMREMGenerator,
  Scene,
  SpotLight,
  Vector3,
  WebGLRenderer,
} from 'three';
import { RoomEnvironment } from 'three/addons/environments/RoomEnvironment.js';
import { paintAll } from '../../../src/scene/materials/painting.ts';

export const lights = ['day', 'lamp'] as const;
export type Light = (typeof lights)[number];

/** Edge of a picture, pixels. */
export const EDGE = 256;

export interface Studio {
  /** Pixels of objects seen from an azimuth, from a little below as from the ground. */
  shoot(objects: readonly Object3D[], box: Box3, azimuth: number, light: Light): Uint8Array;
  readonly canvas: HTMLCanvasElement;
  dispose(): void;
}

export const studioOf = (): Studio => {
  const renderer = new WebGLRenderer({ antialias: true, preserveDrawingBuffer: true });
  renderer.setSize(EDGE, EDGE);
  const generator = new PMREMGenerator(renderer);
  const room = generator.fromScene(new RoomEnvironment()).texture;
  return {
    canvas: renderer.domElement,
    shoot: (objects, box, azimuth, light) => {
      paintAll();
      const day = light === 'day';
      const scene = new Scene();
      scene.background = day ? new Color(0.55, 0.66, 0.76) : new Color(0.006, 0.008, 0.012);
      scene.environment = room;
      scene.environmentIntensity = day ? 0.6 : 0.02;
      const parents = objects.map(({ parent }) => parent);
      scene.add(...objects, new AmbientLight(0xffffff, day ? 0.25 : 0.01));
      const middle = box.getCenter(new Vector3());
      const radius = Math.max(0.05, box.getSize(new Vector3()).length() / 2);
      const far = (radius / Math.sin(0.18)) * 1.02;
      const camera = new PerspectiveCamera((0.36 * 180) / Math.PI, 1, far / 60, far * 5);
      camera.up.set(0, 0, 1);
      const lift = -0.12;
      camera.position
        .copy(middle)
        .add(
          new Vector3(
            Math.cos(azimuth) * Math.cos(lift),
            Math.sin(azimuth) * Math.cos(lift),
            Math.sin(lift),
          ).multiplyScalar(far),
        );
      camera.lookAt(middle);
      if (day) {
        const sun = new DirectionalLight(0xfff4e4, 1.9);
        sun.position.copy(middle).add(new Vector3(0.4, -0.6, 0.7).multiplyScalar(radius * 4));
        sun.target.position.copy(middle);
        scene.add(sun, sun.target);
      } else {
        const lamp = new SpotLight(0xfff3df, 3.2 * far * far, 0, 0.2, 0.6);
        lamp.position.copy(camera.position).add(new Vector3(0, 0, radius * 0.1));
        lamp.target.position.copy(middle);
        scene.add(lamp, lamp.target);
      }
      renderer.render(scene, camera);
      const gl = renderer.getContext();
      const pixels = new Uint8Array(EDGE * EDGE * 4);
      gl.readPixels(0, 0, EDGE, EDGE, gl.RGBA, gl.UNSIGNED_BYTE, pixels);
      objects.forEach((object, i) => {
        object.removeFromParent();
        parents[i]?.add(object);
      });
      return pixels;
    },
    dispose: () => {
      room.dispose();
      generator.dispose();
      renderer.dispose();
    },
  };
};

const grey = (p: Uint8Array, x: number, y: number): number => {
  const o = (y * EDGE + x) * 4;
  return 0.3 * (p[o] as number) + 0.59 * (p[o + 1] as number) + 0.11 * (p[o + 2] as number);
};

/** Perceptual hash: of 9 by 8 means, whether each is brighter than its right neighbour; 16 hexadecimal digits. */
export const hashOf = (pixels: Uint8Array): string => {
  const mean = (i: number, j: number): number => {
    let sum = 0;
    let n = 0;
    for (let y = Math.floor((j * EDGE) / 8); y < ((j + 1) * EDGE) / 8; y++) {
      for (let x = Math.floor((i * EDGE) / 9); x < Math.floor(((i + 1) * EDGE) / 9); x++) {
        sum += grey(pixels, x, y);
        n++;
      }
    }
    return sum / n;
  };
  let bits = '';
  for (let j = 0; j < 8; j++) for (let i = 0; i < 8; i++) bits += mean(i, j) > mean(i + 1, j) + 0.4 ? '1' : '0';
  return [...Array(16).keys()].map((k) => Number.parseInt(bits.slice(k * 4, k * 4 + 4), 2).toString(16)).join('');
};

/** Bits in which two hashes differ. */
export const apart = (a: string, b: string): number => {
  let n = 0;
  for (let i = 0; i < 16; i++) {
    let x = Number.parseInt(a[i] ?? '0', 16) ^ Number.parseInt(b[i] ?? '0', 16);
    for (; x > 0; x >>= 1) n += x & 1;
  }
  return n;
};
