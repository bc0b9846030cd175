/** What belongs to the view of one drill: aid, what is pointed at, which page lies open. Nothing here is logged but looks. */
import { effect, type ReadonlySignal, signal } from '@preact/signals';
import type { Drill } from '../drill/types.ts';
import type { Act } from '../engine/acts/types.ts';
import type { Aid } from '../engine/senses/types.ts';
import { findPart } from '../engine/world/edit.ts';
import { createPhotos } from './photos/createPhotos.ts';
import type { Photos } from './photos/types.ts';
import type { Caption, Looked, Page, Playing, Taken, Way } from './types.ts';

export interface PlayingOptions {
  readonly way?: Way;
  readonly until?: number | null;
  readonly captions: ReadonlySignal<readonly Caption[]>;
  /** Photos that were taken before. */
  readonly photos?: Photos;
  /** Whether the screen is so small that sheet and picture share it. */
  readonly narrow: () => boolean;
  /** Told of each act that was done, for storage and sound. */
  readonly onActed?: (act: Act) => void;
  /** Told of a defect; the drill then stands still. */
  readonly onDefect: (error: unknown) => void;
}

/** The view of a drill, ready for the screens. */
export const createPlaying = (drill: Drill, options: PlayingOptions): Playing => {
  const { captions, onActed, onDefect } = options;
  const snapshot = signal(drill.snapshot());
  drill.subscribe((now) => {
    snapshot.value = now;
  });
  const aid = signal<Aid>('eyes');
  const chosen = signal<string | null>(null);
  const sheetOpen = signal(!options.narrow());
  const looked = signal<Looked | null>(null);
  const listOpen = signal(false);
  const said = signal<string | null>(null);
  // Nor is there room there for list and sheet at once.
  effect(() => {
    if (listOpen.value && options.narrow()) sheetOpen.value = false;
  });

  const send = (act: Act): void => {
    const stand = snapshot.value.stand;
    try {
      drill.send(act);
    } catch (error) {
      onDefect(error);
      return;
    }
    said.value = null;
    onActed?.(act);
    // What was looked at elsewhere no longer stands before one's eyes.
    if (snapshot.value.stand !== stand) {
      looked.value = null;
      chosen.value = null;
    }
  };
  const choose = (id: string | null): void => {
    chosen.value = id;
    looked.value = null;
    // On a small screen the sheet lies over what is pointed at.
    if (id !== null && options.narrow()) sheetOpen.value = false;
    if (id === null || findPart(snapshot.value.world, id) === null) return;
    send({ act: 'look', part: id, aid: aid.value });
    if (snapshot.value.refused !== null) return;
    looked.value = { look: drill.look(id, aid.value), aid: aid.value, stand: snapshot.value.stand };
  };
  return {
    way: options.way ?? 'scored',
    until: options.until ?? null,
    drill,
    snapshot,
    aid,
    chosen,
    hovered: signal(null),
    looked,
    page: signal<Page>('findings'),
    sheetOpen,
    listOpen,
    actFilter: signal(''),
    actBy: signal(null),
    actAbout: signal(null),
    taken: signal<Taken>({ stick: null, onStick: null, inHand: null }),
    dialog: signal(null),
    yaw: signal(Math.PI / 2),
    captions,
    camera: signal(null),
    photos: options.photos ?? createPhotos(),
    said,
    send,
    choose,
  };
};
