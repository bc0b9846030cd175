/** One card a cause: what it is, found or missed, from where it could have been made out, what it would have done, what helps. */
import type { Replay } from '../acts/types.ts';
import { faultKind } from '../catalogue/faults.ts';
import type { Mechanism } from '../catalogue/types.ts';
import type { Hazard } from '../hazards/types.ts';
import type { JudgedCause, Score } from '../score/types.ts';
import { aids } from '../senses/types.ts';
import type { UnitSystem } from '../units/formatQuantity.ts';
import { personById, standById } from '../world/edit.ts';
import type { World } from '../world/types.ts';
import { controlLines } from './cardControls.ts';
import { clockAt } from './clock.ts';
import { quantitiesText } from './quantities.ts';
import type { HazardCard, Place } from './types.ts';
import { capital, nameOf, placeOf, sentence, withThe } from './words.ts';

/** Aids from the simplest that tells most to the one that tells least. */
const aidWords: Readonly<Record<string, string>> = {
  'self-test': 'by its self-test',
  'read-tag': 'on its tag',
  measure: 'by a test for voltage',
  eyes: 'by eye',
  lamp: 'by lamp',
  glass: 'with the glass',
  ears: 'by ear',
  sound: 'by sounding the pole with the hammer',
  prod: 'by prodding it at the ground line',
  inspect: 'by looking it over',
  wipe: 'by wiping it down',
  'air-test': 'by an air test',
};
const order = Object.keys(aidWords);
/** Asking comes last: it is of no help where one can see. */
const rank = (aid: string): number => (order.includes(aid) ? order.indexOf(aid) : order.length);

type Vantage = JudgedCause['perceivableFrom'][number];

/** At most one a stand, by the simplest aid; the simplest first. */
export const best = (vantages: readonly Vantage[]): readonly Vantage[] => {
  const byStand = new Map<string, Vantage>();
  for (const vantage of vantages) {
    const known = byStand.get(vantage.stand);
    if (known === undefined || rank(vantage.aid) < rank(known.aid)) byStand.set(vantage.stand, vantage);
  }
  return [...byStand.values()].sort((a, b) => rank(a.aid) - rank(b.aid) || (a.stand < b.stand ? -1 : 1));
};

const howWords = (aid: string): string =>
  aidWords[aid] ??
  (aid === 'noticed' ? 'by asking what they noticed' : `by asking about the ${aid.replaceAll('-', ' ')}`);

/** Where and by what a sign is made out. */
export const whereWords = (world: World, { stand, aid }: Vantage): string => {
  const where = standById(world, stand)?.name;
  const how = howWords(aid);
  return capital(where === undefined ? how : `${where}, ${how}`);
};

const placeWords = (world: World, vantage: Vantage): string =>
  `${whereWords(world, vantage)}: \u201c${vantage.sign}\u201d`;

const goThere = (world: World, vantage: Vantage): Place => ({
  stand: standById(world, vantage.stand)?.id ?? null,
  from: standById(world, vantage.stand)?.name ?? null,
  aid: aids.find((aid) => aid === vantage.aid) ?? null,
  how: howWords(vantage.aid),
  sign: vantage.sign,
  words: placeWords(world, vantage),
});

/** A sign told alike from several places by the same aid, once. */
export const sameSigns = (places: readonly Place[]): readonly (readonly Place[])[] => {
  const groups = new Map<string, Place[]>();
  for (const place of places) {
    const key = `${place.how} ${place.sign}`;
    groups.set(key, [...(groups.get(key) ?? []), place]);
  }
  return [...groups.values()];
};

/** 'By eye: “…”', what places that tell the same have in common. */
export const signWords = ([first]: readonly Place[]): string =>
  first === undefined ? '' : `${capital(first.how)}: \u201c${first.sign}\u201d`;

/** As many are named of places that tell the same. */
const mostPlaces = 4;

/** 'By eye: “…”; from the field side, pole QR-14; the road side, pole QR-14.' */
export const signLine = (places: readonly Place[]): string => {
  const from = places.flatMap(({ from: stand }) => stand ?? []);
  const more = from.length - mostPlaces;
  const some = more > 1 ? `${from.slice(0, mostPlaces).join('; ')}; and ${more} more places` : from.join('; ');
  return `${signWords(places)}${from.length === 0 ? '' : `, from: ${some}`}`;
};

