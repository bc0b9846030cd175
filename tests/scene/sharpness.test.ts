import { describe, expect, it } from 'vitest';
import { MOST_PIXELS, paceOf, ratioFor } from '../../src/scene/look/sharpness.ts';

describe('the pixels of a picture', () => {
  it('are those of the screen, up to two each way', () => {
    expect([1, 1.5, 2, 3].map((screen) => ratioFor(390, 600, screen))).toEqual([1, 1.5, 2, 2]);
  });

  it('are no more in all than a tablet fills', () => {
    const ratio = ratioFor(1280, 800, 2);
    expect(ratio).toBeLessThan(2);
    expect(1280 * 800 * ratio ** 2).toBeCloseTo(MOST_PIXELS, 0);
  });
});

describe('the pace of frames', () => {
  /** Looks of forty frames each; `ms` of a frame at a share. */
  const paced = (looks: number, ms: (share: number) => number, pace = paceOf()) => {
    for (let i = 0; i < looks * 40; i++) pace.frame(ms(pace.share));
    return pace;
  };
  const byPixels = (whole: number) => (share: number) => Math.max(16.7, whole * share ** 2);

  it('leaves the picture sharp while frames come in time', () => {
    expect(paced(50, () => 16.7).share).toBe(1);
  });

  it('draws fewer pixels while frames come late, and not fewer than half each way', () => {
    expect(paced(2, byPixels(26)).share).toBeCloseTo(0.8, 9);
    expect(paced(20, byPixels(200)).share).toBeCloseTo(0.512, 9);
  });

  it('gives the pixels back where fewer have not helped: a screen of thirty frames, or slow code', () => {
    expect(paced(2, () => 33.3).share).toBe(1);
    expect(paced(40, () => 33.3).share).toBe(1);
  });

  it('tries more again after a while with room', () => {
    const pace = paced(3, byPixels(26));
    expect(pace.share).toBeLessThan(1);
    expect(paced(20, () => 16.7, pace).share).toBe(1);
  });

  it('takes no sleep of the loop for a late frame', () => {
    const pace = paceOf();
    for (let i = 0; i < 400; i++) pace.frame(900);
    expect(pace.share).toBe(1);
  });
});
