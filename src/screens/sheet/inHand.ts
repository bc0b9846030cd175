/** Stick and tool are chosen once, then the part: which of the offered acts belong to what is in the hand. */
import type { Act, OfferedAct } from '../../engine/acts/types.ts';
import type { PointId, World } from '../../engine/world/types.ts';
import type { Taken } from '../types.ts';
import { nameOf } from '../words.ts';

const stickOf = (act: Act): string | null => ('stick' in act ? act.stick : null);

/** The tool that the act is done with; tools that are checked or worn are their own subject. */
const toolOf = (act: Act): string | null =>
  act.act === 'test' || act.act === 'ground' || act.act === 'cover' ? act.tool : null;

const distinct = <T>(all: readonly T[]): T[] => [...new Set(all)];

/** Sticks of these acts. */
export const sticksIn = (offered: readonly OfferedAct[]): readonly string[] =>
  distinct(offered.map(({ act }) => stickOf(act)).filter((id) => id !== null)).sort();

/** Tools of these acts; null, first, where some need none. */
export const toolsIn = (offered: readonly OfferedAct[]): readonly (string | null)[] => {
  const tools = distinct(offered.map(({ act }) => toolOf(act)));
  return [...(tools.includes(null) ? [null] : []), ...tools.filter((id) => id !== null).sort()];
};

/** What is in the hand of what was taken: a tool that is gone from the offers was laid down. */
export const heldOf = (by: 'stick' | 'hands', taken: Taken, offered: readonly OfferedAct[]): Taken => {
  const tools = toolsIn(offered);
  const wanted = by === 'stick' ? taken.onStick : taken.inHand;
  const tool = tools.includes(wanted) ? wanted : (tools[0] ?? null);
  const stick = taken.stick !== null && sticksIn(offered).includes(taken.stick) ? taken.stick : null;
  return { ...taken, stick: by === 'stick' ? stick : null, [by === 'stick' ? 'onStick' : 'inHand']: tool };
};

/** The acts that are done with just that stick and tool. */
export const doneWith = (
  offered: readonly OfferedAct[],
  stick: string | null,
  tool: string | null,
): readonly OfferedAct[] => offered.filter(({ act }) => stickOf(act) === stick && toolOf(act) === tool);

/** The label without the stick that is in the hand anyway. */
export const labelInHand = (world: World, { act, label }: OfferedAct): string => {
  const stick = stickOf(act);
  return stick === null ? label : label.replace(`, with ${nameOf(world, stick)}`, '');
};

/** Where the next clamp may go after these, each once, in the order of the offers. */
export const nextClamps = (lists: readonly (readonly PointId[])[], on: readonly PointId[]): readonly PointId[] =>
  distinct(
    lists
      .filter((points) => points.length > on.length && on.every((point, index) => points[index] === point))
      .map((points) => points[on.length] ?? ''),
  );