const meetingWords: Readonly<Record<Mechanism, string>> = {
  contact: 'Touching',
  approach: 'Coming near',
  flash: 'Switching',
  step: 'Walking beside',
  drop: 'Being below or beside',
  fall: 'Climbing',
  'struck-by': 'Standing by',
  lightning: 'Working in',
  'barrier-loss': 'Trusting',
};

/** Deadly before the rest, at the part itself before elsewhere, then by the first quantity, which is far below a million. */
const weigh = ({ potentiallyFatal, part, quantities }: Hazard, on: string): number =>
  (potentiallyFatal ? 2e6 : 0) + (part === on ? 1e6 : 0) + (quantities[0]?.value ?? 0);

/** The worst of each mechanism, deadly ones first; what is at the cause's own part comes before what is elsewhere. */
export const worstOfEach = (hazards: readonly Hazard[], on: string): readonly Hazard[] => {
  const worst = new Map<Mechanism, Hazard>();
  for (const hazard of hazards) {
    const known = worst.get(hazard.mechanism);
    const isWorse = known === undefined || weigh(hazard, on) > weigh(known, on);
    if (isWorse) worst.set(hazard.mechanism, hazard);
  }
  return [...worst.values()].sort((a, b) => Number(b.potentiallyFatal) - Number(a.potentiallyFatal));
};

const lower = (text: string): string => text.replace(/^[A-Z]/, (first) => first.toLowerCase());

/** What meets whom, and how much of it. */
export const hazardWords = (world: World, hazard: Hazard, system: UnitSystem): string => {
  const { id, mechanism, part, words, quantities } = hazard;
  const plain = words.replace(/\.$/, '');
  const at = placeOf(world, id, part);
  const what =
    part === 'site'
      ? plain
      : personById(world, part) !== null
        ? `${at}: ${lower(plain)}`
        : `${meetingWords[mechanism]} ${withThe(at)}: ${lower(plain)}`;
  return sentence(quantities.length === 0 ? what : `${what} (${quantitiesText(quantities, system)})`);
};

const missedWords: Readonly<Record<NonNullable<JudgedCause['missedBy']>, string>> = {
  perceived: 'You perceived a sign of it and did not call it.',
  'looked-in-vain': 'You looked at it, but not from where a sign could be told.',
  'never-looked': 'You never looked at it.',
};

const whenWords = (world: World, { minute, missedBy }: JudgedCause): string =>
  missedBy === null ? `Called at ${clockAt(world, minute ?? 0)}.` : missedWords[missedBy];

const cardOf = (world: World, score: Score, cause: JudgedCause, system: UnitSystem): HazardCard => {
  const kind = faultKind(cause.kind);
  const hazards = score.hazards.filter(
    ({ id, mechanism }) => cause.hazards.includes(id) && mechanism !== 'barrier-loss',
  );
  return {
    cause: cause.cause,
    title: kind.name,
    part: nameOf(world, cause.on),
    severity: kind.severity,
    found: cause.found,
    when: whenWords(world, cause),
    on: cause.on,
    couldBeSeen: best(cause.perceivableFrom).map((vantage) => placeWords(world, vantage)),
    places: best(cause.perceivableFrom).map((vantage) => goThere(world, vantage)),
    wouldDo: [
      ...(hazards.some(({ words }) => words === kind.harm) ? [] : [kind.harm]),
      ...worstOfEach(hazards, cause.on).map((hazard) => hazardWords(world, hazard, system)),
    ],
    controls: controlLines(kind, cause, score),
    rule: kind.source,
  };
};

/** One card a cause, worst first. */
export const hazardCards = (replay: Replay, score: Score, system: UnitSystem): readonly HazardCard[] =>
  [...score.causes]
    .sort((a, b) => b.weight - a.weight || (a.cause < b.cause ? -1 : 1))
    .map((cause) => cardOf(replay.start, score, cause, system));
