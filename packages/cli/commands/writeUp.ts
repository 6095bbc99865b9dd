import { resolve } from 'node:path';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { usualDoubts } from '@fettle/workflows/assessJob.ts';
import { writeUpSource } from '@fettle/workflows/writeUpSource.ts';
import type { WriteUpSource } from '@fettle/writeup/source.ts';
import { type Command, Option } from 'commander';
import { BadInput } from '../exits.ts';
import { shownName } from '../fileReasons.ts';
import { type CommonOptions, outputFor, writeJson } from '../output.ts';
import { wrap } from '../print/layout.ts';
import { type DataOptions, withDataOption } from '../records/dataFolder.ts';
import { isJobNumber, jobArgument, namedJob } from '../records/jobSource.ts';
import { withRecords } from '../records/records.ts';
import { templateNotes } from '../records/templateNotes.ts';
import { writeMadeFile } from '../writeFile.ts';
import { withCommonOptions } from './common.ts';

interface WriteUpFlags extends CommonOptions, DataOptions {
  readonly out: string;
  readonly paper?: 'a4' | 'letter';
}

/** Own words that no document has a place for: they are kept, and told. */
const wordsNote = ({ name, like }: { readonly name: string; readonly like: readonly string[] }): string =>
  `writeUp.words.${name}: nothing that is published has a paragraph of that name${like.length === 0 ? '' : `; there is ${like.join(', ')}`}. These words stand nowhere.`;

/** What the records know beside the job's document; of a job in a file nothing is known. */
const inRecords = async (
  word: string,
  document: JobDocument,
  flags: DataOptions,
): Promise<Pick<WriteUpSource, 'workshop' | 'photographs'>> => {
  if (!isJobNumber(word)) return {};
  return withRecords(flags, { begin: false }, async ({ store }) => {
    const { besideDocument } = await import('@fettle/workflows/publishedPhotographs.ts');
    return besideDocument(store, { number: Number(word), document });
  });
};

const run = async (word: string, flags: WriteUpFlags): Promise<void> => {
  const { source, units } = await namedJob(word, flags);
  const { openJob } = await import('@fettle/workflows/openJob.ts');
  const reading = openJob(source);
  if (!reading.ok) throw new BadInput(reading.problems);
  const output = outputFor(flags, units);
  const paper = flags.paper ?? (output.system === 'us' ? 'letter' : 'a4');
  // The typesetter is loaded only where something is set.
  const { writeUpFiles } = await import('@fettle/writeup/writeUpFiles.ts');
  const { wordsLeftOver } = await import('@fettle/writeup/writeUp.ts');
  const beside = await inRecords(word, reading.document, flags);
  const made = { ...writeUpSource(reading.document, reading.model, { doubtsOf: usualDoubts }), ...beside };
  const files = writeUpFiles(made, { paper });
  for (const { path, content } of files) writeMadeFile(resolve(flags.out, ...path.split('/')), content);
  const unfilled = templateNotes(reading.document).map(({ says }) => says);
  const notes = [...unfilled, ...wordsLeftOver(made).map(wordsNote)];
  if (output.json) {
    writeJson(output, {
      folder: flags.out,
      files: files.map(({ path, content }) => ({ path, bytes: Buffer.byteLength(content) })),
      notes,
    });
    return;
  }
  output.write(wrap(`Wrote ${files.length} files to ${shownName(flags.out)}:`));
  output.write(files.map(({ path }) => `  ${path}`).join('\n'));
  for (const note of notes) output.write(wrap(note));
};

export const addWriteUp = (program: Command): void => {
  withDataOption(withCommonOptions(program.command('writeup')))
    .summary('what is published: sheet, build sheet, care plan, quote')
    .description(
      'Write a job up: the sheet as PDF, page and Markdown, and everything else that leaves the workshop. Files that an earlier run wrote are written anew.',
    )
    .argument('<job>', jobArgument)
    .requiredOption('--out <folder>', 'folder to write into')
    .addOption(
      new Option(
        '--paper <paper>',
        'paper of what comes on one paper only; letter with US units, else a4',
      ).choices(['a4', 'letter']),
    )
    .addHelpText(
      'after',
      '\nExamples:\n  fettle writeup job.yaml --out written-up\n  fettle writeup 12 --out sheets',
    )
    .action(run);
};
