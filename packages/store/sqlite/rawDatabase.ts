/** What both drivers have, as far as it is used here. */
export interface RawStatement {
  all(...values: unknown[]): unknown[];
  run(...values: unknown[]): { changes: number | bigint; lastInsertRowid: number | bigint };
  iterate(...values: unknown[]): IterableIterator<unknown>;
}

export interface RawDatabase {
  exec(sql: string): unknown;
  prepare(sql: string): RawStatement;
  close(): void;
}
