/** Measures against what is round the line: each, taken back, lets its hazard reach the worker again. */
import { describe, expect, it } from 'vitest';
import type { Act } from '../../../src/engine/acts/types.ts';
import { controlKinds } from '../../../src/engine/catalogue/controls.ts';
import { hazardsMet } from '../../../src/engine/hazards/exposuresOf.ts';
import { measuresOf } from '../../../src/engine/score/measures.ts';
import { arrive, crewWorld, last, type Scene, upP2 } from '../hazards/crewScene.ts';

const cover: Act = { act: 'cover', part: 'p2.cutout', tool: 'hose-1', on: true };
const block: Act = { act: 'tell', who: 'dispatcher', what: 'block-reclosing' };
const cases: readonly (readonly [string, Scene, readonly Act[], Act, string])[] = [
  ['block-reclosing', {}, [block, ...upP2], cover, 'flash:p1.recloser@again'],
  [
    'escort-bystanders',
    { people: ['neighbour'] },
    [{ act: 'send', who: 'neighbour', to: 'away' }, ...upP2],
    cover,
    'struck-by:work@neighbour',
  ],
  ['use-lift', { site: { precipitation: 'ice' } }, upP2, cover, 'fall:ice'],
  [
    'traffic-control',
    { site: { traffic: 'light' } },
    [
      { act: 'guard', with: 'cones' },
      { act: 'go', to: 'p2.field' },
      { act: 'go', to: 'p2.road' },
    ],
    { act: 'wait', minutes: 5 },
    'struck-by:traffic',
  ],
];

describe.each(cases)('%s', (control, scene, before, work, hazard) => {
  it('is what held the hazard', () => {
    const start = crewWorld(scene);
    const { world, reach } = last(start, ...arrive, ...before, work);
    const measure = measuresOf(start).find((each) => each.control === control);
    if (!measure) throw new Error(`no measure ${control}`);
    const metBy = (taken: boolean) =>
      reach.flatMap((each) => {
        const [now, then] = taken ? [world, each] : measure.without([world, each]);
        return hazardsMet(then, now, now);
      });
    expect(metBy(true)).not.toContain(hazard);
    expect(metBy(false)).toContain(hazard);
  });
});

it('at least forty-five kinds of control, each measure among them', () => {
  expect(controlKinds.length).toBeGreaterThanOrEqual(45);
  const ids = controlKinds.map(({ id }) => id);
  for (const { control } of measuresOf(crewWorld())) expect(ids).toContain(control);
});
