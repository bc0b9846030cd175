/** Readings of the bench in words: volts, who holds it alive, what a touch would draw, what operated and why. */
import { endWords } from '../../engine/acts/pointWords.ts';
import { componentKind } from '../../engine/catalogue/components.ts';
import { branchesOf } from '../../engine/circuit/elementsOf.ts';
import { LIVE_AMPERES, LIVE_VOLTS } from '../../engine/circuit/solveCircuit.ts';
import type { Operation, PointState } from '../../engine/circuit/types.ts';
import { type EffectBandName, effectBand, letGo } from '../../engine/standards/bodyCurrent.ts';
import { format, formatNumber } from '../../engine/units/formatQuantity.ts';
import { findPart, partById } from '../../engine/world/edit.ts';
import type { Part, World } from '../../engine/world/types.ts';
import { capital } from '../words.ts';
import type { Bench } from './bench.ts';
import type { Bus, Edge } from './circuitGraph.ts';
import { branchesIn } from './partBranches.ts';

/** Currents below this are said to be none, amperes. */
const NOTHING = 1e-6;

export const voltsOf = (value: number): string =>
  value < 0.1 ? '0 V' : value < 10 ? `${formatNumber(value, 1)} V` : format(value, 'voltage', 'metric');

export const ampsOf = (value: number): string => (value < NOTHING ? '0 A' : format(value, 'current', 'metric', 2));

/** Sources of a World by synchronism group, the system first. */
export const groupsOf = (start: World): readonly string[] => {
  const groups = start.parts.flatMap((part) =>
    componentKind(part.kind)
      .branches(part)
      .flatMap((branch) => (branch.type === 'source' ? [branch.group] : [])),
  );
  return [...new Set(groups)].sort((a, b) => Number(b === 'system') - Number(a === 'system') || (a < b ? -1 : 1));
};

/** A part's name; of several alike in one place with its number among them, in the order of their ids: phase A first. */
export const partName = (world: World, part: Part): string => {
  const alike = world.parts
    .filter(({ name }) => name === part.name)
    .map(({ id }) => id)
    .sort();
  if (alike.length < 2) return part.name;
  const [what = '', ...where] = part.name.split(', ');
  return [`${what} ${alike.indexOf(part.id) + 1} of ${alike.length}`, ...where].join(', ');
};

/** What a synchronism group is called. */
export const groupWords = (world: World, group: string): string =>
  group === 'system' ? `the system (${world.given.supply.circuit})` : `the ${findPart(world, group)?.name ?? group}`;

/** The short mark of a group in the drawing: A for the first source, B for the second. */
export const groupMark = (groups: readonly string[], group: string): string =>
  String.fromCharCode(65 + Math.max(0, groups.indexOf(group)));

const effects: Readonly<Record<EffectBandName, string>> = {
  none: 'not felt',
  perceived: 'felt',
  startle: 'startles: a jerk, a fall',
  'cannot-let-go': 'the hand may not let go',
  'possible-fibrillation': 'the heart may stop pumping',
};

/** A touch, hand to feet, 1 kilohm: 5 s once the hand may not let go, else 1 s, unless a device ends it sooner. */
export const touchOf = ({ throughKilohm }: PointState): { readonly band: EffectBandName; readonly words: string } => {
  const { band } = effectBand(throughKilohm, throughKilohm >= letGo.women ? 5 : 1);
  return { band, words: effects[band] };
};

export const liveWords = ({ live }: PointState): string => (live ? 'live' : 'not live');

/** How live is meant, for the foot of the sheet. */
export const liveRule = `Live: at least ${format(LIVE_VOLTS, 'voltage', 'metric')} to the ground beside it and at least ${format(LIVE_AMPERES, 'current', 'metric')} through 1 kΩ (29 CFR 1910.269, Table R-6 and Appendix C). Not live is no word for safe: an insulated line counts as live until it is tested and grounded.`;

/** The state that an edge shows: its position, running or not, there or mended. */
export const stateWords = (world: World, edge: Edge, closed: boolean): string => {
  if (edge.symbol === 'gap') return closed ? 'mended' : 'broken';
  if (edge.symbol === 'leak') return closed ? '' : 'mended';
  return edge.state === null ? '' : (partById(world, edge.part).state[edge.state] ?? '');
};

