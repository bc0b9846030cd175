/** A desk over stores and files that a test can look into. */
import { signal } from '@preact/signals';
import { createDesk } from '../../src/app/desk.ts';
import { createJudge } from '../../src/app/judge.ts';
import { createKept, type TextStore } from '../../src/app/kept.ts';
import { createKeptWeights } from '../../src/app/keptWeights.ts';
import type { Library } from '../../src/app/library.ts';
import { createShelf, type Shelf } from '../../src/app/shelf.ts';
import type { Caption, Desk, Offered, Playing, SceneState } from '../../src/screens/types.ts';

export const memoryStore = (): TextStore & { readonly texts: Map<string, string> } => {
  const texts = new Map<string, string>();
  return {
    texts,
    getItem: (key) => texts.get(key) ?? null,
    setItem: (key, value) => void texts.set(key, value),
    removeItem: (key) => void texts.delete(key),
  };
};

/** A store that takes nothing more, as a full disk. */
export const fullStore = (): TextStore => ({
  getItem: () => null,
  setItem: () => {
    throw new Error('quota exceeded');
  },
  removeItem: () => undefined,
});

export interface MadeDesk {
  readonly desk: Desk;
  readonly shelf: Shelf;
  readonly files: { readonly name: string; readonly text: string }[];
  /** The drill on the screen. */
  playing(): Playing;
  /** Another tab has written to the store. */
  otherTabActed(): void;
  /** Takes the only drill of the library. */
  take(): Playing;
}

const absent: SceneState = { is: 'absent', why: 'No picture in this test.' };

export const makeDesk = (
  library: Library,
  store: TextStore | null = memoryStore(),
  scene: SceneState = absent,
): MadeDesk => {
  const files: { name: string; text: string }[] = [];
  const changes: (() => void)[] = [];
  const playing = signal<Playing | null>(null);
  const kept = createKept(store);
  const shelf = createShelf(kept);
  const desk = createDesk({
    library,
    kept,
    shelf,
    weights: createKeptWeights(kept),
    playing,
    lessMotion: true,
    narrow: () => false,
    scene: signal(scene),
    wantScene: () => undefined,
    captions: signal<readonly Caption[]>([]),
    handOut: (name, text) => files.push({ name, text }),
    seed: () => 7,
    judge: createJudge({ worker: () => null, afterPaint: (run) => run() }),
    onKeptElsewhere: (changed) => changes.push(changed),
  });
  const now = (): Playing => {
    const { value } = playing;
    if (value === null) throw new Error('no drill is on the screen');
    return value;
  };
  return {
    desk,
    shelf,
    files,
    playing: now,
    otherTabActed: () => {
      for (const changed of changes) changed();
    },
    take: () => {
      desk.take(library.offered[0] as Offered);
      return now();
    },
  };
};
