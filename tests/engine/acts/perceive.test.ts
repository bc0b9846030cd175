import { describe, expect, it } from 'vitest';
import { done, onScene, played } from './scene.ts';

describe('what is noticed unasked', () => {
  it('is the engine at the houses, with the side it comes from, once the truck is still', () => {
    const parked = played(onScene(), { act: 'engine', on: true });
    const off = done(parked, { act: 'engine', on: false });
    expect(off.events.map(({ words }) => words).join(' ')).toMatch(/Steady engine, from the (field|road) side\./);
  });

  it('is no mark on anything, in whatever light', () => {
    const noon = { ...onScene(), site: { ...onScene().site, skyLux: 20_000, visibilityM: 10_000, wetness: 0 } };
    const there = done(noon, { act: 'go', to: 'p2.field' });
    expect(there.events.filter(({ event }) => event === 'seen')).toEqual([]);
    expect(there.world.knowledge.looks).toEqual([]);
  });

  it('is not the buzz up the pole, which takes listening', () => {
    const listened = done(onScene(), { act: 'listen' });
    const before = onScene().knowledge.heard.map(({ sign }) => sign);
    expect(before).not.toContain('crack/buzz');
    expect(listened.world.knowledge.heard.map(({ sign }) => sign)).toContain('crack/buzz');
  });

  it('is that the engine stops when the owner stops the set', () => {
    const yard = played(onScene(), { act: 'go', to: 'a.yard' });
    const stopped = done(yard, { act: 'owner', part: 'a.generator', operation: 'stop' });
    expect(stopped.events.map(({ words }) => words).join(' ')).toContain('Not heard any more: steady engine');
  });

  it('takes the buzz away with the set that held the line alive', () => {
    const stopped = played(
      onScene(),
      { act: 'go', to: 'a.yard' },
      { act: 'owner', part: 'a.generator', operation: 'stop' },
      { act: 'go', to: 'p2.field' },
      { act: 'listen' },
    );
    expect(stopped.knowledge.heard.map(({ sign }) => sign)).not.toContain('crack/buzz');
  });

  it('enters each sound once from a stand', () => {
    const heard = played(onScene(), { act: 'listen' }, { act: 'listen' }).knowledge.heard;
    expect(new Set(heard.map(({ sign, stand }) => `${sign} ${stand}`)).size).toBe(heard.length);
  });
});
