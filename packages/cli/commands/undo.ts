import { changesBetween } from '@fettle/job/changes/changes.ts';
import { type Command, Option } from 'commander';
import { badInput } from '../exits.ts';
import { type CommonOptions, outputFor, writeJson } from '../output.ts';
import { changedFields } from '../print/changes.ts';
import { wrap } from '../print/layout.ts';
import { type DataOptions, withDataOption } from '../records/dataFolder.ts';
import { dataWords, jobNumbered, type Records, tooLate, withRecords } from '../records/records.ts';
import { jobNumber, numberBetween, withCommonOptions } from './common.ts';

interface UndoFlags extends CommonOptions, DataOptions {
  readonly to?: number;
}

const noSuchRevision = (number: number, newest: number, to: number | undefined) =>
  badInput({
    code: 'no-such-revision',
    path: '',
    says:
      to === undefined
        ? `Job ${number} has one revision alone, so there is nothing to undo.`
        : `Job ${number} has no revision ${to} to go back to; it stands at ${newest}.`,
    allowed: newest === 1 ? 'a job that was changed' : `a revision from 1 to ${newest - 1}`,
  });

const undone = async (records: Records, number: number, asked: number | undefined) => {
  const { store, by } = records;
  const current = await jobNumbered(records, number);
  const to = asked ?? current.revision - 1;
  const earlier = to < current.revision ? await store.jobs.revision(number, to) : undefined;
  if (earlier === undefined) throw noSuchRevision(number, current.revision, asked);
  const log = { what: 'job-went-back', about: `to revision ${to}` };
  const done = await store.jobs.goBack({ number, base: current.revision, by, to, log });
  if (!done.ok) throw tooLate(number);
  const { revision } = done;
  return { number, revision, to, changes: changesBetween(current.document, earlier.document) };
};

const run = async (number: number, flags: UndoFlags): Promise<void> => {
  const output = outputFor(flags);
  const done = await withRecords(flags, { begin: false }, (records) => undone(records, number, flags.to));
  if (output.json) {
    writeJson(output, done);
    return;
  }
  const { revision, to, changes } = done;
  const what = changes.length === 0 ? 'no field differs' : `changed back: ${changedFields(changes, 6)}`;
  output.write(
    wrap(
      `Job ${number} is as it was at revision ${to}, as its new revision ${revision}; ${what}. To undo this: fettle undo ${number}${dataWords(flags)}`,
    ),
  );
};

export const addUndo = (program: Command): void => {
  withDataOption(withCommonOptions(program.command('undo')))
    .summary('take a job back to an earlier revision')
    .description(
      'Take a job back to the revision before, or to the one named, as a new revision: nothing is lost, and an undo can be undone.',
    )
    .argument('<number>', 'number of the job', jobNumber)
    .addOption(
      new Option('--to <revision>', 'the revision to go back to; the one before, where left out').argParser(
        numberBetween(1, 999_999_999, true),
      ),
    )
    .addHelpText('after', '\nExamples:\n  fettle undo 12\n  fettle undo 12 --to 1')
    .action(run);
};
