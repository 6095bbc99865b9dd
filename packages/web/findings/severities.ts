import type { Finding } from '@fettle/engine/assessment/assessment.ts';

type Severity = Finding['severity'];

/** A severity in words, as it stands before a finding. */
export const severityWords: Readonly<Record<Severity, string>> = {
  grave: 'Grave fault',
  marked: 'Marked fault',
  slight: 'Slight fault',
  note: 'Note',
  strength: 'Strength',
};

/** How many of three bars its mark has filled; a note and a strength have marks of their own. */
export const barsOf: Readonly<Record<Severity, number>> = {
  grave: 3,
  marked: 2,
  slight: 1,
  note: 0,
  strength: 0,
};
