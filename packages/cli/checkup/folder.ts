import { constants } from 'node:fs';
import { access, readlink, stat, statfs } from 'node:fs/promises';
import { dirname } from 'node:path';
import { fileErrorCode, fileReason } from '../fileReasons.ts';
import { bytesText } from '../print/counts.ts';
import type { DataFolder } from '../records/dataFolder.ts';
import { type CheckupLine, fault, look, ok } from './line.ts';

/** Nothing can be written soon below the first, and it is time to make room below the second, bytes. */
const FULL_BYTES = 50e6;
const SCARCE_BYTES = 1e9;

const said = ({ folder, from }: DataFolder): string =>
  `${folder} (${from === 'usual place' ? 'the usual place' : `by ${from}`})`;

const mayWrite = async (folder: string): Promise<boolean> =>
  access(folder, constants.R_OK | constants.W_OK | constants.X_OK).then(
    () => true,
    () => false,
  );

const isLink = async (path: string): Promise<boolean> =>
  readlink(path).then(
    () => true,
    () => false,
  );

/** The data folder and who may read and write it. */
export const folderLine = async (data: DataFolder): Promise<CheckupLine> => {
  const { folder } = data;
  try {
    const found = await stat(folder);
    if (!found.isDirectory())
      return fault('Data folder', `${folder} is no folder`, 'Name a folder with --data or FETTLE_DATA.');
    if (!(await mayWrite(folder)))
      return fault(
        'Data folder',
        `${said(data)} cannot be written by this user`,
        `Make it writable for this user: chmod -R u+rwX "${folder}"`,
      );
    if (process.platform !== 'win32' && (found.mode & 0o077) !== 0)
      return look(
        'Data folder',
        `${said(data)} is open to other users of this machine`,
        `chmod 700 "${folder}"`,
      );
    return ok('Data folder', `${said(data)}, for this user alone`);
  } catch (error) {
    const code = fileErrorCode(error);
    if (code === 'ENOENT' && (await isLink(folder)))
      return fault(
        'Data folder',
        `${said(data)} is a link that leads nowhere`,
        'Bring the disk back that it leads to, or take the link away.',
      );
    if (code === 'ENOENT') return ok('Data folder', `${said(data)} is not there yet; the first job makes it`);
    if (code === undefined) throw error;
    return fault(
      'Data folder',
      `${said(data)} cannot be reached: ${fileReason(code)}`,
      'Name another with --data.',
    );
  }
};

const spaceAt = async (folder: string): Promise<number> => {
  try {
    const { bavail, bsize } = await statfs(folder);
    return bavail * bsize;
  } catch (error) {
    const parent = dirname(folder);
    if (parent === folder || !['ENOENT', 'ENOTDIR'].includes(fileErrorCode(error) ?? '')) throw error;
    return spaceAt(parent);
  }
};

/** How much room the disk of the data folder has. */
export const diskLine = async ({ folder }: DataFolder): Promise<CheckupLine> => {
  try {
    const bytes = await spaceAt(folder);
    const says = `${bytesText(bytes)} free`;
    if (bytes < FULL_BYTES) return fault('Disk', says, 'Make room: nothing can be written on a full disk.');
    return bytes < SCARCE_BYTES ? look('Disk', says, 'Make room before the disk is full.') : ok('Disk', says);
  } catch (error) {
    const code = fileErrorCode(error);
    if (code === undefined) throw error;
    return look(
      'Disk',
      `its room cannot be told: ${fileReason(code)}`,
      'Look at it by the system’s own means.',
    );
  }
};
