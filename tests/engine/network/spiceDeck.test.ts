import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { complex } from '../../../src/engine/math/complex.ts';
import { spiceDeck } from '../../../src/engine/network/spiceDeck.ts';
import { nodeFromSpice, spiceNode } from '../../../src/engine/network/spiceNames.ts';
import { admittance, impedance, OMEGA, randomNetwork, shuffled, source, transformer, winding } from './elements.ts';

fc.configureGlobal({ seed: 20 });

describe('names in a deck', () => {
  test('every node name comes home', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (name) => {
        expect(nodeFromSpice(spiceNode(name))).toBe(name);
        expect(spiceNode(name)).toMatch(/^(0|n_[a-z0-9_]*)$/);
      }),
    );
  });

  test('names that differ in case or signs only stay different', () => {
    const names = ['X1', 'x1', 'x.1', 'x_1', 'x-1', '_x1', 'earth', 'Earth', '0', 'x_2e_1'];
    expect(new Set(names.map(spiceNode)).size).toBe(names.length);
  });

  test('nodes inside an element are not taken for our own', () => {
    expect(nodeFromSpice('a0_t')).toBeUndefined();
  });
});

describe('spiceDeck', () => {
  test('writes each element as its parts', () => {
    const deck = spiceDeck(
      [
        source('s', 'h', 'earth', complex(0, 7200), complex(0.4, OMEGA / 100), 'system'),
        transformer('t', [winding('h', 'earth', 7200, 16), winding('x', 'earth', 240)], complex(1e-5, -1 / OMEGA)),
        impedance('c', 'x', 'm', 0, -1 / (OMEGA * 1e-6)),
        admittance('y', 'm', 'earth', 0.5, OMEGA * 1e-12),
      ],
      { title: 'one of each', omega: OMEGA, angles: { system: Math.PI / 2 }, print: true },
    );
    expect(deck.split('\n')).toEqual([
      'one of each',
      '* node 0 is earth',
      '* node n_h is h',
      '* node n_m is m',
      '* node n_x is x',
      '* impedance c',
      'Cz_c n_x n_m 0.000001',
      '* source s',
      'Vs_s es_s 0 DC 0 AC 7200 180',
      'Rz_s n_h mz_s 0.4',
      'Lz_s mz_s es_s 0.01',
      '* transformer t',
      'Vw0_t n_h a0_t DC 0',
      'Rw0_t a0_t b0_t 16',
      'Ew0_t b0_t 0 co_t 0 1',
      'Fw0_t 0 co_t Vw0_t 1',
      'Vw1_t n_x a1_t DC 0',
      'Vw1z_t a1_t b1_t DC 0',
      `Ew1_t b1_t 0 co_t 0 ${240 / 7200}`,
      `Fw1_t 0 co_t Vw1_t ${240 / 7200}`,
      'Rm_t co_t 0 99999.99999999999',
      'Lm_t co_t 0 1',
      '* admittance y',
      'Ry_y n_m 0 2',
      'Cy_y n_m 0 1e-12',
      '.options noopac',
      '.ac lin 1 60 60',
      '.control',
      'set numdgt=12',
      'run',
      'print v(n_h)',
      'print v(n_m)',
      'print v(n_x)',
      'quit',
      '.endc',
      '.end',
      '',
    ]);
  });

  test('does not depend on the order of the elements', () => {
    const elements = randomNetwork(77);
    const options = { title: 't', omega: OMEGA };
    expect(spiceDeck(shuffled(elements, 5), options)).toBe(spiceDeck(elements, options));
  });

  test('a title or name cannot start a line of its own', () => {
    const deck = spiceDeck([impedance('r\n.end', 'a\nb', 'earth', 1)], { title: 'x\n.end', omega: OMEGA });
    expect(deck.split('\n').filter((line) => line === '.end').length).toBe(1);
  });
});
