import { describe, expect, test } from 'vitest';
import { digestOf, unwantedWords } from './words.ts';

const unwanted = new Set([digestOf('draft nine'), digestOf('plan.md'), digestOf('hush')]);

function found(text: string, path = 'docs/a.md'): string[] {
  return unwantedWords({ path, text }, unwanted).map(
    ({ line, rule, message }) => `${line} ${rule} ${message}`,
  );
}

describe('a planted word is found, at its line', () => {
  test.each([
    ['one word', 'a\nHush, now', '2 unwanted-word hush'],
    ['two words over a line break', 'see Draft\nnine', '1 unwanted-word draft nine'],
    ["a file's name within a path", '// after drafts/plan.md, part 3', '1 unwanted-word plan.md'],
    ['in a text of the program', "const a = 'hush';", '1 unwanted-word hush'],
  ])('%s', (_name, text, breach) => {
    expect(found(text)).toEqual([breach]);
  });

  test.each([
    ['registry-address', `https://${['registry', 'example', 'org'].join('.')}/left-pad`],
    ['machine-address', ['192', '168', '0', '7'].join('.')],
    ['machine-folder', `"${['', 'home', 'bench', 'notes.txt'].join('/')}"`],
  ])('%s', (rule, text) => {
    expect(unwantedWords({ path: 'a.md', text }).map((breach) => breach.rule)).toEqual([rule]);
  });
});

describe('other words are left in peace', () => {
  test.each([
    ['part of a longer word', 'hushed drafts, nineteen plans.md5'],
    ['an address on this machine', 'listen on 127.0.0.1'],
    ['a number with dots', 'version 10.2.1 of 192 units'],
    ['a relative path', "import '../work/home/a.ts'; see packages/home/a"],
    ['a home folder by sign', 'kept in ~/work/jobs'],
  ])('%s', (_name, text) => {
    expect(found(text)).toEqual([]);
  });

  test("what other projects say of themselves, in the lock's list of them", () => {
    expect(found('hush', 'package-lock.json')).toEqual([]);
  });
});
