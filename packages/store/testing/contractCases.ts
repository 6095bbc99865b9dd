import { describe, it } from 'vitest';
import { aroundCases } from './aroundCases.ts';
import { type Case, type OpenStore, onBench } from './bench.ts';
import { hostileCases } from './hostileCases.ts';
import { jobCases } from './jobCases.ts';
import { layCases } from './layCases.ts';
import { listCases } from './listCases.ts';
import { modelCases } from './modelCases.ts';
import { peopleCases } from './peopleCases.ts';
import { wholeCases } from './wholeCases.ts';

const parts: Readonly<Record<string, readonly Case[]>> = {
  'jobs and their revisions': jobCases,
  'jobs from elsewhere': layCases,
  'the list of jobs': listCases,
  'people and links': peopleCases,
  'work, books, readings and the log': aroundCases,
  'the records as a whole': wholeCases,
  'what is written in bad faith': hostileCases,
  'any row of changes': modelCases,
};

/**
 * The promises of the contract, which every engine of records keeps.
 *
 * @param name the engine, as tests are to name it
 * @param open opens its records in a folder
 */
export function describeStoreContract(name: string, open: OpenStore): void {
  describe(name, () => {
    for (const [part, cases] of Object.entries(parts)) {
      describe(part, () => {
        for (const [says, shows] of cases) it(says, () => onBench(open, shows));
      });
    }
  });
}