/** 'Fused cutout, pole QR-14' or, for one of two contacts of a part, the branch as well. */
export const edgeName = (world: World, edge: Edge): string => {
  const name = partName(world, partById(world, edge.part));
  if (edge.symbol === 'leak') return `${capital(edge.words)}, ${name}`;
  if (edge.symbol === 'breaker' && edge.words === 'breaker') return `Breaker of ${name}`;
  if (edge.words === 'neutral' || edge.words.startsWith('to ')) return `${capital(name)} (${edge.words})`;
  return capital(name);
};

const listed = (words: readonly string[]): string => words.join(' and ');

/** Nets whose own name is the trade's: bushings, neutral, phases. */
const spoken = /^(neutral|phase|main|tap|tank|star|[xh]\d?|(main|phase|tap)-[abc])$/;

/** Ends of one part that lie on the legs of a bus, as one calls them; leads inside it by their marks. */
const endsOn = (world: World, { legs, points }: Bus): string | null => {
  // A net is called after the end that made it: the top contact before whatever else is tied to it.
  const own = legs[0]?.[0]?.replace(/^.*\./, '');
  const point = points.find((each) => each.endsWith(`/${own}`)) ?? points[0];
  const part = findPart(world, point?.split('/')[0] ?? '');
  if (part === null) return null;
  const terminals = legs.flatMap((leg) => {
    const found = Object.entries(part.nets).find(([, net]) => leg.includes(net));
    return found === undefined ? [] : [found[0]];
  });
  if (terminals.length === 0) return null;
  const ends = terminals.map((terminal) => endWords(world, `${part.id}/${terminal}`));
  const named = ends.every((end, at) => end !== terminals[at]);
  const name = partName(world, part);
  const codes = listed(terminals.map((terminal) => terminal.toUpperCase()));
  const what = named ? listed([...new Set(ends)]) : `${legs.length > 1 ? 'legs' : 'lead'} ${codes}`;
  return `${capital(what)} of ${name.startsWith('the ') ? '' : 'the '}${name}`;
};

/** 'Neutral, pole QR-14', 'X1 and X3, pole QR-14', or by the ends that lie on it: 'first load jaw of the meter, first house'. */
export const busName = (world: World, bus: Bus): string => {
  const own = bus.legs.map(([net = '']) => net.slice(net.lastIndexOf('.') + 1));
  const names = own.map((name) => (/\d/.test(name) ? name.toUpperCase() : name.replace(/-([abc])$/, ', phase $1')));
  const byNet = `${capital(listed(names))}, ${placeWords(world, bus.owner)}`;
  return own.every((name) => spoken.test(name)) ? byNet : (endsOn(world, bus) ?? byNet);
};

/** What a pole or premises is called: the end of its parts' names. */
export const placeWords = (world: World, id: string): string => {
  const part = world.parts.find((each) => each.pole === id || each.premises === id);
  const comma = part?.name.lastIndexOf(', ') ?? -1;
  return part === undefined || comma < 0 ? id : part.name.slice(comma + 2);
};

/** What operated, at how much, in which time, and what a recloser does next. */
export const operationWords = (before: World, operation: Operation): string => {
  const { part: id, branch, amperes, seconds, closesAfter, volts } = operation;
  const part = partById(before, id);
  const found =
    branchesOf(part).find(({ name }) => name === branch) ??
    branchesIn(part).find((each) => each.branch.name === branch)?.branch;
  const protection = found?.type === 'series' ? found.protects : undefined;
  const name = capital(partName(before, part));
  const within = format(seconds, 'time', 'metric', 2);
  if (volts !== undefined) return `${name}: ${branch.replaceAll('-', ' ')}, ${voltsOf(volts)} for ${within}.`;
  const through = format(amperes, 'current', 'metric');
  if (protection?.curve === 'fuse-link') {
    return `${name}: its ${protection.link ?? ''} link melted and cleared ${through} within ${within}.`;
  }
  if (closesAfter === null) return `${name}: tripped on ${through} within ${within} and is locked out.`;
  if (closesAfter !== undefined) {
    return `${name}: tripped on ${through} within ${within} and closes again after ${format(closesAfter, 'time', 'metric', 2)}.`;
  }
  return `${name}: its ${formatNumber(protection?.rating ?? 0)} A breaker tripped on ${through} within ${within}.`;
};

/** Operations of the last change in words, in their order. */
export const operationsOf = (bench: Bench): readonly string[] =>
  bench.operations.map((operation) => operationWords(bench.world, operation));
