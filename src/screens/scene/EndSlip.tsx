/** Ending the drill is asked once, because nothing follows it. */
import { Slip } from '../parts/Slip.tsx';
import type { Playing } from '../types.ts';

const slips = {
  'hand-over': {
    title: 'Stop work and hand over?',
    says: 'You leave the place as it stands now, with what you reported, guarded and tagged. Stopping is always right when you doubt.',
    yes: 'Hand over',
  },
  'close-out': {
    title: 'Close the call out?',
    says: 'You tell the dispatcher that the work is done and leave the place as it stands now.',
    yes: 'Close out',
  },
} as const;

export const EndSlip = ({ playing }: { playing: Playing }) => {
  const act = playing.dialog.value === 'close-out' ? 'close-out' : 'hand-over';
  const { title, says, yes } = slips[act];
  const close = (): void => {
    playing.dialog.value = null;
  };
  return (
    <Slip title={title} onClose={close}>
      <p>{says}</p>
      <p class="buttons">
        <button
          type="button"
          class="primary"
          onClick={() => {
            close();
            playing.send({ act });
          }}
        >
          {yes}
        </button>
        <button type="button" onClick={close}>
          Go on working
        </button>
      </p>
    </Slip>
  );
};
