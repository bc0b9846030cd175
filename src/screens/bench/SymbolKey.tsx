/** What the symbols of the drawing are and after which standard each is drawn; only those that lie on the sheet. */
import { capital } from '../words.ts';
import { type SymbolName, symbols } from './symbolOf.ts';
import { symbolSources } from './symbolSources.ts';
import { Earth, SymbolOf } from './symbols.tsx';

const grounded: readonly SymbolName[] = ['electrode', 'ladder'];
/** The standards draw contacts open. */
const open: readonly SymbolName[] = ['disconnector', 'fuse-switch', 'breaker', 'recloser', 'switch', 'gap'];

export const SymbolKey = ({ used }: { used: ReadonlySet<SymbolName> }) => (
  <details class="symbol-key">
    <summary>What the symbols are</summary>
    <ul>
      {symbols
        .filter((name) => used.has(name))
        .map((name) => (
          <li key={name} data-symbol={name}>
            <svg class="one-line" viewBox="-24 -22 48 46" width="48" height="46" aria-hidden="true">
              <g class="symbol">
                <SymbolOf name={name} closed={!open.includes(name)} />
                {grounded.includes(name) && (
                  <g transform="translate(0 14)">
                    <Earth />
                  </g>
                )}
              </g>
            </svg>
            <p>
              <strong>{capital(symbolSources[name].name)}</strong>
              <span class="hint">
                {symbolSources[name].after} ({symbolSources[name].basis})
              </span>
            </p>
          </li>
        ))}
    </ul>
  </details>
);
