/** What a person may do: all; work on jobs; look. */
export type Role = 'technician' | 'helper' | 'reader';

export const roles: readonly Role[] = ['technician', 'helper', 'reader'];

export interface Account {
  /** 1 to 40 small letters, digits, point, hyphen; begins with a letter. */
  readonly name: string;
  readonly role: Role;
  readonly passwordHash: string;
  readonly createdAt: string;
  /** No one signs in with it any more; its name stays in the history. */
  readonly closedAt?: string;
}

export interface Session {
  readonly account: string;
  readonly startedAt: string;
  readonly endsAt: string;
}

/** Accounts and who is signed in. Tokens are kept as SHA-256 only. */
export interface Accounts {
  /** False where the name is taken. */
  add(account: Pick<Account, 'name' | 'role' | 'passwordHash'>): Promise<boolean>;
  find(name: string): Promise<Account | undefined>;
  list(): Promise<readonly Account[]>;
  /** Changes role or password, or closes; every session of it ends. */
  change(
    name: string,
    change: Partial<Pick<Account, 'role' | 'passwordHash'>> & { readonly close?: boolean },
  ): Promise<boolean>;
  startSession(session: {
    readonly tokenHash: string;
    readonly account: string;
    readonly endsAt: string;
  }): Promise<void>;
  /** The session of a token that has not ended and whose account is open, with the account. */
  session(tokenHash: string): Promise<{ readonly session: Session; readonly account: Account } | undefined>;
  /** Moves the end of a session that has not ended. */
  extendSession(session: { readonly tokenHash: string; readonly endsAt: string }): Promise<void>;
  endSession(tokenHash: string): Promise<void>;
}

/** A link by which an owner sees the sheet of one job. */
export interface OwnerLink {
  /** Names the link for people who may withdraw it; not the secret in it. */
  readonly id: string;
  readonly job: number;
  readonly madeAt: string;
  readonly madeBy: string;
  readonly endsAt?: string;
  readonly withdrawnAt?: string;
}

export interface OwnerLinks {
  add(link: {
    readonly job: number;
    readonly tokenHash: string;
    readonly by: string;
    readonly endsAt?: string;
  }): Promise<OwnerLink>;
  list(job: number): Promise<readonly OwnerLink[]>;
  /** The link of a token, where it is neither withdrawn nor past its end. */
  find(tokenHash: string): Promise<OwnerLink | undefined>;
  withdraw(of: { readonly job: number; readonly id: string; readonly by: string }): Promise<boolean>;
}
