/** What a look can tell: neutral, alike in length and detail whether something is wrong or not. */
import { describe, expect, it } from 'vitest';
import { componentKind, componentKinds } from '../../../src/engine/catalogue/components.ts';
import { faultKinds } from '../../../src/engine/catalogue/faults.ts';
import type { Feature, SignKind } from '../../../src/engine/catalogue/types.ts';
import { marginOf } from '../../../src/engine/senses/light.ts';
import { aids } from '../../../src/engine/senses/types.ts';
import { start } from '../acts/scene.ts';

/** Words that name a condition instead of what is perceived. */
const diagnosing =
  /\b(crack(ed|s)?|broken?|fault(y|s)?|fail(ed|s|ure)?|burn(ed|t|s)?|danger(ous)?|damaged?|defect(ive)?|hazard(s|ous)?|unsafe|safe|bad|good|wrong|missing|stolen|rotten|decay(ed)?|tracking|flashed|backfe(d|ed|eding)|live|dead|alive|energi[sz]ed|healthy|normal|sound|fine condition)\b/i;

const ordinary = ({ healthy, byState = [], live }: Feature): readonly string[] => [
  healthy,
  ...byState.map(({ words }) => words),
  ...(live === undefined ? [] : [live.words]),
];
const features = componentKinds.flatMap((kind) =>
  kind.features.map((feature) => [`${kind.id} ${feature.id}`, feature] as const),
);
const subject = (words: string): string => words.slice(0, words.indexOf(':'));

/** Signs seen, each with the feature whose words it takes the place of. */
const seen = faultKinds.flatMap((fault) =>
  fault.signs.flatMap((sign) =>
    sign.sense !== 'see'
      ? []
      : fault.on.flatMap((on) => {
          if (on === 'site' || on.startsWith('person:')) return [];
          const feature = componentKind(on).features.find(({ id }) => id === sign.feature);
          return feature === undefined ? [] : [[`${fault.id} ${sign.id}`, sign, feature, fault.sets ?? {}] as const];
        }),
  ),
);

const unlike = (a: string, b: string): number => Math.abs(a.length - b.length) / Math.max(a.length, b.length);

describe.each(features)('the words of %s', (_, feature) => {
  it('begin with one subject, are neutral and alike in length in every state', () => {
    for (const words of ordinary(feature)) {
      expect(words).toMatch(/^[a-z][a-z -]*: [a-z].*[^.]$/);
      expect(subject(words)).toBe(subject(feature.healthy));
      expect(words).not.toMatch(diagnosing);
      expect(unlike(words, feature.healthy)).toBeLessThanOrEqual(0.4);
    }
  });
});

describe.each(seen)('the sign %s', (_, sign: SignKind, feature, sets) => {
  it('takes the place of its feature without standing out by subject, length or a diagnosis', () => {
    expect(subject(sign.words)).toBe(subject(feature.healthy));
    expect(sign.words).not.toMatch(diagnosing);
    for (const words of ordinary(feature)) expect(unlike(sign.words, words)).toBeLessThanOrEqual(0.4);
  });

  it('is made out wherever its feature is, or the ordinary words claim no more than what was made out', () => {
    const laid = feature.byState?.find(({ when }) => Object.entries(when).every(([name, to]) => sets[name] === to));
    if (/ made out$/.test(laid?.words ?? feature.healthy)) return;
    const { site } = start();
    const mark = {
      size: sign.size ?? Number.NaN,
      shape: sign.shape ?? 'patch',
      contrast: sign.contrast ?? Number.NaN,
      reflectance: sign.reflectance ?? Number.NaN,
    } as const;
    const ofFeature = { size: feature.size, shape: 'patch', contrast: 0.5, reflectance: 0.3 } as const;
    for (const aid of aids) {
      for (const skyLux of [1, 25, 900, 10000]) {
        for (const distance of [1, 3, 8, 15, 25, 40, 60]) {
          const here = { ...site, skyLux };
          const claimed = marginOf(ofFeature, distance, here, aid) >= 1;
          if (claimed) expect(marginOf(mark, distance, here, aid)).toBeGreaterThanOrEqual(1);
        }
      }
    }
  });
});

it('signs that are heard, tested or read diagnose nothing either', () => {
  const words = faultKinds.flatMap(({ signs }) =>
    signs.filter(({ sense }) => sense === 'hear' || sense === 'test' || sense === 'read').map((sign) => sign.words),
  );
  expect(words.length).toBeGreaterThan(2);
  for (const each of words) expect(each).not.toMatch(diagnosing);
});
