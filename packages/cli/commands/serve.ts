import { createPrivateKey, X509Certificate } from 'node:crypto';
import type { Running, StartOptions } from '@fettle/server/start.ts';
import { type Command, InvalidArgumentError, Option } from 'commander';
import { badInput } from '../exits.ts';
import { shownName } from '../fileReasons.ts';
import { readInput } from '../input.ts';
import { type CommonOptions, type Output, outputFor } from '../output.ts';
import { wrap } from '../print/layout.ts';
import { type DataOptions, dataFolder, withDataOption } from '../records/dataFolder.ts';
import { usualPort } from '../records/usualPort.ts';
import { numberBetween, withCommonOptions } from './common.ts';

interface ServeFlags extends CommonOptions, DataOptions {
  readonly port: number;
  readonly share?: boolean;
  readonly cert?: string;
  readonly key?: string;
  readonly origin?: string;
}

const originOf = (text: string): string => {
  const url = URL.canParse(text) ? new URL(text) : undefined;
  if (url && url.protocol === 'https:' && [url.origin, `${url.origin}/`].includes(text.toLowerCase()))
    return url.origin;
  throw new InvalidArgumentError(
    'The address that the proxy serves is wanted, https and without a path, such as https://bench.example.',
  );
};

const badCertificate = (says: string) =>
  badInput({ code: 'certificate', path: '', says, allowed: 'a certificate and its own key, both as PEM' });

/** Certificate and key that were named, which must belong together. */
const certificateOf = ({ cert, key }: ServeFlags): StartOptions['certificate'] => {
  if (cert === undefined && key === undefined) return undefined;
  if (cert === undefined || key === undefined) throw badCertificate('--cert and --key go together.');
  const read = (file: string): string =>
    Buffer.from(readInput(file, { mostBytes: 1e6, kind: 'certificate' })).toString('utf8');
  const pair = { cert: read(cert), key: read(key) };
  try {
    if (new X509Certificate(pair.cert).checkPrivateKey(createPrivateKey(pair.key))) return pair;
  } catch {
    throw badCertificate(
      `${shownName(cert)} and ${shownName(key)} cannot be read as a certificate and its key.`,
    );
  }
  throw badCertificate(`${shownName(key)} is not the key of the certificate ${shownName(cert)}.`);
};

const started = async (options: StartOptions): Promise<Running> => {
  const { CannotStart, startServer } = await import('@fettle/server/start.ts');
  try {
    return await startServer(options);
  } catch (error) {
    if (error instanceof CannotStart) throw badInput({ code: 'cannot-start', path: '', says: error.message });
    throw error;
  }
};

const optionsOf = (flags: ServeFlags): StartOptions => {
  const certificate = certificateOf(flags);
  return {
    folder: dataFolder(flags).folder,
    port: flags.port,
    ...(flags.share ? { share: true } : {}),
    ...(certificate === undefined ? {} : { certificate }),
    ...(flags.origin === undefined ? {} : { origin: flags.origin }),
  };
};

const tellReady = (
  { address, addresses, notes }: Running,
  { folder, share }: StartOptions,
  output: Output,
): void => {
  if (output.json) {
    output.write(JSON.stringify({ address, addresses, folder, notes }));
    return;
  }
  output.write(`Fettle is ready: ${address}`);
  const others = addresses.filter(
    (each) => each.startsWith('https:') && !/\/\/(?:127\.|localhost|\[::1\])/.test(each),
  );
  if (share && others.length > 0) output.write(wrap(`From other machines: ${others.join(' ')}`, 2));
  for (const note of notes) output.write(wrap(note));
  output.write(wrap(`The records are in ${folder}. Ctrl-C stops it.`));
};

/** Ends when the system or the person asks for it. */
const askedToStop = (): Promise<void> =>
  new Promise((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, () => resolve());
  });

/**
 * Serves records until the system or the person asks for its end.
 *
 * @param tell called once it is ready
 * @throws BadInput where it cannot start
 */
export const serveUntilStopped = async (
  options: StartOptions,
  tell: (running: Running) => void,
): Promise<void> => {
  const stop = askedToStop();
  const running = await started(options);
  tell(running);
  await stop;
  await running.stop();
};

const run = async (flags: ServeFlags): Promise<void> => {
  const options = optionsOf(flags);
  await serveUntilStopped(options, (running) => tellReady(running, options, outputFor(flags)));
};

export const addServe = (program: Command): void => {
  withDataOption(withCommonOptions(program.command('serve')))
    .summary('the workbench and the API over HTTP')
    .description(
      'Serve the records to browsers and programs: on this machine alone, or, with --share, to the network, encrypted and to those who sign in.',
    )
    .addOption(
      new Option('--port <number>', 'port to listen on; 0 for any that is free')
        .argParser(numberBetween(0, 65_535, true))
        .default(usualPort),
    )
    .addOption(
      new Option('--share', 'open it to the network, encrypted, to those who sign in').conflicts('origin'),
    )
    .option('--cert <file>', 'certificate for --share, PEM; one of its own where left out')
    .option('--key <file>', 'private key of the certificate, PEM')
    .addOption(
      new Option(
        '--origin <url>',
        'where a proxy on this machine serves it, as https://bench.example',
      ).argParser(originOf),
    )
    .addHelpText('after', '\nExamples:\n  fettle serve\n  fettle serve --port 8080\n  fettle serve --share')
    .action(run);
};
