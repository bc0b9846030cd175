import { describe, expect, it } from 'vitest';
import { flashOver } from '../../../src/engine/acts/flashover.ts';
import { findPart, withoutFault, withPart } from '../../../src/engine/world/edit.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { onScene } from './scene.ts';

/** The tap closed on the system, the set stopped; the cracked insulator as it was. */
const closed = (): World => {
  const stopped = withPart(onScene(), 'a.generator', { state: { run: 'stopped', breaker: 'closed' } });
  return withPart(stopped, 'p1.tap-cutout', { state: { position: 'closed', link: 'sound' } });
};
/** The pole ground mended, so that an arc has a way back. */
const bonded = (): World => withoutFault(withoutFault(closed(), 'bond'), 'copper');
const hour = 60;

describe('a cracked insulator', () => {
  it('flashes over in fog where the system can feed the arc, and the tap fuse clears it', () => {
    const { world, events } = flashOver(bonded(), hour);
    expect(events.map(({ event, on }) => [event, on])).toEqual([
      ['flashover', 'p2.insulator'],
      ['operated', 'p1.tap-cutout'],
    ]);
    expect(findPart(world, 'p1.tap-cutout')?.state).toMatchObject({ link: 'blown' });
  });

  it('does not while the arc has no way back to feed it', () => {
    expect(flashOver(closed(), hour)).toEqual({ world: closed(), events: [] });
  });

  it('does not once it is dry', () => {
    const dry = { ...bonded(), site: { ...bonded().site, wetness: 0.2 } };
    expect(flashOver(dry, hour).world).toBe(dry);
  });

  it('does not once it is changed', () => {
    const sound = withoutFault(bonded(), 'crack');
    expect(flashOver(sound, hour).world).toBe(sound);
  });

  it('draws on the World’s chance only where it could flash over', () => {
    expect(flashOver(bonded(), 1).world.chance).not.toEqual(bonded().chance);
    expect(flashOver(closed(), 1).world.chance).toEqual(closed().chance);
  });
});
