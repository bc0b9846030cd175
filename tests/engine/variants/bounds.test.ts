/** An instructor's bounds: read from YAML or JSON, wide where nothing is said, problems with their places. */
import { describe, expect, it } from 'vitest';
import { parseBounds } from '../../../src/engine/variants/boundsForm.ts';
import { plainBounds } from '../../../src/engine/variants/types.ts';

const head = 'format: loose-tie-bounds\nversion: 1\n';
const boundsIn = (text: string) => {
  const read = parseBounds(text, 'bounds.yaml');
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join('\n'));
  return read.file;
};
const problemsIn = (text: string): readonly string[] => {
  const read = parseBounds(text, 'bounds.yaml');
  return read.ok ? [] : read.problems.map(({ line, column, message }) => `${line}:${column} ${message}`);
};

describe('bounds', () => {
  it('are as wide as can be where nothing is said', () => {
    expect(boundsIn(head)).toEqual({ name: 'bounds', bases: null, bounds: plainBounds });
  });

  it('take what is said, in YAML and in JSON alike', () => {
    const yaml = `${head}light: [night]\nweather: [rain, fog]\nfaults: { least: 2, most: 4, not: [tie-broken] }\npole-feet: []\nend: restored\n`;
    const json =
      '{"format":"loose-tie-bounds","version":1,"light":["night"],"weather":["rain","fog"],"faults":{"least":2,"most":4,"not":["tie-broken"]},"pole-feet":[],"end":"restored"}';
    expect(boundsIn(yaml)).toEqual(boundsIn(json));
    expect(boundsIn(yaml).bounds).toMatchObject({
      light: ['night'],
      weather: ['rain', 'fog'],
      faults: { least: 2, most: 4, kinds: [], not: ['tie-broken'] },
      poleFeet: [],
      end: 'restored',
    });
  });

  it.each([
    ['a word that is near', `${head}weather: [rainy]\n`, /^3:11 .*rainy.*rain/],
    ['an unknown key', `${head}wether: [rain]\n`, /^3:1 .*wether.*weather/],
    [
      'a kind that is harmless',
      `${head}faults: { kinds: [water-stain] }\n`,
      /^3:19 .*unknown kind "water-stain"; expected a kind of fault/,
    ],
    ['a range upside down', `${head}faults: { least: 4, most: 2 }\n`, /^3:9 .*least 4 above most 2/],
    ['no form', 'light: [day]\n', /format/],
    ['a list', '- 1\n', /a group of keys/],
    ['markup', `${head}name: "<b>x</b>"\n`, /markup/],
  ])('that hold %s are refused with their place', (_what, text, words) => {
    expect(problemsIn(text).join('\n')).toMatch(words);
  });
});
