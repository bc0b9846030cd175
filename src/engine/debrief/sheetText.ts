/** The instructor's sheet as plain text, to be printed. */
import type { InstructorSheet } from './instructorSheet.ts';
import { capital, sentence } from './words.ts';

const section = (title: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : ['', title.toUpperCase(), ...lines];

const listed = (title: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : [`  ${title}`, ...lines.map((line) => `    - ${line}`)];

/** Lines of text, ending with the caution. */
export const sheetText = (sheet: InstructorSheet): string =>
  [
    `INSTRUCTOR'S SHEET \u2013 not for trainees`,
    `${sheet.title} (grade ${sheet.grade})`,
    sheet.teaches,
    ...section('Call and job', [sheet.call, sheet.job]),
    ...section(
      'What is wrong',
      sheet.causes.length === 0
        ? ['Nothing but the job.']
        : sheet.causes.flatMap((cause) => [
            `${capital(cause.title)} (${cause.part}), ${cause.severity}`,
            ...listed('Where it can be made out', cause.found),
            ...listed('What it can do', cause.does),
            ...listed('What holds it', cause.controls),
            ...listed('Tempting and wrong', cause.tempting),
            `  ${sentence(cause.tellApart)} [${cause.source}]`,
          ]),
    ),
    ...section(
      'What only looks wrong',
      sheet.lookAlikes.flatMap((each) => [
        `${capital(each.title)} (${each.part})${each.mistakenFor.length === 0 ? '' : `, taken for: ${each.mistakenFor.join(', ')}`}`,
        ...listed('Where it can be made out', each.found),
        `  ${sentence(each.tellApart)}`,
      ]),
    ),
    ...section(
      'Besides: what is in service',
      sheet.besides.map((line) => `- ${line}`),
    ),
    ...section(
      'To talk about',
      sheet.discussion.map((line) => `- ${line}`),
    ),
    '',
    sheet.caution,
    '',
  ].join('\n');
