/** Files from strangers: refused in words and in short time, never thrown, never expanded. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { limits } from '../../../src/engine/scenario/limits.ts';
import { folder, messagesIn, read, textOf } from './read.ts';

const small = textOf(folder, 'small.yaml');
/** Generous for a busy machine: each of these is read in well under a second. */
const soon = 10_000;

const told = (text: unknown): string[] => {
  const messages = messagesIn(text);
  expect(messages).not.toEqual([]);
  return messages;
};

describe('what is not the text of a scenario', () => {
  test.each([undefined, null, 7, true, {}, [], new Uint8Array([1]), Number.NaN])('%s is refused', (value) => {
    expect(told(value)[0]).toContain('expected the text of a scenario');
  });

  test('text of exactly the largest size is read, one character more is refused', () => {
    const padded = (length: number) => `${small}#${'x'.repeat(length - small.length - 2)}\n`;
    expect(messagesIn(padded(limits.fileLength))).toEqual([]);
    expect(told(padded(limits.fileLength + 1))).toEqual(['1:1: found 262145 characters; expected at most 262144']);
  });
});

describe('bombs go off nowhere', { timeout: soon }, () => {
  const fill = (piece: string) => piece.repeat(Math.floor((limits.fileLength - 20) / piece.length));
  test.each([
    ['open brackets', `a: ${fill('[')}`],
    ['open braces', `a: ${fill('{a: ')}`],
    ['list items on one line', `a:\n  ${fill('- ')}x`],
    ['complex keys on one line', `${fill('? ')}x`],
    ['aliases', `a: &a [x]\nb: [${fill('*a, ')}]`],
    ['anchors', `a: [${fill('&a x, ')}]`],
    ['tags', `a: [${fill('! x, ')}]`],
    ['quotes', fill('"\n')],
    ['colons', fill('a: ')],
    ['long number', `format: ${fill('9')}`],
    ['spaces and tabs', fill(' \t\n')],
    ['document marks', fill('---\n')],
    ['block scalar heads', fill('a: |\n')],
    ['comments', fill('#\n')],
    ['many keys', Array.from({ length: 30_000 }, (_, at) => `k${at}:`).join('\n')],
    ['one key many times', fill('a:\n')],
    ['many items', `poles:\n${fill('- {}\n')}`],
    ['many bad items', `format: 1\npoles:\n${'- { a: 1, b: 2, c: 3, d: 4, e: 5 }\n'.repeat(199)}`],
    ['deep indents', Array.from({ length: 500 }, (_, at) => `${' '.repeat(at)}a:`).join('\n')],
    ['long text', `${small}title: ${fill('word ').slice(0, limits.fileLength - small.length - 20)}`],
    ['lone surrogates', `title: "${fill('\ud800')}`],
  ])('%s', (_, text) => {
    expect(text.length).toBeLessThanOrEqual(limits.fileLength);
    expect(told(text).length).toBeLessThanOrEqual(limits.problems + 1);
  });
});

