/** Each cause as a card: found or missed, from where it could have been made out, what it would have done, what helps. */
import type { Replay } from '../acts/types.ts';
import { controlKind } from '../catalogue/controls.ts';
import { faultKind } from '../catalogue/faults.ts';
import type { JudgedCause, Score } from '../score/types.ts';
import type { UnitSystem } from '../units/formatQuantity.ts';
import { findPart, standById, toolById } from '../world/edit.ts';
import type { World } from '../world/types.ts';
import { quantitiesText } from './quantities.ts';
import type { HazardCard } from './types.ts';

const aidWords: Readonly<Record<string, string>> = {
  eyes: 'by eye',
  lamp: 'by lamp',
  glass: 'with the glass',
  ears: 'by ear',
  'self-test': 'by its self-test',
  'read-tag': 'on its tag',
  measure: 'by testing for voltage',
};

/** Name of a part, tool or the site. */
export const nameOf = (world: World, id: string): string =>
  findPart(world, id)?.name ?? toolById(world, id)?.name ?? id;

/** Places with the simplest aid that suffices there. */
const placesOf = (world: World, cause: JudgedCause): readonly string[] => {
  const rank = ['eyes', 'ears', 'lamp', 'glass'];
  const best = new Map<string, { readonly aid: string; readonly sign: string }>();
  for (const { stand, aid, sign } of cause.perceivableFrom) {
    const key = `${stand} ${aid === 'ears' || !rank.includes(aid) ? aid : 'sight'}`;
    const old = best.get(key);
    if (old === undefined || rank.indexOf(aid) < rank.indexOf(old.aid)) best.set(key, { aid, sign });
  }
  return [...best].map(([key, { aid, sign }]) => {
    const stand = key.slice(0, key.lastIndexOf(' '));
    const where = standById(world, stand)?.name ?? 'where you have it in hand';
    const how = aidWords[aid] ?? `by asking about the ${aid}`;
    return `From ${where}, ${how}: ${sign}`;
  });
};

/** One card a cause, worst first. */
export const hazardCards = (replay: Replay, score: Score, system: UnitSystem): readonly HazardCard[] => {
  const { start } = replay;
  return [...score.causes]
    .sort((a, b) => b.weight - a.weight || (a.cause < b.cause ? -1 : 1))
    .map((cause): HazardCard => {
      const kind = faultKind(cause.kind);
      const hazards = score.hazards.filter(({ id }) => cause.hazards.includes(id));
      const held = score.controls.filter(({ hazard, worked }) => worked && cause.hazards.includes(hazard));
      return {
        cause: cause.cause,
        title: kind.name,
        part: nameOf(start, cause.on),
        severity: kind.severity,
        found: cause.found,
        when: cause.found
          ? `Called at minute ${cause.minute ?? 0}.`
          : cause.lookedNotCalled
            ? 'You perceived a sign of it and did not call it.'
            : 'You never perceived a sign of it.',
        couldBeSeen: placesOf(start, cause),
        wouldDo: [
          kind.harm,
          ...hazards.slice(0, 3).map(({ words, quantities }) => `${words} (${quantitiesText(quantities, system)})`),
        ],
        controls: [
          ...new Set([
            ...held.map(({ control }) => `Held it for you: ${controlKind(control).name}`),
            ...kind.controls.map((id) => `Works: ${controlKind(id).name} (${controlKind(id).rule})`),
          ]),
          ...kind.tempting.map(({ what, why }) => `Tempting and wrong: ${what}; ${why}.`),
        ],
        rule: kind.source,
      };
    });
};
