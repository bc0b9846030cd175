/**
 * How much of the scene was looked over before hands went on anything: parts that show something, and those of them at which
 * somebody looked from where, and with what, at least one of their features could be told. A look that could tell nothing,
 * because of distance, dark, fog or the other side, covers nothing.
 */
import type { Replay } from '../acts/types.ts';
import { componentKind } from '../catalogue/components.ts';
import { lookAt } from '../senses/lookAt.ts';
import { aids } from '../senses/types.ts';
import { findPart } from '../world/edit.ts';

/** What a line of a look says where nothing could be made out. */
const nothing = /: (on the other side from here|hidden from here|too [a-z ]+ to tell, .*)$/;

/** Parts looked over in the steps before `until`, and all that have something to be looked at. */
export const sceneCovered = (
  replay: Replay,
  until: number,
): { readonly lookedOver: number; readonly parts: number } => {
  const told = new Set<string>();
  const asked = new Set<string>();
  for (const { before, after } of replay.steps.slice(0, until)) {
    for (const { part, aid, stand } of after.knowledge.looks.slice(before.knowledge.looks.length)) {
      const view = `${part} ${stand} ${aid}`;
      const by = aids.find((each) => each === aid);
      if (told.has(part) || asked.has(view) || by === undefined || findPart(after, part) === null) continue;
      asked.add(view);
      if (lookAt(after, part, stand, by).lines.some((line) => !nothing.test(line))) told.add(part);
    }
  }
  const shows = replay.start.parts.filter(({ kind }) => componentKind(kind).features.length > 0);
  return { lookedOver: told.size, parts: shows.length };
};
