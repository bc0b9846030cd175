/** Single sounds: which goes with what happened, from where, how loud. */
import { describe, expect, it } from 'vitest';
import { soundOf } from '../../src/app/soundOf.ts';
import type { Act, WorldEvent } from '../../src/engine/acts/types.ts';
import { withPart } from '../../src/engine/world/edit.ts';
import type { World } from '../../src/engine/world/types.ts';
import { usual } from '../../src/sound/usual.ts';
import { done, onScene, played } from '../engine/acts/scene.ts';
import { laid } from '../scene/everyKind.ts';

const told = (world: World, stand: string, act: Act | null, event: WorldEvent) =>
  soundOf(event, { world, stand, log: { entries: act === null ? [] : [{ act }] } as never });

const soundsOf = (world: World, act: Act, stand: string): readonly (string | undefined)[] => {
  const result = done(world, act);
  return result.events.map((event) => told(result.world, stand, act, event)?.sound);
};

const atButt = (): World => played(onScene(), { act: 'go', to: 'p2.butt' });
const bang = (on: string): WorldEvent => ({ event: 'operated', on, words: 'A bang.' });

describe('what the hands do', () => {
  it('a hammer rings on sound wood and thuds on soft wood', () => {
    const firm = withPart(atButt(), 'p2.pole', { faults: [] });
    const soft = withPart(firm, 'p2.pole', { faults: [laid('pole-groundline-decay')] });
    const act: Act = { act: 'sound', pole: 'p2' };
    expect(soundsOf(firm, act, 'p2.butt')).toContain('hammer-sound');
    expect(soundsOf(soft, act, 'p2.butt')).toContain('hammer-dull');
    expect(soundsOf(soft, act, 'p2.butt')).not.toContain('hammer-sound');
  });

  it('a detector beeps only at a voltage that it tells', () => {
    const test: Act = { act: 'test', point: 'p2.cutout/top', tool: 'detector-1', stick: 'stick-1' };
    const world = atButt();
    const shows = (volts: 'voltage' | 'no voltage'): World => {
      const [detector] = world.tools.filter(({ kind }) => kind.includes('detector'));
      const reading = { point: test.point, tool: detector?.id ?? '', shows: volts, volts: null, minute: 9 };
      return { ...world, knowledge: { ...world.knowledge, readings: [reading] } };
    };
    const [detector] = world.tools.filter(({ kind }) => kind.includes('detector'));
    const act: Act = { ...test, tool: detector?.id ?? '' };
    const event: WorldEvent = { event: 'reading', on: 'p2.cutout', words: 'tone' };
    expect(told(shows('voltage'), 'p2.butt', act, event)?.sound).toBe('detector-tone');
    expect(told(shows('no voltage'), 'p2.butt', act, event)).toBeNull();
  });
});

describe('the radio', () => {
  it.each([
    ['an answer', { act: 'ask', who: 'dispatcher', about: 'eta' } as Act, 'radio-squelch' as const],
    ['a call of its own', { act: 'wait', minutes: 5 } as Act, 'dispatcher-tone' as const],
  ])('opens %s with its own sound, from nowhere', (_what, act, sound) => {
    const event: WorldEvent = { event: 'said', on: 'dispatcher', words: 'Understood.' };
    expect(told(atButt(), 'p2.butt', act, event)).toEqual({
      sound,
      bearing: null,
      level: usual[sound].level,
    });
  });
});

describe('what operates by itself', () => {
  it('is a report up the pole and a snap in a house', () => {
    expect(told(atButt(), 'p2.butt', null, bang('p2.cutout'))?.sound).toBe('fuse-bang');
    expect(told(atButt(), 'a.yard', null, bang('a.main'))?.sound).toBe('breaker-trip');
  });

  it('is heard from its side, and fainter from farther off', () => {
    const world = atButt();
    const near = told(world, 'p2.butt', null, bang('p2.cutout'));
    const far = told(world, 'p1.road', null, bang('p3.pole'));
    expect(near?.level).toBe(usual['fuse-bang'].level);
    expect(far?.level).toBeLessThan((near?.level ?? 0) - 10);
    // The third pole stands toward the load, at yaw 0, from the first.
    expect(Math.abs(far?.bearing ?? 9)).toBeLessThan(0.3);
  });
});
