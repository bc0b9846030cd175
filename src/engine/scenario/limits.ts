/** How much a scenario file may hold: far above any real one, far below what could tie up a reader. Estimates. */
export const limits = {
  /** UTF-16 units of the whole file: 256 kB of plain text. */
  fileLength: 256 * 1024,
  /** Marks, words and line ends together, which bounds the time of reading; a shipped scenario has some 2,500. */
  tokens: 40_000,
  /** Groups and lists within each other; the form itself needs six. */
  depth: 12,
  /** Column where a line may still start a list item or a key. */
  column: 80,
  /** Entries of one list or keys of one group. */
  entries: 200,
  /** Characters of one text. */
  text: 2000,
  /** Problems told of one file. */
  problems: 200,
} as const;
