/**
 * Quantities as people write them (`40 ft`, `6 ft 6 in`, `7.2 kV`, `1 h 20 min`) into the engine's units.
 * Input is hostile: short text only, finite numbers only, two exponent digits, and never a guess at a missing unit.
 */

import { nearestWord } from './nearestWord.ts';
import { type Dimension, dimensions, type Unit, unitTable } from './unitTable.ts';

/** A value in the engine's unit, or what was found, what was expected, and the nearest unit if one is near. */
export type ParsedQuantity =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly message: string; readonly expected: string; readonly nearest?: string };

const longestText = 40;
const largestValue = 1e12;
const numberPattern = /^([+-]?)(\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+(?:\.\d+)?|\.\d+)(?:e([+-]?\d{1,2}))?(?![\d.,])/i;
const fractionPattern = /^(?:(\d{1,4})[ -])?(\d{1,2})\/(\d{1,2})(?![\d/])/;

const plain = (text: string): string =>
  text
    .replace(/[\u00a0\u2009\u202f\s]+/g, ' ')
    .replace(/[\u2212\u2013]/g, '-')
    .replace(/\u2126/g, 'Ω')
    .replace(/\u03bc/g, 'µ')
    .replace(/[\u2032\u2019]/g, "'")
    .replace(/[\u2033\u201d]/g, '"')
    .trim();

const shown = (text: string): string =>
  JSON.stringify(text.length > longestText ? `${text.slice(0, longestText)}…` : text);

interface Term {
  readonly value: number;
  readonly rest: string;
  readonly signed: boolean;
}

const readNumber = (text: string): Term | undefined => {
  const fraction = fractionPattern.exec(text);
  if (fraction && Number(fraction[3]) > 0) {
    const value = Number(fraction[1] ?? 0) + Number(fraction[2]) / Number(fraction[3]);
    return { value, rest: text.slice(fraction[0].length).trim(), signed: false };
  }
  const match = numberPattern.exec(text);
  if (!match) return undefined;
  const digits = `${match[1]}${(match[2] ?? '').replaceAll(',', '')}${match[3] ? `e${match[3]}` : ''}`;
  return { value: Number(digits), rest: text.slice(match[0].length).trim(), signed: match[1] !== '' };
};

type Lookup = { readonly unit: Unit } | { readonly ambiguous: readonly string[] } | undefined;

/** Spellings in which letter case tells milli from mega. */
const caseMatters = (name: string): boolean => /^[mM]([A-ZΩ]|ohm)/.test(name);

const findUnit = (name: string, dimension: Dimension): Lookup => {
  const { units } = unitTable[dimension];
  const exact = units.find((unit) => unit.names.includes(name));
  if (exact) return { unit: exact };
  const lower = name.toLowerCase();
  const loose = units.flatMap((unit) => {
    const spelling = unit.names.find((known) => known.toLowerCase() === lower);
    return spelling === undefined ? [] : [{ unit, spelling }];
  });
  const [only] = loose;
  if (!only) return undefined;
  if (loose.length > 1) return { ambiguous: loose.map((entry) => entry.spelling) };
  return caseMatters(only.spelling) ? undefined : { unit: only.unit };
};

const fail = (found: string, problem: string, dimension: Dimension, nearest?: string): ParsedQuantity => {
  const expected = `${unitTable[dimension].called}, for example ${unitTable[dimension].example}`;
  const hint = nearest === undefined ? '' : `; did you mean ${JSON.stringify(nearest)}?`;
  const message = `found ${found} ${problem}; expected ${expected}${hint}`;
  return nearest === undefined ? { ok: false, message, expected } : { ok: false, message, expected, nearest };
};

const failUnit = (text: string, name: string, dimension: Dimension): ParsedQuantity => {
  const elsewhere = dimensions.find((other) => other !== dimension && findUnit(name, other) !== undefined);
  if (elsewhere) return fail(shown(text), `which is ${unitTable[elsewhere].called}`, dimension);
  const known = unitTable[dimension].units.flatMap((unit) => unit.names);
  return fail(shown(text), `with an unknown unit ${shown(name)}`, dimension, nearestWord(name, known));
};

const finish = (value: number, text: string, dimension: Dimension): ParsedQuantity =>
  Number.isFinite(value) && Math.abs(value) <= largestValue
    ? { ok: true, value: value === 0 ? 0 : value }
    : fail(shown(text), 'which is beyond any real one', dimension);

/** Terms from large unit to small, each smaller than one of the unit before: `6 ft 6 in`, `1 h 20 min`. */
const readCompound = (text: string, dimension: Dimension): ParsedQuantity | undefined => {
  let rest = text;
  let total = 0;
  let before: Unit | undefined;
  while (rest !== '') {
    const term = readNumber(rest);
    const name = term && /^[a-z'"]+(?=[\s\d]|$)/i.exec(term.rest)?.[0];
    if (!term || !name) return undefined;
    const lookup = findUnit(name, dimension);
    if (!lookup || !('unit' in lookup)) return undefined;
    const { unit } = lookup;
    if (term.signed) return fail(shown(text), 'with a sign in a compound quantity', dimension);
    if (before && term.value * unit.factor >= before.factor * (1 - 1e-12)) {
      return fail(shown(text), `where ${term.value} ${name} is not less than one ${before.names[0]}`, dimension);
    }
    total += term.value * unit.factor;
    before = unit;
    rest = term.rest.slice(name.length).trim();
  }
  return finish(total, text, dimension);
};

/** Reads `text` as a quantity of `dimension`; the value is in the engine's unit (see quantities.ts). Never throws. */
export const parseQuantity = (text: string | number, dimension: Dimension): ParsedQuantity => {
  if (typeof text === 'number') {
    if (dimension === 'dimensionless') return finish(text, String(text), dimension);
    return fail(String(text), 'without a unit', dimension);
  }
  if (text.length > longestText) return fail(shown(text), `of ${text.length} characters`, dimension);
  const clean = plain(text);
  const term = readNumber(clean);
  if (!term) return fail(shown(text), 'which does not start with a number', dimension);
  if (term.rest === '') {
    return dimension === 'dimensionless'
      ? finish(term.value, text, dimension)
      : fail(shown(text), 'without a unit', dimension);
  }
  if (dimension === 'length' || dimension === 'duration') {
    const compound = /\d/.test(term.rest) ? readCompound(clean, dimension) : undefined;
    if (compound) return compound;
  }
  const lookup = findUnit(term.rest, dimension);
  if (!lookup) return failUnit(text, term.rest, dimension);
  if ('ambiguous' in lookup) return fail(shown(text), `which could be ${lookup.ambiguous.join(' or ')}`, dimension);
  return finish(term.value * lookup.unit.factor + lookup.unit.offset, text, dimension);
};
