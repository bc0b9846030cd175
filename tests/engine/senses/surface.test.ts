/** Surfaces are told wet only where it is wet. */
import { describe, expect, it } from 'vitest';
import { componentKinds } from '../../../src/engine/catalogue/components.ts';
import { asItIs } from '../../../src/engine/senses/surface.ts';

const [dry, damp] = [{ wetness: 0 }, { wetness: 0.3 }];

describe('words of a surface', () => {
  it.each([
    ['skirts: brown glaze, wet, shine unbroken', 'skirts: brown glaze, dry, shine unbroken'],
    ['housing: wet, one even line all the way round', 'housing: dry, one even line all the way round'],
    ['head: conductor lying in the groove, glaze wet', 'head: conductor lying in the groove, glaze dry'],
    ['housing: sheds wet, rims whole', 'housing: sheds dry, rims whole'],
    ['body: grey-brown wood, surface wet in places', 'body: grey-brown wood, surface dry'],
  ])('%s', (words, told) => {
    expect(asItIs(words, dry)).toBe(told);
    expect(asItIs(words, damp)).toBe(words);
  });

  it.each(['tank: grey paint, a dark wet run from a seam', 'ground: wet grass, a puddle in the wheel track'])(
    'leaves what is wet of itself: %s',
    (words) => expect(asItIs(words, dry)).toBe(words),
  );

  it('of every healthy feature say nothing of wet on a dry day', () => {
    const told = componentKinds.flatMap(({ features }) => features.map(({ healthy }) => asItIs(healthy, dry)));
    expect(told.filter((words) => /\bwet\b/.test(words))).toEqual([]);
  });
});
