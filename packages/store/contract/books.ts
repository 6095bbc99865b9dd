/** The technician's own books: one document each, kept with every revision like a job. */
export type BookName = 'shelf' | 'settings';

export interface StoredBook {
  readonly name: BookName;
  /** 0 where nothing was written yet. */
  readonly revision: number;
  readonly body: unknown;
  readonly changedAt?: string;
  readonly changedBy?: string;
}

export type BookRevised =
  | { readonly ok: true; readonly revision: number }
  | { readonly ok: false; readonly reason: 'stale'; readonly current: StoredBook; readonly base?: unknown };

/** The caller has checked the body by the book's schema. */
export interface Books {
  find(name: BookName): Promise<StoredBook>;
  revise(change: {
    readonly name: BookName;
    readonly base: number;
    readonly body: unknown;
    readonly by: string;
  }): Promise<BookRevised>;
  /** Oldest first, with bodies. */
  revisions(name: BookName): Promise<readonly StoredBook[]>;
  lay(books: readonly StoredBook[]): Promise<void>;
}
