/** The scenarios that are built into the app; one that does not parse is a defect of the build and said so. */
import { type ParFile, parFor, parForm } from '../engine/proof/parForm.ts';
import { parse } from '../engine/scenario/parse.ts';
import { build } from '../engine/world/build.ts';
import type { Offered } from '../screens/types.ts';

const files: Readonly<Record<string, string>> = import.meta.glob('../../scenarios/*.yaml', {
  query: '?raw',
  import: 'default',
  eager: true,
});

const pars: Readonly<Record<string, unknown>> = import.meta.glob('../../scenarios/par/*.json', {
  import: 'default',
  eager: true,
});

export interface Library {
  readonly offered: readonly Offered[];
  readonly problems: readonly string[];
}

type Read =
  | { readonly ok: true; readonly offered: Offered }
  | { readonly ok: false; readonly problems: readonly string[] };

/** A scenario's text as it is offered, with the par that fits among those proved. */
export const offeredFrom = (text: string, file: string, proven: readonly ParFile[] = []): Read => {
  const parsed = parse(text, file, { parts: (scenario) => build(scenario, '').parts });
  if (!parsed.ok) {
    return {
      ok: false,
      problems: parsed.problems.map(({ line, column, message }) => `${file}:${line}:${column} ${message}`),
    };
  }
  const { scenario, hash } = parsed;
  const route = proven.find((each) => parFor(each, hash) !== null) ?? null;
  return { ok: true, offered: { scenario, hash, text, par: route && parFor(route, hash), route } };
};

/** Every scenario of a set of files by path, by grade, then by title, each with the par that was proved for it. */
export const libraryFrom = (
  texts: Readonly<Record<string, string>>,
  proven: Readonly<Record<string, unknown>> = {},
): Library => {
  const files = Object.values(proven).map((file) => parForm.parse(file));
  const offered: Offered[] = [];
  const problems: string[] = [];
  for (const [path, text] of Object.entries(texts)) {
    const file = path.slice(path.lastIndexOf('/') + 1);
    const read = offeredFrom(text, file, files);
    if (read.ok) offered.push(read.offered);
    else problems.push(...read.problems);
  }
  const rank = ({ scenario }: Offered): string => `${scenario.grade} ${scenario.title}`;
  return { offered: offered.sort((a, b) => (rank(a) < rank(b) ? -1 : 1)), problems };
};

export const builtIn = (): Library => libraryFrom(files, pars);
