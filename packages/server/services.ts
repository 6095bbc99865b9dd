import type { Role } from '@fettle/store/contract/people.ts';
import type { Store } from '@fettle/store/contract/store.ts';
import type { Backups } from './backups.ts';
import type { Computation } from './computation/computation.ts';
import type { Works } from './work/works.ts';

/** Who is asking. */
export interface Visitor {
  /** Name of an account; on loopback without accounts, what this machine's user goes by. */
  readonly name: string;
  readonly role: Role;
  /** Address that the request came from. */
  readonly from: string;
}

/** How the server was started. */
export interface ServerConfig {
  /** Whether it is open beyond this machine, and so demands a sign-in. */
  readonly share: boolean;
  /** `host:port` in small letters, as the Host header may name this server. */
  readonly hosts: ReadonlySet<string>;
  /** Origins, as `http://127.0.0.1:4747`, from which a browser may write. */
  readonly origins: ReadonlySet<string>;
  /** Name under which changes on loopback without accounts stand in the history. */
  readonly user: string;
  /** Folder of the built workbench; absent where none is built. */
  readonly workbench?: string;
  readonly version: string;
}

/** What every route works with. */
export interface Services {
  readonly store: Store;
  readonly computation: Computation;
  readonly works: Works;
  readonly clock: () => Date;
  readonly config: ServerConfig;
  /** Automatic backups; absent where none are made. */
  readonly backups?: Backups;
}

/** What middleware leaves for routes, under these names. */
export interface Variables {
  readonly visitor: Visitor;
  /** Names the request in answers and on the error output. */
  readonly requestId: string;
}

/** What the listener knows of a connection; tests give what they need of it. */
export interface Bindings {
  /** Address that the request came from, behind a proxy the one that the proxy names. */
  readonly from?: string;
  /** Whether the way to this server, or to the proxy in front of it, is encrypted. */
  readonly overTls?: boolean;
  readonly incoming?: {
    readonly rawHeaders: readonly string[];
    readonly socket?: { readonly remoteAddress?: string | undefined };
  };
}

export interface Environment {
  readonly Variables: Variables;
  readonly Bindings: Bindings;
}
