import { type OpenFile, openFile } from '../sqlite/driver.ts';
import { currentEdition, editionOf, migrate, steps } from './migrate.ts';

/** Every table with its columns, as `job.number`; those that the engine keeps for itself are left out. */
const columnsOf = (file: OpenFile): readonly string[] =>
  file
    .prepare(
      `select shape.name || '.' || kept.name as name
        from sqlite_schema as shape, pragma_table_info(shape.name) as kept
        where shape.type = 'table' and shape.name not like 'sqlite\\_%' escape '\\'
          and shape.name not like 'job\\_text\\_%' escape '\\'`,
    )
    .all([])
    .map((row) => String(typeof row === 'object' && row !== null ? Object.values(row)[0] : row));

/** The columns that an edition has, read off an empty database of it. */
const columnsIn = (edition: number, { driver }: OpenFile): readonly string[] => {
  const empty = openFile(':memory:', driver);
  try {
    migrate(empty, steps, edition);
    return columnsOf(empty);
  } finally {
    empty.close();
  }
};

/**
 * Whether a file has the tables that its edition says, and none where it says that it is new. A page of which a
 * single letter is wrong can be sound to SQLite and lack a table, or its edition.
 *
 * To be asked within a transaction, since another program may be making the tables.
 */
export const hasItsTables = (file: OpenFile): boolean => {
  const edition = editionOf(file);
  if (edition > currentEdition) return true;
  const there = new Set(columnsOf(file));
  if (edition === 0) return there.size === 0;
  return columnsIn(edition, file).every((column) => there.has(column));
};
