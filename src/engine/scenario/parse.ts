/**
 * Text of a scenario file to a checked Scenario in SI, or every problem with its place. Text is hostile until proved
 * otherwise: nothing is thrown, expanded or run. Past this door nobody checks again.
 */
import { componentKind } from '../catalogue/components.ts';
import { faultKind } from '../catalogue/faults.ts';
import { checkKinds, withValues } from './checkKinds.ts';
import { checkParts, type KnownPart, type WrittenIndex } from './checkParts.ts';
import { checkReferences } from './checkReferences.ts';
import { checkScene, checkWires } from './checkScene.ts';
import { limits } from './limits.ts';
import { messageOf, type Path, type Problem, pathText, type Refusal, shown } from './problem.ts';
import { type PlacedRefusal, readTree, type Tree } from './readTree.ts';
import { refusalsFrom } from './refusalsFrom.ts';
import { rowsIn, textIn } from './rows.ts';
import { scenarioHash } from './scenarioHash.ts';
import { scenarioSchema, type WrittenScenario } from './schema/scenario.ts';
import type { Scenario } from './types.ts';
import { bringUp, type Written } from './up.ts';

/** A scenario with its hash, or all problems of the file in order of place. */
export type Parsed =
  | { readonly ok: true; readonly scenario: Scenario; readonly hash: string }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** What the reader cannot know by itself. */
export interface ParseOptions {
  /** Parts that the scene will have, so that faults on parts that are not there are told. */
  readonly parts?: (scenario: Scenario) => readonly KnownPart[];
}

const inOrder = (a: PlacedRefusal, b: PlacedRefusal): number =>
  a.place.line - b.place.line || a.place.column - b.place.column;

/** Problems in order of place, each once; the rest counted where there are too many. */
export const problemsFrom = (file: string, refusals: readonly PlacedRefusal[]): Problem[] => {
  const seen = new Set<string>();
  const all = [...refusals].sort(inOrder).map(({ place, path, found, expected, nearest }): Problem => {
    const message = messageOf(path, nearest === undefined ? { found, expected } : { found, expected, nearest });
    const base = { file, ...place, path: pathText(path), found, expected };
    return nearest === undefined ? { ...base, message } : { ...base, nearest, message };
  });
  const once = all.filter(({ line, column, message }) => {
    const name = `${line}:${column}:${message}`;
    return !seen.has(name) && Boolean(seen.add(name));
  });
  const first = once[limits.problems];
  if (first === undefined) return once;
  const [found, expected] = [`${once.length - limits.problems} more problems`, 'fewer'];
  const more = { ...first, path: '', found, expected, message: messageOf([], { found, expected }) };
  return [...once.slice(0, limits.problems), more];
};

const place = (tree: Tree, refusals: readonly Refusal[]): PlacedRefusal[] =>
  refusals.map((refusal) => ({ ...refusal, place: tree.placeOf(refusal.path, refusal.atKey) }));

const indexOf = (written: Written): WrittenIndex => {
  const find = (keys: readonly string[], id: string): Path =>
    keys.flatMap((key) => rowsIn(written, key)).find(({ fields }) => textIn(fields, 'id') === id)?.path ?? [];
  const { restores } = (written as { job: { restores: readonly string[] } }).job;
  return {
    poles: (id) => find(['poles'], id),
    equipment: (id) => find(['equipment'], id),
    spans: (id) => find(['spans'], id),
    faults: (id) => find(['faults', 'look-alikes'], id),
    events: (part) => {
      const row = rowsIn(written, 'events').find(({ fields }) => textIn(fields, 'part') === part);
      return row ? [...row.path, 'part'] : [];
    },
    restores: (part) => ['job', 'restores', restores.indexOf(part)],
  };
};

const finish = (read: WrittenScenario): Scenario => ({
  ...read,
  equipment: withValues(read.equipment, (kind) => componentKind(kind).values),
  faults: withValues(read.faults, (kind) => faultKind(kind).values),
  lookAlikes: withValues(read.lookAlikes, (kind) => faultKind(kind).values),
});

/** Refusals of two checks of the same place: the earlier check's. */
const firstAt = (refusals: readonly Refusal[]): Refusal[] => {
  const taken = new Set<string>();
  return refusals.filter(({ path }) => {
    const name = JSON.stringify(path);
    return !taken.has(name) && Boolean(taken.add(name));
  });
};

/** Reads one scenario file; `file` is only told in problems. */
export const parse = (text: unknown, file: string, options: ParseOptions = {}): Parsed => {
  if (typeof text === 'string') return check(readTree(text), file, options);
  const refusal = { path: [], found: shown(text), expected: 'the text of a scenario', place: { line: 1, column: 1 } };
  return { ok: false, problems: problemsFrom(file, [refusal]) };
};

/**
 * Reads what this program has written itself and holds as plain data still, without a detour by text: the same checks but
 * those of the text, and every problem told at its beginning. Whatever comes from outside goes by `parse`.
 */
export const parseWritten = (value: Written, file: string, options: ParseOptions = {}): Parsed =>
  check({ value, refusals: [], placeOf: () => ({ line: 1, column: 1 }) }, file, options);

function check(tree: Tree, file: string, options: ParseOptions): Parsed {
  const fail = (refusals: readonly PlacedRefusal[]): Parsed => ({ ok: false, problems: problemsFrom(file, refusals) });
  const { value } = tree;
  if (value === undefined) return fail(tree.refusals);
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return fail([...tree.refusals, ...place(tree, [{ path: [], found: shown(value), expected: 'a group of keys' }])]);
  }
  const brought = bringUp(value as Written);
  if (!brought.ok) return fail([...tree.refusals, ...place(tree, [brought.refusal])]);
  const { written } = brought;
  const read = scenarioSchema.safeParse(written);
  const refusals = firstAt([
    ...(read.success ? [] : refusalsFrom(read.error.issues, scenarioSchema, written)),
    ...checkReferences(written),
    ...checkKinds(written),
  ]);
  if (!read.success || refusals.length + tree.refusals.length > 0) {
    return fail([...tree.refusals, ...place(tree, refusals)]);
  }
  const index = indexOf(written);
  const scenario = finish(read.data);
  const wires = checkWires(read.data, index.spans);
  const last = [
    ...checkScene(read.data, index.poles),
    ...wires,
    ...(options.parts && wires.length === 0 ? checkParts(scenario, options.parts(scenario), index) : []),
  ];
  if (last.length > 0) return fail(place(tree, last));
  return { ok: true, scenario, hash: scenarioHash(scenario) };
}
