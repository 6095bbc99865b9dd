import type { RawDatabase } from './rawDatabase.ts';

/** The built-in module as far as it is used here; older Nodes have no types for it. */
interface BuiltinModule {
  readonly DatabaseSync: new (path: string) => RawDatabase;
}

const isBuiltin = (module: unknown): module is BuiltinModule =>
  typeof module === 'object' && module !== null && 'DatabaseSync' in module;

/**
 * Opens a file with the database of Node itself; undefined where this Node has none. Some Nodes warn that it
 * is new, on every start: that one warning is kept from the screen.
 */
export function openBuiltin(path: string): RawDatabase | undefined {
  const warn = process.emitWarning;
  process.emitWarning = (warning: string | Error, ...rest: unknown[]): void => {
    if (!String(warning).includes('SQLite')) Reflect.apply(warn, process, [warning, ...rest]);
  };
  try {
    const module: unknown = process.getBuiltinModule?.('node:sqlite');
    return isBuiltin(module) ? new module.DatabaseSync(path) : undefined;
  } finally {
    process.emitWarning = warn;
  }
}
