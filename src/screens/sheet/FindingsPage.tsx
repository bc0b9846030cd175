/** What was called so far; anything may be withdrawn or changed until the crew was briefed on it. */
import { useState } from 'preact/hooks';
import type { Finding } from '../../engine/world/types.ts';
import { PhotoFigure, PhotoSheet } from '../photos/PhotoSheet.tsx';
import { focusIfLost, focusSoon } from '../scene/keys.ts';
import type { Desk, Playing } from '../types.ts';
import { capital, clockAt, conditionLabel, nameOf } from '../words.ts';
import { CallFinding } from './CallFinding.tsx';

const sureWords = ({ confidence }: Finding): string =>
  confidence === null ? '' : `, ${Math.round(confidence * 100)} % sure`;

export const FindingsPage = ({ desk, playing }: { desk: Desk; playing: Playing }) => {
  const { world } = playing.snapshot.value;
  const [form, setForm] = useState<null | { readonly on: string | null; readonly replaces?: string }>(null);
  const { findings } = world.paper;
  const done = (): void => {
    setForm(null);
    focusSoon('findings-call');
  };
  return (
    <>
      <h2>Findings</h2>
      {findings.length === 0 && (
        <p class="hint">
          None yet. Point at a part, look at it, and say what you make of it; healthy things may be called sound. Tools,
          people, the ticket and what is missing can be called here.
        </p>
      )}
      <ol class="findings">
        {findings.map((finding) => (
          <li key={finding.id}>
            <p>
              <b>{capital(nameOf(world, finding.on))}</b>: {conditionLabel(finding.condition)}
              {sureWords(finding)} <time class="note">{clockAt(world, finding.minute)}</time>
            </p>
            {playing.photos.taken.value
              .filter((photo) => photo.finding === finding.id)
              .map((photo) => (
                <PhotoFigure key={photo.id} world={world} photo={photo} />
              ))}
            <p class="buttons">
              <button type="button" onClick={() => setForm({ on: finding.on, replaces: finding.id })}>
                Change<span class="sr-only"> {nameOf(world, finding.on)}</span>
              </button>
              <button
                type="button"
                onClick={() => {
                  playing.send({ act: 'withdraw-finding', finding: finding.id });
                  focusIfLost('page');
                }}
              >
                Withdraw<span class="sr-only"> {nameOf(world, finding.on)}</span>
              </button>
            </p>
            {form?.replaces === finding.id && (
              <CallFinding
                key={finding.id}
                desk={desk}
                playing={playing}
                on={finding.on}
                replaces={finding.id}
                onDone={done}
              />
            )}
          </li>
        ))}
      </ol>
      {form !== null && form.replaces === undefined ? (
        <CallFinding desk={desk} playing={playing} on={null} onDone={done} />
      ) : (
        <p class="buttons">
          <button type="button" id="findings-call" class="primary" onClick={() => setForm({ on: null })}>
            Call a finding
          </button>
        </p>
      )}
      <PhotoSheet playing={playing} />
    </>
  );
};
