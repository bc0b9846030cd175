/** The look over time: where it is, where it is going, how far the move has come. */
import { between, kept, type Look } from './view.ts';

export class Aim {
  look: Look = { yaw: 0, pitch: 0, zoom: 1 };
  private move: { readonly from: Look; readonly to: Look; readonly ms: number; past: number } | null = null;

  /** Where the look will come to rest. */
  get goal(): Look {
    return this.move?.to ?? this.look;
  }

  get moving(): boolean {
    return this.move !== null;
  }

  /** Goes to a look in so many milliseconds; at once for 0. */
  to(look: Look, ms: number): void {
    const goal = kept(look);
    this.move = ms > 0 ? { from: this.look, to: goal, ms, past: 0 } : null;
    if (ms <= 0) this.look = goal;
  }

  /** Moves on; true if the look has changed. */
  step(ms: number): boolean {
    const { move } = this;
    if (move === null) return false;
    move.past += ms;
    this.look = between(move.from, move.to, move.past / move.ms);
    if (move.past >= move.ms) this.move = null;
    return true;
  }
}

/** A hand that holds a glass, radians off the aim after so many seconds. */
export const tremor = (seconds: number): { readonly yaw: number; readonly pitch: number } => {
  const a = 0.0009;
  return {
    yaw: a * (Math.sin(2.1 * seconds) + 0.6 * Math.sin(5.3 * seconds + 1)),
    pitch: a * (Math.sin(1.7 * seconds + 2) + 0.5 * Math.sin(6.1 * seconds)),
  };
};
