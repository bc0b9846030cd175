/**
 * Which drill to take next: the one where most of what was missed here can be met again. A cause that was not found, or a
 * look-alike that was called, is compared with each thing laid in another scenario: same kind, a condition that names both,
 * mechanisms in common. Weights are our own choice. The sentence says no more of the next scene than what is to be practised.
 */
import { faultKind } from '../catalogue/faults.ts';
import type { FaultKind } from '../catalogue/types.ts';
import type { Scenario } from '../scenario/types.ts';
import type { Score } from '../score/types.ts';
import { listed, mechanismWords } from './words.ts';

type Offer = Pick<Scenario, 'id' | 'title' | 'grade' | 'faults' | 'lookAlikes'>;

export interface NextDrill {
  readonly scenario: string;
  readonly title: string;
  /** Why this one, a sentence. */
  readonly why: string;
}

const sameKind = 3;
const sameCondition = 2;

const shared = <T>(some: readonly T[], others: readonly T[]): readonly T[] =>
  some.filter((each) => others.includes(each));

/** How much of one fault kind can be practised on another, 0 to 4. */
export const likeness = (missed: FaultKind, laid: FaultKind): number => {
  if (missed.benign !== laid.benign) return 0;
  const name =
    missed.id === laid.id ? sameKind : shared(missed.conditions, laid.conditions).length > 0 ? sameCondition : 0;
  const ways = missed.mechanisms.length;
  return name + (ways === 0 ? 0 : shared(missed.mechanisms, laid.mechanisms).length / ways);
};

const kindsIn = ({ faults, lookAlikes }: Offer): readonly FaultKind[] =>
  [...faults, ...lookAlikes].map(({ kind }) => faultKind(kind));

const missedIn = ({ causes, lookAlikes }: Score): readonly FaultKind[] => [
  ...causes.filter(({ found }) => !found).map(({ kind }) => faultKind(kind)),
  ...lookAlikes.filter(({ called }) => called).map(({ kind }) => faultKind(kind)),
];

const best = (missed: FaultKind, laid: readonly FaultKind[]): number =>
  Math.max(0, ...laid.map((each) => likeness(missed, each)));

const count = (n: number, one: string, more: string): string => (n === 1 ? `one ${one}` : `${n} ${more}`);

const whyAgain = (missed: readonly FaultKind[], laid: readonly FaultKind[]): string => {
  const met = missed.filter((each) => best(each, laid) > 0);
  const causes = missed.filter(({ benign }) => !benign).length;
  const called = missed.length - causes;
  const here = [
    ...(causes > 0 ? [`${count(causes, 'cause', 'causes')} missed`] : []),
    ...(called > 0 ? [`${count(called, 'look-alike', 'look-alikes')} called`] : []),
  ];
  const ways = [...new Set(met.flatMap(({ mechanisms }) => mechanisms))]
    .filter((way) => laid.some(({ benign, mechanisms }) => !benign && mechanisms.includes(way)))
    .map((way) => mechanismWords[way]);
  const what = ways.length > 0 ? `: ${listed(ways)}` : '';
  return `Of what went by here (${here.join(', ')}), ${met.length === missed.length ? 'all' : `${met.length} of ${missed.length}`} can be practised there${what}.`;
};

/** The scenario to go on with; null where none is offered. The same one again only if there is no other. */
export const nextDrill = (score: Score, here: Offer, offers: readonly Offer[]): NextDrill | null => {
  const others = offers.filter(({ id }) => id !== here.id);
  if (others.length === 0) {
    return offers.some(({ id }) => id === here.id)
      ? { scenario: here.id, title: here.title, why: 'There is no other drill here: take this one again.' }
      : null;
  }
  const missed = missedIn(score);
  const known = new Set(kindsIn(here).map(({ id }) => id));
  const worth = (offer: Offer): number => {
    const laid = kindsIn(offer);
    if (missed.length > 0) return missed.reduce((sum, each) => sum + best(each, laid), 0);
    return new Set(laid.map(({ id }) => id).filter((id) => !known.has(id))).size;
  };
  const apart = ({ grade }: Offer): number => Math.abs(grade - here.grade);
  const [first] = others
    .map((offer) => ({ offer, worth: worth(offer) }))
    .sort((a, b) => b.worth - a.worth || apart(a.offer) - apart(b.offer) || (a.offer.id < b.offer.id ? -1 : 1));
  if (first === undefined) return null;
  const { offer } = first;
  const why =
    missed.length === 0
      ? 'Nothing went by here: that drill has the most that did not lie here.'
      : first.worth > 0
        ? whyAgain(missed, kindsIn(offer))
        : 'No other drill holds anything like what went by here; this one is nearest in grade.';
  return { scenario: offer.id, title: offer.title, why };
};
