/**
 * An instructor's file of weights: JSON with format, version, name, and the weights that are to differ from the usual ones.
 * Everything wrong with it is told at once; nothing is thrown.
 */
import { nearestWord } from '../units/nearestWord.ts';
import { descending, usualWeights, type WeightId, type Weights, weightIds, weightTable } from './weights.ts';

export type ReadWeights =
  | { readonly ok: true; readonly weights: Weights }
  | { readonly ok: false; readonly problems: readonly string[] };

/** Longer files are no weights, characters. */
export const longestWeights = 20_000;
const longestName = 60;

/** The same as a JSON Schema, with limits, usual values and reasons, so that an editor completes and checks the file. */
export const weightsJsonSchema = (): object => ({
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  title: "Weights of judging, an instructor's file",
  type: 'object',
  required: ['format', 'version', 'name', 'weights'],
  additionalProperties: false,
  properties: {
    format: { const: 'loose-tie-weights' },
    version: { const: 1 },
    name: { type: 'string', minLength: 1, maxLength: longestName, not: { const: usualWeights.name } },
    weights: {
      type: 'object',
      additionalProperties: false,
      properties: Object.fromEntries(
        weightIds.map((id) => {
          const { usual, least, most, why } = weightTable[id];
          return [id, { type: 'number', minimum: least, maximum: most, default: usual, description: why }];
        }),
      ),
    },
  },
});

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const isWeight = (id: string): id is WeightId => Object.hasOwn(weightTable, id);

const unknownWord = (word: string, allowed: readonly string[], where: string): string => {
  const near = nearestWord(word, allowed);
  return `${where}: "${word.slice(0, longestName)}" is not known here${near === undefined ? '' : `, perhaps "${near}"`}`;
};

const weightProblem = (id: string, value: unknown): readonly string[] => {
  if (!isWeight(id)) return [unknownWord(id, weightIds, 'weights')];
  const { least, most } = weightTable[id];
  const expected = least === most ? `is always ${least}` : `goes from ${least} to ${most}`;
  if (typeof value !== 'number') return [`weights.${id}: ${expected}, found ${typeof value}`];
  return value >= least && value <= most ? [] : [`weights.${id}: ${expected}, found ${value}`];
};

const orderProblems = (values: Weights['values']): readonly string[] =>
  descending.flatMap((ids) =>
    ids.flatMap((id, at) => {
      const next = ids[at + 1];
      return next !== undefined && values[next] > values[id] ? [`weights.${next}: may not exceed ${id}`] : [];
    }),
  );

const headProblems = ({ format, version, name, weights, ...rest }: Readonly<Record<string, unknown>>): string[] => [
  ...(format === 'loose-tie-weights' ? [] : ['format: expected "loose-tie-weights"']),
  ...(version === 1 ? [] : ['version: expected 1']),
  ...(typeof name === 'string' && name.trim() !== '' && name.length <= longestName && name !== usualWeights.name
    ? []
    : [`name: expected up to ${longestName} letters, other than "${usualWeights.name}"`]),
  ...(isRecord(weights) ? [] : ['weights: expected an object of weights by name']),
  ...Object.keys(rest).map((key) => unknownWord(key, ['format', 'version', 'name', 'weights'], 'file')),
];

const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    return undefined; // told as a problem by the caller
  }
};

/** Weights out of a file's text. */
export const parseWeights = (text: string): ReadWeights => {
  if (text.length > longestWeights) return { ok: false, problems: [`longer than ${longestWeights} characters`] };
  const file = parsed(text);
  if (!isRecord(file)) return { ok: false, problems: ['not a JSON object'] };
  const given = isRecord(file.weights) ? file.weights : {};
  const own = Object.entries(given).flatMap(([id, value]) => weightProblem(id, value));
  const values = { ...usualWeights.values, ...given } as Weights['values'];
  const problems = [...headProblems(file), ...own, ...(own.length === 0 ? orderProblems(values) : [])];
  return problems.length > 0 ? { ok: false, problems } : { ok: true, weights: { name: String(file.name), values } };
};
