/** Offered acts in the groups of the page: by what reaches, and the long ones again by part or by sort of act. */
import type { OfferedAct } from '../../engine/acts/types.ts';
import type { World } from '../../engine/world/types.ts';
import { capital, nameOf } from '../words.ts';

export type By = OfferedAct['by'];

export interface ActGroup {
  readonly by: By;
  readonly title: string;
  readonly count: number;
  readonly offered: readonly OfferedAct[];
  readonly folders: readonly Folder[];
}

/** Acts that lie together; without a title they lie open. */
export interface Folder {
  readonly id: string;
  readonly title: string | null;
  /** The tool whose tag stands beside the title. */
  readonly tool: string | null;
  readonly offered: readonly OfferedAct[];
}

/** In the order in which they stand on the page. */
export const reaches: readonly (readonly [by: By, title: string])[] = [
  ['eyes', 'Eyes and ears'],
  ['feet', 'On foot, and time'],
  ['radio', 'Radio and telephone'],
  ['talk', 'Talking to people here'],
  ['truck', 'Truck'],
  ['tools', 'Tools and wear'],
  ['stick', 'By stick'],
  ['hands', 'By hand'],
  ['paper', 'On paper'],
];

/** Acts of so few need no folders. */
const few = 8;

const spoken: Partial<Record<OfferedAct['act']['act'], string>> = { ask: 'Ask', tell: 'Tell', clearance: 'Clearance' };

const folderOf = (by: By, { act, about }: OfferedAct): string | null => {
  if (by === 'radio' || by === 'talk') return spoken[act.act] ?? null;
  return by === 'stick' || by === 'hands' || by === 'tools' ? about : null;
};

/** Folders of one reach, the open ones first, else in the order of the offers. */
export const foldersOf = (world: World, by: By, offered: readonly OfferedAct[]): readonly Folder[] => {
  const flat = by !== 'tools' && offered.length <= few;
  const names = [...new Set(offered.map((each) => (flat ? null : folderOf(by, each))))];
  return names
    .sort((a, b) => Number(a !== null) - Number(b !== null))
    .map((name) => ({
      id: name ?? '',
      title: name === null ? null : capital(nameOf(world, name)),
      tool: by === 'tools' ? name : null,
      offered: flat ? offered : offered.filter((each) => folderOf(by, each) === name),
    }));
};

/** Every typed word occurs in the label or the name of what it is about. */
export const holdsWords = (world: World, filter: string): ((offered: OfferedAct) => boolean) => {
  const words = filter.trim().toLowerCase().split(/\s+/).filter(Boolean);
  return ({ label, about }) => {
    const text = `${label} ${about === null ? '' : nameOf(world, about)}`.toLowerCase();
    return words.every((word) => text.includes(word));
  };
};

/** Findings and plans are struck on their own pages. */
const isWritten = ({ act }: OfferedAct): boolean => act.act === 'withdraw-finding' || act.act === 'withdraw-plan';

/** The groups of the page; `only` leaves one reach, `about` what concerns one thing. */
export const actGroups = (
  world: World,
  offers: readonly OfferedAct[],
  { filter, only, about }: { readonly filter: string; readonly only: string | null; readonly about: string | null },
): readonly ActGroup[] => {
  const fits = holdsWords(world, filter);
  const offered = offers.filter((each) => !isWritten(each) && fits(each) && (about === null || each.about === about));
  return reaches
    .filter(([by]) => only === null || only === by)
    .map(([by, title]) => {
      const those = offered.filter((each) => each.by === by);
      return { by, title, count: those.length, offered: those, folders: foldersOf(world, by, those) };
    })
    .filter(({ count }) => count > 0);
};
