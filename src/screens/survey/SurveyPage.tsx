/**
 * The worked survey: a careful round of a scene, stop by stop. Each stop asks first what one would look at and with what, and
 * shows only then what is made out there and what the trade makes of it.
 */
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { controlKind } from '../../engine/catalogue/controls.ts';
import { topicWords } from '../../engine/debrief/timeline.ts';
import type { Meaning } from '../../engine/trainees/trade.ts';
import { type StopKind, type WorkedLook, type WorkedStop, workedSurvey } from '../../engine/trainees/workedSurvey.ts';
import { build } from '../../engine/world/build.ts';
import { snapshotOf, worldAt } from '../debrief/moments.ts';
import { ReplayPicture } from '../debrief/ReplayPicture.tsx';
import { Caution } from '../parts/Caution.tsx';
import type { Desk, Offered } from '../types.ts';
import { capital, clockAt, conditionLabel } from '../words.ts';

type Worked = ReturnType<typeof workedSurvey>;

const questions: Readonly<Record<StopKind, string>> = {
  look: 'Look about before you read on. Which parts would you look at from here, with what, and on which side of them?',
  ask: 'Whom would you ask here, and what? What could nobody see from the road?',
  tools: 'Which tools will you trust, and how do you know that they can be trusted?',
  sound: 'Nothing was found on this pole from outside. What does the pole itself still have to tell, and how?',
  test: 'What would you test, with what, and how do you know that the detector works?',
};

const aidWords = { eyes: 'by eye', lamp: 'by lamp', glass: 'with the glass' } as const;

const Meant = ({ meaning }: { meaning: Meaning }) => (
  <div class={meaning.benign ? 'meant benign' : 'meant'}>
    <p>
      <span class="stamp">{meaning.benign ? 'Only looks wrong' : 'Call it'}</span>{' '}
      <b>{capital(meaning.benign ? meaning.name : conditionLabel(meaning.condition))}</b>
      {meaning.benign ? '' : `: ${meaning.name}.`}
    </p>
    {!meaning.benign && <p>{meaning.harm}</p>}
    {meaning.tellApart !== '' && <p class="hint">{meaning.tellApart}</p>}
    {!meaning.benign && meaning.controls[0] !== undefined && (
      <p class="hint">What holds it: {controlKind(meaning.controls[0]).name}.</p>
    )}
  </div>
);

const Look = ({ look, see }: { look: WorkedLook; see: () => void }) => (
  <li class={look.meanings.length > 0 ? 'tells' : undefined}>
    <p>
      <b>{capital(look.name)}</b>
      {look.aid === null ? '' : `, ${aidWords[look.aid]}`}
      {look.about === null ? '' : `, asked about ${topicWords(look.about)}`}: {look.words.replace(`${look.name}: `, '')}
      {look.aid !== null && look.meanings.length > 0 && (
        <>
          {' '}
          <button type="button" aria-label={`Look at it: ${look.name}`} onClick={see}>
            Look at it
          </button>
        </>
      )}
    </p>
    {look.meanings.map((meaning) => (
      <Meant key={meaning.name} meaning={meaning} />
    ))}
  </li>
);

const Shown = ({ stop, see }: { stop: WorkedStop; see: (look: WorkedLook) => void }) => {
  const telling = stop.looks.filter(({ meanings }) => meanings.length > 0);
  const plain = stop.looks.filter(({ meanings }) => meanings.length === 0);
  return (
    <>
      {telling.length === 0 && <p>Nothing here calls for a finding. That was worth knowing as well.</p>}
      <ul class="worked">
        {telling.map((look, index) => (
          <Look key={index} look={look} see={() => see(look)} />
        ))}
      </ul>
      {plain.length > 0 && (
        <details open={telling.length === 0}>
          <summary>
            As it should be, or not to be told from here <span class="note">{plain.length}</span>
          </summary>
          <ul class="worked">
            {plain.map((look, index) => (
              <Look key={index} look={look} see={() => see(look)} />
            ))}
          </ul>
        </details>
      )}
    </>
  );
};

