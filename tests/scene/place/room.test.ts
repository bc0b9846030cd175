/** No growth stands between somebody on the ground and what is mounted low: the engine knows no plant that hides it. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from '../../../src/engine/scenario/parse.ts';
import { build } from '../../../src/engine/world/build.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { roomOf } from '../../../src/scene/place/room.ts';
import { placeOf } from '../../../src/scene/place/setting.ts';

const worldOf = (file: string): World => {
  const parsed = parse(readFileSync(`scenarios/${file}`, 'utf8'), file);
  if (!parsed.ok) throw new Error(file);
  return build(parsed.scenario, parsed.hash, 1);
};

/** Radius of a bush of the usual size, metres. */
const BUSH = 1.3;

describe.each(readdirSync('scenarios').filter((file) => file.endsWith('.yaml')))('%s', (file) => {
  it('has no bush on the way from where one stands to a meter or the foot of a pole', () => {
    const world = worldOf(file);
    const { bush } = placeOf(world.site.setting ?? 'farmland', roomOf(world, []), false).plants;
    const low = world.parts.filter(({ id, kind, pole }) => kind === 'meter' || id === `${pole}.pole`);
    const hidden = world.stands
      .filter(({ aloft }) => aloft === null)
      .flatMap(({ id, feet }) =>
        low.flatMap((part) => {
          const [dx, dy] = [part.at[0] - feet[0], part.at[1] - feet[1]];
          const far = Math.hypot(dx, dy);
          if (far > 89) return [];
          const steps = Math.ceil(far / 0.5);
          const onWay = Array.from({ length: steps }, (_, i) => [
            feet[0] + (dx * i) / steps,
            feet[1] + (dy * i) / steps,
          ]);
          const inWay = bush.filter(([x, y, size]) =>
            onWay.some(([px = 0, py = 0]) => Math.hypot(px - x, py - y) < BUSH * size),
          );
          return inWay.map(([x, y]) => `${part.id} from ${id}: a bush at ${x}, ${y}`);
        }),
      );
    expect(hidden).toEqual([]);
  });
});
