/**
 * The instructor's sheet of a scenario, as the command line prints it. It tells everything that a drill asks for, so it is
 * worked out only after whoever opened it has said that the drill is not theirs to take.
 */
import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { instructorSheet } from '../../engine/debrief/instructorSheet.ts';
import {
  type SheetEntry,
  type SheetSection,
  sheetFor,
  sheetSections,
  sheetTitle,
} from '../../engine/debrief/sheetSections.ts';
import type { UnitSystem } from '../../engine/units/formatQuantity.ts';
import { build } from '../../engine/world/build.ts';
import { Severity } from '../debrief/Severity.tsx';
import { Caution } from '../parts/Caution.tsx';
import { OwnScenario } from '../parts/OwnScenario.tsx';
import type { Desk, Offered } from '../types.ts';

const Lines = ({ lines }: { lines: readonly string[] }) =>
  lines.length === 0 ? null : (
    <ul>
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );

const Entry = ({ entry: { title, severity, lists, note } }: { entry: SheetEntry }) => (
  <article class="entry">
    <h3>
      {severity !== null && <Severity of={severity} />} {title}
    </h3>
    {lists.map((list) => (
      <div key={list.title} class="list">
        <h4>{list.title}</h4>
        <Lines lines={list.lines} />
      </div>
    ))}
    <p class="fine">{note}</p>
  </article>
);

const Section = ({ section: { title, words, entries, lines } }: { section: SheetSection }) => (
  <section>
    <h2>{title}</h2>
    {words.map((each) => (
      <p key={each}>{each}</p>
    ))}
    {entries.map((entry) => (
      <Entry key={entry.title} entry={entry} />
    ))}
    <Lines lines={lines} />
  </section>
);

const Sheet = ({ of, system }: { of: Offered; system: UnitSystem }) => {
  const sheet = useMemo(
    () => instructorSheet(of.scenario, build(of.scenario, of.hash), system, of.route ?? null),
    [of, system],
  );
  const head = useRef<HTMLHeadingElement>(null);
  // Before the page is painted: a key pressed at once must not go to the page that was there before.
  useLayoutEffect(() => head.current?.focus(), []);
  return (
    <div class="told">
      <header>
        <h2 ref={head} tabIndex={-1}>
          {sheet.title}
        </h2>
        <p class="meta">
          Grade {sheet.grade}. {sheet.teaches}
        </p>
        <p class="buttons">
          <button type="button" class="primary" onClick={() => window.print()}>
            Print it
          </button>
        </p>
      </header>
      {sheetSections(sheet).map((section) => (
        <Section key={section.title} section={section} />
      ))}
      {sheet.route === null && (
        <p class="note">No proven route is at hand for this scenario: the proof of a scenario finds one.</p>
      )}
    </div>
  );
};

/** The step between choosing and reading. */
const Ask = ({ of, show, leave }: { of: Offered; show: () => void; leave: () => void }) => {
  const head = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => head.current?.focus(), [of]);
  return (
    <section class="ask" aria-labelledby="ask">
      <h2 id="ask" ref={head} tabIndex={-1}>
        {of.scenario.title}
      </h2>
      <p>
        This sheet tells the answers: what is wrong, from where it can be seen, what only looks wrong, and a safe way
        through. If you are going to take this drill, leave it closed: what is read here cannot be found any more.
      </p>
      <p class="buttons">
        <button type="button" onClick={leave}>
          Leave it closed
        </button>
        <button type="button" onClick={show}>
          I instruct, show the answers
        </button>
      </p>
    </section>
  );
};

const Choice = ({ desk, choose }: { desk: Desk; choose: (of: Offered) => void }) => {
  const all = [...desk.library, ...desk.shelf.value];
  const [hash, setHash] = useState(all[0]?.hash ?? '');
  const chosen = all.find((each) => each.hash === hash);
  return (
    <section class="choice" aria-labelledby="which">
      <h2 id="which">Of which scenario</h2>
      <form
        class="buttons"
        onSubmit={(event) => {
          event.preventDefault();
          if (chosen) choose(chosen);
        }}
      >
        <label>
          <span class="sr-only">Scenario</span>
          <select value={hash} onChange={(event) => setHash(event.currentTarget.value)}>
            {all.map((each) => (
              <option key={each.hash} value={each.hash}>
                {each.scenario.title}
              </option>
            ))}
          </select>
        </label>
        <button type="submit" disabled={!chosen}>
          Go to its sheet
        </button>
      </form>
      <OwnScenario desk={desk} opened={choose} />
    </section>
  );
};

export interface InstructorPageProps {
  readonly desk: Desk;
  /** Chosen already, where the drill was. */
  readonly of?: Offered;
  readonly back: () => void;
}

export const InstructorPage = ({ desk, of, back }: InstructorPageProps) => {
  const [chosen, setChosen] = useState(of ?? null);
  const [isShown, setShown] = useState(false);
  const choose = (next: Offered | null): void => {
    setChosen(next);
    setShown(false);
  };
  return (
    <main class="desk instructor-desk">
      <div class="sheet paper form instructor">
        <header class="letterhead">
          <h1>{sheetTitle}</h1>
          <p>For instructors: {sheetFor}.</p>
          <p class="buttons">
            <button type="button" onClick={back}>
              Back
            </button>
          </p>
        </header>
        <Caution />
        {chosen !== null && isShown && <Sheet of={chosen} system={desk.settings.value.units} />}
        {chosen !== null && !isShown && <Ask of={chosen} show={() => setShown(true)} leave={() => choose(null)} />}
        <Choice desk={desk} choose={choose} />
      </div>
    </main>
  );
};
