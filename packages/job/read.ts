import type { Model } from '@fettle/engine/model/model.ts';
import { checkDraft } from './checks/check.ts';
import { contextOf } from './context.ts';
import { draftOf } from './draft.ts';
import { toCurrentEdition } from './editions/editions.ts';
import { listedOnce, withoutRepeats } from './names.ts';
import type { Note } from './notes.ts';
import { type Problem, problem } from './problems.ts';
import { prototypeFields } from './prototypeFields.ts';
import { kindOfValue, problemsOf } from './schema/issues.ts';
import { currentEdition, type JobDocument, jobSchema } from './schema/job.ts';
import { isFields } from './schema/walk.ts';
import { inTextOrder } from './text/inTextOrder.ts';
import { parseText } from './text/parse.ts';
import { plainJson } from './text/plainJson.ts';
import { withTidyNames } from './tidyNames.ts';
import { toModel } from './toModel/toModel.ts';

/** A job as read: document and model, or everything that is wrong with it. */
export type JobReading =
  | {
      readonly ok: true;
      readonly document: JobDocument;
      readonly model: Model;
      readonly notes: readonly Note[];
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Reads the text of a job file, YAML 1.2 or JSON, in UTF-8.
 *
 * @returns the document as it was written, the engine's model of it and notes; or all problems found, in the
 *   order of the text, each with its line
 */
export function readJob(source: string | Uint8Array): JobReading {
  const quick = plainJson(source);
  const quickly = quick === undefined ? undefined : readValue(quick);
  // Where something is wrong, the text is read once more for the lines on which it stands.
  if (quickly?.ok) return quickly;
  const { value, places, problems } = parseText(source);
  if (value === undefined) return { ok: false, problems };
  const reading = readValue(value);
  if (reading.ok && problems.length === 0) return reading;
  return { ok: false, problems: inTextOrder([...problems, ...(reading.ok ? [] : reading.problems)], places) };
}

/** Reads a document that is plain data already, as a database or an API hands it over. */
export function readDocument(value: unknown): JobReading {
  const reading = readValue(value);
  return reading.ok ? reading : { ok: false, problems: listedOnce(reading.problems) };
}

function readValue(value: unknown): JobReading {
  if (!isFields(value)) {
    return {
      ok: false,
      problems: [problem('root-not-fields', [], { facts: { found: kindOfValue(value), of: 'a job' } })],
    };
  }
  const migrated = toCurrentEdition(value);
  if (!migrated.ok && migrated.problem.code === 'edition-newer')
    return { ok: false, problems: [migrated.problem] };
  const tidied = withTidyNames(migrated.ok ? migrated.value : { ...value, fettle: currentEdition });
  const { document } = tidied;
  const before = [...(migrated.ok ? [] : [migrated.problem]), ...prototypeFields(document, [])];
  const parsed = jobSchema.safeParse(document);
  if (parsed.success && before.length === 0) {
    const result = toModel(parsed.data);
    return result.ok
      ? { ...result, notes: [...tidied.notes, ...result.notes], document: parsed.data }
      : result;
  }
  const issues = parsed.success ? [] : parsed.error.issues;
  const shape = [...before, ...problemsOf(issues, { root: jobSchema, value: document })];
  const draft = draftOf(document, shape);
  return { ok: false, problems: withoutRepeats([...shape, ...checkDraft(draft, contextOf(draft))]) };
}
