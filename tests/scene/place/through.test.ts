/** A line that is held in grooves where the scene ends goes on; one that is made up dead there does not. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from '../../../src/engine/scenario/parse.ts';
import { build } from '../../../src/engine/world/build.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { throughIn } from '../../../src/scene/place/through.ts';

const worldOf = (id: string): World => {
  const parsed = parse(readFileSync(`scenarios/${id}.yaml`, 'utf8'), id);
  if (!parsed.ok) throw new Error(id);
  return build(parsed.scenario, parsed.hash, 1);
};

describe('a line', () => {
  it('on arms goes on from its first pole, with every conductor that is held there, and ends at its dead end', () => {
    const [line, ...others] = throughIn(worldOf('works-road-bank'));
    expect(others).toEqual([]);
    expect(line?.pole.id).toBe('p1.pole');
    expect(Math.cos(line?.azimuth ?? 0)).toBeCloseTo(-1);
    expect(line?.wires).toHaveLength(4);
    expect(line?.carried.map(({ kind }) => kind)).toContain('crossarm');
  });

  it('that taps another and ends dead at both ends goes on nowhere', () => {
    expect(throughIn(worldOf('quarry-road-fog'))).toEqual([]);
  });

  it('of which a conductor lies on the ground is not taken to leave from its last tie', () => {
    const lines = throughIn(worldOf('mill-race-delta'));
    expect(lines.map(({ pole }) => pole.id)).toEqual(['p1.pole']);
  });
});
