/** The drill again, moment by moment: picture, one-line, what was called and what exposed somebody move together. */
import type { ComponentType } from 'preact';
import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Replay } from '../../engine/acts/types.ts';
import { actWords } from '../../engine/debrief/timeline.ts';
import type { Debrief } from '../../engine/debrief/types.ts';
import { lookRound } from '../../engine/senses/around.ts';
import { lookAt } from '../../engine/senses/lookAt.ts';
import { standById, trainee } from '../../engine/world/edit.ts';
import type { World } from '../../engine/world/types.ts';
import type { Desk } from '../types.ts';
import { capital, clockAt, conditionLabel, nameOf } from '../words.ts';
import { snapshotOf, standingAt, type Vantage, worldAt } from './moments.ts';
import { ReplayPicture } from './ReplayPicture.tsx';
import type { Explorer } from './useExplorer.ts';

type Line = ComponentType<{ start: World; world: World }>;

const useOneLine = (wanted: boolean): Line | null => {
  const [line, setLine] = useState<{ readonly of: Line } | null>(null);
  useEffect(() => {
    if (!wanted || line !== null) return;
    let here = true;
    void import('./OneLine.tsx').then(({ OneLine }) => {
      if (here) setLine({ of: OneLine });
    });
    return () => {
      here = false;
    };
  }, [wanted, line]);
  return line?.of ?? null;
};

const aidWords = { eyes: 'by eye', lamp: 'by lamp', glass: 'with the glass' } as const;

const Looked = ({ world, vantage }: { world: World; vantage: Vantage }) => {
  const { part, stand, aid } = vantage;
  const { lines } = lookRound(world, part, stand) ?? lookAt(world, part, stand, aid);
  return (
    <div class="looked-from">
      <h3>
        {capital(nameOf(world, vantage.part))}, {aidWords[vantage.aid]}
      </h3>
      <ul>
        {lines.map((line) => (
          <li key={line}>{capital(line)}.</li>
        ))}
      </ul>
    </div>
  );
};

/** So many exposures are told at once, the latest. */
const shown = 6;

const Then = ({ world, debrief, acts }: { world: World; debrief: Debrief; acts: number }) => {
  const exposed = debrief.timeline.filter(({ kind, step }) => kind === 'exposure' && step < acts);
  return (
    <div class="then">
      <div>
        <h3>
          Called by then <span class="note">{world.paper.findings.length}</span>
        </h3>
        {world.paper.findings.length === 0 && <p class="hint">Nothing yet.</p>}
        <ul>
          {world.paper.findings.map(({ id, on, condition }) => (
            <li key={id}>
              {capital(nameOf(world, on))}: {conditionLabel(condition)}
            </li>
          ))}
        </ul>
      </div>
      <div>
        <h3>
          Exposures by then <span class="note">{exposed.length}</span>
        </h3>
        {exposed.length === 0 && <p class="hint">None.</p>}
        {exposed.length > shown && <p class="hint">{exposed.length - shown} earlier ones stand in the timeline.</p>}
        <ul>
          {exposed.slice(-shown).map(({ step, words }, index) => (
            <li key={index} class={step === acts - 1 ? 'now' : undefined}>
              {clockAt(world, debrief.timeline.find((row) => row.step === step)?.minute ?? 0)}{' '}
              {words.replace(/^exposure: /, '')}
            </li>
          ))}
        </ul>
      </div>
    </div>
  );
};

export interface ExploreProps {
  readonly desk: Desk;
  readonly replay: Replay;
  readonly debrief: Debrief;
  readonly explorer: Explorer;
  /** Goes on from that moment in a practice run; null where that is not allowed. */
  readonly goOn: ((acts: number) => void) | null;
}

export const Explore = ({ desk, replay, debrief, explorer, goOn }: ExploreProps) => {
  const { acts, vantage, used, playing } = explorer;
  const last = replay.steps.length;
  const then = worldAt(replay, acts);
  const world = useMemo(() => (vantage === null ? then : standingAt(replay.start, vantage.stand)), [then, vantage]);
  const snapshot = useMemo(() => snapshotOf(replay, world), [world]);
  const Line = useOneLine(used);
  const step = replay.steps[acts - 1];
  const did = step === undefined ? 'The call comes in' : capital(actWords(step));
  const perceived = step?.events.map(({ words }) => words) ?? [];
  const stand = standById(world, trainee(world).at ?? '')?.name ?? 'on the way';
  const minute = then.clock.minute;
  const said = `${clockAt(then, minute)}, act ${acts} of ${last}: ${did}`;
  return (
    <section class="explore not-printed" aria-labelledby="explore">
      <h2 id="explore" tabIndex={-1}>
        The drill again
      </h2>
      <div class="scrub">
        <button type="button" disabled={acts === 0} onClick={() => explorer.to(acts - 1)}>
          Back
        </button>
        <button type="button" class="primary" onClick={() => explorer.play(!playing)}>
          {playing ? 'Pause' : 'Play'}
        </button>
        <button type="button" disabled={acts >= last} onClick={() => explorer.to(acts + 1)}>
          On
        </button>
        <input
          type="range"
          min={0}
          max={last}
          value={acts}
          aria-label="Moment of the drill"
          aria-valuetext={said}
          onInput={(event) => explorer.to(Number(event.currentTarget.value))}
        />
      </div>
      <p class="moment" aria-live={playing ? 'off' : 'polite'}>
        <time>{clockAt(world, world.clock.minute)}</time>{' '}
        {vantage === null ? did : `As it was at the start, from: ${stand}`}
      </p>
      {!used && (
        <p class="hint">
          Move the slider, press play, or go to a place from a hazard below: picture and one-line follow.
        </p>
      )}
      {used && vantage === null && perceived.length > 0 && (
        <ul class="perceived">
          {perceived.slice(0, 6).map((words, index) => (
            <li key={index}>{words}</li>
          ))}
        </ul>
      )}
      {vantage !== null && <Looked world={world} vantage={vantage} />}
      {used && snapshot.stand !== '' && (
        <ReplayPicture
          desk={desk}
          snapshot={snapshot}
          aid={vantage?.aid ?? 'eyes'}
          toward={vantage?.part ?? aboutOf(step?.entry.act, world)}
          label={`The picture, seen from: ${stand}.`}
        />
      )}
      {used && Line !== null && <Line start={replay.start} world={world} />}
      {used && vantage === null && <Then world={then} debrief={debrief} acts={acts} />}
      {goOn !== null && acts < last && (
        <p>
          <button type="button" onClick={() => goOn(acts)}>
            Go on from this moment, as practice
          </button>{' '}
          <span class="hint">The scored drill stays as it is.</span>
        </p>
      )}
    </section>
  );
};

/** Part that an act concerns, to be looked at. */
const aboutOf = (act: Replay['steps'][number]['entry']['act'] | undefined, world: World): string | null => {
  if (act === undefined) return null;
  const id = 'part' in act ? act.part : 'point' in act ? (act.point.split('/')[0] ?? '') : '';
  return world.parts.some((part) => part.id === id) ? id : null;
};
