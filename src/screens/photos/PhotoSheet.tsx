/** The photos that were taken: beside which finding each lies, save it, delete it. */
import { standById } from '../../engine/world/edit.ts';
import type { World } from '../../engine/world/types.ts';
import { focusIfLost } from '../scene/keys.ts';
import { byAid } from '../scene/PartCard.tsx';
import type { Playing } from '../types.ts';
import { capital, clockAt, conditionLabel, nameOf } from '../words.ts';
import type { Photo } from './types.ts';

/** What a photo shows, in words: it never says a condition. */
export const photoWords = (world: World, { part, stand, minute, aid }: Photo): string => {
  const of = part === null ? 'the view' : nameOf(world, part);
  const from = standById(world, stand)?.name ?? stand;
  return `${capital(of)}, from: ${from}, ${clockAt(world, minute)}, ${byAid[aid]}`;
};

/** A photo with its words. */
export const PhotoFigure = ({ world, photo }: { world: World; photo: Photo }) => (
  <figure class="photo">
    <img src={photo.image} alt={`Photo: ${photoWords(world, photo)}`} width={480} height={320} />
    <figcaption>{photoWords(world, photo)}</figcaption>
  </figure>
);

const save = ({ image, id }: Photo): void => {
  const link = document.createElement('a');
  link.href = image;
  link.download = `loose-tie-photo-${id}.jpg`;
  link.click();
};

export const PhotoSheet = ({ playing }: { playing: Playing }) => {
  const { world } = playing.snapshot.value;
  const { findings } = world.paper;
  const photos = playing.photos.taken.value;
  if (photos.length === 0) return null;
  return (
    <section aria-labelledby="photos">
      <h3 id="photos">Photos</h3>
      <ul class="photos">
        {photos.map((photo) => (
          <li key={photo.id}>
            <PhotoFigure world={world} photo={photo} />
            <p class="buttons">
              <label>
                <span class="sr-only">{photoWords(world, photo)} </span>lies beside{' '}
                <select
                  onChange={(event) =>
                    playing.photos.putBeside(photo.id, findings[event.currentTarget.selectedIndex - 1]?.id ?? null)
                  }
                >
                  <option selected={photo.finding === null}>no finding</option>
                  {findings.map((finding) => (
                    <option key={finding.id} selected={finding.id === photo.finding}>
                      {capital(nameOf(world, finding.on))}: {conditionLabel(finding.condition)}
                    </option>
                  ))}
                </select>
              </label>
              <button type="button" onClick={() => save(photo)}>
                Save<span class="sr-only"> photo {photo.id}</span>
              </button>
              <button
                type="button"
                onClick={() => {
                  playing.photos.drop(photo.id);
                  focusIfLost('page');
                }}
              >
                Delete<span class="sr-only"> photo {photo.id}</span>
              </button>
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
};
