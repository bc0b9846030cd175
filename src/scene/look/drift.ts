/** What moves by itself while nobody does anything: rain and snow, wires in the wind, mist, traffic, lightning, the hand that holds the glass. */
import type { Site } from '../../engine/world/types.ts';
import { LIT_BELOW } from '../place/passing.ts';
import type { Stage } from '../stage.ts';
import { tremor } from './aim.ts';
import type { Air } from './sky.ts';
import { stormOf } from './storm.ts';
import { kept, type Look } from './view.ts';

/** Wind in which wires are seen to move, m/s (estimate). */
const BREEZE = 2.5;

/** Milliseconds for which mist and weather go on when nobody does anything. */
const GOES_ON = { mist: 15000, weather: 90000 } as const;

/** Milliseconds between pictures while only the mist moves. */
const DRIFT = 80;

/** Metres of sight below which mist is seen to drift. */
const MISTY = 1500;

export class Drift {
  private quiet = 0;
  private since = 0;
  private held = 0;
  /** Seconds that rain or snow has still to be moved on. */
  private fell = 0;
  private readonly storm = stormOf(23);

  /** Somebody has done something. */
  wake(): void {
    this.quiet = 0;
  }

  /**
   * So many milliseconds on. `moves`: what the stage shows has changed; `goesOn`: it will, so the loop must not sleep. Nothing does
   * where `calm`.
   */
  step(
    ms: number,
    stage: Stage,
    air: Air,
    site: Site,
    calm: boolean,
  ): { readonly moves: boolean; readonly goesOn: boolean } {
    const blows = air.rain + air.snow > 0 || air.windMs >= BREEZE || air.lightning || air.traffic !== 'none';
    const lasts = blows ? GOES_ON.weather : site.visibilityM < MISTY ? GOES_ON.mist : 0;
    const goesOn = !calm && this.quiet < lasts;
    this.quiet += ms;
    this.since += ms;
    const moves = goesOn && this.since > (blows ? 0 : DRIFT);
    if (moves) {
      const seconds = this.since / 1000;
      stage.drift(seconds, air, site.skyLux < LIT_BELOW);
      if (air.lightning) stage.flash(this.storm.step(seconds));
      this.fell += seconds;
      this.since = 0;
    }
    return { moves, goesOn };
  }

  /** Seconds by which rain or snow has fallen on since it was asked last. */
  takeFall(): number {
    const { fell } = this;
    this.fell = 0;
    return fell;
  }

  /** A look through a glass held in the hands. */
  shaken(look: Look, ms: number): Look {
    this.held += ms / 1000;
    const off = tremor(this.held);
    return kept({ ...look, yaw: look.yaw + off.yaw, pitch: look.pitch + off.pitch });
  }
}
