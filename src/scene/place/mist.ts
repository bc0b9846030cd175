/** Banks of mist lying over the fields: soft sheets facing the eye, a little lighter than the air, drifting with the wind. */
import { type Color, DataTexture, Group, LinearFilter, Sprite, SpriteMaterial } from 'three';
import { hash, layers } from '../materials/noise.ts';
import { groundAt } from './lie.ts';

/** A bank: ragged above, fading to nothing at every edge. */
const bank = (): DataTexture => {
  const w = 256;
  const h = 64;
  const data = new Uint8Array(w * h * 4);
  for (let y = 0; y < h; y++) {
    for (let x = 0; x < w; x++) {
      const u = x / (w - 1);
      const v = y / (h - 1);
      const side = Math.sin(Math.PI * u) ** 1.3;
      const tall = Math.sin(Math.PI * Math.min(1, v * 1.05)) ** 1.6;
      const rag = 0.25 + 0.9 * layers(u, v, 12, 7, 3, 4);
      data.set([255, 255, 255, Math.min(255, 255 * side * tall * rag)], (y * w + x) * 4);
    }
  }
  const texture = new DataTexture(data, w, h);
  texture.magFilter = LinearFilter;
  texture.minFilter = LinearFilter;
  texture.needsUpdate = true;
  return texture;
};

export interface Mist {
  readonly group: Group;
  /** Takes the colour of the air and the density of the fog, 0 to 1. */
  colour(air: Color, fog: number): void;
  /** Drifts by so many seconds. */
  drift(seconds: number): void;
  dispose(): void;
}

const COUNT = 22;
/** Metres a second in a breath of air, and the width of the land that banks cross. */
const PACE = 0.35;
const WIDE = 190;

export const mistOf = (): Mist => {
  const group = new Group();
  const texture = bank();
  const material = new SpriteMaterial({ map: texture, transparent: true, depthWrite: false, fog: true, opacity: 0.2 });
  const banks = Array.from({ length: COUNT }, (_, i) => {
    const sprite = new Sprite(material);
    const y = i % 2 === 0 ? 13 + 62 * hash(i, 1, 21) : -17 - 55 * hash(i, 2, 21);
    const wide = 26 + 34 * hash(i, 3, 21);
    sprite.scale.set(wide, 2.2 + 3 * hash(i, 4, 21), 1);
    sprite.position.set(-95 + WIDE * hash(i, 5, 21), y, groundAt(0, y) + 0.7 + 1.3 * hash(i, 6, 21));
    sprite.renderOrder = 8;
    group.add(sprite);
    return sprite;
  });
  return {
    group,
    colour: (air, fog) => {
      material.color.copy(air).multiplyScalar(1.9);
      material.opacity = 0.3 * fog;
      group.visible = fog > 0.08;
    },
    drift: (seconds) => {
      banks.forEach((sprite, i) => {
        const x = sprite.position.x + PACE * seconds * (0.6 + 0.8 * hash(i, 7, 21));
        sprite.position.x = x > 95 ? x - WIDE : x;
      });
    },
    dispose: () => {
      material.dispose();
      texture.dispose();
    },
  };
};
