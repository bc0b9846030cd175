/**
 * Names for a SPICE deck. SPICE folds case and splits at many signs, so every letter but a-z and 0-9 is written as its
 * UTF-16 code between underscores; different names stay different, and the name can be read back.
 */
import { EARTH } from './types.ts';

const escaped = (name: string): string =>
  name.replace(/[^a-z0-9]/g, (letter) => `_${letter.charCodeAt(0).toString(16)}_`);

const unescaped = (name: string): string =>
  name.replace(/_([0-9a-f]+)_/g, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)));

/** Node name in the deck; earth is 0. */
export const spiceNode = (node: string): string => (node === EARTH ? '0' : `n_${escaped(node)}`);

/** Node of our own for a name in the deck, or undefined for a node that the deck added inside an element. */
export function nodeFromSpice(name: string): string | undefined {
  if (name === '0') return EARTH;
  return name.startsWith('n_') ? unescaped(name.slice(2)) : undefined;
}

/** Element name in the deck: the letter of its SPICE kind, a role within our element, our id. */
export const spiceElement = (kind: string, role: string, id: string): string => `${kind}${role}_${escaped(id)}`;
