import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Aim } from '../../src/scene/look/aim.ts';
import { extinction } from '../../src/scene/look/airlight.ts';
import { anglesTo, arriving, between, directionOf, fieldOf, kept, zooms } from '../../src/scene/look/view.ts';
import { eyeOn, WALK } from '../../src/scene/look/walk.ts';

const angle = fc.double({ min: -10, max: 10, noNaN: true });

describe('the look', () => {
  it('points where its angles were taken', () => {
    const eye = [-3, -9, 1.65] as const;
    const place = [0, 0, 10.6] as const;
    const d = directionOf({ ...anglesTo(eye, place), zoom: 1 });
    const far = Math.hypot(place[0] - eye[0], place[1] - eye[1], place[2] - eye[2]);
    expect(eye[0] + d[0] * far).toBeCloseTo(place[0], 9);
    expect(eye[1] + d[1] * far).toBeCloseTo(place[1], 9);
    expect(eye[2] + d[2] * far).toBeCloseTo(place[2], 9);
  });

  it('never turns over the zenith and keeps yaw within a turn', () => {
    fc.assert(
      fc.property(angle, angle, (yaw, pitch) => {
        const look = kept({ yaw, pitch, zoom: 1 });
        expect(Math.abs(look.yaw)).toBeLessThanOrEqual(Math.PI + 1e-9);
        expect(Math.abs(look.pitch)).toBeLessThan(Math.PI / 2);
      }),
    );
  });

  it('moves the short way round', () => {
    const half = between({ yaw: 3, pitch: 0, zoom: 1 }, { yaw: -3, pitch: 0, zoom: 1 }, 0.5);
    expect(Math.abs(half.yaw)).toBeGreaterThan(3);
  });

  it('has the whole pole in it on arrival at the road side, wide or tall', () => {
    const eye = [-3, -9, 1.65] as const;
    for (const aspect of [1280 / 720, 390 / 844]) {
      const field = fieldOf(aspect, 1);
      const look = arriving(eye, [0, 0, 0], [0, 0, 10.8], field);
      const top = anglesTo(eye, [0, 0, 10.8]).pitch;
      const foot = anglesTo(eye, [0, 0, 0]).pitch;
      expect(top).toBeLessThan(look.pitch + field / 2);
      expect(foot).toBeGreaterThan(look.pitch - field / 2);
    }
  });

  it('sees an eighth through the glass', () => {
    expect(Math.tan(fieldOf(1.6, 1) / 2) / Math.tan(fieldOf(1.6, zooms.glass.far) / 2)).toBeCloseTo(8, 9);
  });

  it('comes to rest where it was sent', () => {
    const aim = new Aim();
    aim.to({ yaw: 1, pitch: 0.3, zoom: 2 }, 400);
    expect(aim.moving).toBe(true);
    for (let i = 0; i < 30; i++) aim.step(16);
    expect(aim.moving).toBe(false);
    expect(aim.look.yaw).toBeCloseTo(1, 9);
    expect(aim.look.zoom).toBeCloseTo(2, 9);
  });

  it('jumps when it has no time', () => {
    const aim = new Aim();
    aim.to({ yaw: -2, pitch: 0, zoom: 1 }, 0);
    expect(aim.look.yaw).toBe(-2);
    expect(aim.step(16)).toBe(false);
  });

  it('walks from the one place to the other', () => {
    const walk = { from: [0, 0, 1.65], to: [4, 2, 1.65], past: 0 } as const;
    expect(eyeOn(walk)).toEqual([0, 0, 1.65]);
    const [x, y, z] = eyeOn({ ...walk, past: WALK });
    expect([x, y]).toEqual([4, 2]);
    expect(z).toBeCloseTo(1.65, 9);
  });
});

describe('the air', () => {
  // Koschmieder: at the visibility, 2 % of contrast is left (WMO-No. 8 gives 5 % for its own definition; 3.912 = -ln 0.02).
  it('leaves two hundredths of the contrast at the distance that is called visibility', () => {
    expect(Math.exp(-extinction(160) * 160)).toBeCloseTo(0.02, 4);
  });
});
