import { describe, expect, test } from 'vitest';
import { deadLinks } from './links.ts';

const other = { path: 'docs/models/dirt.md', text: "# The bed's dirt\n\n## How it clogs (in days)\n" };

function found(text: string): string[] {
  const page = { path: 'docs/start.md', text };
  const files = ['docs/start.md', 'docs/models/dirt.md', 'demo/a job.yaml'];
  return deadLinks([page, other], files).map(({ line, rule }) => `${line} ${rule}`);
}

describe('a link that leads nowhere is found, at its line', () => {
  test.each([
    ['a file that is not there', 'a\n\nsee [it](models/life.md)', ['3 dead-link']],
    ['a path from the wrong folder', '[it](docs/models/dirt.md)', ['1 dead-link']],
    ['a picture', '![it](water-path.svg)', ['1 dead-link']],
    ['a heading of another page', '[it](models/dirt.md#how-it-rots)', ['1 dead-anchor']],
    ['a heading of its own', '[it](#nowhere)', ['1 dead-anchor']],
    ['behind code', '```\n[a](b.md)\n```\n[it](c.md "title")', ['4 dead-link']],
  ])('%s', (_name, text, breaches) => {
    expect(found(text)).toEqual(breaches);
  });
});

describe('a link that leads somewhere is left in peace', () => {
  test.each([
    ['a page', '[it](models/dirt.md)'],
    ['a folder', '[it](models/) and [it](../demo)'],
    ['a name with a space', '[it](../demo/a%20job.yaml)'],
    ['a heading', '[it](models/dirt.md#how-it-clogs-in-days) [it](models/dirt.md#the-beds-dirt)'],
    ['a heading of its own', '# Here\n[it](#here)'],
    ['another site', '[it](https://example.org/a.md) [us](mailto:us@example.org)'],
    ['code', '```\n[it](nowhere.md)\n```'],
  ])('%s', (_name, text) => {
    expect(found(text)).toEqual([]);
  });
});
