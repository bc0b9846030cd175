/** Runs the checks after the first paint, a slice at a time, so that the page stays alive meanwhile. */
import { useEffect, useState } from 'preact/hooks';
import { runCheck } from '../../engine/qualification/runChecks.ts';
import type { Check, QualifiedCheck } from '../../engine/qualification/types.ts';

/** How far the report has come. */
export interface Running {
  readonly report: readonly QualifiedCheck[];
  readonly finished: boolean;
  /** Checks that broke off, each with its reason; they stand in the report as failed. */
  readonly broken: readonly string[];
}

/** Milliseconds at a stretch: less than a frame. */
const SLICE = 12;

const begun: Running = { report: [], finished: false, broken: [] };

/** The report of `checks`, growing; a check that throws fails and is named. */
export const useReport = (checks: readonly Check[]): Running => {
  const [running, setRunning] = useState(begun);
  useEffect(() => {
    const report: QualifiedCheck[] = [];
    const broken: string[] = [];
    const run = (check: Check): void => {
      try {
        report.push(runCheck(check));
      } catch (error) {
        broken.push(`${check.id}: ${error instanceof Error ? error.message : String(error)}`);
        report.push(runCheck({ ...check, ours: () => Number.NaN }));
      }
    };
    const slice = (): void => {
      const until = performance.now() + SLICE;
      for (let check = checks[report.length]; check !== undefined; check = checks[report.length]) {
        run(check);
        if (performance.now() >= until) break;
      }
      const finished = report.length === checks.length;
      setRunning({ report: report.slice(), finished, broken: broken.slice() });
      if (!finished) timer = setTimeout(slice);
    };
    let timer = setTimeout(slice);
    return () => clearTimeout(timer);
  }, [checks]);
  return running;
};
