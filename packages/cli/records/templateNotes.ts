import { type Note, note } from '@fettle/job/notes.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { templateFields } from '@fettle/job/templateFields.ts';

const mostNamed = 8;

/** What of a document was never filled in: one note, or none. */
export const templateNotes = (document: JobDocument): readonly Note[] => {
  const left = templateFields(document);
  if (left.length === 0) return [];
  const more = left.length > mostNamed ? ` and ${left.length - mostNamed} more` : '';
  return [note('template-values', [], { fields: `${left.slice(0, mostNamed).join(', ')}${more}` })];
};
