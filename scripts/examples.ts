import { commentBefore, type DocumentedFile, parseFiles } from './documentedTypes.ts';
import type { Source } from './sources.ts';

/** One example of a docstring: an expression, and what stands behind `//` after it. */
export interface Example {
  readonly path: string;
  readonly law: string;
  readonly expression: string;
  readonly outcome: string;
}

const exampleOf = (words: string): { expression: string; outcome: string } | undefined => {
  const [, text] = /(?:^|\n)@example\s+([\s\S]*?)(?=\n@|$)/.exec(words) ?? [];
  const [, expression, outcome] = /^([\s\S]*?)\s*\/\/\s*([\s\S]*)$/.exec(text ?? '') ?? [];
  return expression !== undefined && outcome !== undefined ? { expression, outcome } : undefined;
};

const examplesOf = (file: DocumentedFile): Example[] =>
  file.program.body.flatMap((statement): Example[] => {
    if (statement.type !== 'ExportNamedDeclaration' || statement.declaration?.type !== 'VariableDeclaration')
      return [];
    const words = commentBefore(file, statement.start);
    const example = words === undefined ? undefined : exampleOf(words);
    const [declarator] = statement.declaration.declarations;
    if (example === undefined || declarator?.id.type !== 'Identifier') return [];
    return [{ path: file.source.path, law: declarator.id.name, ...example }];
  });

/** All examples in the docstrings of exported constants. */
export const examplesIn = (sources: readonly Source[]): Example[] =>
  [...parseFiles(sources).values()].flatMap(examplesOf);

/** What an example's expression comes to, with the exports of its file in scope. */
export const evaluateExample = (example: Example, exported: Readonly<Record<string, unknown>>): unknown => {
  const run: unknown = new Function(...Object.keys(exported), `return (${example.expression});`);
  return typeof run === 'function' ? run(...Object.values(exported)) : undefined;
};

/** The number that an outcome begins with, and half a unit of its last digit. */
export const statedNumber = (outcome: string): { value: number; halfDigit: number } | undefined => {
  const match = /^-?\d+(?:\.(\d+))?(?:e([+-]?\d+))?/.exec(outcome);
  if (!match) return undefined;
  const [text, decimals = '', power = '0'] = match;
  return { value: Number(text), halfDigit: 0.5 * 10 ** (Number(power) - decimals.length) };
};
