/**
 * What is drawn is what is computed: over all fault kinds that an eye can get, from each standing point of a pole, by eye, lamp and
 * glass, in fog at dawn and on a clear day, the change that a fault makes in the picture is held against the engine's verdict.
 */
import { afterAll, beforeAll, expect, it } from 'vitest';
import { commands } from 'vitest/browser';
import { componentKinds } from '../../src/engine/catalogue/components.ts';
import { faultKinds } from '../../src/engine/catalogue/faults.ts';
import type { World } from '../../src/engine/world/types.ts';
import type { Stage } from '../../src/scene/stage.ts';
import { partOfKind, worldWith } from './everyKind.ts';
import { readyNow, type Shows, showsFrom, studioStage, type View } from './signContrast.ts';

/** What is meant to look as usual: an inverter that holds up a dead line. */
const asUsual = ['inverter-holds-alone'];
const cases = componentKinds.flatMap(({ id }) =>
  faultKinds
    .filter(
      (fault) =>
        fault.on.includes(id) && !asUsual.includes(fault.id) && fault.signs.some(({ sense }) => sense === 'see'),
    )
    .map((fault): readonly [string, string] => [id, fault.id]),
);
const sides = ['road', 'field'] as const;

interface Row extends Shows {
  readonly name: string;
}
const rows: Row[] = [];
let stage: Stage;

beforeAll(async () => {
  stage = studioStage(worldWith(partOfKind('pole')));
  await readyNow(stage);
});
afterAll(async () => {
  stage.dispose();
  const text = rows.map(
    ({ name, pixels, energy, why, margin }) =>
      `${name}\t${pixels}\t${energy.toFixed(1)}\t${margin.toFixed(2)}\t${why ?? 'seen'}`,
  );
  await commands.writeFile('tests/scene/hardware/sheets/signs.tsv', `${text.join('\n')}\n`);
});

it.each(cases)('%s with %s changes the picture where the engine says it is seen', (kind, fault) => {
  const part = partOfKind(kind);
  const base: World = worldWith(part);
  const day: World = { ...base, site: { ...base.site, light: 'day', skyLux: 20000, visibilityM: 20000 } };
  const near = base.stands
    .filter(({ near, aloft }) => near === (part.pole ?? 'p2') && aloft === null)
    .map(({ id }) => id);
  const mine: Row[] = [];
  // The site changes seldom, for with it all that is mirrored is drawn anew.
  for (const [world, by] of [
    [day, ['eyes', 'glass']],
    [base, ['lamp']],
  ] as const) {
    const views = near.flatMap((stand) => by.map((aid): View => ({ stand, aid })));
    for (const side of sides) {
      showsFrom(stage, world, part, fault, side, views).forEach((shows, i) => {
        mine.push({ name: `${kind}/${fault}/${side}/${views[i]?.stand}/${views[i]?.aid}`, ...shows });
      });
    }
  }
  rows.push(...mine);
  // Seen by a good margin: the picture must show it, unless it hangs where this view does not reach.
  const seen = mine.filter(({ why, margin }) => why === null && margin >= 2);
  const blank = seen.filter(({ pixels }) => pixels < 3).map(({ name }) => name);
  // The engine's solids are coarser than what is drawn: up to half of the views may be covered by what they leave out.
  expect(blank.length, blank.join('\n')).toBeLessThanOrEqual(0.5 * seen.length);
  // Far too small or too dark: less to be seen of it than where it is seen best.
  const best = Math.max(0, ...seen.map(({ energy }) => energy));
  const hopeless = mine.filter(({ why, margin }) => (why === 'too small' || why === 'too dark') && margin < 0.3);
  if (best > 0) for (const { name, energy } of hopeless) expect(energy, name).toBeLessThanOrEqual(best);
});

it('marks laid on the far side of a body do not show through it', () => {
  const onBody = rows.filter(
    ({ name, why }) =>
      why === 'other side' && /^(pole|pin-insulator|cutout)\//.test(name) && /crack|track|stain|scar|chip/.test(name),
  );
  for (const { name, pixels } of onBody) expect(pixels, name).toBeLessThan(40);
});
