import type { RawStatement } from './rawDatabase.ts';

/** More than the records ask in different words; lists with many values beyond these are read anew each time. */
const MOST_KEPT = 200;

/** Statements that were read once and are asked again, those that rest longest given up first. */
export interface KeptStatements {
  of(sql: string): RawStatement;
  /** Gives all of them up. */
  clear(): void;
}

/** Keeps statements by their words: to read one takes longer than to carry out most of them. */
export const keptStatements = (prepare: (sql: string) => RawStatement): KeptStatements => {
  const kept = new Map<string, RawStatement>();
  const keep = (sql: string, statement: RawStatement): RawStatement => {
    kept.delete(sql);
    kept.set(sql, statement);
    const [oldest] = kept.keys();
    if (kept.size > MOST_KEPT && oldest !== undefined) kept.delete(oldest);
    return statement;
  };
  return {
    of: (sql) => keep(sql, kept.get(sql) ?? prepare(sql)),
    clear: () => kept.clear(),
  };
};
