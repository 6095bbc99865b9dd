import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { type Breach, reportBreaches } from './breach.ts';
import { judge, readAllowed } from './constants/allowed.ts';
import { lawConstants, type NumberedConstant } from './constants/numbered.ts';
import { referenceRun } from './constants/referenceRun.ts';
import { unitRun } from './constants/unitRun.ts';
import { projectRoot } from './sources.ts';

/*
 * Changes each number of the laws by 1 %, one at a time, and reports those that no reference case and no test
 * of laws and reckonings notices. Paths given as arguments limit the run: `npm run constants -- packages/engine/laws/water`.
 */

const chosenPaths = process.argv.slice(2);
const isChosen = ({ path }: { readonly path: string }) =>
  chosenPaths.length === 0 || chosenPaths.some((chosen) => path.startsWith(chosen));

async function unnoticedConstants(all: readonly NumberedConstant[]): Promise<NumberedConstant[]> {
  const runReferences = await referenceRun(all);
  const unchanged = runReferences(0);
  if (unchanged.misses > 0)
    throw new Error(`${unchanged.misses} reference cases miss with no constant changed`);
  const chosen = all.filter(isChosen);
  const pastReferences = chosen.filter(({ number }) => runReferences(number).misses === 0);
  console.log(
    `${unchanged.cases} reference cases notice ${chosen.length - pastReferences.length} of ${chosen.length} constants`,
  );
  const tests = await unitRun(all);
  const unnoticed: NumberedConstant[] = [];
  for (const constant of pastReferences) if (!(await tests.notices(constant))) unnoticed.push(constant);
  await tests.close();
  console.log(`tests of laws and reckonings notice ${pastReferences.length - unnoticed.length} more`);
  return unnoticed;
}

const all = lawConstants();
const allowed = readAllowed(readFileSync(resolve(projectRoot, 'scripts/constants-allowed.json'), 'utf8'));
const { unexplained, stale } = judge(await unnoticedConstants(all), allowed.filter(isChosen));
const breaches: Breach[] = [
  ...unexplained.map(({ path, line, literal, lineText }) => ({
    path,
    line,
    rule: 'unnoticed-constant',
    message: `${literal} may change by 1 % unnoticed in ${lineText}`,
  })),
  ...stale.map(({ path, line, literal }) => ({
    path,
    line: 1,
    rule: 'stale-reason',
    message: `a change of ${literal} in ${line} is noticed, or the line is gone`,
  })),
];
process.exitCode = reportBreaches(
  'constants',
  new Set(all.filter(isChosen).map(({ path }) => path)).size,
  breaches,
);
