/**
 * People and orders that would fail whoever relies on them, as tools do (barrier.ts): a second worker who is not trained,
 * not fit or not coming, a dispatcher who has another circuit in mind or cannot be heard. One hazard a person; what then
 * bites are the acts that needed two workers, a clearance, a word (29 CFR 1910.269(a)(2), (l)(2), (m)(3)). Left out:
 * skill by degrees, a second worker’s own mistakes.
 */
import { faultKind } from '../catalogue/faults.ts';
import type { Part, Person, World } from '../world/types.ts';
import type { Meeting } from './meeting.ts';

/** What of them does not hold. */
const failedOf = ({ faults }: Person): readonly string[] => [
  ...new Set(
    faults.flatMap(({ kind }) => {
      const { unqualified, absent, unfit, misnames } = faultKind(kind).person ?? {};
      return [
        ...(unqualified || absent || unfit ? ['second-qualified'] : []),
        ...(misnames ? ['numbers-matched'] : []),
      ];
    }),
  ),
];

/** What an order that was not given leaves undone: the part still stands as its fault set it. */
const defeatedBy = ({ faults, state }: Part): readonly string[] =>
  faults.flatMap(({ kind }) => {
    const { defeats = [], sets = {} } = faultKind(kind);
    return Object.entries(sets).every(([name, value]) => state[name] === value) ? defeats : [];
  });

/** Losses by people and by orders not given, in the order of people and parts. */
export const crewLosses = ({ people, parts }: World): readonly Meeting[] =>
  [
    ...people.map((person) => ({ id: person.id, name: person.name, failed: failedOf(person) })),
    ...parts.map((part) => ({ id: part.id, name: part.name, failed: defeatedBy(part) })),
  ].flatMap(({ id, name, failed }) => {
    if (failed.length === 0) return [];
    return [
      {
        hazard: `barrier-loss:${id}`,
        mechanism: 'barrier-loss',
        part: id,
        point: null,
        who: '',
        severity: 'fatal',
        potentiallyFatal: true,
        quantities: [],
        now: [],
        strikes: false,
        failed,
        limit: 'two qualified workers; a clearance on the right circuit',
        source: '29 CFR 1910.269(a)(2)(ii), (l)(2)(i), (m)(3)',
        measure: failed.length,
        measureNow: failed.length,
        words: `${name}: what is relied on is not there.`,
      },
    ];
  });
