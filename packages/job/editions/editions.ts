import { type Problem, problem } from '../problems.ts';
import { shown } from '../schema/issues.ts';
import { currentEdition } from '../schema/job.ts';

/** Turns a document of one edition into the same document of the next. */
export type Migration = (document: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>>;

/** How to leave each old edition, by its number. Edition 1 is the first and current: there is nothing to leave. */
export const migrations: ReadonlyMap<number, Migration> = new Map();

export type Migrated =
  | { readonly ok: true; readonly value: Readonly<Record<string, unknown>> }
  | { readonly ok: false; readonly problem: Problem };

/** Brings a document of any known edition to the current one, or says what its edition is instead. */
export function toCurrentEdition(value: Readonly<Record<string, unknown>>): Migrated {
  const edition = Object.hasOwn(value, 'fettle') ? value.fettle : undefined;
  const wrong = wrongEdition(edition);
  if (wrong !== undefined) return { ok: false, problem: wrong };
  let document = value;
  for (let from = Number(edition); from < currentEdition; from++) {
    const migrate = migrations.get(from);
    if (migrate === undefined) throw new Error(`no migration from edition ${from}`);
    document = { ...migrate(document), fettle: from + 1 };
  }
  return { ok: true, value: document };
}

function wrongEdition(edition: unknown): Problem | undefined {
  const allowed = `fettle: ${currentEdition}`;
  if (edition === undefined || edition === null) {
    return problem('edition-missing', ['fettle'], { facts: { current: currentEdition }, allowed });
  }
  const number = typeof edition === 'number' ? edition : Number.NaN;
  if (!Number.isInteger(number) || number < 1) {
    return problem('edition-wrong', ['fettle'], { facts: { found: shown(edition) }, allowed });
  }
  if (number > currentEdition) {
    const facts = { found: String(number), current: currentEdition };
    return problem('edition-newer', ['fettle'], { facts, allowed });
  }
  return undefined;
}
