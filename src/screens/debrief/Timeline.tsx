/** What happened, by the clock; looks can be left out to see the rest, and each row is a way to its moment. */
import { useState } from 'preact/hooks';
import type { TimelineRow } from '../../engine/debrief/types.ts';
import type { World } from '../../engine/world/types.ts';
import { capital, clockAt } from '../words.ts';

const marks: Readonly<Record<TimelineRow['kind'], string>> = {
  act: '',
  finding: 'called',
  exposure: 'exposed',
  event: 'happened',
};

const isLook = ({ kind, words }: TimelineRow): boolean => kind === 'act' && words.startsWith('looked at');

export interface TimelineProps {
  readonly rows: readonly TimelineRow[];
  readonly world: World;
  readonly to: (acts: number) => void;
}

export const Timeline = ({ rows, world, to }: TimelineProps) => {
  const [looks, setLooks] = useState(false);
  const shown = rows.filter((row) => looks || !isLook(row));
  return (
    <details class="timeline">
      <summary>
        Timeline <span class="note">{rows.length} entries</span>
      </summary>
      <label>
        <input type="checkbox" checked={looks} onChange={(event) => setLooks(event.currentTarget.checked)} />
        with every look
      </label>
      <ol>
        {shown.map((row, index) => (
          <li key={index} class={row.kind}>
            <button
              type="button"
              class="at"
              aria-label={`Go to ${clockAt(world, row.minute)}: ${row.words}`}
              onClick={() => to(row.step + 1)}
            >
              <time>{clockAt(world, row.minute)}</time>
            </button>
            <span>
              {marks[row.kind] && <b class="mark">{marks[row.kind]}</b>} {capital(row.words.replace(/^exposure: /, ''))}
            </span>
          </li>
        ))}
      </ol>
    </details>
  );
};
