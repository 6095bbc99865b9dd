import type { Command } from 'commander';
import { EXIT } from '../exits.ts';
import { type CommonOptions, type Output, outputFor, writeJson } from '../output.ts';
import { printImported } from '../print/imported.ts';
import { wrap } from '../print/layout.ts';
import { type DataOptions, withDataOption } from '../records/dataFolder.ts';
import type { ImportWishes } from '../records/decide.ts';
import { type ImportedExport, layExport, withWholeExports } from '../records/importExport.ts';
import { demandOnceEach, type ImportedFile, importJobs } from '../records/importJobs.ts';
import { readIncoming } from '../records/incoming.ts';
import { dataWords, withRecords } from '../records/records.ts';
import { withCommonOptions } from './common.ts';

interface ImportFlags extends CommonOptions, DataOptions {
  readonly revise?: boolean;
  readonly merge?: boolean;
  readonly new?: boolean;
}

interface Done {
  readonly imported: ImportedFile[];
  readonly exports: ImportedExport[];
}

const tell = (
  { imported, exports }: Done,
  { output, flags }: { output: Output; flags: ImportFlags },
): void => {
  if (output.json) {
    writeJson(output, { imported, exports });
    return;
  }
  output.write(printImported(imported, exports));
  const [only, ...others] = imported;
  if (only?.how === 'taken-in' && others.length === 0)
    output.write(wrap(`Next: fettle open ${only.number}${dataWords(flags)}`));
};

const leftAlone = ({ exports }: Done): boolean =>
  exports.some(({ jobs, books }) =>
    [...jobs, ...books].some(({ result }) => result === 'conflict' || result === 'refused'),
  );

const wishesOf = ({ revise, merge, new: renumber }: ImportFlags): ImportWishes => ({
  revise: revise ?? false,
  merge: merge ?? false,
  renumber: renumber ?? false,
});

const run = async (paths: readonly string[], flags: ImportFlags): Promise<void> => {
  const output = outputFor(flags);
  const { jobs, exports } = readIncoming(paths);
  const wishes = wishesOf(flags);
  demandOnceEach(jobs, wishes);
  const done: Done = { imported: [], exports: [] };
  try {
    await withWholeExports(exports, (whole) =>
      withRecords(flags, { begin: true }, async (records) => {
        await importJobs(records, jobs, { wishes, onDone: (file) => done.imported.push(file) });
        for (const one of whole) done.exports.push(await layExport(records, one));
      }),
    );
  } catch (error) {
    // What is on the disk already is told before what stopped the rest.
    if (!output.json && done.imported.length + done.exports.length > 0) tell(done, { output, flags });
    throw error;
  }
  tell(done, { output, flags });
  if (leftAlone(done)) process.exitCode = EXIT.badInput;
};

export const addImport = (program: Command): void => {
  withDataOption(withCommonOptions(program.command('import')))
    .summary('take job files or exported records into the records')
    .description(
      'Take jobs into the records: job files (YAML or JSON, - for standard input), or the folder or ZIP archive of an export. A job whose number is free, or that has none, is taken in; one without a number only once, unless --new is said. A file that fettle open --out wrote becomes a new revision of its job. Another file that differs from the job of its number is refused, unless --revise or --new says what is meant. Everything is read and checked before anything is written.',
    )
    .argument('<paths...>', 'job files, -, folders or archives of exports')
    .option('--revise', 'where the job is there and differs: make this its new revision')
    .option(
      '--merge',
      'where somebody changed it since: take both changes, if no field was changed on both sides',
    )
    .option('--new', 'take it in as a job with a number of its own')
    .addHelpText(
      'after',
      '\nExamples:\n  fettle import job.yaml\n  fettle import job.yaml --new\n  fettle import - < job.yaml',
    )
    .action(run);
};
