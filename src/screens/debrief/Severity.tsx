/** Signal word of a severity, in the words and colours of ANSI Z535 (colours as of ISO 3864, from memory). */
import type { Severity as Grade } from '../../engine/catalogue/types.ts';

const words: Readonly<Record<Grade, readonly [word: string, style: string]>> = {
  fatal: ['Danger', 'danger-word'],
  serious: ['Warning', 'warning-word'],
  minor: ['Caution', 'caution-word'],
  damage: ['Notice', 'notice-word'],
};

export const Severity = ({ of }: { of: Grade }) => {
  const [word, style] = words[of];
  return <span class={`signal ${style}`}>{word}</span>;
};
