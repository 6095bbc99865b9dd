import { writeFileSync } from 'node:fs';
import { newJob } from '@fettle/job/newJob.ts';
import { describe, expect, test } from 'vitest';
import { commandBench } from '../testing/commandBench.ts';
import { addImport } from './import.ts';

const { path, problems, told, json } = commandBench(addImport, 'import');

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
    const files = [fileWith(letter, 'one.yaml'), fileWith(letter, 'for $& more.yaml')];
    const told = await problems(...files);
    expect(told.map(({ says }) => says.split(', line')[0])).toEqual(files);
  });
});

describe('a file of fettle new that was not filled in', () => {
  const made = newJob('hang-on-back');
  const text = made.ok ? made.text : '';

  test('is taken in, and told of with the fields that are still its own', async () => {
    expect(await told(fileWith(text))).toMatch(
      /Took in .* as job 2\. .*job\.yaml: These fields still say what fettle new wrote, .*: job\.title, tank\.volume, .* and \d+ more\./,
    );
    const { imported } = await json(fileWith(text.replace('New job', 'Mine')), '--new');
    const unfilled = imported[0].notes.find(({ code }: { code: string }) => code === 'template-values');
    expect(unfilled.says).not.toContain('job.title');
    expect(unfilled.says).toContain('tank.volume');
  });
});
