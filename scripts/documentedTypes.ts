import { posix } from 'node:path';
import { type ParseResult, parseSync } from 'oxc-parser';
import type { Source } from './sources.ts';

type Program = ParseResult['program'];
type Statement = Program['body'][number];
type Interface = Extract<Statement, { type: 'TSInterfaceDeclaration' }>;
type Alias = Extract<Statement, { type: 'TSTypeAliasDeclaration' }>;
export type TypeNode = Alias['typeAnnotation'];
type Members = Interface['body']['body'];

/** A parsed file with its comments. */
export interface DocumentedFile {
  readonly source: Source;
  readonly program: Program;
  readonly comments: ParseResult['comments'];
}

/** One property of an object type, with the words of the comment before it. */
export interface DocumentedProperty {
  readonly name: string;
  /** Empty where there is no comment. */
  readonly words: string;
  /** Whether it is a plain number, so that a unit and a range belong to it. */
  readonly numeric: boolean;
}

/** Parsed files by path, from which types are followed into other files. */
export type Files = ReadonlyMap<string, DocumentedFile>;

/** Parses sources; throws where a text is no TypeScript. */
export const parseFiles = (sources: readonly Source[]): Files =>
  new Map(
    sources.map((source) => {
      const parsed = parseSync(source.path, source.text, { lang: 'ts', sourceType: 'module' });
      const [error] = parsed.errors;
      if (error !== undefined) throw new Error(`${source.path}: ${error.message}`);
      return [source.path, { source, program: parsed.program, comments: parsed.comments }];
    }),
  );

/** Words of the documentation comment that ends right before an offset; undefined where there is none. */
export const commentBefore = (file: DocumentedFile, start: number): string | undefined => {
  const comment = file.comments.find(
    ({ type, value, end }) =>
      type === 'Block' &&
      value.startsWith('*') &&
      end <= start &&
      file.source.text.slice(end, start).trim() === '',
  );
  return comment?.value
    .split('\n')
    .map((line) => line.replace(/^\s*\*+ ?/, '').trimEnd())
    .join('\n')
    .trim();
};

const declared = (statement: Statement): Statement | undefined => {
  if (statement.type !== 'ExportNamedDeclaration') return statement;
  return statement.declaration ?? undefined;
};

/** Whether a type is `number`. */
export const isNumeric = (type: TypeNode | undefined): boolean => type?.type === 'TSNumberKeyword';

const ofMembers = (file: DocumentedFile, members: Members): DocumentedProperty[] =>
  members.flatMap((member) => {
    if (member.type !== 'TSPropertySignature' || member.key.type !== 'Identifier') return [];
    const words = commentBefore(file, member.start) ?? '';
    return [{ name: member.key.name, words, numeric: isNumeric(member.typeAnnotation?.typeAnnotation) }];
  });

/** Where an imported name is declared: the path of the file and its name there. */
const imported = (file: DocumentedFile, name: string): { path: string; name: string } | undefined => {
  for (const statement of file.program.body) {
    if (statement.type !== 'ImportDeclaration') continue;
    for (const specifier of statement.specifiers) {
      if (specifier.type !== 'ImportSpecifier' || specifier.local.name !== name) continue;
      const path = posix.join(posix.dirname(file.source.path), statement.source.value);
      return { path, name: specifier.imported.type === 'Identifier' ? specifier.imported.name : name };
    }
  }
  return undefined;
};

const named = (files: Files, file: DocumentedFile, name: string): DocumentedProperty[] => {
  for (const statement of file.program.body) {
    const declaration = declared(statement);
    if (declaration?.type === 'TSInterfaceDeclaration' && declaration.id.name === name) {
      const inherited = declaration.extends.flatMap(({ expression }) =>
        expression.type === 'Identifier' ? named(files, file, expression.name) : [],
      );
      return [...inherited, ...ofMembers(file, declaration.body.body)];
    }
    if (declaration?.type === 'TSTypeAliasDeclaration' && declaration.id.name === name)
      return propertiesOf(files, file, declaration.typeAnnotation);
  }
  const elsewhere = imported(file, name);
  const other = elsewhere && files.get(elsewhere.path);
  return other ? named(files, other, elsewhere.name) : [];
};

/** Properties of an object type, those of interfaces and of joined types included; none of any other type. */
export const propertiesOf = (files: Files, file: DocumentedFile, type: TypeNode): DocumentedProperty[] => {
  switch (type.type) {
    case 'TSTypeLiteral':
      return ofMembers(file, type.members);
    case 'TSIntersectionType':
      return type.types.flatMap((each) => propertiesOf(files, file, each));
    case 'TSTypeReference':
      return type.typeName.type === 'Identifier' ? named(files, file, type.typeName.name) : [];
    default:
      return [];
  }
};
