/**
 * Everything that takes time before the first picture, in steps: geometry and place, paint, upload, reflections, shaders. What the
 * driver does by itself is waited for, never asked for.
 */
import type { Camera, Scene, WebGLRenderer } from 'three';
import { oneOfEach, plainFilters, texturesOf } from './look/quality.ts';
import type { Weather } from './look/weather.ts';
import { painted, paintFor } from './materials/painting.ts';

export interface ToReady {
  readonly renderer: WebGLRenderer;
  readonly scene: Scene;
  readonly camera: Camera;
  readonly software: boolean;
  readonly weather: Weather;
  /** Builds what is drawn; yields the share built. */
  readonly build: () => Generator<number, void>;
}

/** Shares done when building, paint and upload are, and when only shaders are waited for. */
const SHARES = { built: 0.5, painted: 0.85, uploaded: 0.9, reflected: 0.93, waiting: 0.97 } as const;

/** Yields the share done. */
export const readying = function* (all: ToReady): Generator<number, void> {
  const { renderer, scene, camera, software, weather, build } = all;
  const { lamp, hand } = weather;
  for (const share of build()) yield SHARES.built * share;
  while (!paintFor(4)) yield SHARES.built + (SHARES.painted - SHARES.built) * painted();
  if (software) plainFilters(scene);
  for (const texture of texturesOf(scene)) {
    renderer.initTexture(texture);
    yield SHARES.uploaded;
  }
  for (const _ of weather.reflect(renderer, scene)) yield SHARES.uploaded + 0.01;
  yield SHARES.reflected;
  // Both with the lamp and without: each is another program of every material.
  for (const lit of [true, false]) {
    lamp.visible = lit;
    hand.visible = lit;
    for (const mesh of oneOfEach(scene)) {
      renderer.compile(mesh, camera, scene);
      yield SHARES.reflected + (lit ? 0.01 : 0.03);
    }
  }
  let compiled = false;
  const done = (): void => {
    compiled = true;
  };
  // A context lost meanwhile is drawn when it has come back.
  renderer.compileAsync(scene, camera).then(done, done);
  while (!compiled) yield SHARES.waiting;
};