const Round = ({ desk, offered, worked }: { desk: Desk; offered: Offered; worked: Worked }) => {
  const [at, setAt] = useState(0);
  const [open, setOpen] = useState(false);
  const [look, setLook] = useState<WorkedLook | null>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  const { stops, replay } = worked;
  const stop = stops[at];
  const world = worldAt(replay, stop?.acts ?? 0);
  const snapshot = useMemo(() => snapshotOf(replay, world), [world]);
  const go = (next: number): void => {
    setAt(next);
    setOpen(false);
    setLook(null);
    heading.current?.focus();
  };
  if (stop === undefined) return <p>There is nothing to go round here.</p>;
  const last = at === stops.length - 1;
  return (
    <section aria-labelledby="stop">
      <h2 id="stop" ref={heading} tabIndex={-1}>
        Stop {at + 1} of {stops.length}: {stop.at === '' ? 'on the way' : stop.at}
      </h2>
      <p class="meta">{clockAt(world, stop.minute)}</p>
      {snapshot.stand !== '' && (
        <ReplayPicture
          desk={desk}
          snapshot={snapshot}
          aid={look?.aid ?? 'eyes'}
          toward={look?.on ?? null}
          label={`The picture, seen from: ${stop.at}.`}
        />
      )}
      <p class="question">{questions[stop.kind]}</p>
      {open ? (
        <Shown stop={stop} see={setLook} />
      ) : (
        <p>
          <button type="button" class="primary" onClick={() => setOpen(true)}>
            Show what is to be found here
          </button>
        </p>
      )}
      <p class="buttons">
        <button type="button" disabled={at === 0} onClick={() => go(at - 1)}>
          Back
        </button>
        <button type="button" disabled={last || !open} onClick={() => go(at + 1)}>
          Go on
        </button>
        {last && open && (
          <button type="button" class="primary" onClick={() => desk.take(offered)}>
            Now take the drill yourself
          </button>
        )}
      </p>
      {last && open && (
        <p>
          Then the round ends: brief the crew on what was found, keep the public out, tell the dispatcher, and work only
          on what is known, controlled and tested. Handing over is a good end as well.
        </p>
      )}
    </section>
  );
};

/** Works the round out once the page has been painted: it takes a second or two. */
const useWorked = (offered: Offered | undefined): Worked | null => {
  const [worked, setWorked] = useState<{ readonly hash: string; readonly of: Worked } | null>(null);
  useEffect(() => {
    if (offered === undefined) return;
    const timer = setTimeout(() => {
      setWorked({ hash: offered.hash, of: workedSurvey(build(offered.scenario, offered.hash)) });
    }, 30);
    return () => clearTimeout(timer);
  }, [offered]);
  return worked?.hash === offered?.hash ? (worked?.of ?? null) : null;
};

const easiestFirst = (library: readonly Offered[]): readonly Offered[] =>
  [...library].sort((a, b) => a.scenario.grade - b.scenario.grade);

export const SurveyPage = ({ desk, back }: { desk: Desk; back: () => void }) => {
  const library = useMemo(() => easiestFirst(desk.library), [desk]);
  const [hash, setHash] = useState(library[0]?.hash ?? '');
  const offered = library.find((each) => each.hash === hash);
  const worked = useWorked(offered);
  useEffect(() => desk.wantScene(), [desk]);
  return (
    <main class="desk">
      <div class="sheet paper debrief survey">
        <header class="letterhead">
          <h1>Worked survey</h1>
          <p>A careful round of a scene. Each stop asks first; think, then have it shown.</p>
        </header>
        <p class="buttons">
          <label>
            <span>Scene</span>{' '}
            <select value={hash} onChange={(event) => setHash(event.currentTarget.value)}>
              {library.map(({ scenario, hash: id }) => (
                <option key={id} value={id}>
                  {scenario.title}
                </option>
              ))}
            </select>
          </label>
          <button type="button" onClick={back}>
            Back to the start
          </button>
        </p>
        {offered && <blockquote>{offered.scenario.call.said}</blockquote>}
        {offered && worked === null && <p role="status">The round is being worked out …</p>}
        {offered && worked !== null && <Round key={hash} desk={desk} offered={offered} worked={worked} />}
        <Caution />
      </div>
    </main>
  );
};
