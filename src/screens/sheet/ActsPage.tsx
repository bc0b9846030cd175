/** What can be done from here, by what reaches; the foolish ones too, in the same type. */
import { format, type UnitSystem } from '../../engine/units/formatQuantity.ts';
import { toolById } from '../../engine/world/edit.ts';
import type { World } from '../../engine/world/types.ts';
import type { Desk, Playing } from '../types.ts';
import { actGroups, type Folder } from './actGroups.ts';
import { ActList } from './OfferedActs.tsx';

/** A tool's tag, once it was read. */
const tagOf = (world: World, id: string | null, units: UnitSystem): string | null => {
  const tool = id === null ? null : toolById(world, id);
  if (!tool || tool.checks['read-tag'] === undefined) return null;
  const rated = tool.ratedVolts === null ? '' : `rated ${format(tool.ratedVolts, 'voltage', units)}`;
  return [tool.tested === null ? 'no test date' : `tested ${tool.tested}`, rated].filter(Boolean).join(', ');
};

const FolderOfActs = ({
  desk,
  playing,
  folder,
  open,
}: {
  desk: Desk;
  playing: Playing;
  folder: Folder;
  open: boolean;
}) => {
  const list = <ActList playing={playing} offered={folder.offered} />;
  if (folder.title === null) return list;
  const tag = tagOf(playing.snapshot.value.world, folder.tool, desk.settings.value.units);
  return (
    <details class="folder" open={open}>
      <summary>
        {folder.title} {tag !== null && <span class="tag">{tag}</span>}{' '}
        <span class="note">{folder.offered.length}</span>
      </summary>
      {list}
    </details>
  );
};

/** So many acts are shown unfolded when one has searched for them. */
const readable = 24;

export const ActsPage = ({ desk, playing }: { desk: Desk; playing: Playing }) => {
  const { world } = playing.snapshot.value;
  const filter = playing.actFilter.value;
  const only = playing.actBy.value;
  const groups = actGroups(world, playing.drill.offers(), filter, only);
  const narrowed = filter.trim() !== '' || only !== null;
  const total = groups.reduce((sum, { count }) => sum + count, 0);
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
      {groups.length === 0 && (
        <p class="hint">Nothing like that can be done from here. Walk elsewhere, or show all acts.</p>
      )}
      {groups.map(({ by, title, count, folders }) => (
        <details key={`${by}${narrowed}`} class="reach" open={narrowed || count <= 3}>
          <summary>
            {title} <span class="note">{count}</span>
          </summary>
          {folders.map((folder) => (
            <FolderOfActs
              key={`${folder.id}${narrowed}`}
              desk={desk}
              playing={playing}
              folder={folder}
              open={narrowed && total <= readable}
            />
          ))}
        </details>
      ))}
    </>
  );
};
