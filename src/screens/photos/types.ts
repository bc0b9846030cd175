/** Photos that the trainee took with the phone: what was in view, kept beside the log on this device. */
import type { ReadonlySignal } from '@preact/signals';
import type { Aid } from '../../engine/senses/types.ts';

export interface Photo {
  readonly id: string;
  /** A JPEG as a data address. */
  readonly image: string;
  readonly minute: number;
  readonly stand: string;
  readonly aid: Aid;
  /** What was pointed at; null: nothing. */
  readonly part: string | null;
  /** The finding beside which it lies; null: none. */
  readonly finding: string | null;
}

/** The photos of one drill. */
export interface Photos {
  readonly taken: ReadonlySignal<readonly Photo[]>;
  /** Keeps one more; false when the phone is full. */
  add(photo: Omit<Photo, 'id'>): boolean;
  putBeside(photo: string, finding: string | null): void;
  drop(photo: string): void;
}
