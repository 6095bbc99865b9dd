import type { Command } from 'commander';
import { badInput } from '../exits.ts';
import { shownName } from '../fileReasons.ts';
import { type CommonOptions, outputFor, writeJson } from '../output.ts';
import { countText } from '../print/counts.ts';
import { wrap } from '../print/layout.ts';
import { type DataOptions, withDataOption } from '../records/dataFolder.ts';
import { jobNumbered, type Records, withRecords } from '../records/records.ts';
import { jobNumber, withCommonOptions } from './common.ts';

interface ExportFlags extends CommonOptions, DataOptions {
  readonly out: string;
}

const exported = async (records: Records, numbers: readonly number[], to: string) => {
  for (const number of numbers) await jobNumbered(records, number);
  const { exportAll } = await import('@fettle/store/plainFiles/exportAll.ts');
  const done = await exportAll({ store: records.store, to, ...(numbers.length === 0 ? {} : { numbers }) });
  if (done.ok) return { counts: done.counts, missing: done.missing };
  throw badInput({ code: 'folder-not-empty', path: '', says: done.says, allowed: done.allowed });
};

const run = async (numbers: readonly number[], flags: ExportFlags): Promise<void> => {
  const output = outputFor(flags);
  const once = [...new Set(numbers)];
  const { counts, missing } = await withRecords(flags, { begin: false }, (records) =>
    exported(records, once, flags.out),
  );
  if (output.json) {
    writeJson(output, { folder: flags.out, counts, missing });
    return;
  }
  const { jobs, revisions, photographs, readings } = counts;
  output.write(
    wrap(
      `Wrote ${countText(jobs, 'job')} with ${countText(revisions, 'revision')}, ${countText(photographs, 'photograph')} and ${countText(readings, 'reading')} to ${shownName(flags.out)}, as plain files; its README.txt says which is what.`,
    ),
  );
  if (missing.length > 0)
    output.write(
      wrap(
        `${missing.length} photographs are not in it: their files are missing or damaged. fettle checkup --thorough names them.`,
      ),
    );
};

const collected = (text: string, before: readonly number[] | undefined): readonly number[] => [
  ...(before ?? []),
  jobNumber(text),
];

export const addExport = (program: Command): void => {
  withDataOption(withCommonOptions(program.command('export')))
    .summary('everything as plain files: YAML, CSV, pictures')
    .description(
      'Write the records as plain files that every editor, spreadsheet and picture viewer opens: all of them, or the jobs named. fettle import takes them in again, here or elsewhere, with every revision.',
    )
    .argument('[numbers...]', 'numbers of jobs; all jobs, shelf, settings and log where left out', collected)
    .requiredOption('--out <folder>', 'folder to write; it must not be there yet, or be empty')
    .addHelpText(
      'after',
      '\nExamples:\n  fettle export --out everything\n  fettle export 12 13 --out two-jobs',
    )
    .action((numbers: readonly number[] | undefined, flags: ExportFlags) => run(numbers ?? [], flags));
};
