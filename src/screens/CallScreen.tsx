/** The call before one is on scene: the ticket, the radio, and where the truck comes to stand. */
import { useLayoutEffect } from 'preact/hooks';
import type { OfferedAct } from '../engine/acts/types.ts';
import { Ended } from './scene/Ended.tsx';
import { EndSlip } from './scene/EndSlip.tsx';
import { foldersOf } from './sheet/actGroups.ts';
import { Journal } from './sheet/Journal.tsx';
import { ActList } from './sheet/OfferedActs.tsx';
import { Ticket } from './sheet/Ticket.tsx';
import type { Desk, Playing } from './types.ts';

const ends = ['acknowledge', 'hand-over', 'close-out'];

const Radio = ({ playing }: { playing: Playing }) => {
  const { world } = playing.snapshot.value;
  const offered = playing.drill.offers().filter(({ act, by }) => by === 'radio' && !ends.includes(act.act));
  return (
    <>
      {foldersOf(world, 'radio', offered).map((folder) => (
        <details key={folder.id} class="folder" open={folder.title === 'Ask' || folder.title === null}>
          <summary>
            <span class="note">{folder.offered.length}</span>
            {folder.title ?? 'Ask and say'}
          </summary>
          <ActList playing={playing} offered={folder.offered} />
        </details>
      ))}
    </>
  );
};

const Next = ({ desk, playing, parks }: { desk: Desk; playing: Playing; parks: readonly OfferedAct[] }) => {
  const { world, stage } = playing.snapshot.value;
  useLayoutEffect(() => {
    if (stage !== 'call') document.getElementById('next')?.focus();
  }, [stage]);
  if (stage === 'call') {
    return (
      <>
        <h2 id="next">The dispatcher waits</h2>
        <p class="buttons">
          <button type="button" class="primary" onClick={() => playing.send({ act: 'acknowledge' })}>
            Acknowledge the call
          </button>
          <button type="button" onClick={() => desk.leave()}>
            Back to the start
          </button>
        </p>
      </>
    );
  }
  return (
    <>
      <h2 id="next" tabIndex={-1}>
        You drive off
      </h2>
      <p>
        <span class="stamp">Acknowledged {world.given.call.time}</span>
      </p>
      <p>You come to the pole. Where does the truck stand?</p>
      <p class="buttons">
        {parks.map((offer) => (
          <button key={offer.label} type="button" class="primary" onClick={() => playing.send(offer.act)}>
            {offer.label}
          </button>
        ))}
        <button
          type="button"
          onClick={() => {
            playing.dialog.value = 'hand-over';
          }}
        >
          Stop and hand over
        </button>
      </p>
    </>
  );
};

export const CallScreen = ({ desk, playing }: { desk: Desk; playing: Playing }) => {
  const snapshot = playing.snapshot.value;
  const parks = playing.drill.offers().filter(({ act }) => act.act === 'park');
  return (
    <main class="desk">
      <h1 class="sr-only">{snapshot.world.given.title}: the call</h1>
      <div class="sheet paper call">
        <Ticket world={snapshot.world} units={desk.settings.value.units} />
        <section class="drive" aria-labelledby="next">
          <div class="next">
            <Next desk={desk} playing={playing} parks={parks} />
          </div>
          <h3>Notes</h3>
          <div aria-live="polite">
            <Journal snapshot={snapshot} />
          </div>
          <h3>Radio and telephone</h3>
          <Radio playing={playing} />
        </section>
      </div>
      {playing.dialog.value === 'hand-over' && <EndSlip playing={playing} />}
      {snapshot.stage === 'debrief' && <Ended playing={playing} />}
    </main>
  );
};
