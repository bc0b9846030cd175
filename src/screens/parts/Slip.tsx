/** A question on a slip of paper before the rest; the browser's own dialog keeps focus in it and gives it back. */
import type { ComponentChildren } from 'preact';
import { useId, useLayoutEffect, useRef } from 'preact/hooks';

export interface SlipProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ComponentChildren;
}

export const Slip = ({ title, onClose, children }: SlipProps) => {
  const id = useId();
  const dialog = useRef<HTMLDialogElement>(null);
  useLayoutEffect(() => {
    const el = dialog.current;
    const before = document.activeElement;
    if (el && !el.open) el.showModal();
    return () => {
      if (el?.open) el.close();
      if (before instanceof HTMLElement && before.isConnected) before.focus();
    };
  }, []);
  return (
    <dialog ref={dialog} class="slip paper" aria-labelledby={id} onClose={onClose}>
      <h2 id={id}>{title}</h2>
      {children}
    </dialog>
  );
};
