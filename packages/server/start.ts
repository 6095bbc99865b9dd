import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { openApart } from '@fettle/store/apart/openApart.ts';
import type { OpenOptions, Store } from '@fettle/store/contract/store.ts';
import { type Servers, serversOf } from '@fettle/store/sqlite/servers.ts';
import { machineUser } from '@fettle/workflows/machineUser.ts';
import { buildApp } from './app.ts';
import { type Backups, startBackups } from './backups.ts';
import { type Computation, startComputation } from './computation/computation.ts';
import { type Certificate, ownCertificate } from './listen/certificate.ts';
import { type Audience, type Fetch, type Listening, listenOn } from './listen/listen.ts';
import { behindProxy, machineNames, type Names, ownOnly, shared, sharedAddresses } from './listen/names.ts';
import { fingerprintNote, renewDaily } from './listen/renewal.ts';
import { noWorkbench } from './pages/noWorkbench.ts';
import type { Services } from './services.ts';
import { programVersion } from './version.ts';
import { startWorks, type Works } from './work/works.ts';

/** How a server is to be started. */
export interface StartOptions {
  /** The data folder. */
  readonly folder: string;
  /** 0 for any that is free. */
  readonly port: number;
  /** Open to the network, with accounts and encryption. */
  readonly share?: boolean;
  /** For a shared server, PEM; one of its own where left out. */
  readonly certificate?: Certificate;
  /** Origin that a proxy on this machine serves this server under, as `https://bench.example`. */
  readonly origin?: string;
  readonly driver?: OpenOptions['driver'];
}

/** A server that answers. */
export interface Running {
  readonly address: string;
  /** All addresses that it goes by. */
  readonly addresses: readonly string[];
  /** What who starts it should know, a sentence or two each. */
  readonly notes: readonly string[];
  /** Lets what is being answered be answered, writes down what runs, closes the records. */
  stop(): Promise<void>;
}

/** Tells of errors that no request waits for. */
const report = (says: string, error: unknown): void => {
  const what = error instanceof Error ? (error.stack ?? error.message) : String(error);
  process.stderr.write(`${says}: ${what}\n`);
};

const makeOwn = (folder: string): Promise<Certificate> => {
  const names = [...machineNames(), ...sharedAddresses(), '127.0.0.1', 'localhost'];
  return ownCertificate({ folder: join(folder, 'tls'), names, now: new Date() });
};

/** @throws CannotStart where the origin is none, or is not encrypted: a session's cookie goes over nothing else */
const checkOrigin = (origin: string): void => {
  if (URL.canParse(origin) && new URL(origin).origin === origin && origin.startsWith('https://')) return;
  throw new CannotStart(
    `The origin must be the address that the proxy serves, without a path, as https://bench.example; it says ${origin.slice(0, 80)}.`,
  );
};

const audienceFor = async ({ folder, share, certificate, origin }: StartOptions): Promise<Audience> => {
  if (origin !== undefined) {
    checkOrigin(origin);
    return { kind: 'proxied', encrypted: true };
  }
  if (!share) return { kind: 'own' };
  const used = certificate ?? (await makeOwn(folder));
  return { kind: 'shared', certificate: used, hosts: (port) => shared(port, used.cert).hosts };
};

const namesFor = ({ origin }: StartOptions, audience: Audience, port: number): Names => {
  if (audience.kind === 'shared') return shared(port, audience.certificate.cert);
  return audience.kind === 'proxied' && origin !== undefined ? behindProxy(origin) : ownOnly(port);
};

/** The built workbench, beside the bundle or in the repository. */
const workbenchFolder = (): string | undefined =>
  ['./workbench', '../web/dist']
    .map((place) => fileURLToPath(new URL(place, import.meta.url)))
    .find((folder) => existsSync(join(folder, 'index.html')));

interface Parts {
  readonly store: Store;
  readonly servers: Servers;
  readonly computation: Computation;
  readonly works: Works;
  readonly backups: Backups;
}

/** Found by the load run: less makes reads wait for the disk, more makes changes wait for one another. */
const betweenCommitsMs = 25;

const startParts = async ({ folder, driver }: StartOptions): Promise<Parts> => {
  const store = await openApart({
    folder,
    mustWrite: true,
    betweenCommitsMs,
    ...(driver === undefined ? {} : { driver }),
  });
  const servers = await serversOf(folder, driver);
  const computation = startComputation();
  const works = startWorks({ store, computation, report });
  const backups = startBackups({ store, folder, clock: () => new Date(), report });
  return { store, servers, computation, works, backups };
};

