/**
 * Sets of two clamps that a crew may put on without a test: on metal that is under 50 V in ordinary service. On one net one
 * point does for another that can be reached from no other place: the circuit knows nets, and hands come as near.
 */
import { beyondReach, standHere } from '../acts/presence.ts';
import { clampSetsOf, sticksOf } from '../acts/toolsFor.ts';
import type { Act } from '../acts/types.ts';
import { netAt } from '../circuit/elementsOf.ts';
import { pointsOf } from '../world/edit.ts';
import type { PointId, World } from '../world/types.ts';
import { kept } from './learned/books.ts';
import { ALIVE_FROM } from './owed.ts';
import type { Means } from './peek.ts';
import { placedAt, standsOf } from './places.ts';

interface Low {
  readonly point: PointId;
  readonly net: string;
  /** `<stand> <stick>`, from where and with what it can be reached. */
  readonly from: readonly string[];
}

const isWithin = (few: readonly string[], many: readonly string[]): boolean => few.every((each) => many.includes(each));

export class LowClampings {
  private readonly means: Means;
  private readonly first: World;
  private readonly volts = new Map<PointId, number>();
  private readonly lows = new WeakMap<World['parts'], readonly Low[]>();

  constructor(means: Means, first: World) {
    this.means = means;
    this.first = first;
  }

  private lowIn(world: World): readonly Low[] {
    const known = this.lows.get(world.parts);
    if (known !== undefined) return known;
    const sticks = [null, ...sticksOf(world).map(({ id }) => id)];
    const all = pointsOf(world)
      .filter((point) => kept(this.volts, point, () => this.means.service.volts(this.first, point)) < ALIVE_FROM)
      .map(
        (point): Low => ({
          point,
          net: netAt(world, point),
          from: standsOf(world).flatMap((stand) =>
            sticks
              .filter((stick) => beyondReach(placedAt(world, stand), point, stick) === null)
              .map((stick) => `${stand.id} ${stick}`),
          ),
        }),
      );
    const isSpare = (low: Low, i: number): boolean =>
      all.some(
        (other, j) =>
          i !== j &&
          other.net === low.net &&
          isWithin(low.from, other.from) &&
          (j < i || !isWithin(other.from, low.from)),
      );
    const found = all.filter((low, i) => !isSpare(low, i));
    this.lows.set(world.parts, found);
    return found;
  }

  /** From where the trainee is. */
  at(world: World): readonly Act[] {
    const stand = standHere(world);
    if (stand === null) return [];
    const sticks = [null, ...sticksOf(world).map(({ id }) => id)];
    const low = this.lowIn(world);
    return low.flatMap((first, i) =>
      low.slice(i + 1).flatMap((second) => {
        const stick = sticks.find((each) => [first, second].every(({ from }) => from.includes(`${stand.id} ${each}`)));
        if (stick === undefined || first.net === second.net) return [];
        return clampSetsOf(world).map(
          ({ id }): Act => ({ act: 'ground', tool: id, points: [first.point, second.point], stick }),
        );
      }),
    );
  }
}
