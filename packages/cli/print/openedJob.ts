import { printDay } from '@fettle/engine/quantities/printShort.ts';
import type { QuoteTotals } from '@fettle/job/quote/quoteTotals.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import type { RevisionSummary } from '@fettle/store/contract/jobs.ts';
import { assessJob } from '@fettle/workflows/assessJob.ts';
import { type LaterState, laterStates } from '@fettle/workflows/laterStates.ts';
import { openJob } from '@fettle/workflows/openJob.ts';
import { printer } from '@fettle/workflows/printing.ts';
import { effectTexts } from '@fettle/workflows/report/effects.ts';
import { testLines } from '@fettle/workflows/report/lines.ts';
import { filterTitle } from '@fettle/workflows/report/summary.ts';
import type { Output } from '../output.ts';
import type { OpenedJob } from '../records/openedJob.ts';
import { summary } from './assessment.ts';
import { changedFields } from './changes.ts';
import { changeInLine } from './findings.ts';
import { heading, labelled, wrap } from './layout.ts';
import { momentText, promiseText, today } from './moments.ts';
import { photographLine } from './photographs.ts';
import { readingLine } from './readings.ts';

const LABEL = 12;
/** So many of a list are shown; the rest is counted. */
const MOST = 10;

const KINDS: Readonly<Record<RevisionSummary['kind'], string>> = {
  'taken-in': 'taken in',
  edited: 'changed',
  'went-back': 'went back',
  'put-away': 'put away',
  'brought-back': 'brought back',
  imported: 'imported',
};

const money = (value: number, { currency }: QuoteTotals): string => `${value.toFixed(2)} ${currency}`;

const quoteText = (quote: QuoteTotals, { validUntil }: NonNullable<JobDocument['quote']>): string => {
  const sum = `${money(quote.total, quote)} (labour ${quote.labour.toFixed(2)}, parts ${quote.parts.toFixed(2)})`;
  const lacking =
    quote.missing.length === 0
      ? ''
      : ` without what has no price: ${quote.missing.map(({ says }) => says).join(' ')}`;
  return `${sum}${validUntil === undefined ? '' : `, holds until ${validUntil}`}${lacking}`;
};

const consentText = (consent: JobDocument['consent']): string | undefined => {
  if (consent === undefined) return undefined;
  if (consent.withdrawn !== undefined) return `withdrawn on ${consent.withdrawn}`;
  const kinds = [
    ['name', consent.name],
    ['place', consent.place],
    ['photographs', consent.photographs],
  ] as const;
  const given = kinds.filter(([, allowed]) => allowed === true).map(([what]) => what);
  return `given on ${consent.day} for ${given.length === 0 ? 'nothing that names the owner' : given.join(', ')}`;
};

const approvalText = (approval: JobDocument['approval']): string | undefined => {
  if (approval === undefined) return undefined;
  const { day, by, how } = approval;
  const amount = approval.amount === undefined ? undefined : `for ${String(approval.amount)}`;
  return [`on ${day}`, by === undefined ? undefined : `by ${by}`, how, amount]
    .filter((part) => part !== undefined)
    .join(', ');
};

const standing = ({ shown: { document }, quote }: OpenedJob): string => {
  const { job, owner } = document;
  const whose = [owner?.name, owner?.contact, owner?.place].filter((part) => part !== undefined).join(', ');
  const rows: readonly (readonly [string, string | undefined])[] = [
    ['stage', job?.stage ?? 'taken-in'],
    ['received', job?.received],
    ['promised', job?.promised === undefined ? undefined : promiseText(job.promised, today())],
    ['owner', whose === '' ? undefined : whose],
    ['consent', consentText(document.consent)],
    ['tags', job?.tags?.join(', ')],
    ['quote', quote && document.quote ? quoteText(quote, document.quote) : undefined],
    ['approved', approvalText(document.approval)],
    ['notes', job?.notes],
  ];
  return rows
    .flatMap(([label, text]) => (text === undefined ? [] : [labelled(`  ${label}`, text, LABEL)]))
    .join('\n');
};

const counted = (lines: readonly string[], what: string): string =>
  [
    ...lines.slice(0, MOST),
    ...(lines.length > MOST ? [`  and ${lines.length - MOST} ${what} more`] : []),
  ].join('\n');

const revisionLine = ({ revision, at, by, kind, changes, wentBackTo }: RevisionSummary): string => {
  const back = wentBackTo === undefined ? '' : ` to revision ${wentBackTo}`;
  const fields = changes.length === 0 ? '' : `: ${changedFields(changes)}`;
  return labelled(`  ${revision}`, `${momentText(at)}, ${by}, ${KINDS[kind]}${back}${fields}`, 7);
};

const section = (output: Output, title: string, text: string): string[] =>
  text === '' ? [] : [heading(output, title), text];

const laterText = (later: readonly LaterState[], output: Output): string =>
  later
    .map(({ state, effect, timed }) => {
      const changes = effectTexts(effect, output.system).map((text) => `${text.what} ${changeInLine(text)}`);
      const proof = testLines({ comparisons: timed }, printer(output.system)).map((line) => ` ${line}`);
      return labelled(`  ${state.replace('-', ' ')}`, `${changes.join(', ')}.${proof.join('')}`, LABEL);
    })
    .join('\n');

const assessmentText = (document: JobDocument, output: Output): string[] => {
  const reading = openJob({ document });
  if (!reading.ok) {
    const says = reading.problems.map((problem) => problem.says).join(' ');
    return section(output, 'What it does', wrap(`It reads no more: ${says}`));
  }
  const job = assessJob(reading.model, { system: output.system });
  const print = printer(output.system);
  const later = laterStates(reading.document, job.assessment);
  const day = printDay(job.assessment.carries.day.dayS);
  return [
    ...section(
      output,
      later.length === 0 ? 'What it does' : 'What it does cleaned, packed as before',
      `${wrap(`${filterTitle(job, print)}.`)}\n${summary(job, print)}`,
    ),
    ...section(output, `From found to later, on ${day} after cleaning`, laterText(later, output)),
  ];
};

const titleOf = ({ job, shown }: OpenedJob): string => {
  const title = shown.document.job?.title;
  const which =
    shown.revision === job.revision
      ? `revision ${job.revision}`
      : `as of revision ${shown.revision} of ${job.revision}`;
  const away = job.putAwayAt === undefined ? '' : `, put away on ${momentText(job.putAwayAt)}`;
  return `Job ${job.number}, ${which}${away}${title === undefined ? '' : `: ${title}`}`;
};

/** Where a job stands, at most 80 columns wide. */
export const printOpenedJob = (opened: OpenedJob, output: Output, next: string): string => {
  const { shown, revisions, photographs, readings } = opened;
  return [
    wrap(titleOf(opened), 2),
    standing(opened),
    ...assessmentText(shown.document, output),
    ...section(
      output,
      'Revisions, newest first',
      counted(revisions.toReversed().map(revisionLine), 'revisions'),
    ),
    ...section(output, 'Photographs', counted(photographs.map(photographLine), 'photographs')),
    ...section(output, 'Readings since', counted(readings.map(readingLine), 'readings')),
    ...section(output, 'Next', wrap(next)),
  ].join('\n');
};
