import type { Draft } from '../draft.ts';
import type { FieldPath } from '../fieldPath.ts';
import { type Problem, problem } from '../problems.ts';
import { checkTwice } from './names.ts';

interface TwoDays {
  readonly path: FieldPath;
  readonly later: string | undefined;
  readonly earlier: string | undefined;
  /** What happened on the earlier one. */
  readonly what: string;
}

/** Days in their order, and every tag once. */
export function checkAbout(draft: Draft): readonly Problem[] {
  const { received, promised, tags = [] } = draft.job ?? {};
  const entries = tags.map((tag, index) => ({
    id: tag?.normalize('NFC').toLowerCase(),
    path: ['job', 'tags', index],
  }));
  return [
    ...inOrder({
      path: ['job', 'promised'],
      later: promised,
      earlier: received,
      what: 'the day on which the filter was received',
    }),
    ...checkTwice(entries),
  ];
}

/** Days of consent, quote and approval in their order. */
export function checkAgreement({ consent, quote, approval }: Draft): readonly Problem[] {
  return [
    ...inOrder({
      path: ['consent', 'withdrawn'],
      later: consent?.withdrawn,
      earlier: consent?.day,
      what: 'the day on which consent was given',
    }),
    ...inOrder({
      path: ['quote', 'validUntil'],
      later: quote?.validUntil,
      earlier: quote?.day,
      what: 'the day of the quote',
    }),
    ...inOrder({
      path: ['approval', 'day'],
      later: approval?.day,
      earlier: quote?.day,
      what: 'the day of the quote',
    }),
  ];
}

function inOrder({ path, later, earlier, what }: TwoDays): readonly Problem[] {
  if (later === undefined || earlier === undefined || later >= earlier) return [];
  return [problem('dates-reversed', path, { facts: { what }, allowed: `${earlier} or later` })];
}
