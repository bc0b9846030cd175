/** That the careful job exposes nobody says something only because leaving one thing out does. */
import { expect, test } from 'vitest';
import { act } from '../../../src/engine/acts/act.ts';
import type { Act } from '../../../src/engine/acts/types.ts';
import type { Exposure } from '../../../src/engine/hazards/types.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { careful } from '../../logs/quarry-road-fog/careful.acts.ts';
import { start } from '../acts/scene.ts';

/** The World before each act of the careful job. */
const worlds: World[] = [start()];
for (const each of careful) worlds.push(act(worlds.at(-1) ?? start(), each).world);

/** First exposures when this act is left out; what becomes impossible is left out too. */
function without(left: Partial<Act>): readonly Exposure[] {
  const index = careful.findIndex((each) =>
    Object.entries(left).every(([name, value]) =>
      Object.entries(each).some(([key, is]) => key === name && is === value),
    ),
  );
  expect(index, JSON.stringify(left)).toBeGreaterThan(0);
  let world = worlds[index] ?? start();
  for (const each of careful.slice(index + 1)) {
    const result = act(world, each);
    if (result.ok && result.exposures.length > 0) return result.exposures;
    world = result.world;
  }
  return [];
}

const fatal = (exposures: readonly Exposure[]) =>
  exposures.filter((each) => each.potentiallyFatal).map(({ hazard }) => hazard);

test('without the air test of the gloves, the meter jaws are touched through nothing that counts', () => {
  const exposures = without({ act: 'check-tool', tool: 'gloves-1', check: 'air-test' });
  expect(fatal(exposures)).toContain('contact:a.meter/line1');
  expect(exposures[0]?.failed).toContain('gloves-air-tested');
});

test('without gloves, the meter jaws are touched bare', () => {
  expect(fatal(without({ act: 'wear', tool: 'gloves-1' }))).toContain('contact:a.meter/line1');
});

test('without a face shield, the socket can flash into the face', () => {
  expect(without({ act: 'wear', tool: 'shield-1' }).map(({ hazard }) => hazard)).toEqual(['flash:a.meter']);
});

test('without the belt, the bucket is entered unattached', () => {
  expect(fatal(without({ act: 'wear', tool: 'belt-1' }))).toEqual(['fall:p2.pole']);
});

test('without the briefing, somebody is aloft with no rescue ready, which alone does not kill', () => {
  const [exposure] = without({ act: 'brief' });
  expect(exposure?.hazard).toBe('fall:p2.pole');
  expect(exposure?.potentiallyFatal).toBe(false);
  expect(exposure?.failed).toEqual(['briefed', 'rescue-ready']);
});

test('without the arm under it, the conductor can come down on who works there', () => {
  expect(fatal(without({ act: 'support', on: true }))).toEqual(['drop:p2.tie']);
});

test('without the new tie, it can once the arm lets go', () => {
  expect(fatal(without({ act: 'repair', repair: 'tie-in' }))).toEqual(['drop:p2.tie']);
});

test('with the grounds left on, the tap is closed onto a fault', () => {
  const [exposure] = without({ act: 'unground', jumper: 'j1' });
  expect(exposure?.hazard).toBe('flash:p1.tap-cutout');
  expect(exposure?.limit).toBe('no closing onto a fault');
});
