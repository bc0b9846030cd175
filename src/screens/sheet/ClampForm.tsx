/** Putting a set of clamps on: one clamp after the other, in the order in which they are chosen. */
import { useState } from 'preact/hooks';
import { pointWords } from '../../engine/acts/pointWords.ts';
import type { OfferedAct } from '../../engine/acts/types.ts';
import type { PointId } from '../../engine/world/types.ts';
import { focusIfLost } from '../scene/keys.ts';
import type { Playing } from '../types.ts';
import { capital } from '../words.ts';
import { nextClamps } from './inHand.ts';
import { ActList } from './OfferedActs.tsx';

const pointsOf = ({ act }: OfferedAct): readonly PointId[] => (act.act === 'ground' ? act.points : []);

const samePoints = (a: readonly PointId[], b: readonly PointId[]): boolean =>
  a.length === b.length && a.every((point, index) => b[index] === point);

export const ClampForm = ({ playing, offered }: { playing: Playing; offered: readonly OfferedAct[] }) => {
  const { world } = playing.snapshot.value;
  const [on, setOn] = useState<readonly PointId[]>([]);
  if (offered.length === 1) return <ActList playing={playing} offered={offered} />;
  const lists = offered.map(pointsOf);
  const ready = offered.find((each) => samePoints(pointsOf(each), on));
  const asked = [...on, null].filter((_, index) => nextClamps(lists, on.slice(0, index)).length > 0);
  return (
    <form
      class="clamps"
      onSubmit={(event) => {
        event.preventDefault();
        if (ready === undefined) return;
        playing.send(ready.act);
        if (playing.snapshot.value.refused === null) setOn([]);
        focusIfLost('page');
      }}
    >
      {asked.map((chosen, index) => (
        <label key={index}>
          {index === 0 ? 'First clamp on' : 'then on'}
          <select
            value={chosen ?? ''}
            onChange={(event) => {
              const { value } = event.currentTarget;
              setOn([...on.slice(0, index), ...(value === '' ? [] : [value])]);
            }}
          >
            <option value="">…</option>
            {nextClamps(lists, on.slice(0, index)).map((point) => (
              <option key={point} value={point}>
                {capital(pointWords(world, point))}
              </option>
            ))}
          </select>
        </label>
      ))}
      <p class="buttons">
        <button type="submit" class="primary" disabled={ready === undefined}>
          Put the clamps on{ready === undefined ? '' : `, ${ready.minutes} min`}
        </button>
      </p>
    </form>
  );
};
