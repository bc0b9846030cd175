/** The trainee's way through the drill beside a proven safe one, with its par. The proven one is played when it is opened. */
import { useMemo, useState } from 'preact/hooks';
import type { Replay } from '../../engine/acts/types.ts';
import { leftWords, oneSafeWay, parWords, type RouteRow, routeRows, safeSteps } from '../../engine/debrief/routes.ts';
import type { Offered } from '../types.ts';
import { capital, clockAt } from '../words.ts';

type Route = NonNullable<Offered['route']>;

const Rows = ({ title, rows, replay }: { title: string; rows: readonly RouteRow[]; replay: Replay }) => (
  <section aria-label={title}>
    <h3>{title}</h3>
    <ol>
      {rows.map(({ minute, words }, index) => (
        <li key={index}>
          <time>{clockAt(replay.start, minute)}</time> <span>{capital(words)}</span>
        </li>
      ))}
    </ol>
  </section>
);

const minutesOf = ({ start, end }: Replay): number => end.clock.minute - start.clock.minute;

const Both = ({ replay, route }: { replay: Replay; route: Route }) => {
  const mine = useMemo(() => routeRows(replay.steps), [replay]);
  const proven = useMemo(() => {
    const steps = safeSteps(replay.start, route.acts);
    return steps && { rows: routeRows(steps), left: leftWords(steps) };
  }, [replay, route]);
  if (proven === null) {
    return <p>The proven route cannot be played from this start, so it is not shown.</p>;
  }
  return (
    <>
      <p>
        {parWords(route)} Yours took {minutesOf(replay)} min. {oneSafeWay} {proven.left}
      </p>
      <div class="both">
        <Rows title="Your route" rows={mine} replay={replay} />
        <Rows title="A proven safe route" rows={proven.rows} replay={replay} />
      </div>
    </>
  );
};

export const Routes = ({ replay, route }: { replay: Replay; route: Route }) => {
  const [opened, setOpened] = useState(false);
  return (
    <details class="routes" onToggle={(event) => event.currentTarget.open && setOpened(true)}>
      <summary>
        Your route and a proven safe one <span class="note">par {route.minutes} min</span>
      </summary>
      {opened && <Both replay={replay} route={route} />}
    </details>
  );
};
