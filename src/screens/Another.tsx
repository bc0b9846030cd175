/** Another scene like the drill at hand, drawn by a number and proved beside the page: the same number gives the same scene. */
import { useState } from 'preact/hooks';
import type { Desk, Drawer, Drawing, Offered } from './types.ts';

const largestSeed = 4294967295;

const seedIn = (text: string): number | null => {
  const value = Number(text);
  return text.trim() !== '' && Number.isInteger(value) && value >= 0 && value <= largestSeed ? value : null;
};

const Running = ({ drawing, drawer }: { drawing: Extract<Drawing, { is: 'running' }>; drawer: Drawer }) => (
  <div role="status">
    <p>
      Number {drawing.seed}: scene {drawing.draws + 1} is being drawn and proved. It takes some seconds a scene; odd
      ones and unsafe ones are thrown away.
    </p>
    <p class="buttons">
      <progress aria-label="Drawing a scene" />
      <button type="button" onClick={() => drawer.cancel()}>
        Cancel
      </button>
    </p>
  </div>
);

const Done = ({ drawing, desk }: { drawing: Extract<Drawing, { is: 'done' }>; desk: Desk }) => {
  const { scenario } = drawing.offered;
  return (
    <div>
      <p role="status">
        <b>{scenario.title}</b>, grade {scenario.grade}, is proved and kept on this device. Whoever draws by number{' '}
        {drawing.seed} with this version gets the same scene.
      </p>
      <p class="buttons">
        <button type="button" class="primary" onClick={() => desk.take(drawing.offered)}>
          Take {scenario.title}
        </button>
        <button type="button" onClick={() => desk.saveScenario(drawing.offered)}>
          Save it as a scenario file
        </button>
      </p>
    </div>
  );
};

/** The form, and what came of it; `of` is a scenario that has its file. */
export const Another = ({ desk, of }: { desk: Desk; of: Offered }) => {
  const [text, setText] = useState(() => String(desk.someSeed()));
  const { drawer } = desk;
  if (drawer === undefined || of.text === undefined) return null;
  const drawing = drawer.state.value;
  const mine = drawing.is !== 'idle' && drawing.base === of.hash ? drawing : null;
  const seed = seedIn(text);
  return (
    <div class="another">
      <p>
        The same line and crew, other weather, light, hardware and look-alikes, other things wrong. What a computer
        draws is less true to life than what somebody has seen.
      </p>
      {mine?.is === 'running' ? (
        <Running drawing={mine} drawer={drawer} />
      ) : (
        <form
          class="buttons"
          onSubmit={(event) => {
            event.preventDefault();
            if (seed !== null) drawer.start(of, seed);
          }}
        >
          <label>
            <span>Number</span>{' '}
            <input inputMode="numeric" value={text} onInput={(event) => setText(event.currentTarget.value)} />
          </label>
          <button type="submit" disabled={seed === null}>
            Draw another like this
          </button>
          {seed === null && <span class="hint">The number is a whole one from 0 to {largestSeed}.</span>}
        </form>
      )}
      {mine?.is === 'failed' && (
        <p class="problem" role="alert">
          No scene was drawn: {mine.why}
        </p>
      )}
      {mine?.is === 'done' && <Done drawing={mine} desk={desk} />}
    </div>
  );
};

/** What a variant is drawn from again: the scenario of the library that it came from, where that is there. */
export const originOf = (desk: Desk, offered: Offered): Offered =>
  desk.library.find(({ scenario }) => scenario.id === offered.scenario.variant?.of) ?? offered;
