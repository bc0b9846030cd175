/** Keeps a drill's photos in order and hands every change to whoever stores them. They are view only: no act, no log, no score. */
import { signal } from '@preact/signals';
import { aids } from '../../engine/senses/types.ts';
import type { Photo, Photos } from './types.ts';

/** So many a phone holds: some 25 kB each, so that a device's store is not filled. */
export const mostPhotos = 30;

const longest = 120_000;

const isPhoto = (one: unknown): one is Photo => {
  if (typeof one !== 'object' || one === null) return false;
  const { id, image, minute, stand, aid, part, finding } = one as Record<string, unknown>;
  return (
    typeof id === 'string' &&
    typeof image === 'string' &&
    image.length <= longest &&
    /^data:image\/jpeg;base64,[A-Za-z0-9+/=]+$/.test(image) &&
    typeof minute === 'number' &&
    Number.isFinite(minute) &&
    typeof stand === 'string' &&
    aids.some((each) => each === aid) &&
    (part === null || typeof part === 'string') &&
    (finding === null || typeof finding === 'string')
  );
};

/** Photos out of a kept text; what is not ours is left out. */
export const photosFrom = (text: string | null, drill: string): readonly Photo[] => {
  if (text === null) return [];
  try {
    const kept = JSON.parse(text) as { readonly drill?: unknown; readonly photos?: unknown };
    if (kept.drill !== drill || !Array.isArray(kept.photos)) return [];
    return kept.photos.filter(isPhoto).slice(0, mostPhotos);
  } catch {
    return []; // a torn entry is replaced at the next photo
  }
};

/** The text in which photos are kept; `drill` says whose they are. */
export const photosText = (photos: readonly Photo[], drill: string): string => JSON.stringify({ drill, photos });

/** The photos of a drill, those that were kept first. */
export const createPhotos = (
  had: readonly Photo[] = [],
  onChange: (photos: readonly Photo[]) => void = () => undefined,
): Photos => {
  const taken = signal(had);
  let next = had.reduce((most, { id }) => Math.max(most, Number(id.slice(1)) || 0), 0) + 1;
  const set = (photos: readonly Photo[]): void => {
    taken.value = photos;
    onChange(photos);
  };
  return {
    taken,
    add: (photo) => {
      if (taken.value.length >= mostPhotos) return false;
      set([...taken.value, { ...photo, id: `p${next}` }]);
      next += 1;
      return true;
    },
    putBeside: (id, finding) => set(taken.value.map((photo) => (photo.id === id ? { ...photo, finding } : photo))),
    drop: (id) => set(taken.value.filter((photo) => photo.id !== id)),
  };
};