const stopParts = async ({ store, servers, computation, works, backups }: Parts): Promise<void> => {
  await backups.stop();
  await works.close();
  servers.leave();
  await computation.close();
  await store.close();
};

/** A port that others have is the usual reason, and has a sentence of its own. */
const cannotListen = (error: unknown, port: number): Error => {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  if (code === 'EADDRINUSE')
    return new CannotStart(
      `Port ${port} is taken by another program; choose another with --port, or 0 for any.`,
    );
  if (code === 'EACCES')
    return new CannotStart(`Port ${port} may not be used by this user; choose one above 1023 with --port.`);
  return error instanceof Error ? error : new Error(String(error));
};

/** The server cannot start, for a reason that the person who starts it can mend. */
export class CannotStart extends Error {}

const servicesFor = (options: StartOptions, parts: Parts, names: Names): Services => {
  const workbench = workbenchFolder();
  return {
    ...parts,
    clock: () => new Date(),
    config: {
      share: options.share === true || options.origin !== undefined,
      hosts: names.hosts,
      origins: names.origins,
      user: machineUser(),
      version: programVersion(),
      ...(workbench === undefined ? {} : { workbench }),
    },
  };
};

/** Listens at once, and answers as soon as the app is there, which must know its port first. */
const listenAndServe = async (
  options: StartOptions,
  parts: Parts,
): Promise<{ readonly listening: Listening; readonly names: Names; readonly audience: Audience }> => {
  const audience = await audienceFor(options);
  let serve: (fetch: Fetch) => void = () => undefined;
  const ready = new Promise<Fetch>((resolve) => {
    serve = resolve;
  });
  const fetch: Fetch = async (request, env) => (await ready)(request, env);
  const listening = await listenOn({ fetch, port: options.port, audience }).catch((error: unknown) => {
    throw cannotListen(error, options.port);
  });
  const names = namesFor(options, audience, listening.port);
  const app = buildApp(servicesFor(options, parts, names));
  serve((request, env) => app.fetch(request, env));
  return { listening, names, audience };
};

const noAccount =
  'Nobody has an account yet, so nobody can sign in. Make one on this machine: fettle accounts add NAME --role technician';

const notesFor = async (options: StartOptions, { store }: Parts, audience: Audience): Promise<string[]> => {
  const ofWorkbench = workbenchFolder() === undefined ? [noWorkbench] : [];
  if (audience.kind === 'own') return ofWorkbench;
  const accounts = await store.accounts.list();
  const isOpen = accounts.some(({ closedAt }) => closedAt === undefined);
  const isOwn = audience.kind === 'shared' && options.certificate === undefined;
  return [
    ...ofWorkbench,
    ...(isOwn ? [fingerprintNote(audience.certificate)] : []),
    ...(isOpen ? [] : [noAccount]),
  ];
};

/** Keeps the server's own certificate from ending; gives what stops that. */
const keepRenewed = (options: StartOptions, listening: Listening): (() => void) =>
  options.share && options.certificate === undefined && options.origin === undefined
    ? renewDaily({ listening, make: () => makeOwn(options.folder), report })
    : () => undefined;

/**
 * Opens the records, takes up again what was running unless another server works on them, and answers.
 *
 * @throws CannotStart where the port cannot be had; StoreFailure where the records cannot be used or only be read
 */
export const startServer = async (options: StartOptions): Promise<Running> => {
  const parts = await startParts(options);
  let listening: Listening | undefined;
  try {
    await parts.works.recover(parts.servers);
    const begun = await listenAndServe(options, parts);
    const { names, audience } = begun;
    listening = begun.listening;
    const stopRenewing = keepRenewed(options, begun.listening);
    const addresses = [...names.origins];
    let stopped: Promise<void> | undefined;
    const stop = async (): Promise<void> => {
      stopRenewing();
      const ended = begun.listening.stop();
      // Streams of events would keep their connections open.
      await parts.works.close();
      await ended;
      await stopParts(parts);
    };
    return {
      address: addresses[0] ?? `http://127.0.0.1:${begun.listening.port}`,
      addresses,
      notes: await notesFor(options, parts, audience),
      stop: () => {
        stopped ??= stop();
        return stopped;
      },
    };
  } catch (error) {
    await listening?.stop();
    await stopParts(parts);
    throw error;
  }
};
