/** The debrief: verdict and reasons, what went well, the one thing to take along; then all there is to explore. */
import { useEffect, useMemo, useRef } from 'preact/hooks';
import { explain } from '../../engine/debrief/explain.ts';
import type { Debrief } from '../../engine/debrief/types.ts';
import type { Desk, Playing } from '../types.ts';
import { capital } from '../words.ts';
import { Exposures } from './Exposures.tsx';
import { Hazards } from './Hazards.tsx';
import { Timeline } from './Timeline.tsx';

const partNames: Readonly<Record<string, string>> = {
  recognition: 'Recognition',
  order: 'Order',
  control: 'Controls',
  exposure: 'Exposure',
  service: 'Service',
};

const Part = ({ debrief, name }: { debrief: Debrief; name: string }) => {
  const part = debrief.parts.find((each) => each.name === name);
  if (!part) return null;
  return (
    <section aria-label={partNames[name]}>
      <h3>
        {partNames[name]}{' '}
        <span class="note">{part.value === null ? 'nothing to judge' : `${Math.round(part.value * 100)} of 100`}</span>
      </h3>
      <ul>
        {part.says.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
};

const Struck = ({ playing }: { playing: Playing }) => {
  const { world, events } = playing.snapshot.value;
  if (world.ended !== 'struck') return null;
  const last = events.filter(({ event }) => event === 'struck').at(-1);
  return (
    <p class="struck" role="alert">
      <span class="signal danger-word">Danger</span> {last?.words ?? 'The drill was stopped.'}
    </p>
  );
};

export const DebriefScreen = ({ desk, playing }: { desk: Desk; playing: Playing }) => {
  const { score } = playing.snapshot.value;
  const { units } = desk.settings.value;
  const top = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    window.scrollTo(0, 0);
    top.current?.focus();
  }, []);
  const replay = useMemo(() => playing.drill.replay(), [score]);
  const debrief = useMemo(() => (score === null ? null : explain(replay, score, units)), [replay, score, units]);
  if (debrief === null) throw new Error('a debrief without a score');
  return (
    <main class="desk">
      <article class="sheet paper debrief">
        <header class="letterhead">
          <p class="meta">Debrief</p>
          <h1 ref={top} tabIndex={-1}>
            {debrief.title}
          </h1>
          <p>
            <span class={`stamp big ${debrief.verdict}`}>{debrief.verdictWords}</span>
          </p>
        </header>
        <Struck playing={playing} />
        <section class="reasons" aria-label="Reasons">
          {debrief.reasons.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </section>
        <section aria-labelledby="well">
          <h2 id="well">What you did well</h2>
          {debrief.didWell.length === 0 ? (
            <p>Nothing that could be counted this time. The rest of this sheet says where to begin.</p>
          ) : (
            <ul>
              {debrief.didWell.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          )}
        </section>
        <section class="along" aria-labelledby="along">
          <h2 id="along">Take this along</h2>
          <p>{capital(debrief.takeAlong)}</p>
        </section>
        <p class="buttons">
          <button type="button" class="primary" onClick={() => desk.tryAgain()}>
            Try again
          </button>
          <button type="button" onClick={() => desk.saveLog()}>
            Save the log
          </button>
          <button type="button" onClick={() => desk.leave()}>
            Back to the start
          </button>
        </p>
        <Timeline rows={debrief.timeline} world={replay.start} />
        <Hazards cards={debrief.hazards} lookAlikes={debrief.lookAlikes} />
        <Exposures debrief={debrief} world={replay.start} />
        <section aria-labelledby="judged">
          <h2 id="judged">How it was judged</h2>
          {['recognition', 'order', 'control', 'exposure', 'service'].map((name) => (
            <Part key={name} debrief={debrief} name={name} />
          ))}
        </section>
        <details>
          <summary>Numbers</summary>
          <ul class="numbers">
            {debrief.numbers.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </details>
        <p class="fine">
          World <code>{score?.worldHash}</code>, engine <code>{score?.engine}</code>. The saved log replays to this
          score.
        </p>
        <p class="fine">{debrief.caution}</p>
      </article>
    </main>
  );
};
