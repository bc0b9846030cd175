/**
 * What the crew has: tools left in the yard, tools that another truck carries, minutes until the second worker is there.
 * Tools that come along are in test on the day of the call; intervals are the catalogue's.
 */
import { toolKind } from '../catalogue/tools.ts';
import type { Draw } from './draw.ts';
import type { Bounds } from './types.ts';
import { type Group, groupAt, rowsAt, type Value } from './written.ts';

/** What a truck is packed with for work on conductors, by bucket or on hooks (common practice; trucks differ by employer). */
const work: readonly Group[] = [
  { id: 'ground-8', kind: 'ground-set' },
  { id: 'ground-9', kind: 'ground-set' },
  { id: 'short-9', kind: 'secondary-short' },
  { id: 'spares-9', kind: 'spares', note: 'insulators, ties, links, connectors, ground wire' },
];
const lifts: readonly Group[] = [
  { id: 'bucket-9', kind: 'bucket', rated: '46 kV' },
  { id: 'belt-9', kind: 'climbing-set', note: 'hooks, belt and fall restraint' },
];
/** What it may carry beside. */
const beside: readonly Group[] = [
  { id: 'stick-9', kind: 'stick' },
  { id: 'arm-9', kind: 'auxiliary-arm', rated: '15 kV' },
  { id: 'hose-9', kind: 'line-hose', rated: '17 kV' },
  { id: 'hood-9', kind: 'insulator-cover', rated: '17 kV' },
  { id: 'blank-9', kind: 'meter-blank', note: 'blank with seal' },
  { id: 'hat-9', kind: 'hard-hat' },
  { id: 'vest-9', kind: 'vest' },
  { id: 'barrier-9', kind: 'barrier-vehicle' },
];

/** Without these nothing can be told or tested: no truck leaves the yard so. */
const always: readonly string[] = ['detector', 'low-voltage-tester', 'stick', 'rubber-gloves', 'tags'];

/** Months after which covers, which have no interval, count as tested long ago. */
const USUAL = 12;

const two = (n: number): string => (n < 10 ? `0${n}` : `${n}`);

/** The day so many months before another; the 28th at the latest, so that the month has it. */
export function monthsBefore(day: string, months: number): string {
  const [year = 0, month = 1, date = 1] = day.split('-').map(Number);
  const from = year * 12 + month - 1 - months;
  return `${Math.floor(from / 12)}-${two((from % 12) + 1)}-${two(Math.min(28, date))}`;
}

/** The tool as it is carried on the day: with a test day where its kind is tested. */
export function carried(draw: Draw, tool: Group, day: string): Group {
  const { testMonths, checks } = toolKind(String(tool.kind));
  if (testMonths === undefined && !checks.includes('read-tag')) return tool;
  return { ...tool, tested: monthsBefore(day, draw.whole(1, Math.max(1, (testMonths ?? USUAL) - 2))) };
}

/** Days of test that a fault on a tool asks for: one past its interval has to be past it. */
export function datedFor(draw: Draw, tool: Group, fault: string, day: string): Group {
  const { testMonths } = toolKind(String(tool.kind));
  if (testMonths === undefined || !fault.endsWith('-test-overdue')) return tool;
  return { ...tool, tested: monthsBefore(day, testMonths + draw.whole(1, 6)) };
}

/** Whether its test lies further back than its kind allows; days of one form compare as text. */
function isPast({ kind, tested }: Group, day: string): boolean {
  const { testMonths } = toolKind(String(kind));
  return testMonths !== undefined && tested !== undefined && String(tested) < monthsBefore(day, testMonths);
}

export function varyTools(draw: Draw, written: Group, { toolsLess, toolsMore }: Bounds): Group {
  const tools = rowsAt(written, 'tools');
  const day = String(groupAt(written, 'call').date);
  const has = (kind: Value | undefined): boolean => tools.some((tool) => tool.kind === kind);
  const spare = tools.filter(({ kind }) => !always.includes(String(kind)));
  const gone = new Set(draw.some(spare, draw.whole(0, toolsLess)).map(({ id }) => id));
  // Half of the trucks come packed for work aloft.
  const isPacked = toolsMore > 0 && draw.chance(0.5);
  const lift = lifts.some(({ kind }) => has(kind)) ? [] : [draw.one(lifts)];
  const pack = isPacked ? [...lift, ...work.filter(({ id, kind }) => id === 'ground-8' || !has(kind))] : [];
  const open = beside.filter(({ kind }) => kind === 'stick' || !has(kind));
  const more = [...pack, ...draw.some(open, draw.whole(0, toolsMore))].map((tool) => carried(draw, tool, day));
  // A tool past its test was the base's fault; here faults are laid anew.
  const own = tools
    .filter(({ id }) => !gone.has(id))
    .map((tool) => (isPast(tool, day) ? carried(draw, tool, day) : tool));
  return { ...written, tools: [...own, ...more] };
}

/** When the second worker is there; the dispatcher says so by what the scene computes. */
export function varyCrew(draw: Draw, written: Group, { secondAfter }: Bounds): Group {
  if (secondAfter.length === 0) return written;
  return {
    ...written,
    crew: { ...groupAt(written, 'crew'), 'second-after': `${draw.one(secondAfter)} min` },
  };
}
