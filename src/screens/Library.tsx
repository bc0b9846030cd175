/** The drills on offer by grade. What each is about is said so that it does not tell what will be found. */
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
    </li>
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
    {desk.library.length > 1 && <Surprise desk={desk} />}
  </>
);
