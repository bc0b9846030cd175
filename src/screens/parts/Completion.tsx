/** A field that completes what is typed from a list, after so many letters; arrows, Enter and Escape as the ARIA combobox has it. */
import { useId, useState } from 'preact/hooks';

export interface Choice {
  readonly id: string;
  readonly label: string;
}

export interface CompletionProps {
  readonly label: string;
  readonly choices: readonly Choice[];
  /** Letters after which the list opens. */
  readonly after: number;
  readonly value: string;
  readonly onInput: (text: string) => void;
  readonly onPick: (choice: Choice) => void;
  readonly hint?: string;
}

const most = 12;

/** Choices that hold every typed word; those that begin with the text come first. */
export const matching = (choices: readonly Choice[], typed: string, after: number): readonly Choice[] => {
  const text = typed.trim().toLowerCase();
  if (text.length < after) return [];
  const words = text.split(/\s+/);
  const holds = choices.filter(({ label }) => words.every((word) => label.toLowerCase().includes(word)));
  const begins = (choice: Choice): boolean => choice.label.toLowerCase().startsWith(text);
  return [...holds.filter(begins), ...holds.filter((choice) => !begins(choice))].slice(0, most);
};

export const Completion = ({ label, choices, after, value, onInput, onPick, hint }: CompletionProps) => {
  const id = useId();
  const [open, setOpen] = useState(false);
  const [at, setAt] = useState(0);
  const found = open ? matching(choices, value, after) : [];
  const active = Math.min(at, found.length - 1);
  const pick = (choice: Choice): void => {
    onPick(choice);
    setOpen(false);
    setAt(0);
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const choice = found[active];
    if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
      event.preventDefault();
      setOpen(true);
      const step = event.key === 'ArrowDown' ? 1 : -1;
      setAt(found.length === 0 ? 0 : (active + step + found.length) % found.length);
    } else if (event.key === 'Enter' && choice) {
      event.preventDefault();
      pick(choice);
    } else if (event.key === 'Escape' && found.length > 0) {
      event.preventDefault();
      event.stopPropagation();
      setOpen(false);
    }
  };
  const nothing = open && value.trim().length >= after && found.length === 0;
  return (
    <div class="completion">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="text"
        role="combobox"
        autocomplete="off"
        spellcheck={false}
        aria-expanded={found.length > 0}
        aria-controls={`${id}-list`}
        aria-autocomplete="list"
        aria-describedby={hint ? `${id}-hint` : undefined}
        aria-activedescendant={found.length > 0 ? `${id}-${active}` : undefined}
        value={value}
        onInput={(event) => {
          onInput(event.currentTarget.value);
          setOpen(true);
          setAt(0);
        }}
        onKeyDown={onKeyDown}
        onBlur={() => setOpen(false)}
      />
      {hint && (
        <p class="hint" id={`${id}-hint`}>
          {nothing ? 'Nothing on the list reads like that.' : hint}
        </p>
      )}
      <div id={`${id}-list`} role="listbox" aria-label={label} class="choices" hidden={found.length === 0}>
        {found.map((choice, index) => (
          // biome-ignore lint/a11y/useKeyWithClickEvents: the field above takes the keys for the whole list
          // biome-ignore lint/a11y/useFocusableInteractive: focus stays in the field, which points at the active option
          <div
            key={choice.id}
            id={`${id}-${index}`}
            role="option"
            aria-selected={index === active}
            onMouseDown={(event) => event.preventDefault()}
            onClick={() => pick(choice)}
          >
            {choice.label}
          </div>
        ))}
      </div>
    </div>
  );
};
