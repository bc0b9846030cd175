/** The strip along the bottom: where one stands, what one looks with, clock and customers out, the radio. */
import { useEffect, useState } from 'preact/hooks';
import type { Aid } from '../../engine/senses/types.ts';
import { aids } from '../../engine/senses/types.ts';
import { standById } from '../../engine/world/edit.ts';
import { Menu } from '../parts/Menu.tsx';
import type { Playing } from '../types.ts';
import { capital, clockAt } from '../words.ts';
import { focusSoon, showRadio } from './keys.ts';

const aidNames: Readonly<Record<Aid, string>> = { eyes: 'Eyes', lamp: 'Lamp', glass: 'Glass' };

const Walk = ({ playing }: { playing: Playing }) => {
  const [open, setOpen] = useState(false);
  const { world, stand } = playing.snapshot.value;
  useEffect(() => setOpen(false), [stand]);
  const items = playing.drill
    .offers()
    .filter(({ act }) => act.act === 'go' || act.act === 'aloft' || act.act === 'come-down')
    .map((offered) => ({
      id: offered.label,
      label: capital(offered.label.replace(/^Walk to: /, '')),
      note: `${offered.minutes} min`,
      run: () => playing.send(offered.act),
    }));
  const here = standById(world, stand)?.name ?? 'nowhere yet';
  return (
    <div class="walk">
      <Menu
        name="Walk to"
        label={
          <>
            <span class="label">You stand</span>
            <span class="value">{capital(here)}</span>
            <span class="sr-only">. Walk to …</span>
          </>
        }
        items={items}
        empty="You cannot walk anywhere from here."
        open={open}
        setOpen={setOpen}
      />
    </div>
  );
};

export const Strip = ({ playing }: { playing: Playing }) => {
  const { world, customersOut } = playing.snapshot.value;
  return (
    <section class="strip" aria-label="Where, what with, clock, radio">
      <Walk playing={playing} />
      <fieldset class="aids">
        <legend class="sr-only">Look with</legend>
        {aids.map((aid) => (
          <button
            key={aid}
            type="button"
            aria-pressed={playing.aid.value === aid}
            onClick={() => {
              playing.aid.value = aid;
            }}
          >
            {aidNames[aid]}
          </button>
        ))}
      </fieldset>
      <p class="clock">
        <span class="label">Clock</span>
        <time class="value">{clockAt(world, world.clock.minute)}</time>
        {playing.until !== null && <span class="way"> exam until {clockAt(world, playing.until)}</span>}
        {(playing.way === 'practice' || playing.way === 'shown') && <span class="way"> practice</span>}
      </p>
      <p class="out">
        <span class="label">Customers out</span>
        <span class="value">{customersOut}</span>
      </p>
      <div class="tools">
        <button type="button" onClick={() => showRadio(playing)}>
          Radio
        </button>
        <button
          type="button"
          aria-pressed={playing.listOpen.value}
          onClick={() => {
            playing.listOpen.value = !playing.listOpen.value;
            if (playing.listOpen.value) focusSoon('list-first');
          }}
        >
          List
        </button>
        <button
          type="button"
          onClick={() => {
            playing.dialog.value = 'hand-over';
          }}
        >
          Stop
        </button>
        <button
          type="button"
          class="keys-button"
          aria-label="Keys"
          onClick={() => {
            playing.dialog.value = 'keys';
          }}
        >
          ?
        </button>
      </div>
    </section>
  );
};
