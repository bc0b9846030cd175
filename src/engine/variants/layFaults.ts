/**
 * Faults and look-alikes for the parts of a scene: a kind is drawn for a part of a sort it can lie on and made of what
 * it can lie on, one a part. Kinds whose leak ends on another part, and kinds on tools, people and the site, need words
 * or dates to fit and are not drawn.
 */
import { faultKinds } from '../catalogue/faults.ts';
import type { FaultKind } from '../catalogue/types.ts';
import type { Part } from '../world/types.ts';
import type { Draw } from './draw.ts';
import type { Group } from './written.ts';

const fits = ({ on, only = {} }: FaultKind, part: Part): boolean =>
  on.includes(part.kind) && Object.entries(only).every(([name, words]) => words.includes(part.words[name] ?? ''));

const isFree = ({ leaks }: FaultKind): boolean => leaks.every(({ elsewhere }) => elsewhere !== true);

const faces = ['road', 'field'] as const;

/** Rows of `faults` or `look-alikes`; a kind once, on parts not yet taken. */
export function rowsFor(
  draw: Draw,
  parts: readonly Part[],
  count: number,
  benign: boolean,
  taken: ReadonlySet<string>,
): readonly Group[] {
  const rows: Group[] = [];
  const used = new Set(taken);
  const left = faultKinds.filter((kind) => kind.benign === benign && isFree(kind));
  while (rows.length < count) {
    const open = left.filter(
      (kind) => !used.has(kind.id) && parts.some((part) => !used.has(part.id) && fits(kind, part)),
    );
    if (open.length === 0) return rows;
    const kind = draw.one(open);
    const part = draw.one(parts.filter((each) => !used.has(each.id) && fits(kind, each)));
    used.add(kind.id);
    used.add(part.id);
    const id = `${benign ? 'like' : 'fault'}-${rows.length + 1}`;
    rows.push({ id, kind: kind.id, on: part.id, ...(benign ? { side: draw.one(faces) } : {}) });
  }
  return rows;
}
