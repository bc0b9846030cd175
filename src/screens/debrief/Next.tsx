/** Which drill to take next, by what was missed in this one, and why. */
import { useMemo } from 'preact/hooks';
import { nextDrill } from '../../engine/debrief/nextDrill.ts';
import type { Scenario } from '../../engine/scenario/types.ts';
import type { Score } from '../../engine/score/types.ts';
import type { Desk } from '../types.ts';

export const Next = ({ desk, score, here }: { desk: Desk; score: Score; here: Scenario }) => {
  const next = useMemo(
    () =>
      nextDrill(
        score,
        here,
        desk.library.map(({ scenario }) => scenario),
      ),
    [desk, score, here],
  );
  const offered = desk.library.find(({ scenario }) => scenario.id === next?.scenario);
  if (next === null || offered === undefined) return null;
  return (
    <section class="next-drill" aria-labelledby="next">
      <h2 id="next">Next drill</h2>
      <p>
        <b>{next.title}</b>, grade {offered.scenario.grade}. {next.why}
      </p>
      <p class="buttons">
        <button type="button" onClick={() => desk.take(offered)}>
          Take {next.title}
        </button>
      </p>
    </section>
  );
};
