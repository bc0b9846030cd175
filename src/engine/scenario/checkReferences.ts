/** What a section says of another: ids once only, and every pole, premises, tool or part that is named is there. */
import { oneOf, type Path, type Refusal, shown } from './problem.ts';
import { groupIn, type Row, rowsIn, textIn, textsOf } from './rows.ts';
import type { Written } from './up.ts';

const firstPart = (dotted: string): string => dotted.split('.')[0] ?? dotted;

const expectedOne = (what: string, known: readonly string[], found: string): { expected: string; nearest?: string } => {
  const { expected, nearest } = oneOf(known, found);
  return { expected: `${what}: ${expected}`, ...(nearest === undefined ? {} : { nearest }) };
};

/** Ids that occur twice among rows. */
const twice = (rows: readonly Row[]): Refusal[] => {
  const taken = new Set<string>();
  return rows.flatMap(({ path, fields }) => {
    const id = textIn(fields, 'id');
    if (id === undefined) return [];
    if (taken.has(id)) return [{ path: [...path, 'id'], found: `the id ${shown(id)} again`, expected: 'each id once' }];
    taken.add(id);
    return [];
  });
};

/** A refusal if the place that `dotted` begins with is not among the known ones. */
const unknownPlace = (path: Path, dotted: string | undefined, what: string, known: readonly string[]): Refusal[] => {
  if (dotted === undefined || known.includes(firstPart(dotted))) return [];
  return [{ path, found: shown(dotted), ...expectedOne(what, known, firstPart(dotted)) }];
};

const checkSpans = (spans: readonly Row[], poles: readonly string[]): Refusal[] =>
  spans.flatMap(({ path, fields }) => {
    const [from, to] = [textIn(fields, 'from'), textIn(fields, 'to')];
    const same = from !== undefined && to !== undefined && firstPart(from) === firstPart(to);
    const ends = [
      ...unknownPlace([...path, 'from'], from, 'a net of a pole', poles),
      ...unknownPlace([...path, 'to'], to, 'a net of a pole', poles),
    ];
    if (!same || ends.length > 0) return ends;
    return [{ path: [...path, 'to'], found: `both ends on ${firstPart(to)}`, expected: 'ends on two poles' }];
  });

const checkEquipment = (equipment: readonly Row[], poles: readonly string[]): Refusal[] =>
  equipment.flatMap(({ path, fields }) => [
    ...unknownPlace([...path, 'id'], textIn(fields, 'id'), 'a pole before the dot', poles),
    ...Object.keys(groupIn(fields, 'nets')).flatMap((terminal) =>
      unknownPlace(
        [...path, 'nets', terminal],
        textIn(groupIn(fields, 'nets'), terminal),
        'a net of a pole such as p1.main',
        poles,
      ),
    ),
  ]);

/** Connections with a position, and plants that are inverters. */
const switched = ['transfer-switch', 'neutral-transfer-switch', 'interlock'];
const inverters = ['photovoltaic', 'battery'];

const checkTransfer = (premises: readonly Row[]): Refusal[] =>
  premises.flatMap(({ path, fields }) => {
    const own = groupIn(fields, 'own');
    const connection = textIn(own, 'connection');
    const stands = Object.hasOwn(own, 'transfer');
    const at = [...path, 'own', 'transfer'];
    if (connection !== undefined && switched.includes(connection) && !stands) {
      return [{ path: at, found: 'nothing', ...oneOf(['utility', 'generator'], undefined) }];
    }
    if (connection === 'panel-cord' && stands) {
      return [{ path: at, atKey: true, found: 'a transfer switch', expected: 'none: the set is on a panel cord' }];
    }
    if (connection !== undefined && !switched.includes(connection) && stands) {
      return [{ path: at, atKey: true, found: 'a transfer switch', expected: 'none: nothing there switches it' }];
    }
    const kind = textIn(own, 'kind');
    if (kind === undefined || connection === undefined) return [];
    const isInverter = inverters.includes(kind);
    const allowed = isInverter ? ['panel-breaker', 'transfer-switch'] : ['panel-cord', ...switched, 'none'];
    if (allowed.includes(connection)) return [];
    const expected = `a connection of ${isInverter ? 'an inverter' : 'a set'}: ${oneOf(allowed, connection).expected}`;
    return [{ path: [...path, 'own', 'connection'], found: shown(connection), expected }];
  });

const checkSecondaries = (secondaries: readonly Row[], poles: readonly string[]): Refusal[] =>
  secondaries.flatMap(({ path, fields }) => {
    const [from, to] = [textIn(fields, 'from'), textIn(fields, 'to')];
    const ends = [
      ...unknownPlace([...path, 'from'], from, 'a pole', poles),
      ...unknownPlace([...path, 'to'], to, 'a pole', poles),
    ];
    if (from === undefined || from !== to || ends.length > 0) return ends;
    return [{ path: [...path, 'to'], found: `both ends on ${from}`, expected: 'ends on two poles' }];
  });

const checkFaults = (faults: readonly Row[], places: readonly string[], carriers: readonly string[]): Refusal[] =>
  faults.flatMap(({ path, fields }) => {
    const on = textIn(fields, 'on');
    const known = on?.includes('.') ? places : [...carriers, 'site'];
    const what = on?.includes('.') ? 'a pole, span or premises before the dot' : 'a part, a tool, a person or site';
    return [
      ...unknownPlace([...path, 'on'], on, what, known),
      ...unknownPlace([...path, 'to'], textIn(fields, 'to'), 'a pole, span or premises before the dot', places),
    ];
  });

