/** A circuit that cannot be: a mistake in a kind, a scenario's nets or the solver, never something a trainee can cause. */
import type { NetworkFailure } from '../network/types.ts';

/** Names the part, net or element at fault; nobody catches it. */
export class CircuitDefect extends Error {
  override name = 'CircuitDefect';
  /** Part, net or element. */
  readonly at: string;

  constructor(at: string, what: string) {
    super(`${at}: ${what}`);
    this.at = at;
  }
}

/** What the solver reports, with the part or net to look at. */
export function defectOf(failure: NetworkFailure): CircuitDefect {
  switch (failure.reason) {
    case 'invalid':
      return new CircuitDefect(failure.element, failure.detail);
    case 'singular': {
      const at = failure.element ?? failure.node ?? failure.island[0] ?? 'the network';
      const floating = failure.island.length > 0 ? `, without a path to earth: ${failure.island.join(', ')}` : '';
      return new CircuitDefect(at, `the circuit has no solution${floating}`);
    }
    case 'inaccurate':
      return new CircuitDefect(failure.at, `the circuit is solved only to a residual of ${failure.residual}`);
  }
}
