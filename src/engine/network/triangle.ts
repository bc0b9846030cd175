import { longer } from './longer.ts';

/** One triangle of the factors, step by step: entries of step k are start[k] up to, not including, start[k + 1]. */
export interface Triangle {
  readonly start: Int32Array;
  readonly index: Int32Array;
  readonly re: Float64Array;
  readonly im: Float64Array;
}

const ROOM = 256;

/** Collects one triangle after another in arrays that grow. */
export class TriangleBuilder {
  index = new Int32Array(ROOM);
  re = new Float64Array(ROOM);
  im = new Float64Array(ROOM);
  used = 0;
  private start = new Int32Array(ROOM);
  private steps = 0;

  begin(): void {
    this.used = 0;
    this.steps = 0;
  }

  push(index: number, re: number, im: number): void {
    if (this.used === this.index.length) this.grow();
    this.index[this.used] = index;
    this.re[this.used] = re;
    this.im[this.used] = im;
    this.used++;
  }

  closeStep(): void {
    this.steps++;
    if (this.steps === this.start.length) {
      this.start = longer(this.start, 2 * this.steps);
    }
    this.start[this.steps] = this.used;
  }

  build(): Triangle {
    return {
      start: this.start.slice(0, this.steps + 1),
      index: this.index.slice(0, this.used),
      re: this.re.slice(0, this.used),
      im: this.im.slice(0, this.used),
    };
  }

  private grow(): void {
    const room = 2 * this.used;
    this.index = longer(this.index, room);
    this.re = longer(this.re, room);
    this.im = longer(this.im, room);
  }
}
