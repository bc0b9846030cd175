/** What can be done from here, by what reaches; the foolish ones too, in the same type. */
import type { OfferedAct } from '../../engine/acts/types.ts';
import { format, type UnitSystem } from '../../engine/units/formatQuantity.ts';
import { toolById } from '../../engine/world/edit.ts';
import type { World } from '../../engine/world/types.ts';
import type { Desk, Playing } from '../types.ts';
import { nameOf } from '../words.ts';
import { ActButton } from './OfferedActs.tsx';

/** In the order in which they stand on the page. */
const reaches: readonly (readonly [by: OfferedAct['by'], title: string])[] = [
  ['eyes', 'Eyes and ears'],
  ['feet', 'On foot, and time'],
  ['radio', 'Radio and telephone'],
  ['talk', 'Talking to people here'],
  ['truck', 'Truck'],
  ['tools', 'Tools and wear'],
  ['stick', 'By stick'],
  ['hands', 'By hand'],
  ['paper', 'On paper'],
];

const isWritten = ({ act }: OfferedAct): boolean => act.act === 'withdraw-finding' || act.act === 'withdraw-plan';

/** Every typed word occurs in the label or the name of what it is about. */
const holds = (world: World, filter: string) => {
  const words = filter.trim().toLowerCase().split(/\s+/).filter(Boolean);
  return ({ label, about }: OfferedAct): boolean => {
    const text = `${label} ${about === null ? '' : nameOf(world, about)}`.toLowerCase();
    return words.every((word) => text.includes(word));
  };
};

/** A tool's tag, once it was read. */
const tagOf = (world: World, id: string | null, units: UnitSystem): string | null => {
  const tool = id === null ? null : toolById(world, id);
  if (!tool || tool.checks['read-tag'] === undefined) return null;
  const rated = tool.ratedVolts === null ? '' : `rated ${format(tool.ratedVolts, 'voltage', units)}`;
  return [tool.tested === null ? 'no test date' : `tested ${tool.tested}`, rated].filter(Boolean).join(', ');
};

const Tools = ({ desk, playing, offered }: { desk: Desk; playing: Playing; offered: readonly OfferedAct[] }) => {
  const { world } = playing.snapshot.value;
  const ids = [...new Set(offered.map(({ about }) => about))];
  return (
    <>
      {ids.map((id) => {
        const tag = tagOf(world, id, desk.settings.value.units);
        return (
          <div key={id ?? ''} class="tool">
            {id !== null && (
              <p class="tool-name">
                {nameOf(world, id)} {tag !== null && <span class="tag">{tag}</span>}
              </p>
            )}
            <List playing={playing} offered={offered.filter(({ about }) => about === id)} />
          </div>
        );
      })}
    </>
  );
};

const List = ({ playing, offered }: { playing: Playing; offered: readonly OfferedAct[] }) => (
  <ul class="acts">
    {offered.map((each) => (
      <li key={`${each.label}${JSON.stringify(each.act)}`}>
        <ActButton offered={each} playing={playing} />
      </li>
    ))}
  </ul>
);

export const ActsPage = ({ desk, playing }: { desk: Desk; playing: Playing }) => {
  const { world, refused } = playing.snapshot.value;
  const filter = playing.actFilter.value;
  const only = playing.actBy.value;
  const fits = holds(world, filter);
  const offered = playing.drill.offers().filter((each) => !isWritten(each) && fits(each));
  const groups = reaches
    .filter(([by]) => only === null || only === by)
    .map(([by, title]) => ({ by, title, offered: offered.filter((each) => each.by === by) }))
    .filter((group) => group.offered.length > 0);
  const narrowed = filter.trim() !== '' || only !== null;
  return (
    <>
      <h2>Acts</h2>
      <div class="filter">
        <label for="act-filter">Find an act</label>
        <input
          id="act-filter"
          type="search"
          autocomplete="off"
          value={filter}
          onInput={(event) => {
            playing.actFilter.value = event.currentTarget.value;
          }}
        />
        {narrowed && (
          <button
            type="button"
            onClick={() => {
              playing.actFilter.value = '';
              playing.actBy.value = null;
            }}
          >
            Show all acts
          </button>
        )}
      </div>
      {refused !== null && <p class="refused">Not possible: {refused}.</p>}
      {groups.length === 0 && (
        <p class="hint">Nothing like that can be done from here. Walk elsewhere, or show all acts.</p>
      )}
      {groups.map(({ by, title, offered: those }) => (
        <details key={by} class="reach" open={narrowed || those.length <= 6}>
          <summary>
            {title} <span class="note">{those.length}</span>
          </summary>
          {by === 'tools' ? (
            <Tools desk={desk} playing={playing} offered={those} />
          ) : (
            <List playing={playing} offered={those} />
          )}
        </details>
      ))}
    </>
  );
};
