/** Holds the phone up: what is in view now, with where, when and what was pointed at. */
import { findPart } from '../../engine/world/edit.ts';
import type { Playing } from '../types.ts';
import { nameOf } from '../words.ts';
import { mostPhotos } from './createPhotos.ts';

/** Takes a photo; answers what to say of it. */
export const takePhoto = (playing: Playing): string => {
  const image = playing.camera.value?.() ?? null;
  if (image === null) return 'There is no picture to take a photo of yet.';
  const { world, stand } = playing.snapshot.value;
  const chosen = playing.chosen.value;
  const part = chosen !== null && findPart(world, chosen) !== null ? chosen : null;
  const of = world.paper.findings.filter(({ on }) => on === part && part !== null).at(-1);
  const kept = playing.photos.add({
    image,
    minute: world.clock.minute,
    stand,
    aid: playing.aid.value,
    part,
    finding: of?.id ?? null,
  });
  if (!kept) return `The phone holds ${mostPhotos} photos. Delete one on the findings sheet first.`;
  return part === null
    ? 'Photo taken. It lies on the findings sheet.'
    : `Photo taken of ${nameOf(world, part)}. It lies on the findings sheet.`;
};
