import type { Command } from 'commander';
import { backupLine, databaseLines } from '../checkup/database.ts';
import { diskLine, folderLine } from '../checkup/folder.ts';
import { driverLine, picturesLine, portLine, programLine } from '../checkup/installation.ts';
import type { CheckupLine } from '../checkup/line.ts';
import { EXIT } from '../exits.ts';
import { type CommonOptions, outputFor, writeJson } from '../output.ts';
import { labelled, wrap } from '../print/layout.ts';
import { type DataOptions, dataFolder, withDataOption } from '../records/dataFolder.ts';
import { withCommonOptions } from './common.ts';

interface CheckupFlags extends CommonOptions, DataOptions {
  readonly thorough?: boolean;
}

const SUBJECT = 13;
const STATE = 7;

const lineText = ({ subject, state, says, cure }: CheckupLine): string =>
  labelled(
    `${subject.padEnd(SUBJECT)}${state}`,
    `${says}.${cure === undefined ? '' : ` ${cure}`}`.replace(/\.\.$/, '.').replaceAll('.. ', '. '),
    SUBJECT + STATE,
  );

const verdict = (lines: readonly CheckupLine[]): string => {
  const faults = lines.filter(({ state }) => state === 'fault').length;
  const looks = lines.filter(({ state }) => state === 'look').length;
  if (faults > 0) return `${faults === 1 ? '1 fault' : `${faults} faults`}: what to do stands beside it.`;
  return looks > 0 ? 'No fault; what is marked look can wait.' : 'All is in order.';
};

const run = async (flags: CheckupFlags): Promise<void> => {
  const output = outputFor(flags);
  const data = dataFolder(flags);
  const driver = await driverLine();
  const lines = [
    programLine(),
    driver,
    await picturesLine(),
    await folderLine(data),
    ...(driver.state === 'ok' ? await databaseLines(flags, flags.thorough ?? false) : []),
    await backupLine(flags, new Date()),
    await diskLine(data),
    await portLine(),
  ];
  if (output.json) writeJson(output, { folder: data.folder, lines });
  else {
    for (const line of lines) output.write(lineText(line));
    output.write(wrap(verdict(lines)));
  }
  if (lines.some(({ state }) => state === 'fault')) process.exitCode = EXIT.findings;
};

export const addCheckup = (program: Command): void => {
  withDataOption(withCommonOptions(program.command('checkup')))
    .summary('whether installation, records, backups and disk are in order')
    .description(
      'Look over the installation, the data folder, the database, backups, disk and port. Each line says ok, look (can wait) or fault, with what to do. Ends with 1 where there is a fault.',
    )
    .option('--thorough', 'read every page, document and picture; takes longer')
    .addHelpText('after', '\nExamples:\n  fettle checkup\n  fettle checkup --thorough')
    .action(run);
};
