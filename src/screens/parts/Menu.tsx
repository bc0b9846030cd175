/** A button that opens a short list of buttons; arrows move in it, Escape and a choice bring focus back. */
import type { ComponentChildren } from 'preact';
import { useId, useLayoutEffect, useRef } from 'preact/hooks';

export interface MenuItem {
  readonly id: string;
  readonly label: string;
  readonly note?: string;
  readonly run: () => void;
}

export interface MenuProps {
  readonly label: ComponentChildren;
  readonly name: string;
  readonly items: readonly MenuItem[];
  readonly empty: string;
  readonly open: boolean;
  readonly setOpen: (open: boolean) => void;
}

export const Menu = ({ label, name, items, empty, open, setOpen }: MenuProps) => {
  const id = useId();
  const button = useRef<HTMLButtonElement>(null);
  const list = useRef<HTMLDivElement>(null);
  const entries = (): HTMLElement[] => [...(list.current?.querySelectorAll<HTMLElement>('[role="menuitem"]') ?? [])];
  useLayoutEffect(() => {
    if (!open) return;
    entries()[0]?.focus();
    const away = (event: PointerEvent): void => {
      const target = event.target as Node;
      if (!list.current?.contains(target) && !button.current?.contains(target)) setOpen(false);
    };
    document.addEventListener('pointerdown', away);
    return () => document.removeEventListener('pointerdown', away);
  }, [open]);
  const close = (): void => {
    setOpen(false);
    button.current?.focus();
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const all = entries();
    const at = all.indexOf(document.activeElement as HTMLElement);
    const to: Readonly<Record<string, number>> = {
      ArrowDown: (at + 1) % all.length,
      ArrowUp: (at - 1 + all.length) % all.length,
      Home: 0,
      End: all.length - 1,
    };
    const next = to[event.key];
    if (event.key === 'Escape') {
      event.preventDefault();
      close();
    } else if (event.key === 'Tab') {
      setOpen(false);
    } else if (next !== undefined) {
      event.preventDefault();
      all[next]?.focus();
    }
    event.stopPropagation();
  };
  return (
    <div class="menu">
      <button
        ref={button}
        type="button"
        aria-haspopup="menu"
        aria-expanded={open}
        aria-controls={id}
        onClick={() => setOpen(!open)}
      >
        {label}
      </button>
      {open && (
        <div
          id={id}
          ref={list}
          role="menu"
          tabIndex={-1}
          aria-label={name}
          class="menu-list paper"
          onKeyDown={onKeyDown}
        >
          {items.length === 0 && <p class="hint">{empty}</p>}
          {items.map((item) => (
            <button
              key={item.id}
              type="button"
              role="menuitem"
              tabIndex={-1}
              onClick={() => {
                close();
                item.run();
              }}
            >
              <span>{item.label}</span>
              {item.note && <span class="note">{item.note}</span>}
            </button>
          ))}
        </div>
      )}
    </div>
  );
};
