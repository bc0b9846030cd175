/** The instructor's sheet as plain text, to be printed. */
import type { InstructorSheet } from './instructorSheet.ts';
import { type SheetEntry, type SheetSection, sheetFor, sheetSections, sheetTitle } from './sheetSections.ts';

const entryLines = ({ title, severity, lists, note }: SheetEntry): readonly string[] => [
  severity === null ? title : `${title}, ${severity}`,
  ...lists.flatMap((list) => [`  ${list.title}`, ...list.lines.map((line) => `    - ${line}`)]),
  `  ${note}`,
];

const sectionLines = ({ title, words, entries, lines }: SheetSection): readonly string[] => [
  '',
  title.toUpperCase(),
  ...words,
  ...entries.flatMap(entryLines),
  ...lines.map((line) => `- ${line}`),
];

/** Lines of text, ending with the caution. */
export const sheetText = (sheet: InstructorSheet): string =>
  [
    `${sheetTitle.toUpperCase()} \u2013 ${sheetFor}`,
    `${sheet.title} (grade ${sheet.grade})`,
    sheet.teaches,
    ...sheetSections(sheet).flatMap(sectionLines),
    '',
    sheet.caution,
    '',
  ].join('\n');
