/** The report in one glance: counts by kind, and what no count says. */
import type { QualifiedCheck } from '../../engine/qualification/types.ts';
import { capital } from '../words.ts';
import { countOf, countsByKind, countWords, isApart, modelsOf } from './sortReport.ts';

export const Verdict = ({ report }: { report: readonly QualifiedCheck[] }) => {
  const all = countOf(report);
  return (
    <section class="verdict" aria-labelledby="verdict">
      <h2 id="verdict">
        {countWords(all)}, {modelsOf(report).length} models
      </h2>
      <table class="kinds">
        <caption class="sr-only">Checks by kind of outside value</caption>
        <thead>
          <tr>
            {['Outside value', 'Checks', 'Passed', 'Failed'].map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {countsByKind(report).map(({ kind, checks, failed }) => (
            <tr key={kind}>
              <th scope="row">
                {capital(kind)}
                {isApart(kind) ? ', not counted as published' : ''}
              </th>
              <td>{checks}</td>
              <td>{checks - failed}</td>
              <td>{failed}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
};
