/**
 * How the line is put up: framing, insulators, ties, strings, bodies of cutouts and arresters, mounting sides, lengths of
 * poles. Adjacent poles carry the same framing and the same hardware (common practice), so each is drawn once a line;
 * which hardware a utility buys differs.
 */
import { componentKind, isComponentKind } from '../catalogue/components.ts';
import type { Draw } from './draw.ts';
import { type Bounds, framings } from './types.ts';
import { type Group, rowsAt } from './written.ts';

const across: Readonly<Record<string, string>> = { road: 'field', field: 'road' };
const along: Readonly<Record<string, string>> = { source: 'load', load: 'source' };

const poleOf = ({ id }: Group): string => String(id).split('.')[0] ?? '';

/** Arm, strings under it, or brackets where several phases run through, and what holds the conductors. */
export function varyFraming(draw: Draw, written: Group, bounds: Bounds): Group {
  const pick = (key: string, words: readonly string[], ordinary: string): Group => {
    if (words.length === 0) return {};
    const word = draw.one(words);
    return { [key]: word === ordinary ? null : word };
  };
  const hardware: Group = {
    ...pick('insulator', bounds.insulators, 'pin'),
    ...pick('tie', bounds.ties, 'preformed'),
    ...pick('strings', bounds.strings, 'polymer'),
  };
  const framing = bounds.framing.length === 0 ? null : draw.one(bounds.framing);
  return {
    ...written,
    poles: rowsAt(written, 'poles').map((pole) => {
      const through = framings.some((word) => word === pole.framing);
      const varied = { ...pole, ...hardware, ...(through && framing !== null ? { framing } : {}) };
      return Object.fromEntries(Object.entries(varied).filter(([, value]) => value !== null)) as Group;
    }),
  };
}

/** What cutouts and arresters of a pole are made of: of one make on a pole. */
export function varyBodies(draw: Draw, written: Group, { bodies }: Bounds): Group {
  if (bodies.length === 0) return written;
  const made = new Map(rowsAt(written, 'poles').map(({ id }) => [String(id), draw.one(bodies)]));
  return {
    ...written,
    equipment: rowsAt(written, 'equipment').map((each) => {
      const kind = String(each.kind);
      const body = made.get(poleOf(each));
      const allowed = isComponentKind(kind) ? componentKind(kind).words.body?.allowed : undefined;
      if (body === undefined || !allowed?.includes(body)) return each;
      return { ...each, words: { ...(each.words as Group | undefined), body } };
    }),
  };
}

/** Whole poles are turned over, so that what hangs side by side still does. */
export function varySides(draw: Draw, written: Group, { sides }: Bounds): Group {
  if (!sides) return written;
  const turned = new Map(
    rowsAt(written, 'poles').map(({ id }) => [
      String(id),
      { ...(draw.chance(0.5) ? across : {}), ...(draw.chance(0.5) ? along : {}) } as Readonly<Record<string, string>>,
    ]),
  );
  return {
    ...written,
    equipment: rowsAt(written, 'equipment').map((each) => {
      const side = String(each.side);
      return each.side === undefined ? each : { ...each, side: turned.get(poleOf(each))?.[side] ?? side };
    }),
  };
}

/** Lengths, neighbours within a step of the list; a pole with equipment at a height of its own keeps its length. */
export function varyPoles(draw: Draw, written: Group, { poleFeet }: Bounds): Group {
  if (poleFeet.length === 0) return written;
  const steps = [...poleFeet].sort((a, b) => a - b);
  const fixed = new Set(
    rowsAt(written, 'equipment')
      .filter(({ height }) => height !== undefined)
      .map(poleOf),
  );
  let at = draw.whole(0, steps.length - 1);
  return {
    ...written,
    poles: rowsAt(written, 'poles').map((pole) => {
      at = Math.min(steps.length - 1, Math.max(0, at + draw.whole(-1, 1)));
      return fixed.has(String(pole.id)) ? pole : { ...pole, length: `${steps[at]} ft` };
    }),
  };
}
