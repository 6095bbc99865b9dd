import type { OpenFile } from '../../sqlite/driver.ts';

const rowsOf = (file: OpenFile, sql: string): readonly Readonly<Record<string, unknown>>[] =>
  file
    .prepare(sql)
    .all([])
    .map((row) => Object.fromEntries(typeof row === 'object' && row !== null ? Object.entries(row) : []));

/** The statements that made a file's tables and indexes, those of the engine's own left out, by name. */
export function schemaOf(file: OpenFile): readonly string[] {
  return rowsOf(
    file,
    `select sql from sqlite_schema where sql is not null and name not like 'sqlite\\_%' escape '\\'
      and name not like 'job\\_text\\_%' escape '\\' order by type desc, rowid`,
  ).map(({ sql }) => String(sql));
}

const tablesOf = (file: OpenFile): readonly string[] =>
  rowsOf(
    file,
    `select name from sqlite_schema where type = 'table' and name not like 'sqlite\\_%' escape '\\'
      and name not like 'job\\_text%' escape '\\' order by rowid`,
  ).map(({ name }) => String(name));

/** The rows of a table as statements. SQLite writes the values itself. */
const insertsOf = (file: OpenFile, table: string): readonly string[] => {
  const columns = rowsOf(file, `pragma table_info(${table})`).map(({ name }) => `"${name}"`);
  const values = columns.map((column) => `quote(${column})`).join(` || ', ' || `);
  return rowsOf(file, `select ${values} as written from ${table}`).map(
    ({ written }) => `insert into ${table} (${columns.join(', ')}) values (${written})`,
  );
};

/** The index of words keeps no text: what it has of each job is put together again, word after word. */
const indexInserts = (file: OpenFile): readonly string[] => {
  file.exec('create virtual table temp.kept_words using fts5vocab (main, job_text, instance)');
  const words = new Map<unknown, unknown[]>();
  for (const { doc, term } of rowsOf(file, `select doc, term from temp.kept_words order by doc, "offset"`))
    words.set(doc, [...(words.get(doc) ?? []), term]);
  file.exec('drop table temp.kept_words');
  return [...words].map(
    ([job, terms]) => `insert into job_text (rowid, words) values (${job}, '${terms.join(' ')}')`,
  );
};

/** A database as the statements that make it anew, one a line where its texts have no line ends. */
export function dumpOf(file: OpenFile): string {
  const statements = [
    ...schemaOf(file),
    ...tablesOf(file).flatMap((table) => insertsOf(file, table)),
    ...indexInserts(file),
    `pragma user_version = ${file.scalar('pragma user_version')}`,
  ];
  return statements.map((statement) => `${statement};\n`).join('');
}
