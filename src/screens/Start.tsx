/** The start: one sheet with what can be done, in plain words, the caution and the settings. */
import { ExamForm } from './ExamForm.tsx';
import { Library } from './Library.tsx';
import { Caution } from './parts/Caution.tsx';
import { FileChoice } from './parts/FileChoice.tsx';
import { SettingsForm } from './SettingsForm.tsx';
import type { Desk, OpenPage } from './types.ts';
import { WeightsForm } from './WeightsForm.tsx';

const KeptDrill = ({ desk }: { desk: Desk }) => {
  const kept = desk.keptDrill.value;
  if (kept === null) return null;
  const acts = kept.acts === 1 ? '1 act' : `${kept.acts} acts`;
  return (
    <section class="kept" aria-labelledby="kept">
      <h2 id="kept">{kept.ended ? 'Your last drill' : 'A drill is still running'}</h2>
      <p>
        {kept.title}, {acts} in the log, kept on this device.{' '}
        {kept.ended ? '' : 'Another drill takes its place with its first act.'}
      </p>
      <p class="buttons">
        <button type="button" class="primary" onClick={() => desk.goOn()}>
          {kept.ended ? 'Open its debrief' : 'Go on with it'}
        </button>
        <button type="button" onClick={() => desk.saveLog()}>
          Save its log
        </button>
        <button type="button" onClick={() => desk.forget()}>
          Put it away
        </button>
      </p>
    </section>
  );
};

export const Start = ({ desk, open }: { desk: Desk; open: OpenPage }) => (
  <main class="desk">
    <div class="sheet paper form">
      <header class="letterhead">
        <h1>Loose Tie</h1>
        <p>Finding what can hurt you on an overhead line, before it does.</p>
      </header>
      <Caution />
      {desk.problem.value !== null && (
        <p class="problem" role="alert">
          {desk.problem.value}
        </p>
      )}
      <KeptDrill desk={desk} />
      <section aria-labelledby="take">
        <h2 id="take">Take a drill</h2>
        <p>
          Never done one? The worked survey goes round a scene stop by stop, and asks before it shows.{' '}
          <button type="button" onClick={() => open('survey')}>
            Worked survey
          </button>
        </p>
        <Library desk={desk} />
        <ExamForm desk={desk} open={open} />
      </section>
      <section aria-labelledby="open">
        <h2 id="open">Open a saved log</h2>
        <p>A log file of a drill is played again act by act and shows the same debrief, or goes on where it stopped.</p>
        <FileChoice
          label="Log file"
          accept=".json,application/json"
          words="Choose a log file"
          onFile={(file) => void desk.openLog(file)}
        />
      </section>
      <section aria-labelledby="beside">
        <h2 id="beside">Beside the drills</h2>
        <p>
          The bench: open and close the devices of a scene and read its circuit. The cards: approach distance, gloves,
          sticks, grounds, arc, step voltage, fuse links, sag, each with its calculator and source. The report: every
          model of the program beside numbers from outside it. For instructors: what a scenario hides on a sheet to be
          printed, and its proof.
        </p>
        <p class="buttons">
          <button type="button" onClick={() => open('bench')}>
            One-line bench
          </button>
          <button type="button" onClick={() => open('cards')}>
            Reference cards
          </button>
          <button type="button" onClick={() => open('qualification')}>
            Qualification report
          </button>
          <button type="button" onClick={() => open('instructor')}>
            Instructor’s sheet
          </button>
          {desk.prover !== undefined && (
            <button type="button" onClick={() => open('proof')}>
              Proof of a scenario
            </button>
          )}
        </p>
      </section>
      <section aria-labelledby="settings">
        <h2 id="settings">Settings</h2>
        <SettingsForm settings={desk.settings} />
      </section>
      <section aria-labelledby="weights">
        <h2 id="weights">Judging</h2>
        <WeightsForm desk={desk} />
      </section>
      <footer class="fine">
        Nothing leaves this device. Type: Courier Prime and Public Sans, both under the SIL Open Font Licence 1.1.
      </footer>
    </div>
  </main>
);
