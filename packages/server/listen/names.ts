import { X509Certificate } from 'node:crypto';
import { hostname, networkInterfaces } from 'node:os';

/** What a server goes by. */
export interface Names {
  /** `host:port` in small letters. */
  readonly hosts: ReadonlySet<string>;
  /** Origins from which a browser may write. */
  readonly origins: ReadonlySet<string>;
}

const inAddress = (name: string): string => (name.includes(':') ? `[${name}]` : name);

const ownNames: readonly string[] = ['127.0.0.1', 'localhost', '[::1]'];

/** Addresses of this machine by which others reach it; those that mean something on one cable alone are left out. */
export const sharedAddresses = (): readonly string[] =>
  Object.values(networkInterfaces())
    .flatMap((all) => all ?? [])
    .filter(({ internal, address }) => !internal && !address.startsWith('fe80:'))
    .map(({ address }) => address.toLowerCase());

/** The names of this machine in the network that it is in. */
export const machineNames = (): readonly string[] => {
  const name = hostname().toLowerCase();
  if (!/^[a-z0-9.-]+$/.test(name)) return [];
  return name.includes('.') ? [name] : [name, `${name}.local`];
};

/** The names that a certificate is for, as it writes them, patterns left out. */
const namesOfCertificate = (pem: string): readonly string[] =>
  (new X509Certificate(pem).subjectAltName ?? '')
    .split(', ')
    .flatMap((part) => /^(?:DNS|IP Address):(.+)$/.exec(part)?.[1] ?? [])
    .filter((name) => /^[a-z0-9.:-]+$/i.test(name));

const both = (origins: readonly string[]): Names => ({
  hosts: new Set(origins.map((origin) => new URL(origin).host)),
  origins: new Set(origins.map((origin) => new URL(origin).origin)),
});

/** Not shared: this machine alone. */
export const ownOnly = (port: number): Names =>
  both(ownNames.slice(0, 2).map((name) => `http://${name}:${port}`));

/** Shared: plain for this machine, encrypted for everybody, by the machine's names and those of its certificate. */
export const shared = (port: number, certificate: string): Names => {
  const names = [...machineNames(), ...sharedAddresses(), ...namesOfCertificate(certificate)];
  return both([
    ...ownNames.flatMap((name) => [`http://${name}:${port}`, `https://${name}:${port}`]),
    ...names.map((name) => `https://${inAddress(name.toLowerCase())}:${port}`),
  ]);
};

/** Behind a proxy: by the name that the proxy goes by, and by no other. */
export const behindProxy = (origin: string): Names => both([origin]);
