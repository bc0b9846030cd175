/** Drawing from lists by one seeded generator (math/random.ts): the same seed, the same draws in the same order. */
import { nextInteger, nextUniform, type RandomState, seedFrom } from '../math/random.ts';

export class Draw {
  private state: RandomState;

  constructor(seed: string) {
    this.state = seedFrom(seed);
  }

  /** A whole number from low to high, both included. */
  whole(low: number, high: number): number {
    const [value, next] = nextInteger(this.state, low, high);
    this.state = next;
    return value;
  }

  /** True with the probability. */
  chance(probability: number): boolean {
    const [value, next] = nextUniform(this.state);
    this.state = next;
    return value < probability;
  }

  /** One of a list; throws a RangeError on an empty one. */
  one<T>(from: readonly T[]): T {
    return from[this.whole(0, from.length - 1)] as T;
  }

  /** So many of a list in drawn order, fewer if it is shorter. */
  some<T>(from: readonly T[], count: number): readonly T[] {
    const left = [...from];
    const taken: T[] = [];
    while (taken.length < count && left.length > 0) taken.push(...left.splice(this.whole(0, left.length - 1), 1));
    return taken;
  }
}
