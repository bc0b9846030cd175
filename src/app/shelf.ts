/** Drawn scenarios kept on this device, newest first, so that their drills can be gone on with and their logs opened. */
import { type ReadonlySignal, signal } from '@preact/signals';
import { type ParFile, parForm } from '../engine/proof/parForm.ts';
import type { Offered } from '../screens/types.ts';
import type { Kept } from './kept.ts';
import { offeredFrom } from './library.ts';

export interface Shelf {
  readonly offered: ReadonlySignal<readonly Offered[]>;
  /** Keeps a scenario's text, which must be a good one. */
  add(yaml: string, par: ParFile | null): Offered;
  remove(hash: string): void;
}

interface Row {
  readonly yaml: string;
  readonly par: ParFile | null;
}

export const shelfKey = 'loose-tie.variants';
/** More are not kept: the oldest goes. */
const MOST = 12;

const isRow = (value: unknown): value is Row =>
  typeof value === 'object' &&
  value !== null &&
  typeof (value as Partial<Row>).yaml === 'string' &&
  ((value as Partial<Row>).par === null || parForm.safeParse((value as Partial<Row>).par).success);

const rowsFrom = (text: string | null): readonly Row[] => {
  try {
    const value: unknown = JSON.parse(text ?? '[]');
    return Array.isArray(value) ? value.filter(isRow) : [];
  } catch {
    return []; // what is torn is as if never kept
  }
};

export const createShelf = (kept: Kept): Shelf => {
  const read = ({ yaml, par }: Row): readonly { readonly row: Row; readonly offered: Offered }[] => {
    const made = offeredFrom(yaml, 'kept.yaml', par === null ? [] : [par]);
    return made.ok ? [{ row: { yaml, par }, offered: made.offered }] : [];
  };
  const books = signal(rowsFrom(kept.text(shelfKey)).flatMap(read));
  const offered = signal(books.value.map((book) => book.offered));
  const set = (next: typeof books.value): void => {
    books.value = next;
    offered.value = next.map((book) => book.offered);
    kept.saveText(shelfKey, JSON.stringify(next.map(({ row }) => row)));
  };
  return {
    offered,
    add: (yaml, par) => {
      const [made] = read({ yaml, par });
      if (made === undefined) throw new Error('a drawn scenario does not parse');
      const others = books.value.filter((book) => book.offered.hash !== made.offered.hash);
      set([made, ...others].slice(0, MOST));
      return made.offered;
    },
    remove: (hash) => set(books.value.filter((book) => book.offered.hash !== hash)),
  };
};
