/** The frame that all cards share: what is asked, what comes out, a table to check by, where it is from, and the caution. */
import type { ComponentChildren } from 'preact';
import { Caution } from '../parts/Caution.tsx';

export interface Answer {
  readonly label: string;
  /** Null until the fields can be read. */
  readonly value: string | null;
  readonly note?: string;
}

export interface CardProps {
  readonly title: string;
  readonly says: string;
  readonly fields: ComponentChildren;
  readonly answers: readonly Answer[];
  /** Warnings that follow from the answers. */
  readonly warnings?: readonly string[];
  readonly table?: ComponentChildren;
  /** Document and clause, or 'from memory', 'common practice', 'estimate'. */
  readonly sources: readonly string[];
  /** What the model leaves out. */
  readonly leaves: string;
}

export const Card = ({ title, says, fields, answers, warnings = [], table, sources, leaves }: CardProps) => (
  <article class="ref-card">
    <header>
      <h2 id="card-title" tabIndex={-1}>
        {title}
      </h2>
      <p>{says}</p>
    </header>
    <div class="calculator">
      <form class="asked" aria-label={`Given: ${title}`} onSubmit={(event) => event.preventDefault()}>
        {fields}
      </form>
      <div class="answers" aria-live="polite">
        <dl>
          {answers.map(({ label, value, note }) => (
            <div key={label}>
              <dt>{label}</dt>
              <dd>
                <output>{value ?? '…'}</output>
                {note !== undefined && value !== null && <span class="note">{note}</span>}
              </dd>
            </div>
          ))}
        </dl>
        {warnings.map((words) => (
          <p key={words} class="problem">
            {words}
          </p>
        ))}
      </div>
    </div>
    {table}
    <section class="whence" aria-labelledby="whence">
      <h3 id="whence">Source</h3>
      <ul>
        {sources.map((source) => (
          <li key={source}>{source}</li>
        ))}
      </ul>
      <p>
        <strong>Left out:</strong> {leaves}
      </p>
    </section>
    <Caution />
  </article>
);

export interface TableProps {
  readonly caption: string;
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export const Table = ({ caption, heads, rows }: TableProps) => (
  <table class="ref-table">
    <caption>{caption}</caption>
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
      {rows.map((row) => (
        <tr key={row[0]}>
          {row.map((cell, at) =>
            at === 0 ? (
              <th key={heads[at]} scope="row">
                {cell}
              </th>
            ) : (
              <td key={heads[at]}>{cell}</td>
            ),
          )}
        </tr>
      ))}
    </tbody>
  </table>
);
