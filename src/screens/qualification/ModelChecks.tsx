/** The checks of one model: a table, on a narrow window a card a check. */
import { allowedWords, differenceWords, withUnit } from '../../engine/qualification/differenceWords.ts';
import type { QualifiedCheck } from '../../engine/qualification/types.ts';
import { capital } from '../words.ts';
import { countOf, countWords, figure, type ModelGroup } from './sortReport.ts';

const heads = ['Result', 'Quantity', 'Input', 'Ours', 'Reference', 'Difference', 'Allowed', 'Source and kind'] as const;

const Row = ({ check }: { check: QualifiedCheck }) => {
  const { ok, quantity, input, ours, reference, unit, tolerance, source, kind } = check;
  return (
    <tr class={ok ? undefined : 'failed'}>
      <td data-head="Result">{ok ? 'pass' : <strong class="stamp">fail</strong>}</td>
      <th scope="row" data-head="Quantity">
        {capital(quantity)}
      </th>
      <td data-head="Input">{input}</td>
      <td data-head="Ours">{withUnit(figure(ours), unit)}</td>
      <td data-head="Reference">{withUnit(figure(reference), unit)}</td>
      <td data-head="Difference">{differenceWords(check)}</td>
      <td data-head="Allowed">
        {allowedWords(check)}
        {tolerance.because !== undefined && <span class="note because">because: {tolerance.because}</span>}
      </td>
      <td data-head="Source and kind">
        {source} <span class="note kind">({kind})</span>
      </td>
    </tr>
  );
};

export interface ModelChecksProps {
  readonly group: ModelGroup;
  readonly open: boolean;
  /** What tells two groups of one model apart. */
  readonly apart: boolean;
}

export const ModelChecks = ({ group, open, apart }: ModelChecksProps) => {
  const count = countOf(group.checks);
  return (
    <details class="model" open={open}>
      <summary>
        <span class="name">{capital(group.model)}</span>
        <span class="meta">{countWords(count)}</span>
        {count.failed > 0 && <strong class="stamp">fail</strong>}
      </summary>
      <table class="checks">
        <caption class="sr-only">
          {capital(group.model)}
          {apart ? ', listed apart' : ''}
        </caption>
        <thead>
          <tr>
            {heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {group.checks.map((check) => (
            <Row key={check.id} check={check} />
          ))}
        </tbody>
      </table>
    </details>
  );
};
