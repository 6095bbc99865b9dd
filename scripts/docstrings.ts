import { type Breach, lineAt, reportBreaches } from './breach.ts';
import {
  commentBefore,
  type DocumentedFile,
  type DocumentedProperty,
  type Files,
  isNumeric,
  parseFiles,
  propertiesOf,
} from './documentedTypes.ts';
import { isMain, readSources, type Source } from './sources.ts';

type Statement = DocumentedFile['program']['body'][number];
type Exported = Extract<Statement, { type: 'ExportNamedDeclaration' }>;
type Variable = Extract<NonNullable<Exported['declaration']>, { type: 'VariableDeclaration' }>;
type Arrow = Extract<
  NonNullable<Variable['declarations'][number]['init']>,
  { type: 'ArrowFunctionExpression' }
>;
type Parameter = Arrow['params'][number];

/** An exported law as the check sees it. */
interface Law {
  readonly name: string;
  readonly start: number;
  readonly words: string | undefined;
  readonly parameters: readonly Parameter[];
  readonly givesNumber: boolean;
}

/** A file among the others, in which its types are looked up. */
interface Place {
  readonly files: Files;
  readonly file: DocumentedFile;
}

/** Tags of a docstring: the text behind `@returns`, and behind each `@param` by what it names. */
interface Tags {
  readonly parameters: ReadonlyMap<string, string>;
  readonly returns: string | undefined;
  readonly source: string | undefined;
}

/** A base unit, or 1, that stands by itself or begins a longer unit. */
const UNIT = /(?:^|[\s(,])(?:1\/)?(?:1|(?:kg|m|s|K|Pa|N|W|J|mol)(?:[²³⁴⁵⁶]|\^[\d.]+)?)(?=[\s,;:./·()]|$)/u;
const RANGE =
  /\b(?:above|below|at least|at most|or more|or less|any|up to|to|of either sign|none)\b|[0-9]–[0-9]|^0 /u;

const tagsOf = (words: string): Tags => {
  const parameters = new Map<string, string>();
  let returns: string | undefined;
  let source: string | undefined;
  for (const block of words.split(/\n(?=@)/)) {
    const [, tag, rest = ''] = /^@(\w+)\s*([\s\S]*)$/.exec(block) ?? [];
    const [, name, text = ''] = /^(\S+)\s*([\s\S]*)$/.exec(rest) ?? [];
    if (tag === 'param' && name !== undefined) parameters.set(name, text);
    if (tag === 'returns') returns = rest;
    if (tag === 'source') source = rest;
  }
  return { parameters, returns, source };
};

const lawsOf = (file: DocumentedFile): Law[] =>
  file.program.body.flatMap((statement): Law[] => {
    if (statement.type !== 'ExportNamedDeclaration') return [];
    const { declaration, start } = statement;
    const words = commentBefore(file, start);
    const law = (name: string, { params, returnType }: Pick<Arrow, 'params' | 'returnType'>): Law => ({
      name,
      start,
      words,
      parameters: params,
      givesNumber: isNumeric(returnType?.typeAnnotation),
    });
    if (declaration?.type === 'FunctionDeclaration' && declaration.id)
      return [law(declaration.id.name, declaration)];
    if (declaration?.type !== 'VariableDeclaration') return [];
    return declaration.declarations.flatMap(({ id, init }) =>
      id.type === 'Identifier' && init?.type === 'ArrowFunctionExpression' ? [law(id.name, init)] : [],
    );
  });

/** What is missing in the words on one argument. */
const faultsOf = ({ name, words, numeric }: DocumentedProperty): string[] => {
  if (words === '') return [`${name} is not described`];
  if (!numeric) return [];
  const [, ...bounds] = words.split(';');
  return [
    ...(UNIT.test(words) ? [] : [`${name} has no unit`]),
    ...(RANGE.test(bounds.join(';')) ? [] : [`${name} has no range`]),
  ];
};

const parameterFaults = (at: Place, parameter: Parameter, tags: Tags): string[] => {
  if (parameter.type !== 'Identifier') return ['an argument is taken apart in the head'];
  const { name } = parameter;
  const wordsOn = (what: string, otherwise = ''): string => tags.parameters.get(what) ?? otherwise;
  const type = parameter.typeAnnotation?.typeAnnotation;
  const properties = type ? propertiesOf(at.files, at.file, type) : [];
  if (properties.length === 0) return faultsOf({ name, words: wordsOn(name), numeric: isNumeric(type) });
  const known = properties.map((each) => ({ ...each, name: `${name}.${each.name}` }));
  const stray = [...tags.parameters.keys()].filter(
    (tag) => tag.startsWith(`${name}.`) && !known.some((each) => each.name === tag),
  );
  return [
    ...known.flatMap((each) => faultsOf({ ...each, words: wordsOn(each.name, each.words) })),
    ...stray.map((tag) => `${tag} is no property`),
  ];
};

const lawFaults = (at: Place, law: Law): string[] => {
  if (law.words === undefined) return ['it has no docstring'];
  const tags = tagsOf(law.words);
  const { returns } = tags;
  return [
    ...law.parameters.flatMap((parameter) => parameterFaults(at, parameter, tags)),
    ...(returns === undefined ? ['the result is not described'] : []),
    ...(returns !== undefined && law.givesNumber && !UNIT.test(returns) ? ['the result has no unit'] : []),
    ...(tags.source ? [] : ['it names no source']),
  ];
};

/** Paths of the laws among the project's files. */
export const isLaw = (path: string): boolean =>
  path.startsWith('packages/engine/laws/') && path.endsWith('.ts') && !path.endsWith('.test.ts');

/**
 * Exported laws whose docstring does not name every argument, and every property of an argument, with its unit
 * and, behind a semicolon, its range; or lacks the unit of the result, or the source. Words on a property's own
 * declaration serve every law that takes it.
 */
export const docstringBreaches = (sources: readonly Source[]): Breach[] => {
  const files = parseFiles(sources);
  return [...files.values()].flatMap((file) =>
    lawsOf(file).flatMap((law) =>
      lawFaults({ files, file }, law).map((fault) => ({
        path: file.source.path,
        line: lineAt(file.source.text, law.start),
        rule: 'docstring',
        message: `${law.name}: ${fault}`,
      })),
    ),
  );
};

if (isMain(import.meta.url)) {
  const sources = readSources(isLaw);
  process.exitCode = reportBreaches('docstrings', sources.length, docstringBreaches(sources));
}
