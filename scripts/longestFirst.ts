import { relative } from 'node:path';
import { BaseSequencer, type TestSpecification } from 'vitest/node';
import { projectRoot } from './sources.ts';

/** Files of tests that take longest, longest first: begun last, one would be waited for while other cores rest. */
export const longest: readonly string[] = [
  'test/fuzz-server.test.ts',
  'test/workbench-rooms.browser.test.ts',
  'test/screen.test.ts',
  'test/write-up-page.browser.test.ts',
  'test/drawing.browser.test.ts',
  'test/kill.test.ts',
  'packages/store/contract.test.ts',
  'packages/server/listen/listen.test.ts',
  'packages/server/computation/computation.test.ts',
];

/**
 * Whole programs before parts, and in both the longest first, so that the files left at the end are short ones. A
 * machine that has run the tests before knows how long the others take; a new one goes by their size.
 */
export default class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const rank = (file: TestSpecification): number => {
      const place = longest.indexOf(relative(projectRoot, file.moduleId));
      return place < 0 ? longest.length : place;
    };
    const part = (file: TestSpecification): number => (file.project.name === 'program' ? 0 : 1);
    // Equal ones stay as they are: sorting is stable.
    return (await super.sort(files)).sort((a, b) => part(a) - part(b) || rank(a) - rank(b));
  }
}
