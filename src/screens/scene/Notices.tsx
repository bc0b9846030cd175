/** What the last act brought to eye and ear, and what is heard all the time; spoken politely to a screen reader. */
import type { Playing } from '../types.ts';
import { capital, nameOf } from '../words.ts';

export const Notices = ({ playing }: { playing: Playing }) => {
  const { events, refused, world } = playing.snapshot.value;
  const chosen = playing.chosen.value;
  return (
    <div class="notices">
      <div aria-live="polite" class="last">
        {refused !== null && <p class="refused">Not possible: {refused}.</p>}
        {refused === null &&
          events.map(({ event, on, words }, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: events of one act have no other name and keep their order
            <p key={index} class={event === 'seen' && on === chosen ? 'sr-only' : undefined}>
              {event === 'said' && on !== null ? `${capital(nameOf(world, on))}: ` : ''}
              {words}
            </p>
          ))}
      </div>
      <ul class="captions" aria-label="Heard now">
        {playing.captions.value.map(({ id, text }) => (
          <li key={id}>[{text}]</li>
        ))}
      </ul>
    </div>
  );
};
