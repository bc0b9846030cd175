/** What can be done from here, by what reaches; the foolish ones too, in the same type. */
import type { Desk, Playing } from '../types.ts';
import { nameOf } from '../words.ts';
import { type ActGroup, actGroups, type Folder } from './actGroups.ts';
import { HandActs } from './HandActs.tsx';
import { ActList } from './OfferedActs.tsx';
import { ToolNotes } from './ToolNotes.tsx';

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
  return (
    <details class="folder" open={open}>
      <summary>
        <span class="note">{folder.offered.length}</span>
        {folder.title}
        {folder.tool !== null && <ToolNotes desk={desk} world={playing.snapshot.value.world} tool={folder.tool} />}
      </summary>
      {list}
    </details>
  );
};

/** So many acts are shown unfolded when one has searched for them. */
const readable = 24;

/** So few need no choice of tool before them. */
const few = 8;

const GroupOfActs = ({
  desk,
  playing,
  group,
  open,
}: {
  desk: Desk;
  playing: Playing;
  group: ActGroup;
  open: boolean;
}) => {
  const { by, count, offered, folders } = group;
  const byHand = by === 'stick' || by === 'hands';
  // Who searches by words wants every tool's acts; who opens the group takes a tool first.
  if (byHand && count > few && playing.actFilter.value.trim() === '')
    return <HandActs desk={desk} playing={playing} by={by} offered={offered} />;
  return (
    <>
      {folders.map((folder) => (
        <FolderOfActs key={`${folder.id}${open}`} desk={desk} playing={playing} folder={folder} open={open} />
      ))}
    </>
  );
};

export const ActsPage = ({ desk, playing }: { desk: Desk; playing: Playing }) => {
  const { world } = playing.snapshot.value;
  const filter = playing.actFilter.value;
  const only = playing.actBy.value;
  const about = playing.actAbout.value;
  const groups = actGroups(world, playing.drill.offers(), { filter, only, about });
  const narrowed = filter.trim() !== '' || only !== null || about !== null;
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
              playing.actAbout.value = null;
            }}
          >
            Show all acts
          </button>
        )}
      </div>
      {about !== null && (
        <p class="meta">
          On: <b>{nameOf(world, about)}</b>
        </p>
      )}
      {groups.length === 0 && (
        <p class="hint">Nothing like that can be done from here. Walk elsewhere, or show all acts.</p>
      )}
      {groups.map((group) => (
        <details key={`${group.by}${narrowed}`} class="reach" open={narrowed || group.count <= 3}>
          <summary>
            <span class="note">{group.count}</span>
            {group.title}
          </summary>
          <GroupOfActs desk={desk} playing={playing} group={group} open={narrowed && total <= readable} />
        </details>
      ))}
    </>
  );
};
