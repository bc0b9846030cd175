/** Which nets are one bus: joined by sound joints, or the two hot legs of one service. */
import { netOf } from '../../engine/circuit/elementsOf.ts';
import { EARTH } from '../../engine/network/types.ts';
import type { Part } from '../../engine/world/types.ts';
import { groupBy } from './groupBy.ts';
import { branchesIn, isAlongSpan, type Known, size } from './partBranches.ts';

/** A joint that makes two nets one has less than this, ohms. */
const JOINT_OHMS = 0.05;
/** A pole's or house's own net before one that only a part of it has ('p2.neutral' before 'p2.arrester.base'). */
const byName = (a: string, b: string): number => {
  const inner = (net: string): number => net.split('.').length;
  return inner(a) - inner(b) || (a < b ? -1 : a > b ? 1 : 0);
};

/** Sets of nets, each known by its first name. */
export class Unions {
  private readonly parent = new Map<string, string>();
  root(net: string): string {
    const up = this.parent.get(net);
    return up === undefined || up === net ? net : this.root(up);
  }
  join(a: string, b: string): void {
    const [x, y] = [this.root(a), this.root(b)].sort(byName);
    if (x !== y && x !== undefined && y !== undefined) this.parent.set(y, x);
  }
  copy(): Unions {
    const made = new Unions();
    for (const [a, b] of this.parent) made.parent.set(a, b);
    return made;
  }
}
/** A joint that no state opens and nothing protects, short and not to earth. */
export const isJoint = (part: Part, { branch, state }: Known): boolean =>
  branch.type === 'series' &&
  branch.protects === undefined &&
  state === null &&
  part.end === null &&
  size(branch.z) < JOINT_OHMS &&
  !branch.between.includes(EARTH);
/** The same text for either order of two nets. */
export const pairKey = (a: string, b: string): string => [a, b].sort().join(' ');
/** Conductors of a span that share a field: what couples them lies along the wire and is drawn as part of it. */
export const joinCoupled = (parts: readonly Part[], unions: Unions): void => {
  for (const part of parts.filter(isAlongSpan)) {
    for (const { branch } of branchesIn(part)) {
      if (branch.type !== 'transformer') continue;
      for (const { between } of branch.windings) unions.join(netOf(part, between[0]), netOf(part, between[1]));
    }
  }
};

/** Hot legs of one service: terminals numbered alike, unless a winding or a source stands between them. */
export const joinLegs = (parts: readonly Part[], unions: Unions): void => {
  const apart = new Set<string>();
  const owned = parts.filter((part) => !isAlongSpan(part));
  for (const part of owned) {
    for (const { branch } of branchesIn(part)) {
      const pairs =
        branch.type === 'transformer'
          ? branch.windings.map(({ between }) => between)
          : branch.type === 'source'
            ? [branch.between]
            : [];
      for (const [a, b] of pairs) apart.add(pairKey(unions.root(netOf(part, a)), unions.root(netOf(part, b))));
    }
  }
  const before = unions.copy();
  for (const part of owned) {
    const stems = groupBy(
      Object.keys(part.nets).filter((terminal) => /\d$/.test(terminal)),
      (terminal) => terminal.replace(/\d+$/, ''),
    );
    for (const terminals of stems.values()) {
      for (const a of terminals) {
        for (const b of terminals) {
          const nets = [netOf(part, a), netOf(part, b)] as const;
          if (a < b && !apart.has(pairKey(before.root(nets[0]), before.root(nets[1])))) unions.join(...nets);
        }
      }
    }
  }
};
