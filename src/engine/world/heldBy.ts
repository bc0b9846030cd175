/** Which hardware holds the conductors of a pole: insulator, dead end, tie, as the scenario says of it. */
import type { ScenarioPole } from '../scenario/types.ts';

interface Holder {
  readonly kind: string;
  readonly words: Readonly<Record<string, string>>;
}

/** What carries a conductor through. */
export const carrierOf = ({ insulator = 'pin' }: ScenarioPole): Holder =>
  insulator === 'pin'
    ? { kind: 'pin-insulator', words: {} }
    : { kind: 'post-insulator', words: { material: insulator === 'post' ? 'porcelain' : 'polymer' } };

/** What a conductor ends on. */
export const deadEnd = ({ strings }: ScenarioPole): Holder =>
  strings === undefined
    ? { kind: 'deadend-insulator', words: {} }
    : { kind: 'suspension-insulator', words: { material: strings } };

/** What a conductor hangs in. */
export const hanger = ({ strings = 'porcelain' }: ScenarioPole): Holder => ({
  kind: 'suspension-string',
  words: { material: strings },
});

export const tieWords = ({ tie = 'preformed' }: ScenarioPole): Holder['words'] => ({ form: tie });
