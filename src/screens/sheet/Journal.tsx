/** What was perceived and said so far, newest first. */
import type { Snapshot } from '../../drill/types.ts';
import { clockAt, speakerOf } from '../words.ts';

export const Journal = ({ snapshot }: { snapshot: Snapshot }) => {
  const lines = snapshot.journal.map((line, index) => ({ ...line, index })).reverse();
  if (lines.length === 0) return <p class="hint">Nothing yet. What you hear, see and are told is written down here.</p>;
  return (
    <ol class="journal" reversed>
      {lines.map(({ minute, event, index }) => (
        <li key={index}>
          <time>{clockAt(snapshot.world, minute)}</time>{' '}
          <b class="speaker">{speakerOf(snapshot.world, event, event.words)}</b>
          {event.words}
        </li>
      ))}
    </ol>
  );
};
