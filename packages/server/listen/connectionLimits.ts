import type { ServerOptions } from 'node:http';

/** What a connection may take, for plain and for encrypted ones alike. Values of our own. */
export const connectionLimits: Required<
  Pick<
    ServerOptions,
    | 'maxHeaderSize'
    | 'headersTimeout'
    | 'requestTimeout'
    | 'keepAliveTimeout'
    | 'connectionsCheckingInterval'
    | 'requireHostHeader'
  >
> = {
  maxHeaderSize: 16 * 1024,
  /** Headers must be there after this; whoever drips them is dropped. */
  headersTimeout: 10_000,
  /** A whole request must be there after this: the largest photograph over a slow line. */
  requestTimeout: 300_000,
  keepAliveTimeout: 10_000,
  connectionsCheckingInterval: 1000,
  requireHostHeader: true,
};

export const mostHeaders = 100;
export const mostConnections = 1000;
/** Of one address that is not this machine's own, so that one cannot hold all. */
export const mostConnectionsOfOne = 100;
/** The first byte, and then the whole handshake, must come within this, ms. */
export const mostSilenceMs = 8000;
