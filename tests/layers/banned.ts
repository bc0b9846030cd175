/**
 * Finds in engine code what would let two runs differ: clocks, chance, locale, and arithmetic whose last bit is left
 * to the JavaScript engine. ECMA-262 leaves sin, exp, pow, `**` and their kin to the implementation; sqrt it does not.
 */
import { isNode, lineAt, type Node, parse, textOf, walk } from './syntax.ts';

const allowedMath = ['abs', 'min', 'max', 'floor', 'ceil', 'trunc', 'round', 'sign', 'sqrt', 'PI'];
const bannedNames = [
  'Date',
  'performance',
  'Intl',
  'globalThis',
  'eval',
  'Function',
  'WeakRef',
  'FinalizationRegistry',
  'setTimeout',
  'setInterval',
  'process',
  'console',
];
const bannedMembers = /^(toLocale\w*|localeCompare)$/;

/** One banned construct. */
export type Banned = { readonly line: number; readonly what: string };

const memberName = (node: Node): string | null => {
  const property = node.property;
  if (!isNode(property)) return null;
  return node.computed ? textOf(property) : String(property.name);
};

const isName = (parent: Node | null, field: string): boolean => {
  if (parent === null) return true;
  if (parent.type === 'MemberExpression' && field === 'property') return parent.computed === true;
  if (field === 'key') return parent.computed === true;
  return true;
};

const bannedIn = (node: Node, parent: Node | null, field: string): string | null => {
  if (node.type === 'BinaryExpression' && node.operator === '**') return '**';
  if (node.type === 'AssignmentExpression' && node.operator === '**=') return '**=';
  if (node.type === 'MetaProperty' && (node.meta as Node).name === 'import') return 'import.meta';
  if (node.type === 'MemberExpression') {
    const name = memberName(node);
    if (name !== null && bannedMembers.test(name)) return name;
    const object = node.object as Node;
    if (object.type === 'Identifier' && object.name === 'Math' && !allowedMath.includes(name ?? '')) {
      return `Math.${name ?? '[computed]'}`;
    }
    return null;
  }
  if (node.type === 'Property' && isNode(node.key) && parent?.type === 'ObjectPattern') {
    const name = node.computed ? textOf(node.key) : String(node.key.name);
    if (name !== null && bannedMembers.test(name)) return name;
  }
  if (node.type !== 'Identifier' || !isName(parent, field)) return null;
  const name = String(node.name);
  if (name === 'Math') return parent?.type === 'MemberExpression' && field === 'object' ? null : 'Math as a value';
  return bannedNames.includes(name) ? name : null;
};

/** Every banned construct of an engine file. */
export const bannedConstructs = (file: string, source: string): readonly Banned[] => {
  const found: Banned[] = [];
  walk(parse(file, source), (node, parent, field) => {
    const what = bannedIn(node, parent, field);
    if (what !== null) found.push({ line: lineAt(source, node.start), what });
  });
  return found;
};
