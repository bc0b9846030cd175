/** The scenarios that are built into the app; one that does not parse is a defect of the build and said so. */
import { parse } from '../engine/scenario/parse.ts';
import { build } from '../engine/world/build.ts';
import type { Offered } from '../screens/types.ts';

const files: Readonly<Record<string, string>> = import.meta.glob('../../scenarios/*.yaml', {
  query: '?raw',
  import: 'default',
  eager: true,
});

export interface Library {
  readonly offered: readonly Offered[];
  readonly problems: readonly string[];
}

/** Every scenario of a set of files by path, by grade, then by title. */
export const libraryFrom = (texts: Readonly<Record<string, string>>): Library => {
  const offered: Offered[] = [];
  const problems: string[] = [];
  for (const [path, text] of Object.entries(texts)) {
    const file = path.slice(path.lastIndexOf('/') + 1);
    const parsed = parse(text, file, { parts: (scenario) => build(scenario, '').parts });
    if (parsed.ok) offered.push({ scenario: parsed.scenario, hash: parsed.hash });
    else problems.push(...parsed.problems.map(({ line, column, message }) => `${file}:${line}:${column} ${message}`));
  }
  const rank = ({ scenario }: Offered): string => `${scenario.grade} ${scenario.title}`;
  return { offered: offered.sort((a, b) => (rank(a) < rank(b) ? -1 : 1)), problems };
};

export const builtIn = (): Library => libraryFrom(files);
