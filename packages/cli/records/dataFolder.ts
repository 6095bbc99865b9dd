import { resolve } from 'node:path';
import type { Command } from 'commander';
import envPaths from 'env-paths';
import { badInput } from '../exits.ts';

/** The option of every command that works with the records. */
export interface DataOptions {
  readonly data?: string;
}

/** Where the records are, and who said so. */
export interface DataFolder {
  readonly folder: string;
  readonly from: '--data' | 'FETTLE_DATA' | 'usual place';
}

export const withDataOption = (command: Command): Command =>
  command.option(
    '--data <folder>',
    'folder of the records; else what FETTLE_DATA says, else the usual place of this system (fettle checkup tells)',
  );

/**
 * The data folder: the option, else what FETTLE_DATA says, else where this system keeps a program's data.
 * @throws BadInput where the option is empty or holds what no path may
 */
export const dataFolder = ({ data }: DataOptions): DataFolder => {
  if (data !== undefined) {
    if (data.trim() !== '' && !data.includes('\0')) return { folder: resolve(data), from: '--data' };
    throw badInput({
      code: 'data-folder',
      path: '',
      says: '--data names no folder.',
      allowed: 'the path of a folder, or leave --data out',
    });
  }
  const said = process.env.FETTLE_DATA;
  if (said !== undefined && said.trim() !== '') return { folder: resolve(said), from: 'FETTLE_DATA' };
  return { folder: envPaths('fettle', { suffix: '' }).data, from: 'usual place' };
};
