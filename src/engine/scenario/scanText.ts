/**
 * First look at a file from a stranger, before any tree is built: size, characters, and the parts of YAML that a
 * scenario has no use for (anchors, aliases, tags, directives, deep nesting). Works on the token stream, so that
 * neither recursion nor expansion can be provoked.
 */
import { CST, Lexer } from 'yaml';
import { limits } from './limits.ts';
import { shown, unseen } from './problem.ts';

/** A refusal at an offset of the text. */
export interface TextRefusal {
  readonly offset: number;
  readonly found: string;
  readonly expected: string;
}

const noUse: Readonly<Record<string, string>> = {
  anchor: 'no anchors: every value is written out',
  alias: 'no aliases: every value is written out',
  tag: 'no tags: the form itself says what a value is',
  'directive-line': 'no directives',
};
const opens = ['flow-map-start', 'flow-seq-start'];
const closes = ['flow-map-end', 'flow-seq-end'];
const blockMarks = ['seq-item-ind', 'explicit-key-ind', 'map-value-ind'];

/** Depth bound while tokens pass: brackets are counted; a block level costs at least a column. */
const tooDeep = (brackets: number, column: number): boolean => brackets > limits.depth || column > limits.column;

const scanTokens = (text: string): TextRefusal[] => {
  const refusals: TextRefusal[] = [];
  let offset = 0;
  let lineStart = 0;
  let brackets = 0;
  let scalarNext = false;
  let tokens = 0;
  for (const token of new Lexer().lex(text)) {
    tokens += 1;
    if (tokens > limits.tokens) {
      refusals.push({ offset, found: 'too many marks and words', expected: `at most ${limits.tokens}` });
      return refusals;
    }
    if (token === CST.SCALAR || token === CST.FLOW_END || token === CST.DOCUMENT || token === CST.BOM) {
      scalarNext = token === CST.SCALAR;
      if (token === CST.BOM) offset += token.length;
      continue;
    }
    const type = scalarNext ? 'scalar' : (CST.tokenType(token) ?? 'scalar');
    scalarNext = false;
    const refused = noUse[type];
    if (refused !== undefined) refusals.push({ offset, found: shown(token), expected: refused });
    if (opens.includes(type)) brackets += 1;
    if (closes.includes(type)) brackets -= 1;
    if (tooDeep(brackets, brackets === 0 && blockMarks.includes(type) ? offset - lineStart : 0)) {
      refusals.push({ offset, found: 'deep nesting', expected: `at most ${limits.depth} levels` });
      return refusals;
    }
    const lastBreak = token.lastIndexOf('\n');
    if (lastBreak >= 0) lineStart = offset + lastBreak + 1;
    offset += token.length;
    if (refusals.length >= limits.problems) return refusals;
  }
  return refusals;
};

/** What makes the text unfit to be read as a scenario at all; empty if it may be parsed. */
export const scanText = (text: string): readonly TextRefusal[] => {
  if (text.length > limits.fileLength) {
    return [{ offset: 0, found: `${text.length} characters`, expected: `at most ${limits.fileLength}` }];
  }
  const body = text.startsWith('\ufeff') ? ` ${text.slice(1)}` : text;
  const control = unseen.exec(body);
  if (control) {
    return [{ offset: control.index, found: `the control character ${shown(control[0])}`, expected: 'plain text' }];
  }
  return scanTokens(text);
};
