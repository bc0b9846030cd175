/** Names and turns of phrase of a debrief. */
import { pointName } from '../catalogue/pointNames.ts';
import type { Mechanism } from '../catalogue/types.ts';
import { findPart, personById, toolById } from '../world/edit.ts';
import { bareTerminals } from '../world/points.ts';
import type { World } from '../world/types.ts';

export const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

const others: Readonly<Record<string, string>> = { site: 'the place itself', ticket: 'the ticket' };

/** Name of a part, tool or person; the id itself for anything else. 'pole, pole QR-14' is said once. */
export const nameOf = (world: World, id: string): string =>
  (findPart(world, id)?.name ?? toolById(world, id)?.name ?? personById(world, id)?.name ?? others[id] ?? id).replace(
    /^(\w+), \1 /,
    '$1 ',
  );

/** 'the fused cutout, pole QR-13'; a name that needs no article keeps none. */
export const withThe = (name: string): string => (/^(the|a|an|pole) /.test(name) ? name : `the ${name}`);

/** The text as a sentence: a capital and a full stop. */
export const sentence = (text: string): string => `${capital(text)}${/[.!?]$/.test(text) ? '' : '.'}`;

/** 'a, b and c'. */
export const listed = (all: readonly string[]): string =>
  all.length < 2 ? all.join('') : `${all.slice(0, -1).join(', ')} and ${all.at(-1)}`;

/** The ways in which somebody is hurt. */
export const mechanismWords: Readonly<Record<Mechanism, string>> = {
  contact: 'current through the body',
  approach: 'inside the minimum approach distance',
  flash: 'electric arc',
  step: 'a voltage across the ground between the feet',
  drop: 'a conductor that can come down',
  fall: 'a fall from height',
  'struck-by': 'something that moves or falls',
  lightning: 'lightning',
  'barrier-loss': 'a barrier that does not hold',
};

/** An exposure in a few words: how, and at what; the place itself goes without saying. */
export const metWords = (mechanism: Mechanism, place: string): string => {
  const at = withThe(place);
  if (at === others.site) return mechanismWords[mechanism];
  const told: Readonly<Record<Mechanism, string>> = {
    contact: `${mechanismWords.contact} from ${at}`,
    approach: `${mechanismWords.approach} of ${at}`,
    flash: `${mechanismWords.flash} at ${at}`,
    step: `${mechanismWords.step}, near ${at}`,
    drop: `${mechanismWords.drop}: ${at}`,
    fall: `${mechanismWords.fall}, ${at}`,
    'struck-by': `${mechanismWords['struck-by']}: ${at}`,
    lightning: mechanismWords.lightning,
    'barrier-loss': `${mechanismWords['barrier-loss']}: ${at}`,
  };
  return told[mechanism];
};

/** What a control lacked, after 'Missing:'. */
const lacking: Readonly<Record<string, string>> = {
  clearance: 'a clearance',
  tagged: 'tags on every device that others could close',
  'source-known': 'every possible source known',
  'tested-dead': 'a test that showed it dead',
  'detector-proved': 'a detector proved before and after',
  grounded: 'grounds on it',
  'neutral-first': 'the neutral clamp first',
  'tool-in-test': 'a tool within its test date',
  'tool-clean-dry': 'a stick wiped dry',
  'tool-sound': 'a tool that is whole',
  'tool-rated': 'a tool rated for the voltage',
  'gloves-rated': 'gloves rated for the voltage',
  'gloves-in-test': 'gloves within their test date',
  'gloves-air-tested': 'an air test of the gloves',
  'face-shield': 'a face shield',
  'fall-gear': 'fall protection',
  'cover-rated': 'cover rated for the voltage',
  barricaded: 'the public kept out',
  reported: 'a report to the dispatcher',
  'second-qualified': 'a second qualified worker',
  briefed: 'a job briefing with everybody there',
  'rescue-ready': 'rescue made ready',
  'pole-checked': 'a pole looked at and sounded',
  'keep-distance': 'the distance kept',
  'numbers-matched': 'the numbers matched on both sides',
  'reclosing-blocked': 'the reclosing blocked',
  'traffic-held': 'the traffic held off',
  'storm-over': 'half an hour since the last thunder',
  'wind-within-limit': 'wind within the limit',
  'no-ice': 'a pole free of ice',
  'dry-ground': 'ground without water on it',
  'zone-clear': 'nobody beneath the work',
  'truck-held': 'a truck grounded or barricaded',
  'ground-sized': 'grounds that carry the fault',
  sleeves: 'sleeves with the gloves',
  watched: 'somebody who watches only',
  'owner-told': 'an owner who was told',
  'dog-in': 'a dog that is shut in',
  'vehicle-chocked': 'wheels chocked',
  'engine-off': 'the engine off while listening',
  'truck-clear': 'the truck clear of the line',
  'fall-gear-sound': 'fall gear that is whole',
  'cover-sound': 'cover that is whole',
  'grounds-counted': 'the grounds counted',
  'crew-clear': 'everyone called clear',
  'scene-known': 'every part looked at from two sides',
  'secondary-shorted': 'the low side shorted',
  'hard-hat': 'a hard hat',
  vest: 'a vest that is seen',
  'lift-sound': 'a lift that was looked over',
};

/** A precondition's words; an id that has none is said as it is. */
export const lackingWords = (id: string): string => lacking[id] ?? id.replaceAll('-', ' ');

/** Name of what a hazard is at, with the end of it where there are several: 'top contact of the fused cutout, pole QR-13'. */
export const placeOf = (world: World, hazard: string, part: string): string => {
  const [, terminal] = hazard.split('/');
  const known = findPart(world, part);
  const bare = terminal !== undefined && known !== null && bareTerminals(known).includes(terminal);
  return bare ? `${pointName(known.kind, terminal)} of ${withThe(nameOf(world, part))}` : nameOf(world, part);
};
