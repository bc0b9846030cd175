/**
 * The qualification report: every model beside a number from outside, worked out here and now on this device. The command
 * line prints the same, and there ngspice solves whole circuits beside ours.
 */
import { useEffect, useState } from 'preact/hooks';
import { allChecks } from '../../engine/qualification/allChecks.ts';
import { type Check, checkKinds, type QualifiedCheck } from '../../engine/qualification/types.ts';
import { Caution } from '../parts/Caution.tsx';
import { capital } from '../words.ts';
import { ModelChecks } from './ModelChecks.tsx';
import { type Filter, groupsOf, isApart, modelsOf, narrowed } from './sortReport.ts';
import { useReport } from './useReport.ts';
import { Verdict } from './Verdict.tsx';

export interface QualificationPageProps {
  /** Leaves the page. */
  readonly back: () => void;
  /** Checks to run; all that need no other program otherwise. */
  readonly checks?: readonly Check[];
}

const everything: Filter = { model: null, kind: null, failedOnly: false };

/** Paper shows what is folded on the screen. */
const useUnfoldedOnPaper = (): void => {
  useEffect(() => {
    let folded: readonly HTMLDetailsElement[] = [];
    const unfold = (): void => {
      folded = [...document.querySelectorAll<HTMLDetailsElement>('details.model:not([open])')];
      for (const each of folded) each.open = true;
    };
    const fold = (): void => {
      for (const each of folded) each.open = false;
    };
    addEventListener('beforeprint', unfold);
    addEventListener('afterprint', fold);
    return () => {
      removeEventListener('beforeprint', unfold);
      removeEventListener('afterprint', fold);
    };
  }, []);
};

interface FiltersProps {
  readonly models: readonly string[];
  readonly filter: Filter;
  readonly narrow: (filter: Filter) => void;
}

const Filters = ({ models, filter, narrow }: FiltersProps) => (
  <form class="narrow-by" aria-label="Show only" onSubmit={(event) => event.preventDefault()}>
    <label>
      Model
      <select
        value={filter.model ?? ''}
        onChange={({ currentTarget: { value } }) => narrow({ ...filter, model: value === '' ? null : value })}
      >
        <option value="">all models</option>
        {models.map((model) => (
          <option key={model} value={model}>
            {model}
          </option>
        ))}
      </select>
    </label>
    <label>
      Kind
      <select
        value={filter.kind ?? ''}
        onChange={({ currentTarget: { value } }) =>
          narrow({ ...filter, kind: checkKinds.find((kind) => kind === value) ?? null })
        }
      >
        <option value="">all kinds</option>
        {checkKinds.map((kind) => (
          <option key={kind} value={kind}>
            {kind}
          </option>
        ))}
      </select>
    </label>
    <label>
      <input
        type="checkbox"
        checked={filter.failedOnly}
        onChange={({ currentTarget: { checked } }) => narrow({ ...filter, failedOnly: checked })}
      />
      Failed only
    </label>
  </form>
);

const Part = ({ title, checks, open }: { title: string; checks: readonly QualifiedCheck[]; open: boolean }) => {
  const [first] = checks;
  if (first === undefined) return null;
  const apart = isApart(first.kind);
  return (
    <section aria-label={title}>
      <h2>{title}</h2>
      {groupsOf(checks).map((group) => (
        <ModelChecks key={group.model} group={group} apart={apart} open={open || group.checks.some(({ ok }) => !ok)} />
      ))}
    </section>
  );
};

const Report = ({ report }: { report: readonly QualifiedCheck[] }) => {
  const [filter, narrow] = useState(everything);
  const shown = narrowed(report, filter);
  const open = filter.model !== null;
  return (
    <>
      <Verdict report={report} />
      <Filters models={modelsOf(report)} filter={filter} narrow={narrow} />
      <p role="status" class="hint">
        {shown.length === 0
          ? filter.failedOnly
            ? 'No check of these failed.'
            : 'No check is of this model and this kind.'
          : `${shown.length} of ${report.length} shown.`}
      </p>
      <Part
        title="Held against published values and other programs"
        checks={shown.filter(({ kind }) => !isApart(kind))}
        open={open}
      />
      <Part
        title="Listed apart: common practice and from memory"
        checks={shown.filter(({ kind }) => isApart(kind))}
        open={open}
      />
    </>
  );
};

/** The page; the checks run when it is opened. */
export const QualificationPage = ({ back, checks = allChecks }: QualificationPageProps) => {
  const { report, finished, broken } = useReport(checks);
  useUnfoldedOnPaper();
  return (
    <main class="desk report-desk">
      <div class="sheet paper report">
        <header class="letterhead report-head">
          <h1>Qualification report</h1>
          <p class="buttons">
            <button type="button" disabled={!finished} onClick={() => print()}>
              Print the report
            </button>
            <button type="button" onClick={back}>
              Back to the start
            </button>
          </p>
        </header>
        <p>
          Each model that decides whether somebody would have been hurt, beside a number from outside it. All is worked
          out anew on this device. Whole circuits solved by ngspice beside ours run on the command line only:{' '}
          <code>npx loose-tie qualify</code>.
        </p>
        <p class="hint">
          A table that is read as printed shows that it was copied right, no more. {capital(checkKinds[2])} and values{' '}
          {checkKinds[3]} are listed apart and never counted as published. The report qualifies the program, no line,
          tool or person.
        </p>
        <Caution />
        {broken.map((words) => (
          <p key={words} class="problem" role="alert">
            This check broke off: {words}
          </p>
        ))}
        {finished ? (
          <Report report={report} />
        ) : (
          <p class="working">
            Working it out: <progress max={checks.length} value={report.length} aria-label="Checks done" />{' '}
            <span>
              {report.length} of {checks.length}
            </span>
          </p>
        )}
      </div>
    </main>
  );
};
