/** Offered acts as plain buttons, all in the same type; the minutes that each takes stand beside it. */
import type { OfferedAct } from '../../engine/acts/types.ts';
import { focusIfLost } from '../scene/keys.ts';
import type { Playing } from '../types.ts';

const minutes = (n: number): string => (n === 0 ? '' : `${n} min`);

const ActButton = ({ offered, playing }: { offered: OfferedAct; playing: Playing }) => {
  const { act, label } = offered;
  const ends = act.act === 'hand-over' || act.act === 'close-out' ? act.act : null;
  const run = (): void => {
    if (ends !== null) {
      playing.dialog.value = ends;
      return;
    }
    playing.send(act);
    focusIfLost('page');
  };
  return (
    <button type="button" class="act" onClick={run}>
      <span>{label}</span>
      <span class="note">{minutes(offered.minutes)}</span>
    </button>
  );
};

export const ActList = ({ playing, offered }: { playing: Playing; offered: readonly OfferedAct[] }) => (
  <ul class="acts">
    {offered.map((each) => (
      <li key={JSON.stringify(each.act)}>
        <ActButton offered={each} playing={playing} />
      </li>
    ))}
  </ul>
);
