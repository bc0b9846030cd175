/** The sheet at the side with its four pages; folded away it leaves its tabs. */
import type { ComponentChildren } from 'preact';
import { type Desk, type Page, type Playing, pages } from '../types.ts';
import { capital } from '../words.ts';
import { ActsPage } from './ActsPage.tsx';
import { BriefingPage } from './BriefingPage.tsx';
import { FindingsPage } from './FindingsPage.tsx';
import { Journal } from './Journal.tsx';
import { Ticket } from './Ticket.tsx';

const CallPage = ({ desk, playing }: { desk: Desk; playing: Playing }) => (
  <>
    <Ticket world={playing.snapshot.value.world} units={desk.settings.value.units} />
    <h3>Notes</h3>
    <Journal snapshot={playing.snapshot.value} />
  </>
);

const bodies: Readonly<Record<Page, (props: { desk: Desk; playing: Playing }) => ComponentChildren>> = {
  findings: FindingsPage,
  briefing: BriefingPage,
  acts: ActsPage,
  call: CallPage,
};

export const SideSheet = ({ desk, playing }: { desk: Desk; playing: Playing }) => {
  const open = playing.sheetOpen.value;
  const page = playing.page.value;
  const Body = bodies[page];
  const take = (to: Page): void => {
    const shown = open && page === to;
    playing.page.value = to;
    playing.sheetOpen.value = !shown;
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const at = pages.findIndex((each) => `tab-${each}` === document.activeElement?.id);
    const last = pages.length - 1;
    const next = (at + 1) % pages.length;
    const before = (at + last) % pages.length;
    const to: Readonly<Record<string, number>> = {
      ArrowRight: next,
      ArrowDown: next,
      ArrowLeft: before,
      ArrowUp: before,
      Home: 0,
      End: last,
    };
    const tab = pages[to[event.key] ?? -1];
    if (tab === undefined || at < 0) return;
    event.preventDefault();
    playing.page.value = tab;
    document.getElementById(`tab-${tab}`)?.focus();
  };
  return (
    <section class="side" aria-label="Sheet">
      <div class="tab-row">
        <div role="tablist" aria-label="Pages of the sheet" class="tabs" onKeyDown={onKeyDown}>
          {pages.map((each) => (
            <button
              key={each}
              type="button"
              role="tab"
              id={`tab-${each}`}
              aria-selected={page === each}
              aria-controls="page"
              aria-expanded={page === each ? open : undefined}
              tabIndex={page === each ? 0 : -1}
              onClick={() => take(each)}
            >
              {capital(each)}
            </button>
          ))}
        </div>
        <button
          type="button"
          class="fold"
          aria-label={open ? 'Fold the sheet away' : 'Unfold the sheet'}
          onClick={() => {
            playing.sheetOpen.value = !open;
          }}
        >
          {open ? '▸' : '◂'}
        </button>
      </div>
      <div
        id="page"
        class="page paper"
        role="tabpanel"
        aria-labelledby={`tab-${page}`}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so it must be reached by keys
        tabIndex={0}
        hidden={!open}
      >
        {open && <Body desk={desk} playing={playing} />}
      </div>
    </section>
  );
};
