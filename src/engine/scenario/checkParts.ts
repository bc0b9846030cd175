/** Parts that a scenario names, against the parts that its framing and equipment make: known once it is otherwise right. */
import { componentKind } from '../catalogue/components.ts';
import { faultKind } from '../catalogue/faults.ts';
import { type Phases, phaseNets } from '../catalogue/phaseNets.ts';
import type { FaultKind } from '../catalogue/types.ts';
import { nearestWord } from '../units/nearestWord.ts';
import { oneOf, type Path, type Refusal, shown } from './problem.ts';
import type { Scenario } from './types.ts';

/** A part of the scene to be: its id and its kind. */
export interface KnownPart {
  readonly id: string;
  readonly kind: string;
  /** Electrical net of each terminal. */
  readonly nets: Readonly<Record<string, string>>;
  readonly words?: Readonly<Record<string, string>>;
}

/** Paths as written: lists of the scenario are sorted, those of the file are not. */
export interface WrittenIndex {
  readonly poles: (id: string) => Path;
  readonly equipment: (id: string) => Path;
  readonly faults: (id: string) => Path;
  readonly spans: (id: string) => Path;
  readonly restores: (part: string) => Path;
  /** The event that names a part. */
  readonly events: (part: string) => Path;
}

const unknownPart = (path: Path, id: string, parts: readonly KnownPart[]): Refusal => {
  const place = id.slice(0, id.indexOf('.') + 1);
  const there = parts.map((part) => part.id).filter((known) => known.startsWith(place));
  const nearest = nearestWord(id, there);
  const expected = there.length === 0 ? 'a part of the scene' : oneOf(there, id).expected;
  return { path, found: `the unknown part ${shown(id)}`, expected, ...(nearest && { nearest }) };
};

const checkFault = (
  fault: Scenario['faults'][number],
  path: Path,
  parts: readonly KnownPart[],
  { tools, people }: Pick<Scenario, 'tools' | 'people'>,
): Refusal[] => {
  const refusals: Refusal[] = [];
  const kind = faultKind(fault.kind);
  const part = parts.find(({ id }) => id === fault.on);
  const tool = tools.find(({ id }) => id === fault.on);
  const role = ['second', 'dispatcher'].includes(fault.on) ? fault.on : people.find(({ id }) => id === fault.on)?.role;
  const carrier = tool ? `tool:${tool.kind}` : role ? `person:${role}` : fault.on === 'site' ? 'site' : part?.kind;
  if (carrier === undefined) refusals.push(unknownPart([...path, 'on'], fault.on, parts));
  else if (!kind.on.includes(carrier)) {
    const expected = `a ${oneOf(kind.on, undefined).expected} for ${kind.id}`.replace('a one of', 'one of');
    refusals.push({ path: [...path, 'on'], found: `${shown(fault.on)}, a ${carrier}`, expected });
  } else if (part !== undefined) refusals.push(...checkMadeOf(kind, part, [...path, 'on']));
  if (fault.to !== undefined) refusals.push(...checkEnd(fault.to, [...path, 'to'], parts));
  return refusals;
};

/** What can only lie on a part made of something, or made in some way. */
const checkMadeOf = ({ id, only = {} }: FaultKind, part: KnownPart, path: Path): Refusal[] =>
  Object.entries(only).flatMap(([name, words]) => {
    const word = part.words?.[name] ?? '';
    if (words.includes(word)) return [];
    return [{ path, found: `${name} ${shown(word)}`, expected: `${name} ${words.join(' or ')} for ${id}` }];
  });

const checkEnd = (to: string, path: Path, parts: readonly KnownPart[]): Refusal[] => {
  const [id = '', terminal = ''] = to.split('/');
  const part = parts.find((known) => known.id === id);
  if (part === undefined) return [unknownPart(path, id, parts)];
  const { terminals } = componentKind(part.kind);
  if (terminals.includes(terminal)) return [];
  const end = oneOf(terminals, terminal);
  return [{ path, found: `the unknown terminal ${shown(terminal)} of ${id}`, ...end }];
};

/** Parts that framing and equipment would both bring, or two pieces of equipment. */
const checkOnce = (parts: readonly KnownPart[], index: WrittenIndex): Refusal[] => {
  const taken = new Set<string>();
  return parts.flatMap(({ id }) => {
    if (!taken.has(id)) {
      taken.add(id);
      return [];
    }
    const own = index.equipment(id);
    const path = own.length > 0 ? [...own, 'id'] : ['equipment'];
    return [{ path, found: `a second part ${shown(id)}`, expected: 'each part of a pole once' }];
  });
};

/** Equipment that belongs to a part of its pole that is not there: an anchor without a guy. */
const checkHosts = ({ equipment }: Scenario, parts: readonly KnownPart[], index: WrittenIndex): Refusal[] =>
  equipment.flatMap(({ id, kind, pole }) => {
    const { alters, mounting } = componentKind(kind);
    const host = alters?.name ?? (mounting !== undefined && 'along' in mounting ? mounting.along : undefined);
    if (host === undefined || parts.some((part) => part.id === `${pole}.${host}`)) return [];
    return [
      { path: [...index.equipment(id), 'id'], found: `no ${host} on ${pole}`, expected: `a pole with a ${host}` },
    ];
  });

/** A span must end on a net that something on the pole stands on, and the source must feed one: else it hangs in the air. */
const checkNets = (scenario: Scenario, parts: readonly KnownPart[], index: WrittenIndex): Refusal[] => {
  const spans = new Set(scenario.spans.map(({ id }) => id));
  const onPoles = new Set(
    parts
      .filter(({ id, kind }) => !spans.has(id.slice(0, id.indexOf('.'))) && !kind.startsWith('system-source'))
      .flatMap(({ nets }) => Object.values(nets)),
  );
  const check = (net: string, path: Path): Refusal[] => {
    if (onPoles.has(net)) return [];
    const place = net.slice(0, net.indexOf('.') + 1);
    const there = [...onPoles].filter((known) => known.startsWith(place)).sort();
    return [{ path, found: `${shown(net)}, a net on which nothing of the pole stands`, ...oneOf(there, net) }];
  };
  const checkAll = (net: string, phases: Phases | undefined, path: Path): Refusal[] =>
    phaseNets(net, phases).flatMap((each) => check(each, path));
  const { at, phases: incoming } = scenario.supply;
  return [
    ...scenario.spans.flatMap(({ id, from, to, phases }) => [
      ...checkAll(from, phases, [...index.spans(id), 'from']),
      ...checkAll(to, phases, [...index.spans(id), 'to']),
    ]),
    ...checkAll(at, incoming, ['supply', 'at']),
  ];
};

/** Refusals of parts that the scene will not have, or that cannot have such a fault. */
export const checkParts = (scenario: Scenario, parts: readonly KnownPart[], index: WrittenIndex): Refusal[] => [
  ...checkOnce(parts, index),
  ...checkHosts(scenario, parts, index),
  ...checkNets(scenario, parts, index),
  ...[...scenario.faults, ...scenario.lookAlikes].flatMap((fault) =>
    checkFault(fault, index.faults(fault.id), parts, scenario),
  ),
  ...scenario.events.flatMap(({ part }) =>
    part === undefined || parts.some(({ id }) => id === part) ? [] : [unknownPart(index.events(part), part, parts)],
  ),
  ...scenario.job.restores.flatMap((id) =>
    parts.some((part) => part.id === id) ? [] : [unknownPart(index.restores(id), id, parts)],
  ),
];
