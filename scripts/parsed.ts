import { type ParseResult, type ParserOptions, parseSync, Visitor, type VisitorObject } from 'oxc-parser';
import { lineAt } from './breach.ts';
import type { Source } from './sources.ts';

/** One import of another module, type imports and dynamic ones included. */
export interface ImportedModule {
  /** What the import names; undefined where it is computed at run time. */
  readonly specifier: string | undefined;
  readonly line: number;
}

const optionsFor = (path: string): ParserOptions => ({
  lang: path.endsWith('.tsx') ? 'tsx' : 'ts',
  sourceType: 'module',
});

/** The tree of a source; throws where the text is no TypeScript. */
export function parsedProgram(source: Source): ParseResult['program'] {
  const parsed = parseSync(source.path, source.text, optionsFor(source.path));
  const [error] = parsed.errors;
  if (error !== undefined) throw new Error(`${source.path}: ${error.message}`);
  return parsed.program;
}

/** Walks the tree of a source. */
export function walkSource(source: Source, visitor: VisitorObject): void {
  new Visitor(visitor).visit(parsedProgram(source));
}

/** Every module that a source imports or re-exports, in order of appearance. */
export function importedModules(source: Source): ImportedModule[] {
  const found: { specifier: string | undefined; start: number }[] = [];
  const add = (node: { value: string; start: number }) =>
    found.push({ specifier: node.value, start: node.start });
  walkSource(source, {
    ImportDeclaration: (node) => add(node.source),
    ExportAllDeclaration: (node) => add(node.source),
    ExportNamedDeclaration: (node) => {
      if (node.source !== null) add(node.source);
    },
    TSImportType: (node) => add(node.source),
    ImportExpression: (node) => {
      const { source: named } = node;
      const literal = named.type === 'Literal' && typeof named.value === 'string' ? named.value : undefined;
      found.push({ specifier: literal, start: node.start });
    },
  });
  return found.map(({ specifier, start }) => ({ specifier, line: lineAt(source.text, start) }));
}
