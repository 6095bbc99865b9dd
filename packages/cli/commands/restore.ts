import { resolve } from 'node:path';
import type { Command } from 'commander';
import { type CommonOptions, outputFor, writeJson } from '../output.ts';
import { countsText } from '../print/backups.ts';
import { wrap } from '../print/layout.ts';
import { momentText } from '../print/moments.ts';
import { type DataOptions, dataFolder, withDataOption } from '../records/dataFolder.ts';
import { dataWords } from '../records/records.ts';
import { withCommonOptions } from './common.ts';

const run = async (from: string | undefined, flags: CommonOptions & DataOptions): Promise<void> => {
  const output = outputFor(flags);
  const { folder } = dataFolder(flags);
  const { restoreBackup } = await import('@fettle/store/backup/backup.ts');
  const { backup, setAside, missing } = await restoreBackup({
    from: from === undefined ? folder : resolve(from),
    to: folder,
  });
  if (output.json) {
    const { madeAt, counts } = backup.manifest;
    writeJson(output, { from: backup.folder, madeAt, to: folder, counts, setAside, missing });
    return;
  }
  output.write(
    wrap(
      `Restored ${countsText(backup)}, as they were at ${momentText(backup.manifest.madeAt)}, to ${folder}.`,
    ),
  );
  if (setAside !== undefined)
    output.write(
      wrap(`What was there before is kept as ${setAside}; delete it when you do not miss anything.`),
    );
  if (missing.length > 0)
    output.write(
      wrap(
        `${missing.length} photographs are neither in the backup nor there: fettle checkup --thorough${dataWords(flags)}`,
      ),
    );
};

export const addRestore = (program: Command): void => {
  withDataOption(withCommonOptions(program.command('restore')))
    .summary('go back to a backup; what is there now is kept aside')
    .description(
      'Put a backup in the place of the records: the one named, or the newest of a folder of backups, or, without a name, the newest in the data folder. The database that is there now is kept under another name; photographs stay. Nothing may have the records open meanwhile.',
    )
    .argument('[from]', 'folder of a backup, or folder of backups')
    .addHelpText('after', '\nExamples:\n  fettle restore\n  fettle restore backups/2026-11-25T195636Z')
    .action(run);
};
