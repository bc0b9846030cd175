/** Keys on scene: one letter each, listed on the keys sheet. */
import type { Aid } from '../../engine/senses/types.ts';
import { takePhoto } from '../photos/takePhoto.ts';
import type { Page, Playing } from '../types.ts';

interface Key {
  readonly key: string;
  readonly does: string;
  readonly run: (playing: Playing) => void;
}

const openPage = (playing: Playing, page: Page): void => {
  const shown = playing.sheetOpen.value && playing.page.value === page;
  playing.page.value = page;
  playing.sheetOpen.value = !shown;
  if (!shown) focusSoon(`tab-${page}`);
};

const isLost = (): boolean => document.activeElement === null || document.activeElement === document.body;

const focusOn = (id: string): boolean => {
  const el = document.getElementById(id);
  el?.focus();
  return el !== null && document.activeElement === el;
};

/** Focus fell to nowhere because what had it is gone: bring it to this. */
export const focusIfLost = (id: string): void => {
  const bring = (): void => {
    if (isLost()) focusOn(id);
  };
  queueMicrotask(bring);
  requestAnimationFrame(bring);
};

/**
 * Moves focus as soon as the page has followed, which it does before the next task; on a slow picture a frame comes so
 * late that somebody may have moved on by keys, and is then left alone.
 */
export const focusSoon = (id: string): void => {
  queueMicrotask(() => {
    if (focusOn(id)) return;
    const had = document.activeElement;
    requestAnimationFrame(() => {
      if (isLost() || document.activeElement === had) focusOn(id);
    });
  });
};

/** Puts away what is pointed at; focus goes back to where it was chosen. */
export const putAway = (playing: Playing): void => {
  const id = playing.chosen.value;
  playing.choose(null);
  focusIfLost(document.getElementById(`item-${id}`) === null ? 'picture' : `item-${id}`);
};

const takeAid = (aid: Aid) => (playing: Playing) => {
  playing.aid.value = aid;
};

export const showRadio = (playing: Playing): void => {
  playing.actBy.value = 'radio';
  playing.actAbout.value = null;
  playing.actFilter.value = '';
  playing.page.value = 'acts';
  playing.sheetOpen.value = true;
  focusSoon('page');
};

export const keys: readonly Key[] = [
  { key: 'c', does: 'the call', run: (playing) => openPage(playing, 'call') },
  { key: 'f', does: 'findings', run: (playing) => openPage(playing, 'findings') },
  { key: 'b', does: 'the briefing', run: (playing) => openPage(playing, 'briefing') },
  {
    key: 'a',
    does: 'acts',
    run: (playing) => {
      playing.actBy.value = null;
      playing.actAbout.value = null;
      openPage(playing, 'acts');
    },
  },
  { key: 'r', does: 'the radio', run: showRadio },
  {
    key: 'l',
    does: 'the list of everything in the picture',
    run: (playing) => {
      playing.listOpen.value = !playing.listOpen.value;
      const hasPicture = document.getElementById('picture') !== null;
      focusSoon(playing.listOpen.value || !hasPicture ? 'list-first' : 'picture');
    },
  },
  { key: 'w', does: 'walk to …', run: () => document.querySelector<HTMLElement>('.walk button')?.click() },
  { key: 'p', does: 'the picture; arrows look around there', run: () => focusSoon('picture') },
  { key: '1', does: 'look by eye', run: takeAid('eyes') },
  { key: '2', does: 'look with the lamp', run: takeAid('lamp') },
  { key: '3', does: 'look with the glass', run: takeAid('glass') },
  {
    key: 't',
    does: 'take a photo of what is in view',
    run: (playing) => {
      playing.said.value = takePhoto(playing);
    },
  },
  {
    key: 'h',
    does: 'stop work and hand over',
    run: (playing) => {
      playing.dialog.value = 'hand-over';
    },
  },
  {
    key: '?',
    does: 'this sheet',
    run: (playing) => {
      playing.dialog.value = 'keys';
    },
  },
];

const types = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement &&
  (target.isContentEditable ||
    target.tagName === 'TEXTAREA' ||
    target.tagName === 'SELECT' ||
    (target instanceof HTMLInputElement && !['checkbox', 'radio', 'button', 'range'].includes(target.type)));

/** What a key does now; null when it belongs to somebody else. */
export const keyRun = (event: KeyboardEvent, letters: boolean, playing: Playing): (() => void) | null => {
  if (event.ctrlKey || event.altKey || event.metaKey || event.defaultPrevented) return null;
  if (playing.dialog.value !== null || types(event.target)) return null;
  if (event.key === 'Escape') {
    if (playing.chosen.value !== null) return () => putAway(playing);
    return null;
  }
  if (!letters && event.key !== '?') return null;
  const key = keys.find((each) => each.key === event.key.toLowerCase());
  return key === undefined ? null : () => key.run(playing);
};
