/** Acts by stick or by hand: first what is taken in the hand, then the part and the end of it. */
import { endWords } from '../../engine/acts/pointWords.ts';
import type { OfferedAct } from '../../engine/acts/types.ts';
import { focusIfLost } from '../scene/keys.ts';
import type { Desk, Playing, Taken } from '../types.ts';
import { capital, nameOf } from '../words.ts';
import { foldersOf } from './actGroups.ts';
import { ClampForm } from './ClampForm.tsx';
import { doneWith, heldOf, labelInHand, sticksIn, toolsIn } from './inHand.ts';
import { ActList } from './OfferedActs.tsx';
import { ToolNotes } from './ToolNotes.tsx';

type Reach = 'stick' | 'hands';

const Pick = ({
  desk,
  playing,
  legend,
  ids,
  none,
  held,
  take,
}: {
  desk: Desk;
  playing: Playing;
  legend: string;
  ids: readonly (string | null)[];
  /** What no tool is called. */
  none: string;
  held: string | null;
  take: (id: string | null) => void;
}) => (
  <fieldset class="pick">
    <legend>{legend}</legend>
    {ids.map((id) => (
      <button key={id ?? ''} type="button" aria-pressed={id === held} onClick={() => take(id)}>
        {id === null ? none : capital(nameOf(playing.snapshot.value.world, id))}
        {id !== null && <ToolNotes desk={desk} world={playing.snapshot.value.world} tool={id} />}
      </button>
    ))}
  </fieldset>
);

/** A row for each part, a button for each of its bare ends. */
const Ends = ({ playing, verb, offered }: { playing: Playing; verb: string; offered: readonly OfferedAct[] }) => {
  const { world } = playing.snapshot.value;
  const parts = [...new Set(offered.map(({ about }) => about ?? ''))];
  return (
    <ul class="ends" aria-label={verb}>
      {parts.map((part) => (
        <li key={part}>
          <span>{capital(nameOf(world, part))}</span>
          <span class="buttons">
            {offered
              .filter(({ about }) => about === part)
              .map(({ act, label }) =>
                act.act === 'test' || act.act === 'touch' ? (
                  <button
                    key={act.point}
                    type="button"
                    aria-label={label}
                    onClick={() => {
                      playing.send(act);
                      focusIfLost('page');
                    }}
                  >
                    {verb} {endWords(world, act.point)}
                  </button>
                ) : null,
              )}
          </span>
        </li>
      ))}
    </ul>
  );
};

const sorted = (offered: readonly OfferedAct[]) => ({
  tests: offered.filter(({ act }) => act.act === 'test'),
  touches: offered.filter(({ act }) => act.act === 'touch'),
  clamps: offered.filter(({ act }) => act.act === 'ground'),
  rest: offered.filter(({ act }) => act.act !== 'test' && act.act !== 'touch' && act.act !== 'ground'),
});

const Held = ({ playing, by, offered }: { playing: Playing; by: Reach; offered: readonly OfferedAct[] }) => {
  const { world } = playing.snapshot.value;
  const { tests, touches, clamps, rest } = sorted(offered);
  const short = rest.map((each) => ({ ...each, label: labelInHand(world, each) }));
  return (
    <>
      {foldersOf(world, by, short).map(({ id, title, offered: acts }) =>
        title === null ? (
          <ActList key={id} playing={playing} offered={acts} />
        ) : (
          <details key={id} class="folder">
            <summary>
              {title} <span class="note">{acts.length}</span>
            </summary>
            <ActList playing={playing} offered={acts} />
          </details>
        ),
      )}
      {tests.length > 0 && <Ends playing={playing} verb="Test" offered={tests} />}
      {clamps.length > 0 && <ClampForm key={clamps[0]?.label} playing={playing} offered={clamps} />}
      {touches.length > 0 && (
        <details class="folder">
          <summary>
            Touch with the hand <span class="note">{touches.length}</span>
          </summary>
          <Ends playing={playing} verb="Touch" offered={touches} />
        </details>
      )}
    </>
  );
};

export const HandActs = ({
  desk,
  playing,
  by,
  offered,
}: {
  desk: Desk;
  playing: Playing;
  by: Reach;
  offered: readonly OfferedAct[];
}) => {
  const held = heldOf(by, playing.taken.value, offered);
  const tool = by === 'stick' ? held.onStick : held.inHand;
  const take = (taken: Partial<Taken>): void => {
    playing.taken.value = { ...playing.taken.value, ...taken };
  };
  const ofStick = by === 'hands' ? offered : offered.filter(({ act }) => 'stick' in act && act.stick === held.stick);
  const tools = toolsIn(by === 'stick' && held.stick === null ? offered : ofStick);
  return (
    <div class="hand-acts">
      {by === 'stick' && (
        <Pick
          desk={desk}
          playing={playing}
          legend="Take a stick"
          ids={sticksIn(offered)}
          none=""
          held={held.stick}
          take={(stick) => take({ stick })}
        />
      )}
      {(by === 'hands' || held.stick !== null) && tools.length > 1 && (
        <Pick
          desk={desk}
          playing={playing}
          legend={by === 'stick' ? 'On the stick' : 'In the hand'}
          ids={tools}
          none={by === 'stick' ? 'Nothing but its hook' : 'Nothing'}
          held={tool}
          take={(id) => take(by === 'stick' ? { onStick: id } : { inHand: id })}
        />
      )}
      {by === 'stick' && held.stick === null ? (
        <p class="hint">Then what goes on it, and the part.</p>
      ) : (
        <Held playing={playing} by={by} offered={doneWith(offered, held.stick, tool)} />
      )}
    </div>
  );
};
