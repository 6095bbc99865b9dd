import { createServer } from 'node:net';
import { arch, platform } from 'node:process';
import packageFile from '../package.json' with { type: 'json' };
import { usualPort } from '../records/usualPort.ts';
import { type CheckupLine, fault, look, ok } from './line.ts';

/** The Nodes that the package promises to run on, `^20.19 || ^22.12 || >=24`. */
const isPromised = (version: string): boolean => {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  return (major === 20 && minor >= 19) || (major === 22 && minor >= 12) || major >= 24;
};

/** The program and the Node under it. */
export const programLine = (): CheckupLine => {
  const { node } = process.versions;
  const says = `Fettle ${packageFile.version} on Node ${node}, ${platform} ${arch}`;
  return isPromised(node)
    ? ok('Program', says)
    : look('Program', says, `Node ${packageFile.engines.node} is what it is tried on; install one of those.`);
};

/** The driver of the database, tried without any file. */
export const driverLine = async (): Promise<CheckupLine> => {
  try {
    const { openFile } = await import('@fettle/store/sqlite/driver.ts');
    const file = openFile(':memory:');
    const says = `${file.driver}, SQLite ${file.version}`;
    file.close();
    return ok('Driver', says);
  } catch (error) {
    const why = error instanceof Error ? error.message.split('\n')[0] : String(error);
    return fault(
      'Driver',
      `the database driver does not load: ${why}`,
      'Install anew with its optional packages (npm ci), or use Node 24, which has a driver of its own.',
    );
  }
};

/** The library that reads and writes pictures. */
export const picturesLine = async (): Promise<CheckupLine> => {
  try {
    await import('@fettle/store/photographs/reencode.ts');
    return ok('Pictures', 'photographs can be taken in');
  } catch (error) {
    const why = error instanceof Error ? error.message.split('\n')[0] : String(error);
    return fault('Pictures', `the library for pictures does not load: ${why}`, 'Install anew: npm ci.');
  }
};

/** Whether the usual port is free. */
export const portLine = (): Promise<CheckupLine> =>
  new Promise((resolve) => {
    const server = createServer();
    server.once('error', () =>
      resolve(
        look(
          'Port',
          `${usualPort} is taken: by fettle serve, or by another program`,
          'fettle serve --port 0 takes any that is free.',
        ),
      ),
    );
    server.listen({ port: usualPort, host: '127.0.0.1' }, () =>
      server.close(() => resolve(ok('Port', `${usualPort} is free for fettle serve`))),
    );
  });
