import { createHash, createPrivateKey, X509Certificate } from 'node:crypto';
import { chmod, mkdir, readFile, rename, writeFile } from 'node:fs/promises';
import { isIP } from 'node:net';
import { join } from 'node:path';
import { generate } from 'selfsigned';
import { dayMs } from '../durations.ts';

/** A certificate with its key, PEM. */
export interface Certificate {
  readonly cert: string;
  readonly key: string;
}

/** About the longest that browsers take. */
const lastsMs = 397 * dayMs;
/** Made anew when less than this is left. */
const renewMs = 30 * dayMs;

/** SHA-256 of a certificate as browsers show it, for people to compare. */
export const fingerprintOf = ({ cert }: Certificate): string => new X509Certificate(cert).fingerprint256;

const covers = (certificate: X509Certificate, name: string): boolean =>
  (isIP(name) > 0 ? certificate.checkIP(name) : certificate.checkHost(name)) !== undefined;

const stillGood = (
  { cert, key }: Certificate,
  { names, now }: { readonly names: readonly string[]; readonly now: Date },
): boolean => {
  try {
    const read = new X509Certificate(cert);
    const leftMs = Date.parse(read.validTo) - now.getTime();
    // One of another certificate is what a crash between the two files leaves.
    return (
      read.checkPrivateKey(createPrivateKey(key)) &&
      leftMs > renewMs &&
      names.every((name) => covers(read, name))
    );
  } catch {
    return false;
  }
};

const readKept = async (folder: string): Promise<Certificate | undefined> => {
  try {
    const [cert, key] = await Promise.all([
      readFile(join(folder, 'certificate.pem'), 'utf8'),
      readFile(join(folder, 'key.pem'), 'utf8'),
    ]);
    return { cert, key };
  } catch {
    return undefined;
  }
};

const make = async (names: readonly string[], now: Date): Promise<Certificate> => {
  const altNames = names.map((name) =>
    isIP(name) > 0 ? { type: 7 as const, ip: name } : { type: 2 as const, value: name },
  );
  const made = await generate([{ name: 'commonName', value: 'Fettle' }], {
    keyType: 'ec',
    curve: 'P-256',
    algorithm: 'sha256',
    // An hour back, for clocks that are a little behind.
    notBeforeDate: new Date(now.getTime() - 3600 * 1000),
    notAfterDate: new Date(now.getTime() + lastsMs),
    extensions: [
      { name: 'basicConstraints', cA: false, critical: true },
      { name: 'keyUsage', digitalSignature: true, critical: true },
      { name: 'extKeyUsage', serverAuth: true },
      { name: 'subjectAltName', altNames },
    ],
  });
  return { cert: made.cert, key: made.private };
};

const keep = async (folder: string, { cert, key }: Certificate): Promise<void> => {
  await mkdir(folder, { recursive: true, mode: 0o700 });
  await chmod(folder, 0o700);
  for (const [name, text] of [
    ['key.pem', key],
    ['certificate.pem', cert],
  ] as const) {
    const part = join(folder, `${name}.${createHash('sha256').update(cert).digest('hex').slice(0, 8)}`);
    await writeFile(part, text, { mode: 0o600 });
    await rename(part, join(folder, name));
  }
};

/**
 * The server's own certificate, signed by itself: the one that is kept in the folder, or a new one where that is
 * missing, ends soon, or does not name the machine as it is now called.
 */
export async function ownCertificate(of: {
  readonly folder: string;
  /** Host names and addresses. */
  readonly names: readonly string[];
  readonly now: Date;
}): Promise<Certificate> {
  const kept = await readKept(of.folder);
  if (kept !== undefined && stillGood(kept, of)) return kept;
  const made = await make(of.names, of.now);
  await keep(of.folder, made);
  return made;
}
