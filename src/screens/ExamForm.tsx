/** An exam as an instructor sets it: a drill, the number that fixes its luck, the minutes on its clock. No way back in it. */
import { useState } from 'preact/hooks';
import type { Desk, OpenPage } from './types.ts';

/** Minutes of the drill's clock that can be set. */
const shortest = 15;
const longest = 600;
const largestSeed = 4294967295;

const whole = (text: string, least: number, most: number): number | null => {
  const value = Number(text);
  return text.trim() !== '' && Number.isInteger(value) && value >= least && value <= most ? value : null;
};

export const ExamForm = ({ desk, open }: { desk: Desk; open: OpenPage }) => {
  const [hash, setHash] = useState(desk.library[0]?.hash ?? '');
  const [seed, setSeed] = useState('1');
  const [minutes, setMinutes] = useState('120');
  const offered = desk.library.find((each) => each.hash === hash);
  const exam = { seed: whole(seed, 0, largestSeed), minutes: whole(minutes, shortest, longest) };
  return (
    <details class="exam">
      <summary>Take one as an exam</summary>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          if (offered && exam.seed !== null && exam.minutes !== null)
            desk.take(offered, { seed: exam.seed, minutes: exam.minutes });
        }}
      >
        <p>
          The same luck for everybody, a limit on the drill’s clock, no way back, and the debrief at the end. When the
          time is up the drill ends with what was reported by then.
        </p>
        <label>
          <span>Drill</span>
          <select value={hash} onChange={(event) => setHash(event.currentTarget.value)}>
            {desk.library.map((each) => (
              <option key={each.hash} value={each.hash}>
                {each.scenario.title}
              </option>
            ))}
          </select>
        </label>
        <label>
          <span>Number of the exam</span>
          <input inputMode="numeric" value={seed} onInput={(event) => setSeed(event.currentTarget.value)} />
        </label>
        <label>
          <span>Minutes</span>
          <input inputMode="numeric" value={minutes} onInput={(event) => setMinutes(event.currentTarget.value)} />
        </label>
        {exam.seed === null && <p class="hint">The number is a whole one from 0 to {largestSeed}.</p>}
        {exam.minutes === null && (
          <p class="hint">
            Minutes go from {shortest} to {longest}.
          </p>
        )}
        <p class="buttons">
          <button type="submit" disabled={!offered || exam.seed === null || exam.minutes === null}>
            Begin the exam
          </button>
          <button type="button" disabled={!offered} onClick={() => offered && open('instructor', offered)}>
            Its instructor’s sheet
          </button>
        </p>
      </form>
    </details>
  );
};
