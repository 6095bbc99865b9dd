import { dayMs } from '../durations.ts';
import { type Certificate, fingerprintOf } from './certificate.ts';
import type { Listening } from './listen.ts';

/**
 * Looks once a day whether the certificate must be made anew, for servers that run for a year.
 *
 * @param of `make` gives the one that is kept, or a new one where that ends soon
 * @returns stops the looking
 */
export function renewDaily(of: {
  readonly listening: Pick<Listening, 'renew'>;
  readonly make: () => Promise<Certificate>;
  readonly report: (says: string, error: unknown) => void;
}): () => void {
  const look = async (): Promise<void> => {
    try {
      of.listening.renew(await of.make());
    } catch (error) {
      of.report('The certificate could not be made anew', error);
    }
  };
  const timer = setInterval(look, dayMs);
  timer.unref();
  return () => clearInterval(timer);
}

/** What to tell who starts a server with a certificate that nobody else has signed. */
export const fingerprintNote = (certificate: Certificate): string =>
  `Browsers warn once, since nobody else has signed this server's certificate. Its SHA-256 fingerprint, to compare: ${fingerprintOf(certificate)}`;
