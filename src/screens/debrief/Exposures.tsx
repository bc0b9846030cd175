/** Exposures with what would have reached the person, whether or not it bit this time. */
import type { Debrief } from '../../engine/debrief/types.ts';
import type { World } from '../../engine/world/types.ts';
import { capital, clockAt } from '../words.ts';
import { Severity } from './Severity.tsx';

export const Exposures = ({ debrief, world }: { debrief: Debrief; world: World }) => (
  <section aria-labelledby="exposures">
    <h2 id="exposures">
      Exposures <span class="note">{debrief.exposures.reduce((sum, { count }) => sum + count, 0)}</span>
    </h2>
    {debrief.exposures.length === 0 && (
      <p>None: nobody came in reach of a hazard that was not controlled at that moment.</p>
    )}
    {debrief.exposures.map(({ minute, count, severity, title, lines }, index) => (
      <div class="card" key={index}>
        <p>
          <Severity of={severity} /> <b>{capital(title)}</b>{' '}
          <time class="note">
            {count > 1 ? `${count} times from ` : ''}
            {clockAt(world, minute)}
          </time>
        </p>
        <ul>
          {lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </div>
    ))}
  </section>
);
