/** Calling a finding: on this, that condition, typed; the trade's list opens after three letters. No bell for right or wrong. */
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { findPart } from '../../engine/world/edit.ts';
import { Completion } from '../parts/Completion.tsx';
import type { Desk, Playing } from '../types.ts';
import { callables, conditionsOn, nameOf } from '../words.ts';

export interface CallFindingProps {
  readonly desk: Desk;
  readonly playing: Playing;
  /** What it is called on; null: to be chosen. */
  readonly on: string | null;
  /** A finding on the sheet that this one takes the place of. */
  readonly replaces?: string;
  readonly onDone: () => void;
}

/** Share of certainty; the words are what one says in the field. */
const sureness = [
  [null, 'not said'],
  [0.5, 'could be, half and half'],
  [0.75, 'fairly sure'],
  [0.95, 'as good as certain'],
] as const;

/** The look that calling a finding rests on, unless it was had from here already. */
const lookFirst = (playing: Playing, on: string): void => {
  const { world, stand } = playing.snapshot.value;
  const had = world.knowledge.looks.some((look) => look.part === on && look.stand === stand);
  if (findPart(world, on) !== null && !had) playing.send({ act: 'look', part: on, aid: 'eyes' });
};

export const CallFinding = ({ desk, playing, on: given, replaces, onDone }: CallFindingProps) => {
  const { world } = playing.snapshot.value;
  const [on, setOn] = useState<string | null>(given);
  const [onText, setOnText] = useState(given === null ? '' : nameOf(world, given));
  const [condition, setCondition] = useState<string | null>(null);
  const [text, setText] = useState('');
  const [sure, setSure] = useState<number | null>(null);
  const form = useRef<HTMLFormElement>(null);
  useLayoutEffect(() => form.current?.querySelector('input')?.focus(), []);
  const write = (event: Event): void => {
    event.preventDefault();
    if (on === null || condition === null) return;
    if (replaces !== undefined) {
      playing.send({ act: 'withdraw-finding', finding: replaces });
      if (playing.snapshot.value.refused !== null) return;
    }
    lookFirst(playing, on);
    playing.send({ act: 'call-finding', on, condition, ...(sure === null ? {} : { confidence: sure }) });
    if (playing.snapshot.value.refused === null) onDone();
  };
  return (
    <form ref={form} class="call-finding" onSubmit={write}>
      {given === null && (
        <Completion
          label="On what"
          after={1}
          choices={callables(world)}
          value={onText}
          onInput={(typed) => {
            setOnText(typed);
            setOn(null);
          }}
          onPick={({ id, label }) => {
            setOn(id);
            setOnText(label);
          }}
          hint="A part, a tool, a person, the ticket, the weather: type a letter or two."
        />
      )}
      <Completion
        label="Condition"
        after={3}
        choices={on === null ? [] : conditionsOn(world, on)}
        value={text}
        onInput={(typed) => {
          setText(typed);
          setCondition(null);
        }}
        onPick={({ id, label }) => {
          setCondition(id);
          setText(label);
        }}
        hint={on === null ? 'First say on what.' : 'Type three letters of what you call it.'}
      />
      {desk.settings.value.askSure && (
        <label class="sure">
          How sure
          <select onChange={(event) => setSure(sureness[event.currentTarget.selectedIndex]?.[0] ?? null)}>
            {sureness.map(([value, words]) => (
              <option key={words} selected={value === sure}>
                {words}
              </option>
            ))}
          </select>
        </label>
      )}
      <p class="buttons">
        <button type="submit" class="primary" disabled={on === null || condition === null}>
          Write it down
        </button>
        <button type="button" onClick={onDone}>
          Leave it
        </button>
      </p>
    </form>
  );
};
