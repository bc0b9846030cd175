/** Every way in which a source file brings in another: static, type, re-export, dynamic, glob, URL of a module. */
import { isNode, lineAt, type Node, parse, textOf, walk } from './syntax.ts';

/** One import as written. */
export type Import = {
  readonly specifier: string;
  /** Names as the imported file calls them; '*' stands for all of them. */
  readonly names: readonly string[];
  readonly typeOnly: boolean;
  /** A glob's specifier is cut before its first wildcard and names a folder. */
  readonly glob: boolean;
  readonly line: number;
};

/** The specifier of an import whose path is computed at run time. */
export const computed = '(computed)';

type Found = Omit<Import, 'line'>;

const nameOf = (specifier: Node): string => {
  if (specifier.type === 'ImportDefaultSpecifier') return 'default';
  const name = specifier.type === 'ExportSpecifier' ? specifier.local : specifier.imported;
  if (!isNode(name)) return '*';
  return typeof name.name === 'string' ? name.name : (textOf(name) ?? '*');
};

const declared = (node: Node, kind: unknown): Found | null => {
  const specifier = textOf(node.source);
  if (specifier === null) return null;
  const specifiers = (node.specifiers ?? null) as readonly Node[] | null;
  return { specifier, names: specifiers?.map(nameOf) ?? ['*'], typeOnly: kind === 'type', glob: false };
};

const whole = (specifier: string, typeOnly = false, glob = false): Found => ({
  specifier,
  names: ['*'],
  typeOnly,
  glob,
});

const isImportMeta = (node: unknown, property?: string): boolean => {
  if (!isNode(node)) return false;
  if (property === undefined) return node.type === 'MetaProperty';
  return node.type === 'MemberExpression' && isImportMeta(node.object) && (node.property as Node).name === property;
};

const globs = (node: Node): readonly Found[] => {
  const [first] = node.arguments as readonly Node[];
  const patterns = first?.type === 'ArrayExpression' ? (first.elements as readonly Node[]) : [first];
  return patterns.map((pattern) => {
    const text = textOf(pattern) ?? computed;
    return whole(text.replace(/^!/, '').replace(/[^/]*[*{[].*$/, ''), false, true);
  });
};

const dynamic = (source: unknown, typeOnly: boolean): Found => whole(textOf(source) ?? computed, typeOnly);

const importsOf = (node: Node): readonly (Found | null)[] => {
  switch (node.type) {
    case 'ImportDeclaration':
      return [declared(node, node.importKind)];
    case 'ExportNamedDeclaration':
    case 'ExportAllDeclaration':
      return [declared(node, node.exportKind)];
    case 'ImportExpression':
      return [dynamic(node.source, false)];
    case 'TSImportType':
      return [dynamic(node.source ?? node.argument, true)];
    case 'TSExternalModuleReference':
      return [dynamic(node.expression, false)];
    case 'CallExpression':
      return isImportMeta(node.callee, 'glob') ? globs(node) : [];
    case 'NewExpression': {
      const [path, base] = node.arguments as readonly Node[];
      const text = textOf(path);
      return text !== null && isImportMeta(base, 'url') ? [whole(text)] : [];
    }
    default:
      return [];
  }
};

/** All imports of a file, in the order of their lines. */
export const importsIn = (file: string, source: string): readonly Import[] => {
  const imports: Import[] = [];
  walk(parse(file, source), (node) => {
    for (const found of importsOf(node)) {
      if (found) imports.push({ ...found, line: lineAt(source, node.start) });
    }
  });
  return imports;
};
