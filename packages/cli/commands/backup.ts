import { resolve } from 'node:path';
import type { Backup } from '@fettle/store/backup/backup.ts';
import type { Command } from 'commander';
import { type CommonOptions, type Output, outputFor, writeJson } from '../output.ts';
import { countsText, printBackups } from '../print/backups.ts';
import { wrap } from '../print/layout.ts';
import { type DataOptions, dataFolder, withDataOption } from '../records/dataFolder.ts';
import { asWord, dataWords, withRecords } from '../records/records.ts';
import { withCommonOptions } from './common.ts';

interface BackupFlags extends CommonOptions, DataOptions {
  readonly out?: string;
  readonly list?: boolean;
}

const plain = ({ name, folder, manifest }: Backup) => ({
  name,
  folder,
  madeAt: manifest.madeAt,
  automatic: manifest.automatic,
  counts: manifest.counts,
  missing: manifest.missing,
});

const list = async (flags: BackupFlags, output: Output): Promise<void> => {
  const { backups } = await import('@fettle/store/backup/backup.ts');
  const place = flags.out === undefined ? dataFolder(flags).folder : resolve(flags.out);
  const found = await backups(place);
  if (output.json) writeJson(output, { backups: found.map(plain) });
  else if (found.length === 0)
    output.write(wrap(`There are no backups in ${place}. fettle backup${dataWords(flags)} makes one.`));
  else {
    output.write(printBackups(found, new Date()));
    output.write(wrap(`They are in ${resolve(found[0]!.folder, '..')}.`));
  }
};

const make = async (flags: BackupFlags, output: Output): Promise<void> => {
  const backup = await withRecords(flags, { begin: false }, async ({ store, folder }) => {
    const { makeBackup } = await import('@fettle/store/backup/backup.ts');
    return makeBackup({ store, folder, ...(flags.out === undefined ? {} : { to: resolve(flags.out) }) });
  });
  if (output.json) {
    writeJson(output, plain(backup));
    return;
  }
  output.write(
    wrap(`Backed up ${countsText(backup)} to ${backup.folder}, and restored it on trial: it is whole.`),
  );
  const { missing } = backup.manifest;
  if (missing.length > 0)
    output.write(
      wrap(
        `${missing.length} photographs were missing or damaged before and are not in it: fettle checkup --thorough${dataWords(flags)}`,
      ),
    );
  output.write(wrap(`To go back to it: fettle restore ${asWord(backup.folder)}${dataWords(flags)}`));
  if (flags.out === undefined)
    output.write(wrap('It is on the same disk as the records; --out puts one on another disk.'));
};

const run = async (flags: BackupFlags): Promise<void> => {
  const output = outputFor(flags);
  await (flags.list ? list(flags, output) : make(flags, output));
};

export const addBackup = (program: Command): void => {
  withDataOption(withCommonOptions(program.command('backup')))
    .summary('a whole copy of the records, tried before it counts')
    .description(
      'Copy the records as they are at one moment, while others work on, and restore the copy on trial. Without --out it goes to backups in the data folder; copy that folder to another machine, or name another disk.',
    )
    .option('--out <folder>', 'folder of backups, on another disk for example')
    .option('--list', 'list the backups that are there')
    .addHelpText('after', '\nExamples:\n  fettle backup\n  fettle backup --list')
    .action(run);
};
