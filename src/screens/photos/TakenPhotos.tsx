/** The photos of a drill that is over, each with the finding beside which it was laid. */
import type { Playing } from '../types.ts';
import { capital, conditionLabel, nameOf } from '../words.ts';
import { PhotoFigure } from './PhotoSheet.tsx';

export const TakenPhotos = ({ playing }: { playing: Playing }) => {
  const { world } = playing.snapshot.value;
  const photos = playing.photos.taken.value;
  if (photos.length === 0) return null;
  const called = (id: string | null): string => {
    const finding = world.paper.findings.find((each) => each.id === id);
    return finding === undefined
      ? 'Beside no finding.'
      : `Beside: ${capital(nameOf(world, finding.on))}, ${conditionLabel(finding.condition)}.`;
  };
  return (
    <section aria-labelledby="taken-photos">
      <h2 id="taken-photos">Photos you took</h2>
      <ul class="photos">
        {photos.map((photo) => (
          <li key={photo.id}>
            <PhotoFigure world={world} photo={photo} />
            <p>{called(photo.finding)}</p>
          </li>
        ))}
      </ul>
    </section>
  );
};