describe('limits', () => {
  const list = (count: number) =>
    `${small.replace('tools:\n', '')}`.replace(
      / {2}- \{ id: stick-1.*\n/,
      `tools:\n${Array.from({ length: count }, (_, at) => `  - { id: t${at}, kind: tags }\n`).join('')}`,
    );

  test('a list holds as many entries as the form says', () => {
    expect(messagesIn(list(80))).toEqual([]);
    expect(told(list(81))[0]).toContain('tools: found a list of 81; expected a list of 0 to 80 entries');
  });

  test('a list beyond any form is not even looked into', () => {
    expect(told(list(201))[0]).toContain('tools: found 201 entries; expected at most 200');
  });

  test('problems beyond the limit are counted, not listed', () => {
    const rows = (count: number) => `  - { ${Array.from({ length: count }, (_, at) => `k${at}: 1`).join(', ')} }\n`;
    const messages = told(small.replace('tools:\n', `tools:\n${rows(150)}${rows(150)}`));
    expect(messages).toHaveLength(limits.problems + 1);
    expect(messages.at(-1)).toMatch(/found \d+ more problems; expected fewer/);
  });
});

describe('object prototypes', () => {
  test('are untouched by a file that names them', () => {
    const text = `${small}__proto__: { polluted: 1 }\nconstructor: { prototype: { polluted: 1 } }\n`;
    told(text);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });

  test.each(['__proto__', 'constructor', 'prototype', '"\\u005f_proto__"'])('the key %s is refused', (key) => {
    expect(told(`${small}${key}: 1\n`)[0]).toMatch(/found the key/);
  });

  test.each(['hasOwnProperty', 'toString', 'valueOf', '__defineGetter__'])('the key %s is only unknown', (key) => {
    expect(told(`${small}${key}: 1\n`)[0]).toContain('unknown key');
  });
});

describe('names that every object has', () => {
  test.each(['state', 'words', 'nets', 'values'])('among the %s of equipment are told, not called', (group) => {
    const text = small.replace('kind: cutout', `kind: cutout, ${group}: { toString: x.y, valueOf: x.y }`);
    expect(told(text)).toHaveLength(2);
  });

  test.each(['toString', 'valueOf', '__proto__'])('such as %s are no kinds', (name) => {
    expect(told(small.replace('kind: stick', `kind: ${name}`))).toHaveLength(1);
    expect(told(small.replace('kind: cutout', `kind: ${name}`))).toHaveLength(1);
    expect(told(small.replace('kind: pin-insulator-cracked', `kind: ${name}`))).toHaveLength(1);
  });
});

describe('markup', () => {
  test.each([
    '<b>x</b>',
    '<script>x',
    '</p',
    '<!-- x',
    '<?xml',
    'a <b c> d',
    '&lt;x',
    '&#60;',
    '&#x3c;',
    '<svg/onload=x>',
    '< img >',
  ])('%s is refused', (text) => {
    expect(told(small.replace('title: Small drill', `title: ${JSON.stringify(text)}`))[0]).toContain(
      'found the markup',
    );
  });
});

describe('unseen characters', () => {
  test.each(['\\0', '\\a', '\\e', '\\x7f', '\\x85', '\\u200b', '\\u202e', '\\u2066', '\\u2028', '\\ufeff', '\\ud83d'])(
    'the escape %s in a text is refused and shown as an escape',
    (written) => {
      const [message = ''] = told(small.replace('title: Small drill', `title: "a${written}b"`));
      expect(message).toContain('found the control character');
      expect(message).not.toMatch(/(?![\t\n\r])[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/u);
    },
  );
});

describe('properties', () => {
  const placed = (text: string): void => {
    const parsed = read(text);
    if (parsed.ok) return;
    const lines = text.split('\n').length;
    for (const { line, column, message } of parsed.problems) {
      expect(line).toBeGreaterThanOrEqual(1);
      expect(line).toBeLessThanOrEqual(lines);
      expect(column).toBeGreaterThanOrEqual(1);
      expect(message).toContain('; expected ');
      expect(message).not.toMatch(/undefined|\[object|NaN/);
    }
  };

  test('any text gives a scenario or problems with a place in it', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 80 }), placed), { numRuns: 300 });
  });

  test('any scraps of YAML give a scenario or problems with a place in it', () => {
    const scraps = [
      'format: 1\n',
      'poles:',
      ' ',
      '\n',
      '- ',
      '{',
      '}',
      '[',
      ']',
      ': ',
      '"',
      "'",
      '#',
      '&a ',
      '*a',
      '!!x ',
      '|\n',
      '---\n',
      '? ',
      'p1',
      ', ',
      '40 ft',
    ];
    const text = fc.array(fc.constantFrom(...scraps), { maxLength: 60 }).map((pieces) => pieces.join(''));
    fc.assert(fc.property(text, placed), { numRuns: 500 });
  });

  test('a good file with any piece cut out or written over gives a scenario or problems with a place in it', () => {
    const cuts = fc.tuple(fc.nat(small.length), fc.nat(60), fc.string({ maxLength: 12 }));
    fc.assert(
      fc.property(cuts, ([at, length, more]) => placed(small.slice(0, at) + more + small.slice(at + length))),
      { numRuns: 300 },
    );
  });
});
