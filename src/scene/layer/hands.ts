/**
 * Pointer and keys of the picture: drag turns, a short press chooses, wheel and pinch bring nearer; arrows turn, plus and minus
 * bring nearer, Enter chooses what is in the middle, Home looks at the pole again. Tab is left alone.
 */
import type * as Phaser from 'phaser';

export interface Hands {
  /** Dragged by so many pixels. */
  drag(dx: number, dy: number): void;
  turn(yaw: number, pitch: number): void;
  nearer(factor: number): void;
  /** The pointer is here; null: it has left. */
  over(at: { readonly x: number; readonly y: number } | null): void;
  press(x: number, y: number): void;
  chooseMiddle(): void;
  home(): void;
}

/** A press that moves further or lasts longer is a drag. */
const SLACK = 7;
const LONG = 600;

/** Listens on Phaser's pointer. */
export const listenToPointer = (scene: Phaser.Scene, hands: Hands): void => {
  const { input } = scene;
  input.addPointer(1);
  let moved = 0;
  let spread = 0;
  input.on('pointerdown', () => {
    moved = 0;
    spread = 0;
  });
  input.on('pointermove', (pointer: Phaser.Input.Pointer) => {
    const { pointer1: a, pointer2: b } = input;
    if (a?.isDown && b?.isDown) {
      const now = Math.hypot(a.x - b.x, a.y - b.y);
      if (spread > 0 && now > 0) hands.nearer(now / spread);
      spread = now;
      moved = SLACK * 2;
      return;
    }
    if (pointer.isDown) {
      const dx = pointer.x - pointer.prevPosition.x;
      const dy = pointer.y - pointer.prevPosition.y;
      moved += Math.abs(dx) + Math.abs(dy);
      if (moved > SLACK) hands.drag(dx, dy);
      return;
    }
    hands.over({ x: pointer.x, y: pointer.y });
  });
  input.on('pointerup', (pointer: Phaser.Input.Pointer) => {
    if (moved <= SLACK && pointer.getDuration() < LONG) hands.press(pointer.x, pointer.y);
  });
  input.on('gameout', () => hands.over(null));
  input.on('wheel', (_p: unknown, _o: unknown, _dx: number, dy: number) => {
    hands.nearer(dy < 0 ? 1.15 : 1 / 1.15);
  });
};

const step = Math.PI / 12;
const turns: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [step, 0],
  ArrowRight: [-step, 0],
  ArrowUp: [0, step / 2],
  ArrowDown: [0, -step / 2],
};

/** Listens on the host element; keys that somebody has taken are left to them. Gives back how to stop. */
export const listenToKeys = (host: HTMLElement, hands: Hands): (() => void) => {
  const onKey = (event: KeyboardEvent): void => {
    if (event.defaultPrevented || event.ctrlKey || event.altKey || event.metaKey) return;
    const turn = turns[event.key];
    if (turn) hands.turn(...turn);
    else if (event.key === '+' || event.key === '=') hands.nearer(1.25);
    else if (event.key === '-') hands.nearer(0.8);
    else if (event.key === 'Home') hands.home();
    else if (event.key === 'Enter') hands.chooseMiddle();
    else return;
    event.preventDefault();
  };
  host.addEventListener('keydown', onKey);
  return () => host.removeEventListener('keydown', onKey);
};