/** Names the rest of what is asked for: a job restores parts that are somewhere. */
const checkJob = (written: Written, places: readonly string[]): Refusal[] => {
  const { restores } = groupIn(written, 'job');
  if (!Array.isArray(restores)) return [];
  return restores.flatMap((part: unknown, at) =>
    typeof part === 'string'
      ? unknownPlace(['job', 'restores', at], part, 'a pole, span or premises before the dot', places)
      : [],
  );
};

/** Stands on the ground, where somebody may be. */
const standsOn = (poles: readonly string[], premises: readonly string[]): readonly string[] => [
  ...poles.flatMap((pole) => ['road', 'butt', 'field'].map((name) => `${pole}.${name}`)),
  ...premises.map((id) => `${id}.yard`),
];

const unknownStand = (path: Path, written: string | undefined, stands: readonly string[]): Refusal[] =>
  written === undefined || stands.includes(written)
    ? []
    : [{ path, found: shown(written), ...expectedOne('a place on the ground', stands, written) }];

const checkPeople = (people: readonly Row[], stands: readonly string[]): Refusal[] =>
  people.flatMap(({ path, fields }) => unknownStand([...path, 'at'], textIn(fields, 'at'), stands));

/** Ids that the crew and the line's people have already. */
const ownIds = ['trainee', 'second', 'dispatcher', 'caller', 'site', 'ticket', 'guards', 'truck'];

const taken = (people: readonly Row[]): Refusal[] =>
  people.flatMap(({ path, fields }) => {
    const id = textIn(fields, 'id');
    if (id === undefined || !ownIds.includes(id)) return [];
    return [{ path: [...path, 'id'], found: shown(id), expected: 'an id that is not taken by the drill itself' }];
  });

/** What each event must say: who, where to, which device. */
const asked: Readonly<Record<string, readonly string[]>> = {
  comes: ['who', 'to'],
  leaves: ['who'],
  'starts-set': ['who'],
  closes: ['part'],
  calls: ['says'],
};

const checkEvents = (
  events: readonly Row[],
  people: readonly string[],
  premises: readonly string[],
  places: readonly string[],
  stands: readonly string[],
): Refusal[] =>
  events.flatMap(({ path, fields }) => {
    const what = textIn(fields, 'what') ?? '';
    const who = textIn(fields, 'who');
    const known = what === 'starts-set' ? premises : people;
    const missing = (asked[what] ?? []).filter((key) => !Object.hasOwn(fields, key));
    return [
      ...missing.map((key) => ({
        path: [...path, key],
        found: 'nothing',
        expected: `a key '${key}', which ${what} needs`,
      })),
      ...(who === undefined || known.includes(who)
        ? []
        : [
            {
              path: [...path, 'who'],
              found: shown(who),
              ...expectedOne(what === 'starts-set' ? 'premises' : 'a person', known, who),
            },
          ]),
      ...unknownStand([...path, 'to'], textIn(fields, 'to'), stands),
      ...unknownPlace([...path, 'part'], textIn(fields, 'part'), 'a pole, span or premises before the dot', places),
    ];
  });

/** Refusals across sections, on data that may have other problems too. */
export const checkReferences = (written: Written): Refusal[] => {
  const [poles, spans, premises] = ['poles', 'spans', 'premises'].map((key) => rowsIn(written, key)) as [
    Row[],
    Row[],
    Row[],
  ];
  const [equipment, tools] = [rowsIn(written, 'equipment'), rowsIn(written, 'tools')];
  const faults = [...rowsIn(written, 'faults'), ...rowsIn(written, 'look-alikes')];
  const poleIds = [...new Set(textsOf(poles, 'id'))];
  const secondaries = [...rowsIn(written, 'secondaries'), ...rowsIn(written, 'communications')];
  const placed = [...poles, ...spans, ...secondaries, ...premises];
  const places = [...new Set(textsOf(placed, 'id'))];
  const people = rowsIn(written, 'people');
  const stands = standsOn(poleIds, textsOf(premises, 'id'));
  const once = [
    ...twice([...placed, ...tools, ...people]),
    ...taken(people),
    ...twice(equipment),
    ...twice(faults),
    ...checkTransfer(premises),
  ];
  // Without poles every name would be told as unknown, which says less than that the poles are missing.
  if (poleIds.length === 0) return once;
  return [
    ...once,
    ...checkSpans(spans, poleIds),
    ...checkSecondaries(secondaries, poleIds),
    ...checkEquipment(equipment, poleIds),
    ...premises.flatMap(({ path, fields }) =>
      unknownPlace([...path, 'from'], textIn(fields, 'from'), 'a pole', poleIds),
    ),
    ...unknownPlace(['supply', 'at'], textIn(groupIn(written, 'supply'), 'at'), 'a net of a pole', poleIds),
    ...checkFaults(faults, places, [...textsOf(tools, 'id'), ...textsOf(people, 'id'), 'second', 'dispatcher']),
    ...checkPeople(people, stands),
    ...checkEvents(rowsIn(written, 'events'), textsOf(people, 'id'), textsOf(premises, 'id'), places, stands),
    ...checkJob(written, places),
  ];
};
