/** What the last act brought to eye and ear, and what is heard all the time; spoken politely to a screen reader. */
import type { Playing } from '../types.ts';
import { speakerOf } from '../words.ts';

export const Notices = ({ playing }: { playing: Playing }) => {
  const { events, refused, world, log } = playing.snapshot.value;
  // A look's lines stand on the slip of what is looked at; here they are only spoken.
  const last = log.entries.at(-1)?.act;
  const looked = last?.act === 'look' ? last.part : null;
  return (
    <div class="notices">
      <div aria-live="polite" class="last">
        {playing.said.value !== null && <p>{playing.said.value}</p>}
        {refused !== null && <p class="refused">Not possible: {refused}.</p>}
        {refused === null &&
          events.map(({ event, on, words }, index) => (
            <p key={index} class={event === 'seen' && on === looked ? 'sr-only' : undefined}>
              {speakerOf(world, { event, on }, words)}
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
