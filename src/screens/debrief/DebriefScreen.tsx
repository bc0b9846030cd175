/** The debrief: verdict and reasons, what went well, the one thing to take along; then all there is to explore. */
import { useEffect, useMemo, useRef } from 'preact/hooks';
import { explain } from '../../engine/debrief/explain.ts';
import type { Debrief } from '../../engine/debrief/types.ts';
import { Another, originOf } from '../Another.tsx';
import { TakenPhotos } from '../photos/TakenPhotos.tsx';
import type { Desk, Offered, Playing } from '../types.ts';
import { capital } from '../words.ts';
import { Explore } from './Explore.tsx';
import { Exposures } from './Exposures.tsx';
import { Hazards } from './Hazards.tsx';
import type { Vantage } from './moments.ts';
import { Next } from './Next.tsx';
import { Order } from './Order.tsx';
import { Routes } from './Routes.tsx';
import { Timeline } from './Timeline.tsx';
import { useExplorer } from './useExplorer.ts';

const ways: Readonly<Record<Playing['way'], string>> = {
  scored: 'Debrief',
  exam: 'Debrief of an exam',
  practice: 'Debrief of a practice run: the scored drill is kept apart',
  shown: 'Debrief of a practice run that a proof opened',
};

const partNames: Readonly<Record<string, string>> = {
  recognition: 'Recognition',
  order: 'Order',
  control: 'Controls',
  exposure: 'Exposure',
  service: 'Service',
  confidence: 'How sure you were',
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

/** What was shown cannot be found any more: a scene that nobody has shown comes first. */
const Shown = ({ desk, of }: { desk: Desk; of: Offered }) => (
  <section class="next-drill not-printed" aria-labelledby="shown">
    <h2 id="shown">The proof showed you this</h2>
    <p>
      Acts of this drill were done for you, and the proof tells what is wrong here. A score in it would say how well you
      remember. Take one that nobody has shown you: another like it, or another of the library.
    </p>
    <Another desk={desk} of={originOf(desk, of)} />
    <p class="buttons">
      <button type="button" onClick={() => desk.tryAgain()}>
        Take this one all the same
      </button>
    </p>
  </section>
);

export const DebriefScreen = ({ desk, playing }: { desk: Desk; playing: Playing }) => {
  const { score } = playing.snapshot.value;
  const { units } = desk.settings.value;
  const top = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    top.current?.focus();
  }, []);
  const replay = useMemo(() => playing.drill.replay(), [score]);
  const debrief = useMemo(() => (score === null ? null : explain(replay, score, units)), [replay, score, units]);
  const explorer = useExplorer(replay.steps.length);
  if (debrief === null) throw new Error('a debrief without a score');
  const show = (): void => {
    const heading = document.getElementById('explore');
    heading?.scrollIntoView({ block: 'start' });
    heading?.focus({ preventScroll: true });
  };
  const jump = (vantage: Vantage): void => {
    explorer.jump(vantage);
    show();
  };
  const to = (acts: number): void => {
    explorer.to(acts);
    show();
  };
  const isPractice = playing.way === 'practice';
  const isShown = playing.way === 'shown';
  const offered = desk.offeredWith(replay.start.scenarioHash);
  return (
    <main class="desk">
      <article class="sheet paper debrief">
        <header class="letterhead">
          <p class="meta">{ways[playing.way]}</p>
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
        {isShown && offered && <Shown desk={desk} of={offered} />}
        <p class="buttons">
          {!isShown && (
            <button type="button" class="primary" onClick={() => desk.tryAgain()}>
              Try again
            </button>
          )}
          {isPractice && (
            <button type="button" onClick={() => desk.backToScored()}>
              Back to the scored drill
            </button>
          )}
          <button type="button" onClick={() => desk.saveLog()}>
            Save the log
          </button>
          <button type="button" onClick={() => print()}>
            Print
          </button>
          <button type="button" onClick={() => desk.leave()}>
            Back to the start
          </button>
        </p>
        {offered && score && !isShown && <Next desk={desk} score={score} here={offered.scenario} />}
        {!isShown && offered?.text !== undefined && desk.drawer !== undefined && (
          <section class="next-drill not-printed" aria-labelledby="another">
            <h2 id="another">Another like this</h2>
            <Another desk={desk} of={originOf(desk, offered)} />
          </section>
        )}
        <Explore
          desk={desk}
          replay={replay}
          debrief={debrief}
          explorer={explorer}
          goOn={playing.way === 'exam' ? null : (acts) => desk.goOnFrom(acts)}
        />
        <Timeline rows={debrief.timeline} world={replay.start} to={to} />
        {offered?.route && <Routes replay={replay} route={offered.route} />}
        <Hazards cards={debrief.hazards} lookAlikes={debrief.lookAlikes} jump={jump} />
        <TakenPhotos playing={playing} />
        <Exposures debrief={debrief} world={replay.start} />
        <Order order={debrief.order} title={debrief.title} />
        {debrief.briefing.length > 0 && (
          <section aria-labelledby="briefed">
            <h2 id="briefed">Job briefing</h2>
            <ul>
              {debrief.briefing.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </section>
        )}
        {debrief.job.length > 0 && (
          <section aria-labelledby="job-steps">
            <h2 id="job-steps">The job, step by step</h2>
            <ul>
              {debrief.job.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </section>
        )}
        <section aria-labelledby="judged">
          <h2 id="judged">How it was judged</h2>
          {['recognition', 'order', 'control', 'exposure', 'service'].map((name) => (
            <Part key={name} debrief={debrief} name={name} />
          ))}
        </section>
        <details>
          <summary>Numbers</summary>
          {debrief.numbers.map(({ part, lines }) => (
            <section key={part} aria-label={`Numbers of ${partNames[part]}`}>
              <h3>{partNames[part]}</h3>
              <ul class="numbers">
                {lines.map((line) => (
                  <li key={line}>{line}</li>
                ))}
              </ul>
            </section>
          ))}
        </details>
        <p class="fine">
          World <code>{score?.worldHash}</code>, engine <code>{score?.engine}</code>. The saved log replays to this
          score. {debrief.judgedBy}
        </p>
        <p class="fine">{debrief.caution}</p>
      </article>
    </main>
  );
};
