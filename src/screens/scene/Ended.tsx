/** The drill has ended: the picture holds under one sober line, until the debrief is worked out. */
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Playing } from '../types.ts';

export const Ended = ({ playing }: { playing: Playing }) => {
  const dialog = useRef<HTMLDialogElement>(null);
  const { world, events } = playing.snapshot.value;
  useLayoutEffect(() => {
    const el = dialog.current;
    if (el && !el.open) el.showModal();
    return () => el?.close();
  }, []);
  const struck = world.ended === 'struck' ? events.filter(({ event }) => event === 'struck').at(-1) : undefined;
  return (
    <dialog
      ref={dialog}
      class="slip paper ended"
      aria-label="The drill has ended"
      onCancel={(event) => event.preventDefault()}
    >
      {struck !== undefined && (
        <p class="struck">
          <span class="signal danger-word">Danger</span> {struck.words}
        </p>
      )}
      <p role="status">Working out the debrief …</p>
    </dialog>
  );
};
