/** The worked survey of Quarry Road: a round in stops, with what is made out and what it means, and nothing that it could not know. */
import { describe, expect, it } from 'vitest';
import { workedSurvey } from '../../../src/engine/trainees/workedSurvey.ts';
import { start } from '../acts/scene.ts';

const { stops, replay } = workedSurvey(start(1));

describe('the worked survey', () => {
  it('goes from the dispatcher round every place but what is suspect, and looks before it asks in each yard', () => {
    expect(stops[0]?.kind).toBe('ask');
    const places = new Set(stops.map(({ stand }) => stand));
    for (const stand of ['p2.road', 'p2.field', 'a.yard', 'b.yard']) expect(places).toContain(stand);
    const yard = stops.filter(({ stand }) => stand === 'a.yard').map(({ kind }) => kind);
    expect(yard.slice(0, 2)).toEqual(['look', 'ask']);
    expect(stops.map(({ acts }) => acts)).toEqual([...stops.map(({ acts }) => acts)].sort((a, b) => a - b));
  });

  it('says what a sign means, and of a look-alike that it only looks wrong', () => {
    const meanings = stops.flatMap(({ looks }) => looks.flatMap((look) => look.meanings));
    for (const condition of ['cracked', 'tie-broken', 'burn-track', 'cut', 'out-of-test', 'fails-self-test'])
      expect(meanings.map((each) => each.condition)).toContain(condition);
    expect(meanings.filter(({ benign }) => benign).length).toBeGreaterThan(0);
    for (const { benign, harm } of meanings) if (!benign) expect(harm).toMatch(/\.$/);
  });

  it('exposes nobody', () => {
    expect(replay.steps.flatMap(({ exposures }) => exposures)).toEqual([]);
  });
});
