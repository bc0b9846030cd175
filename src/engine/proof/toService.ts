/**
 * How a device gets back into service: of its own operations and the repairs that write its state, those that lead to
 * the ordinary state in the fewest minutes. Found on the device's own states, a handful.
 */
import type { Act } from '../acts/types.ts';
import { componentKind } from '../catalogue/components.ts';
import { repairKinds } from '../catalogue/repairs.ts';
import type { Part } from '../world/types.ts';
import { type Edge, explore } from './explore.ts';

type State = Part['state'];

interface Way {
  readonly act: Act;
  readonly from: Readonly<Record<string, readonly string[]>>;
  readonly to: Readonly<Record<string, string>>;
  readonly minutes: number;
}

/** The state a kind is in when it does its service. */
export const ordinary = ({ kind }: Part): State =>
  Object.fromEntries(Object.entries(componentKind(kind).states).map(([name, [first = '']]) => [name, first]));

const ways = (part: Part, stick: string | null): readonly Way[] => [
  ...componentKind(part.kind)
    .operations.filter(({ by }) => by !== 'owner')
    .map(
      ({ id, by, from, to, minutes }): Way => ({
        act: { act: 'operate', part: part.id, operation: id, stick: by === 'stick' ? stick : null },
        from,
        to,
        minutes,
      }),
    ),
  ...repairKinds
    .filter(({ on, sets, from }) => on.includes(part.kind) && sets !== undefined && from !== undefined)
    .map(
      ({ id, from = {}, sets = {}, minutes }): Way => ({
        act: { act: 'repair', part: part.id, repair: id },
        from,
        to: sets,
        minutes,
      }),
    ),
];

const fits = (state: State, from: Way['from']): boolean =>
  Object.entries(from).every(([name, allowed]) => allowed.includes(state[name] ?? ''));

const keyOf = (state: State): string => JSON.stringify(Object.entries(state).sort(([a], [b]) => (a < b ? -1 : 1)));

const stepsFrom = (part: Part, state: State, stick: string | null): readonly Edge<State, Act>[] =>
  ways(part, stick)
    .filter(({ from }) => fits(state, from))
    .map(({ act, to, minutes }) => ({ to: { ...state, ...to }, cost: minutes, by: act }));

/** Least minutes until its state is one that is asked for; Infinity where nothing leads there. */
export function minutesUntil(part: Part, isThere: (part: Part) => boolean): number {
  return explore<State, Act>({
    start: part.state,
    key: keyOf,
    done: (state) => isThere({ ...part, state }),
    next: (state) => stepsFrom(part, state, null),
  }).cost;
}

/** The acts that bring the device into service; empty when it is in service or nothing leads there. */
export function wayToService(part: Part, stick: string | null): readonly Act[] {
  const goal = Object.entries(ordinary(part)).filter(([name]) => part.state[name] !== undefined);
  const found = explore<State, Act>({
    start: part.state,
    key: keyOf,
    done: (state) => goal.every(([name, value]) => state[name] === value),
    next: (state) => stepsFrom(part, state, stick),
  });
  return found.route.map(({ by }) => by);
}
