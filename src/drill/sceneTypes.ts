/** What the picture is given and gives back; screens and scene meet here only. */
import type { Aid } from '../engine/senses/types.ts';
import type { Snapshot } from './types.ts';

/** An angle in radians. */
export type Radians = number;

/** What the picture may ask, and whom it tells. Getters are read when needed, so their answers may change. */
export interface SceneView {
  snapshot(): Snapshot;
  /** A part, a person or 'truck' was clicked, tapped or chosen by key: id of it. */
  onChoose(part: string): void;
  /** The pointer is over it; null: over nothing. */
  onHover(part: string | null): void;
  /** The view has turned or its field has changed; for captions' directions and the compass. */
  onTurn(yaw: Radians): void;
  aid(): Aid;
  readonly reducedMotion: boolean;
  /** 0.5 … 2, as set on the start sheet; 1 is as computed. Never shows more than it. */
  readonly brightness: number;
}

/** A mounted picture. */
export interface SceneHandle {
  /** Draw this from now on; also called with the same snapshot when aid or settings have changed. */
  update(snapshot: Snapshot): void;
  /** Brings a part to the middle and as near as the aid allows; null: back to the whole view. */
  lookToward(part: string | null): void;
  /** Turns by so much: yaw to the left (as azimuths grow), pitch upward. */
  turn(yaw: Radians, pitch: Radians): void;
  /** Azimuth of the middle of the view: 0 = +x (toward the load), π/2 = +y (field side). */
  yaw(): Radians;
  /** What is in view as a phone takes it: a small JPEG as a data address; null while there is no picture. */
  photograph(): string | null;
  dispose(): void;
  /** False without WebGL: nothing was mounted, the list stands for the picture. */
  readonly supported: boolean;
}

/** `src/scene/mountScene.ts` exports this as `mountScene`. The element may be resized at any time; the picture follows. */
export type MountScene = (el: HTMLElement, view: SceneView) => SceneHandle;

export interface SceneHost {
  readonly mount: MountScene;
}
