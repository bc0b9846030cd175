/**
 * Ties of a World that have let go, and the run of conductor that each lets lie loose: from the next support that holds
 * on one side over every lost tie to the next that holds on the other (mechanics/lostTies.ts). A tie on an insulator that
 * has gone is lost with it. A tie counts as held while
 * an auxiliary arm carries every conductor that hangs at it. Left out: an arm two poles away that bears on it only by
 * the conductors between.
 */
import { componentKind } from '../catalogue/components.ts';
import { faultKind } from '../catalogue/faults.ts';
import { distance, type Vec3 } from '../math/vec3.ts';
import type { Metres } from '../units/quantities.ts';
import type { Part, World } from '../world/types.ts';
import { bearingList } from './bearing.ts';
import { type LooseOver, looseOver } from './lostTies.ts';

/** How near a conductor's end is to the tie that holds it. */
const AT_TIE: Metres = 0.3;

/** One end of a span: 'a' is its `at`, 'b' its `end`. */
export interface SpanEnd {
  readonly part: Part;
  readonly end: 'a' | 'b';
}

/** A lost tie and what lies loose over it. */
export interface LooseRun {
  readonly tie: Part;
  readonly over: LooseOver;
  /** Metres of this tie from the run's first support. */
  readonly at: Metres;
  readonly spans: readonly Part[];
}

const placeOf = ({ part, end }: SpanEnd): Vec3 => (end === 'a' || part.end === null ? part.at : part.end);
const other = ({ part, end }: SpanEnd): SpanEnd => ({ part, end: end === 'a' ? 'b' : 'a' });

/** Whether that end has come off its tie. */
export const hasFallen = ({ part, end }: SpanEnd): boolean => {
  const state = part.state[`${end}-end`];
  return state !== undefined && state !== 'held';
};

const isParted = (part: Part): boolean =>
  part.faults.some(({ kind }) => faultKind(kind).mechanical?.breaks !== undefined);

const isConductor = (part: Part): boolean =>
  part.end !== null && part.values.sagM !== undefined && componentKind(part.kind).endPoints.length > 0;

/** Conductor ends that hang at the tie, or came down there. */
export function endsAt(world: World, tie: Part): readonly SpanEnd[] {
  const [x, y] = tie.at;
  const hangs = (each: SpanEnd): boolean => {
    const place = placeOf(each);
    return hasFallen(each) ? distance(place, [x, y, place[2]]) <= AT_TIE : distance(place, tie.at) <= AT_TIE;
  };
  return world.parts
    .filter((part) => isConductor(part) && !isParted(part))
    .flatMap((part) => [{ part, end: 'a' } as const, { part, end: 'b' } as const].filter(hangs));
}

const isLost = (part: Part): boolean => part.faults.some(({ kind }) => faultKind(kind).mechanical?.supports === 'lost');

interface LostTie {
  readonly tie: Part;
  readonly ends: readonly [SpanEnd, SpanEnd];
}

/** Ties that let go with a part: itself, or those whose conductor lies on it. */
export function tiesOf(world: World, part: Part): readonly Part[] {
  if (isTie(part)) return [part];
  if (componentKind(part.kind).holds !== 'through') return [];
  const nets = new Set(Object.values(part.nets));
  return world.parts.filter(
    (tie) =>
      tie.pole === part.pole &&
      isTie(tie) &&
      endsAt(world, tie).some(({ part: span, end }) => nets.has(span.nets[end] ?? '')),
  );
}

/** Ties that have let go, or lie on an insulator that has. */
function lostTies(world: World): ReadonlySet<Part> {
  return new Set(world.parts.filter(isLost).flatMap((part) => tiesOf(world, part)));
}

/** The tie with its two spans, if it has let go and nothing else holds them. */
function lostTie(world: World, gone: ReadonlySet<Part>, tie: Part): LostTie | null {
  if (!isTie(tie)) return null;
  const [one, two] = endsAt(world, tie);
  if (one === undefined || two === undefined) return null;
  if (!gone.has(tie) && !hasFallen(one) && !hasFallen(two)) return null;
  return [one, two].every(({ part }) => part.supported) ? null : { tie, ends: [one, two] };
}

/** What holds conductors that run on, and is no conductor itself. */
const isTie = (part: Part): boolean => componentKind(part.kind).ties === true;

/** From a lost tie along one of its spans to the next support that holds: spans and supports on the way, and the last. */
function walk(lost: readonly LostTie[], start: SpanEnd) {
  const spans: Part[] = [];
  const supports: Vec3[] = [];
  let from = start;
  for (;;) {
    spans.push(from.part);
    const far = other(from);
    const next = lost.find(({ ends }) => ends.some((end) => end.part === far.part && end.end === far.end));
    supports.push(next?.tie.at ?? placeOf(far));
    const on = next?.ends.find((end) => end.part !== far.part);
    if (on === undefined || spans.includes(on.part)) return { spans, supports };
    from = on;
  }
}

function runOf(lost: readonly LostTie[], { tie, ends: [one, two] }: LostTie): readonly LooseRun[] {
  const back = walk(lost, one);
  const on = walk(lost, two);
  const spans = [...back.spans].reverse().concat(on.spans);
  const supports = [...[...back.supports].reverse(), tie.at, ...on.supports];
  const flat = (i: number): Metres => {
    const [a, b] = [supports[i] as Vec3, supports[i + 1] as Vec3];
    return distance([a[0], a[1], 0], [b[0], b[1], 0]);
  };
  const lengths = spans.map((_, i) => flat(i));
  if (lengths.some((length) => !(length > 0))) return [];
  const over = looseOver(
    supports,
    spans.map(({ values }) => values.sagM ?? 0),
  );
  const at = lengths.slice(0, back.spans.length).reduce((sum, length) => sum + length, 0);
  return [{ tie, over, at, spans }];
}

const kept = new WeakMap<World['parts'], readonly LooseRun[]>();

/** Every lost tie with its run, in the order of the parts. */
export function looseRuns(world: World): readonly LooseRun[] {
  const parts = bearingList(world.parts);
  const known = kept.get(parts);
  if (known !== undefined) return known;
  const gone = lostTies(world);
  const lost = world.parts.flatMap((part) => lostTie(world, gone, part) ?? []);
  const found = lost.flatMap((each) => runOf(lost, each));
  kept.set(parts, found);
  return found;
}

/** The run that lies loose once this tie is taken off as well; null when something else holds its conductor. */
export function runWithout(world: World, tie: Part): LooseRun | null {
  const gone = new Set([...lostTies(world), tie]);
  const lost = world.parts.flatMap((part) => lostTie(world, gone, part) ?? []);
  const taken = lost.find((each) => each.tie.id === tie.id);
  return taken === undefined ? null : (runOf(lost, taken)[0] ?? null);
}
