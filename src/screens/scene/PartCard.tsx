/** What is pointed at: its plain name, what can be made out from here, and what can be done about it. Never a condition. */
import { useState } from 'preact/hooks';
import { type Aid, aids } from '../../engine/senses/types.ts';
import { format } from '../../engine/units/formatQuantity.ts';
import { findPart } from '../../engine/world/edit.ts';
import { CallFinding } from '../sheet/CallFinding.tsx';
import type { Desk, Playing } from '../types.ts';
import { capital, nameOf } from '../words.ts';
import { focusIfLost, focusSoon, putAway } from './keys.ts';

export const byAid: Readonly<Record<Aid, string>> = { eyes: 'by eye', lamp: 'with the lamp', glass: 'with the glass' };

const Lines = ({ desk, playing }: { desk: Desk; playing: Playing }) => {
  const looked = playing.looked.value;
  if (looked === null) return null;
  const { look, aid } = looked;
  return (
    <>
      <p class="meta">
        {format(look.distance, 'length', desk.settings.value.units, 2)} away, {byAid[aid]}
      </p>
      <ul class="lines">
        {look.lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </>
  );
};

/** `beside`: its place is kept while nothing is pointed at. */
export const PartCard = ({ desk, playing, beside }: { desk: Desk; playing: Playing; beside: boolean }) => {
  const chosen = playing.chosen.value;
  const [calling, setCalling] = useState<string | null>(null);
  if (chosen === null) {
    return beside ? (
      <section class="part-card paper" aria-label="Pointed at: nothing">
        <p class="hint">Choose a part in the list. What can be made out of it from here stands on this slip.</p>
      </section>
    ) : null;
  }
  const { world } = playing.snapshot.value;
  const isPart = findPart(world, chosen) !== null;
  const about = playing.drill.offers().filter((offered) => offered.about === chosen);
  const done = (): void => {
    setCalling(null);
    focusSoon('card-call');
  };
  const lookBy = (aid: Aid) => (
    <button
      key={aid}
      type="button"
      onClick={() => {
        playing.aid.value = aid;
        playing.choose(chosen);
        focusIfLost('card-call');
      }}
    >
      Look {byAid[aid]}
    </button>
  );
  const toActs = (): void => {
    playing.actBy.value = null;
    playing.actFilter.value = '';
    playing.actAbout.value = chosen;
    playing.page.value = 'acts';
    playing.sheetOpen.value = true;
    focusSoon('page');
  };
  return (
    <section class="part-card paper" aria-label={`Pointed at: ${nameOf(world, chosen)}`}>
      <header>
        <h2>{capital(nameOf(world, chosen))}</h2>
        <button type="button" class="close" aria-label="Put it away" onClick={() => putAway(playing)}>
          ✕
        </button>
      </header>
      <Lines desk={desk} playing={playing} />
      {calling === chosen ? (
        <CallFinding desk={desk} playing={playing} on={chosen} onDone={done} />
      ) : (
        <p class="buttons">
          {chosen !== 'truck' && (
            <button type="button" id="card-call" class="primary" onClick={() => setCalling(chosen)}>
              Call a finding
            </button>
          )}
          {about.length > 0 && (
            <button type="button" onClick={toActs}>
              {about.length} {about.length === 1 ? 'act' : 'acts'} on it
            </button>
          )}
          {isPart && aids.filter((aid) => aid !== playing.looked.value?.aid).map(lookBy)}
        </p>
      )}
    </section>
  );
};
