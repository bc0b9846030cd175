/** What the catalogue says of a kind: that it exists, its states, its words, and its values with their dimensions. */
import { componentKind, componentKinds } from '../catalogue/components.ts';
import { faultKind, faultKinds, isFaultKind } from '../catalogue/faults.ts';
import { isJobKind, jobKinds } from '../catalogue/jobs.ts';
import { toolKinds } from '../catalogue/tools.ts';
import { format } from '../units/formatQuantity.ts';
import { parseQuantity } from '../units/parseQuantity.ts';
import { type Dimension, dimensions } from '../units/unitTable.ts';
import { oneOf, type Path, type Refusal, shown } from './problem.ts';
import { groupIn, type Row, rowsIn, textIn } from './rows.ts';
import type { WrittenValues } from './schema/equipment.ts';
import type { Written } from './up.ts';

type Values = Readonly<Record<string, { readonly dimension: string; readonly allowed?: readonly number[] }>>;

/** Kinds that a scenario may list as equipment of a pole. */
export const equipmentKinds = componentKinds.filter(({ equipment }) => equipment).map(({ id }) => id);

const kebab = (name: string): string => name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
const isDimension = (word: string): word is Dimension => dimensions.some((known) => known === word);

/** A catalogue entry's dimension word; a ratio, or a value per metre, is written as a plain number. */
const dimensionOf = (values: Values, name: string): Dimension => {
  const word = values[name]?.dimension ?? '';
  return isDimension(word) ? word : 'dimensionless';
};

/** The catalogue's name of a value written in small letters and hyphens. */
const valueName = (values: Values, written: string): string | undefined =>
  Object.keys(values).find((name) => kebab(name) === written);

const unknownKind = (path: Path, kind: string, known: readonly string[]): Refusal => {
  const { nearest } = oneOf(known, kind);
  const expected = nearest === undefined ? oneOf([...known].sort(), kind).expected : 'a kind of the catalogue';
  return { path: [...path, 'kind'], found: `the unknown kind ${shown(kind)}`, expected, ...(nearest && { nearest }) };
};

const unknownName = (path: Path, name: string, what: string, known: readonly string[]): Refusal => ({
  path: [...path, name],
  atKey: true,
  found: `the unknown ${what} ${shown(name)}`,
  ...(known.length === 0 ? { expected: `no ${what} of this kind` } : oneOf(known, name)),
});

const entryOf = <T>(entries: Readonly<Record<string, T>>, name: string): T | undefined =>
  Object.hasOwn(entries, name) ? entries[name] : undefined;

/** 15 kVA, 25 kVA …: allowed sizes as people write them. */
const sizes = (allowed: readonly number[], dimension: Dimension): string[] =>
  allowed.map((size) => format(size, dimension, 'us'));

const checkValue = (path: Path, value: string | number, values: Values, name: string): Refusal[] => {
  const dimension = dimensionOf(values, name);
  const parsed = parseQuantity(value, dimension);
  const refuse = (expected: string, nearest?: string): Refusal[] => [
    { path, found: shown(value), expected, ...(nearest && { nearest }) },
  ];
  if (!parsed.ok) return refuse(parsed.expected, parsed.nearest);
  const allowed = values[name]?.allowed;
  if (allowed && !allowed.includes(parsed.value)) return refuse(oneOf(sizes(allowed, dimension), undefined).expected);
  return parsed.value > 0 ? [] : refuse('more than zero');
};

const checkValues = (path: Path, written: Written, values: Values): Refusal[] =>
  Object.entries(written).flatMap(([key, value]) => {
    const name = valueName(values, key);
    if (name === undefined) return [unknownName(path, key, 'value', Object.keys(values).map(kebab))];
    if (typeof value !== 'string' && typeof value !== 'number') return [];
    return checkValue([...path, key], value, values, name);
  });

