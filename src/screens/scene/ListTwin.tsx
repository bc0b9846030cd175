/**
 * The picture as a list: everything by pole and premises, from the top down, with what can be made out from here. It
 * shows no more than the picture does: a part tells its lines once it has been looked at, and the look is logged.
 */
import { useMemo, useRef, useState } from 'preact/hooks';
import type { Drill, Snapshot } from '../../drill/types.ts';
import { standById, trainee } from '../../engine/world/edit.ts';
import type { Desk, Playing } from '../types.ts';
import { shortName } from '../words.ts';
import { type Branch, branchesOf } from './branches.ts';

const treeItems = (tree: HTMLElement | null): HTMLElement[] => [
  ...(tree?.querySelectorAll<HTMLElement>('[role="treeitem"]') ?? []),
];

/** Parts that one chose to look at from here; what was noticed unasked does not mark the list. */
const looksHere = ({ stand }: Snapshot, drill: Drill): ReadonlySet<string> =>
  new Set(
    drill
      .replay()
      .steps.flatMap(({ entry: { act }, after }) =>
        act.act === 'look' && trainee(after).at === stand ? [act.part] : [],
      ),
  );

export const ListTwin = ({ desk, playing }: { desk: Desk; playing: Playing }) => {
  const snapshot = playing.snapshot.value;
  const { world, stand } = snapshot;
  const branches = useMemo(() => branchesOf(snapshot, playing.drill), [world]);
  const [folded, setFolded] = useState<ReadonlySet<string>>(new Set());
  const [current, setCurrent] = useState<string | null>(null);
  const tree = useRef<HTMLDivElement>(null);
  const seen = useMemo(() => looksHere(snapshot, playing.drill), [world]);
  const fold = (id: string, shut: boolean): void => {
    const next = new Set(folded);
    if (shut) next.add(id);
    else next.delete(id);
    setFolded(next);
  };
  const first = branches[0]?.id ?? '';
  const tabbed = current ?? first;
  const onKeyDown = (event: KeyboardEvent): void => {
    const item = (event.target as HTMLElement).closest<HTMLElement>('[role="treeitem"]');
    if (!item) return;
    const items = treeItems(tree.current);
    const at = items.indexOf(item);
    const id = item.dataset.id ?? '';
    const branch = branches.find((each) => each.id === id);
    const goto = (to: HTMLElement | undefined): void => to?.focus();
    const up = (): void => {
      if (branch) fold(id, true);
      else goto(item.parentElement?.closest<HTMLElement>('[role="treeitem"]') ?? undefined);
    };
    const moves: Readonly<Record<string, () => void>> = {
      ArrowDown: () => goto(items[at + 1]),
      ArrowUp: () => goto(items[at - 1]),
      Home: () => goto(items[0]),
      End: () => goto(items.at(-1)),
      ArrowLeft: up,
      ArrowRight: () => (branch && folded.has(id) ? fold(id, false) : branch ? goto(items[at + 1]) : undefined),
      Enter: () => (branch ? fold(id, !folded.has(id)) : playing.choose(id)),
      ' ': () => (branch ? fold(id, !folded.has(id)) : playing.choose(id)),
    };
    const move = moves[event.key];
    if (move === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    move();
  };
  const lines = (branch: Branch) => (
    // biome-ignore lint/a11y/useSemanticElements: the group of an ARIA tree
    <div role="group">
      {branch.entries.map(({ id, note }) => (
        // biome-ignore lint/a11y/useKeyWithClickEvents: the tree takes the keys for all its items
        <div
          key={id}
          id={`item-${id}`}
          role="treeitem"
          data-id={id}
          aria-selected={playing.chosen.value === id}
          tabIndex={tabbed === id ? 0 : -1}
          onFocus={(event) => {
            event.stopPropagation();
            setCurrent(id);
          }}
          onClick={(event) => {
            event.stopPropagation();
            playing.choose(id);
          }}
        >
          <span class="name">{shortName(world, id)}</span>
          <span class="note">{seen.has(id) ? 'looked at from here' : note}</span>
        </div>
      ))}
    </div>
  );
  const here = standById(world, stand)?.name ?? '';
  return (
    <section class="list-twin paper" aria-label="Everything in the picture">
      <header>
        <h2>From here: {here}</h2>
        {desk.scene.value.is === 'absent' ? (
          <p class="notice">
            {desk.scene.value.why} The list stands for it: everything in the picture is here, and the whole drill can be
            done from it.
          </p>
        ) : (
          <p class="hint">Choosing a part looks at it. Arrows move, right and left open and fold.</p>
        )}
      </header>
      <div role="tree" aria-label="Parts by pole and premises" ref={tree} onKeyDown={onKeyDown}>
        {branches.map((branch, index) => (
          // biome-ignore lint/a11y/useKeyWithClickEvents: the tree takes the keys for all its items
          <div
            key={branch.id}
            id={index === 0 ? 'list-first' : undefined}
            role="treeitem"
            data-id={branch.id}
            aria-expanded={!folded.has(branch.id)}
            aria-selected={false}
            tabIndex={tabbed === branch.id ? 0 : -1}
            onFocus={() => setCurrent(branch.id)}
            onClick={() => fold(branch.id, !folded.has(branch.id))}
          >
            <span class="name branch">{branch.name}</span>
            {!folded.has(branch.id) && lines(branch)}
          </div>
        ))}
      </div>
    </section>
  );
};
