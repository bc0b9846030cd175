/** The instructor's sheet in the order and under the heads in which it is printed and shown: words only, no layout. */
import type { Severity } from '../catalogue/types.ts';
import type { InstructorSheet, SheetCause, SheetLookAlike } from './instructorSheet.ts';
import { capital, sentence } from './words.ts';

/** Lines under a head of their own. */
export interface SheetList {
  readonly title: string;
  readonly lines: readonly string[];
}

/** One thing that is or only looks wrong. */
export interface SheetEntry {
  readonly title: string;
  /** Of what is wrong. */
  readonly severity: Severity | null;
  readonly lists: readonly SheetList[];
  readonly note: string;
}

export interface SheetSection {
  readonly title: string;
  /** What is said before anything is listed. */
  readonly words: readonly string[];
  readonly entries: readonly SheetEntry[];
  readonly lines: readonly string[];
}

export const sheetTitle = 'Instructor\u2019s sheet';
export const sheetFor = 'not for trainees';

const filled = (lists: readonly SheetList[]): readonly SheetList[] => lists.filter(({ lines }) => lines.length > 0);

const causeEntry = (cause: SheetCause): SheetEntry => ({
  title: `${capital(cause.title)} (${cause.part})`,
  severity: cause.severity,
  lists: filled([
    { title: 'Where it can be made out', lines: cause.found },
    { title: 'What it can do', lines: cause.does },
    { title: 'What holds it', lines: cause.controls },
    { title: 'Tempting and wrong', lines: cause.tempting },
  ]),
  note: `${sentence(cause.tellApart)} [${cause.source}]`,
});

const lookAlikeEntry = ({ title, part, mistakenFor, found, tellApart }: SheetLookAlike): SheetEntry => ({
  title: `${capital(title)} (${part})${mistakenFor.length === 0 ? '' : `, taken for: ${mistakenFor.join(', ')}`}`,
  severity: null,
  lists: filled([{ title: 'Where it can be made out', lines: found }]),
  note: sentence(tellApart),
});

/** The sections that have something to say. */
export const sheetSections = ({ call, job, causes, lookAlikes, besides, route, discussion }: InstructorSheet) =>
  [
    { title: 'Call and job', words: [call, job], entries: [], lines: [] },
    {
      title: 'What is wrong',
      words: causes.length === 0 ? ['Nothing but the job.'] : [],
      entries: causes.map(causeEntry),
      lines: [],
    },
    { title: 'What only looks wrong', words: [], entries: lookAlikes.map(lookAlikeEntry), lines: [] },
    { title: 'Besides: what is in service', words: [], entries: [], lines: besides },
    { title: 'A proven safe route', words: route === null ? [] : [route.words], entries: [], lines: route?.rows ?? [] },
    { title: 'To talk about', words: [], entries: [], lines: discussion },
  ].filter(
    ({ words, entries, lines }) => words.length + entries.length + lines.length > 0,
  ) satisfies readonly SheetSection[] as readonly SheetSection[];
