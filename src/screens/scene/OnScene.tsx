/** On scene: the picture, what was perceived, the strip below and the sheet at the side. */
import { useEffect, useLayoutEffect } from 'preact/hooks';
import { SideSheet } from '../sheet/SideSheet.tsx';
import type { Desk, Playing } from '../types.ts';
import { Ended } from './Ended.tsx';
import { EndSlip } from './EndSlip.tsx';
import { KeysSlip } from './KeysSlip.tsx';
import { focusIfLost, keyRun } from './keys.ts';
import { ListTwin } from './ListTwin.tsx';
import { Notices } from './Notices.tsx';
import { PartCard } from './PartCard.tsx';
import { Picture } from './Picture.tsx';
import { Strip } from './Strip.tsx';

export const OnScene = ({ desk, playing }: { desk: Desk; playing: Playing }) => {
  // Before the next paint: a key pressed at once must not be lost.
  useLayoutEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      const run = keyRun(event, desk.settings.value.letterKeys, playing);
      if (run === null) return;
      event.preventDefault();
      run();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [playing, desk]);
  useEffect(() => focusIfLost(document.getElementById('picture') === null ? 'list-first' : 'picture'), [playing]);
  const scene = desk.scene.value;
  const listStands = scene.is === 'absent' || playing.listOpen.value;
  return (
    <main class="on-scene" data-sheet={playing.sheetOpen.value ? 'open' : 'folded'}>
      <h1 class="sr-only">{playing.snapshot.value.world.given.title}</h1>
      <div class="view" data-list={listStands ? 'stands' : undefined}>
        <Picture desk={desk} playing={playing} />
        {listStands && <ListTwin desk={desk} playing={playing} />}
        <div class="below">
          <Notices playing={playing} />
          <PartCard desk={desk} playing={playing} beside={listStands} />
        </div>
      </div>
      <SideSheet desk={desk} playing={playing} />
      <Strip playing={playing} />
      {playing.dialog.value === 'keys' && <KeysSlip playing={playing} />}
      {(playing.dialog.value === 'hand-over' || playing.dialog.value === 'close-out') && <EndSlip playing={playing} />}
      {playing.snapshot.value.stage === 'debrief' && <Ended playing={playing} />}
    </main>
  );
};
