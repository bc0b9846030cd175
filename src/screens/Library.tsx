/** The drills on offer by grade. What each is about is said so that it does not tell what will be found. */
import { Another } from './Another.tsx';
import type { Desk, Offered } from './types.ts';

const grades = [
  [1, 'one hazard at a time'],
  [2, 'several, one hides another'],
  [3, 'everything at once'],
] as const;

const Row = ({ desk, offered }: { desk: Desk; offered: Offered }) => {
  const { title, teaches, call } = offered.scenario;
  return (
    <li>
      <div>
        <h4>{title}</h4>
        <p class="meta">{call.place}</p>
        <p>{teaches}</p>
      </div>
      <button type="button" class="primary" onClick={() => desk.take(offered)}>
        Take this drill<span class="sr-only">: {title}</span>
      </button>
      {desk.drawer !== undefined && offered.text !== undefined && (
        <details class="wide">
          <summary>
            Another like this<span class="sr-only">: {title}</span>
          </summary>
          <Another desk={desk} of={offered} />
        </details>
      )}
    </li>
  );
};

/** Scenes that were drawn here; the start sheet lists them so that a crew can take the same one again. */
const Shelf = ({ desk }: { desk: Desk }) => {
  const drawn = desk.shelf.value;
  if (drawn.length === 0) return null;
  return (
    <section class="grade" aria-labelledby="drawn">
      <h3 id="drawn">Drawn scenes kept on this device</h3>
      <ul class="library">
        {drawn.map((offered) => {
          const { title, grade, call, variant } = offered.scenario;
          const from = desk.library.find(({ scenario }) => scenario.id === variant?.of)?.scenario.title ?? variant?.of;
          return (
            <li key={offered.hash}>
              <div>
                <h4>{title}</h4>
                <p class="meta">{call.place}</p>
                <p>
                  Grade {grade}. Drawn from {from} by number {variant?.seed}.
                </p>
              </div>
              <p class="buttons">
                <button type="button" class="primary" onClick={() => desk.take(offered)}>
                  Take this drill<span class="sr-only">: {title}</span>
                </button>
                <button type="button" onClick={() => desk.saveScenario(offered)}>
                  Save<span class="sr-only"> {title} as a file</span>
                </button>
                <button type="button" onClick={() => desk.putAway(offered)}>
                  Put away<span class="sr-only">: {title}</span>
                </button>
              </p>
            </li>
          );
        })}
      </ul>
    </section>
  );
};

/** Any of them, for who does not want to choose; chance here decides nothing that is judged. */
const Surprise = ({ desk }: { desk: Desk }) => (
  <p class="buttons">
    <button
      type="button"
      onClick={() => {
        const any = desk.library[Math.floor(Math.random() * desk.library.length)];
        if (any) desk.take(any);
      }}
    >
      Surprise me
    </button>
  </p>
);

export const Library = ({ desk }: { desk: Desk }) => (
  <>
    {grades.map(([grade, words]) => {
      const rows = desk.library.filter(({ scenario }) => scenario.grade === grade);
      return rows.length === 0 ? null : (
        <section class="grade" key={grade} aria-labelledby={`grade-${grade}`}>
          <h3 id={`grade-${grade}`}>
            Grade {grade}: {words}
          </h3>
          <ul class="library">
            {rows.map((offered) => (
              <Row key={offered.scenario.id} desk={desk} offered={offered} />
            ))}
          </ul>
        </section>
      );
    })}
    <Shelf desk={desk} />
    {desk.library.length > 1 && <Surprise desk={desk} />}
  </>
);
