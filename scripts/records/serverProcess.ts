import { type ChildProcess, spawn } from 'node:child_process';
import { resolve } from 'node:path';
import { projectRoot } from '../sources.ts';

/** A server that runs as a process of its own. */
export interface ServerProcess {
  /** Where it listens: `http://127.0.0.1:41234`. */
  readonly address: string;
  readonly process: ChildProcess;
  /** Everything that it has written so far. */
  readonly written: () => string;
  /** Resolves with its exit code once it has ended, or with the signal that ended it. */
  readonly ended: Promise<number | NodeJS.Signals>;
}

const commandLine = resolve(projectRoot, 'packages', 'cli', 'main.ts');

/**
 * Arguments for Node that run the command line: from the bundle that `FETTLE_PROGRAM` names, which starts in a
 * fraction of the time, else from its sources.
 */
export const commandLineOf = (words: readonly string[]): readonly string[] => {
  const bundle = process.env.FETTLE_PROGRAM;
  return bundle === undefined
    ? ['--import', import.meta.resolve('tsx'), commandLine, ...words]
    : [bundle, ...words];
};

/** Starts `fettle serve` on a free port over a data folder, and waits until it has said where it listens. */
export function startServerProcess(folder: string, more: readonly string[] = []): Promise<ServerProcess> {
  const words = ['serve', '--port', '0', '--data', folder, ...more];
  const started = spawn(process.execPath, commandLineOf(words), { stdio: ['ignore', 'pipe', 'pipe'] });
  let text = '';
  const ended = new Promise<number | NodeJS.Signals>((settle) => {
    started.once('exit', (code, signal) => settle(signal ?? code ?? 1));
  });
  return new Promise((settle, refuse) => {
    const hear = (piece: Buffer): void => {
      text += piece.toString();
      const address = /https?:\/\/(?:127\.0\.0\.1|localhost):\d+(?=[\s"].*\n)/s.exec(text)?.[0];
      if (address !== undefined) settle({ address, process: started, written: () => text, ended });
    };
    started.stdout.on('data', hear);
    started.stderr.on('data', hear);
    void ended.then((how) => refuse(new Error(`the server ended with ${how} before it listened:\n${text}`)));
  });
}

/** Kills a process at once, as a power cut would, and waits until it is gone. */
export async function killAtOnce(server: Pick<ServerProcess, 'process' | 'ended'>): Promise<void> {
  server.process.kill('SIGKILL');
  await server.ended;
}

/** Asks a server to stop and waits until it has. */
export async function stopServerProcess(server: ServerProcess): Promise<number | NodeJS.Signals> {
  server.process.kill('SIGTERM');
  return server.ended;
}
