/** Parses a source file with oxc-parser and walks its tree without knowing the kinds of node. */
import { parseSync } from 'oxc-parser';

/** A node of the syntax tree, as far as the layer test looks at it. */
export type Node = { readonly type: string; readonly start: number } & Readonly<Record<string, unknown>>;

/** Whether a value found in the tree is a node. */
export const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && typeof (value as { type?: unknown }).type === 'string';

/** Parses a file; a file that does not parse is a defect of the file and thrown. */
export const parse = (file: string, source: string): Node => {
  const { program, errors } = parseSync(file, source);
  const [error] = errors;
  if (error) throw new Error(`${file}: ${error.message}`);
  return program as unknown as Node;
};

/** Calls visit for every node below and including this one, with its parent and the parent's field it stands in. */
export const walk = (
  node: Node,
  visit: (node: Node, parent: Node | null, field: string) => void,
  parent: Node | null = null,
  field = '',
): void => {
  visit(node, parent, field);
  for (const [key, value] of Object.entries(node)) {
    for (const child of Array.isArray(value) ? value : [value]) if (isNode(child)) walk(child, visit, node, key);
  }
};

/** The text of a string literal or of a template without holes. */
export const textOf = (node: unknown): string | null => {
  if (!isNode(node)) return null;
  if (node.type === 'Literal' && typeof node.value === 'string') return node.value;
  if (node.type === 'TSLiteralType') return textOf(node.literal);
  if (node.type !== 'TemplateLiteral') return null;
  const quasis = node.quasis as readonly { readonly value: { readonly cooked: string } }[];
  return quasis.length === 1 ? (quasis[0]?.value.cooked ?? null) : null;
};

/** Line number, from 1, of an offset. */
export const lineAt = (source: string, offset: number): number => source.slice(0, offset).split('\n').length;
