/** Fields of the cards: what is typed is kept as typed, read by the engine, and a slip is answered beside the field. */
import { useId, useState } from 'preact/hooks';
import { isIsoDate } from '../../engine/standards/testInterval.ts';
import { format, type UnitSystem } from '../../engine/units/formatQuantity.ts';
import { parseQuantity } from '../../engine/units/parseQuantity.ts';
import type { Dimension } from '../../engine/units/unitTable.ts';

/** A typed value: the text, what it means, or why it means nothing. */
export interface Typed<T> {
  readonly text: string;
  readonly set: (text: string) => void;
  readonly value: T | null;
  readonly problem: string | null;
}

/** What a quantity may be; the message names what was found and what is expected. */
export interface Range {
  readonly least?: number;
  /** The least value itself is too small. */
  readonly above?: boolean;
  readonly most?: number;
  /** Why there is an end: 'Table R-7 ends there'. */
  readonly because?: string;
}

const outside = (
  value: number,
  { least, above, most, because }: Range,
  words: (v: number) => string,
): string | null => {
  const why = because === undefined ? '' : ` (${because})`;
  if (least !== undefined && (value < least || (above === true && value === least))) {
    return `found ${words(value)}; expected ${above === true ? 'more than' : 'at least'} ${words(least)}${why}`;
  }
  return most !== undefined && value > most ? `found ${words(value)}; expected at most ${words(most)}${why}` : null;
};

/** State of a field for a quantity of a dimension. */
export const useQuantity = (
  start: string,
  dimension: Dimension,
  system: UnitSystem,
  range: Range = {},
): Typed<number> => {
  const [text, set] = useState(start);
  const parsed = parseQuantity(text, dimension);
  if (!parsed.ok) return { text, set, value: null, problem: parsed.message };
  const problem = outside(parsed.value, range, (value) => format(value, dimension, system));
  return { text, set, value: problem === null ? parsed.value : null, problem };
};

/** State of a field for a day. */
export const useDay = (start: string): Typed<string> => {
  const [text, set] = useState(start);
  const day = text.trim();
  const ok = isIsoDate(day);
  const found = day === '' ? 'nothing' : `"${day}"`;
  return {
    text,
    set,
    value: ok ? day : null,
    problem: ok ? null : `found ${found}; expected a day that exists, for example 2026-10-13`,
  };
};

export const Field = ({ label, typed, hint }: { label: string; typed: Typed<unknown>; hint?: string }) => {
  const id = useId();
  const told = typed.problem !== null || hint !== undefined;
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="text"
        autocomplete="off"
        spellcheck={false}
        value={typed.text}
        aria-invalid={typed.problem !== null}
        aria-describedby={told ? `${id}-told` : undefined}
        onInput={(event) => typed.set(event.currentTarget.value)}
      />
      {told && (
        <p id={`${id}-told`} class={typed.problem === null ? 'hint' : 'problem'} aria-live="polite">
          {typed.problem ?? hint}
        </p>
      )}
    </div>
  );
};

export interface PickProps<T extends string> {
  readonly label: string;
  readonly options: readonly (readonly [value: T, words: string])[];
  readonly value: T;
  readonly onPick: (value: T) => void;
}

export const Pick = <T extends string>({ label, options, value, onPick }: PickProps<T>) => {
  const id = useId();
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <select
        id={id}
        value={value}
        onChange={(event) => {
          const picked = options.find(([each]) => each === event.currentTarget.value);
          if (picked) onPick(picked[0]);
        }}
      >
        {options.map(([each, words]) => (
          <option key={each} value={each}>
            {words}
          </option>
        ))}
      </select>
    </div>
  );
};

export const Tick = ({ label, on, set }: { label: string; on: boolean; set: (on: boolean) => void }) => (
  <label>
    <input type="checkbox" checked={on} onChange={(event) => set(event.currentTarget.checked)} />
    {label}
  </label>
);

/** A length in the reader's units with the other system's beside it. */
export const lengthBoth = (metres: number, system: UnitSystem): string =>
  metres === 0
    ? format(0, 'length', system)
    : `${format(metres, 'length', system)} (${format(metres, 'length', system === 'us' ? 'metric' : 'us')})`;

const up = (value: number): string => (Math.ceil(value * 100 - 1e-6) / 100).toString();

/** A distance to keep, never rounded down: hundredths of a foot and of a metre, upward, as the rule's own tables do. */
export const distanceBoth = (metres: number, system: UnitSystem): string => {
  const [feet, inMetres] = [`${up(metres / 0.3048)} ft`, `${up(metres)} m`];
  return system === 'us' ? `${feet} (${inMetres})` : `${inMetres} (${feet})`;
};