/** Names among `entries`, each with one of its words where only some are allowed. */
const checkWords = <T>(
  path: Path,
  written: Written,
  what: string,
  entries: Readonly<Record<string, T>>,
  allowedOf: (entry: T) => readonly string[] | undefined,
): Refusal[] =>
  Object.entries(written).flatMap(([name, word]) => {
    const entry = entryOf(entries, name);
    if (entry === undefined) return [unknownName(path, name, what, Object.keys(entries))];
    const allowed = allowedOf(entry);
    if (!allowed || typeof word !== 'string' || allowed.includes(word)) return [];
    return [{ path: [...path, name], found: shown(word), ...oneOf(allowed, word) }];
  });

const checkEquipment = ({ path, fields }: Row): Refusal[] => {
  const id = textIn(fields, 'kind');
  if (id === undefined) return [];
  if (!equipmentKinds.includes(id)) return [unknownKind(path, id, equipmentKinds)];
  const { states, terminals, words, values } = componentKind(id);
  const nets = Object.fromEntries(terminals.map((terminal) => [terminal, terminal]));
  return [
    ...checkWords([...path, 'state'], groupIn(fields, 'state'), 'state', states, (positions) => positions),
    ...checkWords([...path, 'nets'], groupIn(fields, 'nets'), 'terminal', nets, () => undefined),
    ...checkWords([...path, 'words'], groupIn(fields, 'words'), 'word', words, ({ allowed }) => allowed),
    ...checkValues([...path, 'values'], groupIn(fields, 'values'), values),
  ];
};

/** Whether look-alikes are meant; a benign kind among the faults, or the other way, is in the wrong list. */
const checkFault = ({ path, fields }: Row, benign: boolean): Refusal[] => {
  const id = textIn(fields, 'kind');
  if (id === undefined) return [];
  if (!isFaultKind(id)) {
    const known = faultKinds.filter((kind) => kind.benign === benign).map((kind) => kind.id);
    return [unknownKind(path, id, known)];
  }
  const kind = faultKind(id);
  const wrongList: Refusal[] =
    kind.benign === benign
      ? []
      : [
          {
            path: [...path, 'kind'],
            found: `${shown(id)}, which is ${kind.benign ? 'harmless' : 'a fault'}`,
            expected: kind.benign ? 'it under look-alikes' : 'it under faults',
          },
        ];
  return [...wrongList, ...checkValues([...path, 'values'], groupIn(fields, 'values'), kind.values)];
};

const checkJob = (written: Written): Refusal[] => {
  const id = textIn(groupIn(written, 'job'), 'kind');
  return id === undefined || isJobKind(id)
    ? []
    : [
        unknownKind(
          ['job'],
          id,
          jobKinds.map((kind) => kind.id),
        ),
      ];
};

const checkTool = ({ path, fields }: Row): Refusal[] => {
  const id = textIn(fields, 'kind');
  const known = toolKinds.map((kind) => kind.id);
  return id === undefined || known.includes(id) ? [] : [unknownKind(path, id, known)];
};

/** Refusals by the catalogue, on data that may have other problems too. */
export const checkKinds = (written: Written): Refusal[] => [
  ...rowsIn(written, 'equipment').flatMap(checkEquipment),
  ...rowsIn(written, 'tools').flatMap(checkTool),
  ...checkJob(written),
  ...rowsIn(written, 'faults').flatMap((row) => checkFault(row, false)),
  ...rowsIn(written, 'look-alikes').flatMap((row) => checkFault(row, true)),
];

const readValues = (written: WrittenValues, values: Values): Readonly<Record<string, number>> =>
  Object.fromEntries(
    Object.entries(written).map(([key, value]) => {
      const name = valueName(values, key);
      const parsed = name === undefined ? undefined : parseQuantity(value, dimensionOf(values, name));
      if (name === undefined || !parsed?.ok) throw new Error(`the value ${key} was not checked`);
      return [name, parsed.value];
    }),
  );

/** Rows with their values read into the engine's units; only after `checkKinds` found nothing. */
export const withValues = <R extends { readonly kind: string; readonly values?: WrittenValues }>(
  rows: readonly R[],
  valuesOf: (kind: string) => Values,
): (Omit<R, 'values'> & { readonly values?: Readonly<Record<string, number>> })[] =>
  rows.map(({ values, ...row }) =>
    values === undefined ? row : { ...row, values: readValues(values, valuesOf(row.kind)) },
  );
