/** The call before one is on scene: the ticket, the radio, and where the truck comes to stand. */

import { Journal } from './sheet/Journal.tsx';
import { OfferedActs, type OfferedActsProps } from './sheet/OfferedActs.tsx';
import { Ticket } from './sheet/Ticket.tsx';
import type { Desk, Playing } from './types.ts';

const onTheWay: OfferedActsProps['only'] = ({ act, by }) =>
  by === 'radio' && act.act !== 'acknowledge' && act.act !== 'hand-over' && act.act !== 'close-out';

export const CallScreen = ({ desk, playing }: { desk: Desk; playing: Playing }) => {
  const snapshot = playing.snapshot.value;
  const { world, stage } = snapshot;
  const acknowledged = stage !== 'call';
  return (
    <main class="desk">
      <div class="sheet paper call">
        <Ticket world={world} units={desk.settings.value.units} />
        <section class="drive" aria-labelledby="next">
          <h2 id="next">{acknowledged ? 'You drive off' : 'The dispatcher waits'}</h2>
          {acknowledged ? (
            <>
              <p>
                <span class="stamp">Acknowledged {world.given.call.time}</span>
              </p>
              <p>You come to the pole. Where does the truck stand?</p>
              <p class="buttons">
                {playing.drill
                  .offers()
                  .filter(({ act }) => act.act === 'park')
                  .map((offer) => (
                    <button key={offer.label} type="button" class="primary" onClick={() => playing.send(offer.act)}>
                      {offer.label}
                    </button>
                  ))}
              </p>
            </>
          ) : (
            <p class="buttons">
              <button type="button" class="primary" onClick={() => playing.send({ act: 'acknowledge' })}>
                Acknowledge the call
              </button>
              <button type="button" onClick={() => desk.leave()}>
                Back to the start
              </button>
            </p>
          )}
          <h3>Radio and telephone</h3>
          <OfferedActs playing={playing} only={onTheWay} />
          <h3>Notes</h3>
          <div aria-live="polite">
            <Journal snapshot={snapshot} />
          </div>
        </section>
      </div>
    </main>
  );
};
