import { writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { commandBench } from '../testing/commandBench.ts';
import { addImport } from './import.ts';

const { path, problems } = commandBench(addImport, 'import');

const fileWith = (text: string, name = 'job.yaml'): string => {
  writeFileSync(path(name), text);
  return path(name);
};

describe('a file that is no YAML', () => {
  const letter = 'hello: [\n  - a: b: c\n%%% foo\n\tbar';

  test('is told in one sentence, with file, line and column of its first fault', async () => {
    const file = fileWith(letter);
    const told = await problems(file);
    expect(told).toHaveLength(1);
    expect(told[0]).toMatchObject({ code: 'yaml-syntax', at: { line: 2, column: expect.any(Number) } });
    const { column } = told[0]!.at!;
    expect(told[0]!.says).toContain(`${file}, line 2, column ${column}, cannot be read as YAML: `);
    expect(told[0]!.says.match(/\.(?: |$)/g)).toHaveLength(1);
  });

  test('among several is told once each', async () => {
    const files = [fileWith(letter, 'one.yaml'), fileWith(letter, 'two.yaml')];
    const told = await problems(...files);
    expect(told.map(({ says }) => says.split(', line')[0])).toEqual(files);
  });
});
