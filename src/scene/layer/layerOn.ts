/** Phaser's game above the world: its loop, woken and put to sleep from outside, and the one scene that draws on it. */
import * as Phaser from 'phaser';
import { type Hands, listenToPointer } from './hands.ts';
import { Overlay, type Shown } from './overlay.ts';
import type { Window } from './subject.ts';

export interface Layer {
  wake(): void;
  sleep(): void;
  resize(width: number, height: number): void;
  show(shown: Shown): void;
  dispose(): void;
}

/** Starts the layer in an element; `onStep` is called each frame that the loop runs, once it is ready. */
export const layerOn = (above: HTMLElement, size: Window, hands: Hands, onStep: (ms: number) => void): Layer => {
  let ready: Overlay | null = null;
  let gone = false;
  const game = new Phaser.Game({
    type: Phaser.AUTO,
    parent: above,
    width: size.width,
    height: size.height,
    transparent: true,
    banner: false,
    audio: { noAudio: true },
    input: { keyboard: false, gamepad: false },
    scale: { mode: Phaser.Scale.NONE },
    render: { antialias: true, antialiasGL: false },
    scene: [],
  });
  const wake = (): void => {
    if (ready && !gone && !game.loop.running) game.loop.wake();
  };
  const overlay = new Overlay((scene) => {
    ready = scene;
    listenToPointer(scene, hands);
    above.style.cursor = 'grab';
  }, onStep);
  game.scene.add('overlay', overlay, true);
  return {
    wake,
    sleep: () => game.loop.sleep(),
    resize: (width, height) => {
      if (ready && (game.scale.width !== width || game.scale.height !== height)) game.scale.resize(width, height);
    },
    show: (shown) => ready?.show(shown),
    dispose: () => {
      gone = true;
      game.destroy(true);
      // A sleeping loop would never come to the step in which Phaser takes itself down.
      if (!game.loop.running) game.loop.wake();
    },
  };
};
