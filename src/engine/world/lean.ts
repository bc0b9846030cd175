/**
 * A pole out of plumb and all that hangs on it. Model: whatever is at the pole is moved aside in proportion to its height above
 * the ground (a shear), as is an end of a span that is held there; by the few degrees that a pole leans before it is taken
 * down, heights differ from those of a turn by less than half a percent. Left out: what the lean does to sags and to the constants of the line.
 */
import { faultKind } from '../catalogue/faults.ts';
import type { Side } from '../catalogue/types.ts';
import { hypot } from '../math/elementary.ts';
import type { Vec3 } from '../math/vec3.ts';
import type { Lean, Part, Stand } from './types.ts';

const plumb: Lean = [0, 0];

const ways: Readonly<Partial<Record<Side, Lean>>> = { road: [0, -1], field: [0, 1], source: [-1, 0], load: [1, 0] };

/** How its faults make a part lean, each to its own side; upright without them. */
export const leanOf = ({ faults }: Part): Lean =>
  faults.reduce<Lean>((sum, { kind, side }) => {
    const by = faultKind(kind).mechanical?.leans;
    const way = ways[side];
    return by === undefined || way === undefined ? sum : [sum[0] + by * way[0], sum[1] + by * way[1]];
  }, plumb);

const opposite = ([x, y]: Lean): Lean => [0 - x, 0 - y];

const isPlumb = ([x, y]: Lean): boolean => x === 0 && y === 0;

/** A place moved aside by its height. */
export const leaned = ([x, y, z]: Vec3, [dx, dy]: Lean): Vec3 => [x + dx * z, y + dy * z, z];

/** The same the other way. */
export const upright = (place: Vec3, lean: Lean): Vec3 => leaned(place, opposite(lean));

/** What is strung ends at a pole when it ends so near to it, metres: an arm's half length and a bracket. */
const AT_POLE = 2;

const isAt = ([x, y]: Vec3, { at }: Part): boolean => hypot(x - at[0], y - at[1]) < AT_POLE;

/** A part as it stands when a pole leans so much more. What is strung has no lean of its own, its ends are moved. */
const partMoved = (part: Part, pole: Part, by: Lean): Part => {
  const own = part.pole === pole.pole;
  const moved = (place: Vec3): Vec3 => (own || isAt(place, pole) ? leaned(place, by) : place);
  if (part.end !== null) {
    const [at, end] = [moved(part.at), moved(part.end)];
    return at === part.at && end === part.end ? part : { ...part, at, end };
  }
  if (!own) return part;
  const { lean = plumb, ...rest } = part;
  const now: Lean = [lean[0] + by[0], lean[1] + by[1]];
  return { ...rest, at: leaned(part.at, by), ...(isPlumb(now) ? {} : { lean: now }) };
};

const movedBy = (parts: readonly Part[], pole: Part, by: Lean): readonly Part[] =>
  isPlumb(by) ? parts : parts.map((part) => partMoved(part, pole, by));

/** Parts that were set down plumb, moved as their poles lean. */
export const leaning = (parts: readonly Part[]): readonly Part[] =>
  parts.filter(({ kind }) => kind === 'pole').reduce((moved, pole) => movedBy(moved, pole, leanOf(pole)), parts);

/** Parts moved as a pole leans now, after its faults have changed; of any other part the same parts. */
export const leaningAgain = (parts: readonly Part[], pole: Part): readonly Part[] => {
  if (pole.kind !== 'pole') return parts;
  const [x, y] = leanOf(pole);
  const [wasX, wasY] = pole.lean ?? plumb;
  return movedBy(parts, pole, [x - wasX, y - wasY]);
};

/** The parts as if a pole stood plumb, whatever its faults. */
export const straightened = (parts: readonly Part[], pole: Part): readonly Part[] =>
  movedBy(parts, pole, opposite(pole.lean ?? plumb));

/** Standing points on poles, where the poles lean when the drill begins; who stands there shifts with what is done to it. */
export const standsLeaning = (stands: readonly Stand[], parts: readonly Part[]): readonly Stand[] =>
  stands.map((stand) => {
    const pole = parts.find(({ id }) => id === `${stand.aloft?.pole}.pole`);
    return pole?.lean === undefined ? stand : { ...stand, feet: leaned(stand.feet, pole.lean) };
  });
