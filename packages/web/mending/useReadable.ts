import type { Problem } from '@fettle/job/problems.ts';
import { useMemo } from 'react';
import type { Shown } from '../computing/assessed.ts';
import { type Quick, useQuick } from '../computing/useQuick.ts';
import { fieldsToLeaveOut, withoutFields } from './readablePart.ts';

/** Computed at once, to nothing: there is nothing to be left out. */
const nothing = {};

/** The document, without those fields that hinder all the rest of it from being read. */
function useReadable(document: Readonly<Record<string, unknown>>, problems: readonly Problem[]) {
  // As one word, so that the document stays the same one while the problems in a field change.
  const left = fieldsToLeaveOut(problems).join(' ');
  return useMemo(() => (left === '' ? document : withoutFields(document, left.split(' '))), [document, left]);
}

/** Figures of a job as far as it reads. */
export interface Readable {
  readonly figures: Quick;
  /** The document that they are of. */
  readonly document: Readonly<Record<string, unknown>>;
}

/** Drawing and figures of a document; where only later states or what is beside the filter is wrong, of the document without that. */
export function useReadableQuick(document: Readonly<Record<string, unknown>>, shown: Shown): Readable {
  const whole = useQuick(document, shown);
  const readable = useReadable(document, whole.problems);
  const isWhole = readable === document;
  const part = useQuick(isWhole ? nothing : readable, shown);
  const figures = isWhole ? whole : { ...part, problems: whole.problems };
  return { figures, document: readable };
}
