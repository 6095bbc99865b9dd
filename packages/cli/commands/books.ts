import type { BookName } from '@fettle/store/contract/books.ts';
import { type Command, Option } from 'commander';
import { badInput } from '../exits.ts';
import { type CommonOptions, outputFor, writeJson } from '../output.ts';
import { changedFields } from '../print/changes.ts';
import { wrap } from '../print/layout.ts';
import {
  type BookDone,
  bookCalled,
  bookFile,
  readBookFile,
  replaceBook,
  settledWithoutRecords,
  unwrittenBook,
} from '../records/books.ts';
import { type DataOptions, withDataOption } from '../records/dataFolder.ts';
import { asWord, dataWords, hasRecords, withRecords } from '../records/records.ts';
import { writeNewFile } from '../writeFile.ts';
import { withCommonOptions } from './common.ts';

interface BookFlags extends CommonOptions, DataOptions {
  readonly from?: string;
  readonly out?: string;
  readonly revise?: boolean;
}

const demandWhole = (name: BookName, { from, revise }: BookFlags): void => {
  if (revise && from === undefined)
    throw badInput({
      code: 'command-line-books',
      path: '',
      says: '--revise goes with --from.',
      allowed: `${name} --from FILE --revise`,
    });
};

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const doneText = ({ name, revision, changes }: BookDone, file: string): string => {
  const { the, stand } = bookCalled[name];
  if (changes.length > 0)
    return `${capital(the)}: now at revision ${revision}, changed in ${changedFields(changes, 6)}.`;
  const what = file === '-' ? 'standard input' : file;
  return `${capital(the)}: all that ${what} says is there already, ${stand} at revision ${revision}; nothing was written.`;
};

const replace = async (name: BookName, from: string, flags: BookFlags): Promise<void> => {
  const output = outputFor(flags);
  const read = await readBookFile(name, from);
  const replacing = { read, revise: flags.revise ?? false };
  const settled = hasRecords(flags) ? undefined : settledWithoutRecords(name, replacing);
  const done =
    settled ??
    (await withRecords(flags, { begin: true }, (records) => replaceBook(records, name, replacing)));
  if (output.json) writeJson(output, done);
  else output.write(wrap(doneText(done, from)));
};

const show = async (name: BookName, flags: BookFlags): Promise<void> => {
  const output = outputFor(flags);
  const book = hasRecords(flags)
    ? await withRecords(flags, { begin: true }, ({ store }) => store.books.find(name))
    : unwrittenBook(name);
  if (flags.out !== undefined) {
    writeNewFile(flags.out, await bookFile(book));
    const file = asWord(flags.out);
    if (output.json) writeJson(output, { name, revision: book.revision, file: flags.out });
    else
      output.write(
        wrap(
          `Wrote revision ${book.revision} of ${bookCalled[name].the} to ${flags.out}. Edit it, then: fettle ${name} --from ${file}${dataWords(flags)}`,
        ),
      );
  } else if (output.json) writeJson(output, book);
  else output.write(await bookFile(book));
};

const add = (
  program: Command,
  name: BookName,
  says: { readonly summary: string; readonly holds: string },
): void => {
  withDataOption(withCommonOptions(program.command(name)))
    .summary(says.summary)
    .description(
      `Print ${says.holds} as YAML, or replace it by a file. The first line that is printed says from which revision a change began, so that nobody writes over another one's work; a file without it is refused where there is something to lose, unless --revise puts it in its place.`,
    )
    .option('--from <file>', 'put what this file says in its place (YAML or JSON, - for standard input)')
    .addOption(new Option('--out <file>', 'write it to a new file, for editing').conflicts('from'))
    .option('--revise', 'put the file in its place whatever revision it began from')
    .addHelpText(
      'after',
      `\nExamples:\n  fettle ${name}\n  fettle ${name} --out my-${name}.yaml\n  fettle ${name} --from ${name}.yaml`,
    )
    .action(async (flags: BookFlags) => {
      demandWhole(name, flags);
      await (flags.from === undefined ? show(name, flags) : replace(name, flags.from, flags));
    });
};

/** The technician's own books. */
export const addBooks = (program: Command): void => {
  add(program, 'shelf', {
    summary: 'your shelf: media, hoses and parts in hand, with prices',
    holds: 'your shelf (media, hoses and parts in hand, with prices)',
  });
  add(program, 'settings', {
    summary: 'your settings: currency, tariffs, prices, units',
    holds: 'your settings (currency, tariffs, prices, units)',
  });
};
