/** Holds a set of source files against the table of allowed imports. */
import { isBuiltin } from 'node:module';
import { posix } from 'node:path';
import { engineRooms, type Room, rooms } from './allowed.ts';
import { bannedConstructs } from './banned.ts';
import { cyclesIn } from './cycles.ts';
import { computed, type Import, importsIn } from './imports.ts';

/** Source text by path, such as `src/engine/math/complex.ts`. */
export type Files = ReadonlyMap<string, string>;

type Edge = Import & { readonly from: string; readonly to: string | null };

const code = /\.(ts|tsx|mts|mjs|js|jsx)$/;

/** The folder that a path belongs to by the table, or null. */
export const roomOf = (path: string): string | null => {
  const [top, first, second, ...rest] = path.split('/');
  if (top !== 'src' || first === undefined) return null;
  if (first === 'engine') return rest.length > 0 && second !== undefined && second in engineRooms ? second : null;
  return second !== undefined && first in rooms && !(first in engineRooms) ? first : null;
};

const targetOf = (from: string, { specifier }: Import): string | null =>
  /^\.{1,2}(\/|$)/.test(specifier) ? posix.join(posix.dirname(from), specifier.replace(/\?.*$/, '')) : null;

const edgesOf = (files: Files): readonly Edge[] =>
  [...files].flatMap(([from, source]) =>
    code.test(from) ? importsIn(from, source).map((found) => ({ ...found, from, to: targetOf(from, found) })) : [],
  );

const packageProblem = ({ specifier }: Edge, room: Room): string | null => {
  const packages = room.packages ?? [];
  if (specifier.startsWith('/') || /^[a-z]+:\/\//.test(specifier)) return `imports "${specifier}" by an absolute path`;
  if (specifier === computed) return packages.includes('node') ? null : 'imports a path computed at run time';
  if (isBuiltin(specifier)) return packages.includes('node') ? null : `imports ${specifier}, a built-in of Node`;
  const fits = (name: string): boolean =>
    name === '*' || (name.endsWith('/') ? specifier.startsWith(name) : `${specifier}/`.startsWith(`${name}/`));
  return packages.some(fits) ? null : `imports the package ${specifier}`;
};

const fileProblem = ({ to, glob }: Edge, files: Files): string | null => {
  if (glob || !to?.startsWith('src/')) return null;
  if (/(^|\/)index\.\w+$/.test(to)) return `imports the folder index ${to}, not the file it needs`;
  return files.has(to) ? null : `imports ${to}, which is no file of src/ (extension included)`;
};

/** Files of scenario/ that bring YAML with them when they are loaded. */
const readerFiles = (edges: readonly Edge[]): ReadonlySet<string> => {
  const reader = new Set<string>();
  const values = edges.filter(({ from, typeOnly }) => roomOf(from) === 'scenario' && !typeOnly);
  for (let before = -1; before < reader.size; ) {
    before = reader.size;
    for (const { from, to, specifier } of values) {
      if (specifier === 'yaml' || (to !== null && reader.has(to))) reader.add(from);
    }
  }
  return reader;
};

const directionProblem = (edge: Edge, name: string, room: Room, reader: ReadonlySet<string>): string | null => {
  const { to, typeOnly, names } = edge;
  if (to === null) return packageProblem(edge, room);
  if (!to.startsWith('src/')) return room.outside ? null : `imports ${to}, outside src/`;
  const target = roomOf(edge.glob ? `${to}/any/any` : to);
  if (target === 'app' && name !== 'app') return `imports ${to}: nobody imports app/`;
  if (target === null) return `imports ${to}, which is in no folder of the table`;
  if (target !== name && !room.rooms.includes(target)) {
    if (!room.typesOf?.includes(target)) return `imports ${to}: ${name}/ may not import ${target}/`;
    if (!typeOnly) return `imports ${to}: ${name}/ may import only types of ${target}/ (write \`import type\`)`;
  }
  if (room.notTheReader && !typeOnly && reader.has(to)) return `imports ${to}: ${name}/ may not import the reader`;
  const barred = room.notTheName;
  if (barred && target in engineRooms && !typeOnly) {
    const takes = names.includes(barred.name) || (to === barred.file && names.includes('*'));
    if (takes) return `imports ${barred.name} from ${to}: ${name}/ may import anything of the engine but that`;
  }
  return null;
};

const cycleProblems = (edges: readonly Edge[], files: Files): readonly string[] => {
  const graph = new Map<string, string[]>([...files.keys()].map((file) => [file, []]));
  for (const { from, to, glob } of edges) if (to !== null && !glob) graph.get(from)?.push(to);
  return cyclesIn(graph).map((cycle) => `${cycle[0]}: import cycle of ${cycle.join(', ')}`);
};

/** Every breach of the rules, each as `file:line: what`; none if all is well. */
export const check = (files: Files): readonly string[] => {
  const problems: string[] = [];
  const edges = edgesOf(files);
  const reader = readerFiles(edges);
  for (const [file, source] of files) {
    const name = roomOf(file);
    if (name === null && code.test(file)) problems.push(`${file}: is in no folder of the table`);
    if (name === null || !(name in engineRooms) || !code.test(file)) continue;
    for (const { line, what } of bannedConstructs(file, source)) problems.push(`${file}:${line}: uses ${what}`);
  }
  for (const edge of edges) {
    const name = roomOf(edge.from);
    const room = name === null ? undefined : rooms[name];
    if (name === null || room === undefined) continue;
    for (const what of [directionProblem(edge, name, room, reader), fileProblem(edge, files)]) {
      if (what !== null) problems.push(`${edge.from}:${edge.line}: ${what}`);
    }
  }
  return [...problems, ...cycleProblems(edges, files)];
};
