import { familyById, rulesOf } from '@fettle/engine/families/families.ts';
import { mainsCautions } from '@fettle/engine/planning/steps.ts';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { lastTrueState, stateInWords } from '@fettle/job/packedStates.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import type { Attachment } from '@fettle/store/contract/attachments.ts';
import type { StoredJob } from '@fettle/store/contract/jobs.ts';
import type { Reading } from '@fettle/store/contract/readings.ts';
import type { AssessmentResult } from '@fettle/workflows/results/assessment.ts';
import { storedSettings } from '@fettle/workflows/storedSettings.ts';
import type { OpenAPIHono } from '@hono/zod-openapi';
import { html } from 'hono/html';
import { jobNumbered } from '../api/jobChange.ts';
import { notFound } from '../api/refusal.ts';
import { UnreadableDocument } from '../computation/computation.ts';
import { ComputationBusy } from '../computation/quickThreads.ts';
import type { Environment, Services } from '../services.ts';
import { computedSection } from './computed.ts';
import { fact } from './facts.ts';
import { type Markup, page } from './page.ts';
import { photographsSection } from './photographs.ts';
import { quoteSection } from './quote.ts';
import { readingsSection } from './readingsTable.ts';
import { familyName, promise, stage } from './standing.ts';

type Finding = AssessmentResult['findings'][number];

const severities: readonly Finding['severity'][] = ['grave', 'marked', 'slight', 'note', 'strength'];

const recordFacts = ({ document, changedAt, changedBy, revision }: StoredJob, today: string): Markup => html`
<dl class="facts-list">
${fact('Filter', document.filter.name)}
${fact('Kind of filter', familyName(document.filter.family))}
${fact('Owner', document.owner?.name)}
${fact('Stage', stage(document.job ?? {}))}
${fact('Tags', document.job?.tags?.join(', '))}
${fact('Received', document.job?.received)}
${fact('Promised', promise(document.job ?? {}, today))}
${fact('Revision', html`${revision}, by ${changedBy} on <time datetime="${changedAt}">${changedAt.slice(0, 10)}</time>`)}
</dl>
${document.job?.notes === undefined ? '' : html`<p class="notes">${document.job.notes}</p>`}`;

const finding = ({ severity, says, cure }: Finding): Markup => html`
<li class="${severity}"><p><strong>${severity}</strong> ${says}</p><p class="soft">${cure}</p></li>`;

const findings = (result: AssessmentResult): Markup => {
  const worstFirst = result.findings.toSorted(
    (one, other) => severities.indexOf(one.severity) - severities.indexOf(other.severity),
  );
  return worstFirst.length === 0
    ? html`<p>Nothing was found.</p>`
    : html`<ol class="findings">${worstFirst.map(finding)}</ol>`;
};

const drawing = ({ number, revision, document }: StoredJob, units: System): Markup => {
  const state = lastTrueState(document);
  const address = `/api/jobs/${number}/drawing?revision=${revision}&state=${state}${units === 'us' ? '&units=us' : ''}`;
  return html`<picture>
<source media="print" srcset="${address}&theme=print">
<source media="(prefers-color-scheme: dark)" srcset="${address}&theme=dark">
<img class="drawing" src="${address}" alt="Section of the filter ${stateInWords(state)} with the way of the water">
</picture>`;
};

/** What was computed, or the sentence that says why nothing was. */
const computed = async (
  services: Services,
  job: StoredJob,
  units: System,
): Promise<AssessmentResult | string> => {
  try {
    return await services.computation.assess(job.document, {
      units,
      state: lastTrueState(job.document),
      key: { job: job.number, revision: job.revision },
    });
  } catch (error) {
    if (error instanceof ComputationBusy) return `${error.message} Load the page again in a moment.`;
    if (error instanceof UnreadableDocument)
      return `The document does not read: ${error.problems[0]?.says ?? 'it has problems.'}`;
    throw error;
  }
};

/** A job with all that its page shows. */
interface Shown {
  readonly job: StoredJob;
  readonly result: AssessmentResult | string;
  readonly photographs: readonly Attachment[];
  readonly readings: readonly Reading[];
  readonly units: System;
  /** Day of the calendar. */
  readonly today: string;
}

const careSection = ({ filter }: JobDocument): Markup => {
  const family = familyById(filter.family);
  const cautions = [
    mainsCautions.before,
    mainsCautions.after,
    ...(family === undefined ? [] : rulesOf(family)),
  ];
  return html`<section aria-labelledby="care"><h2 id="care">Take care</h2>
<ul class="plain">${cautions.map((caution) => html`<li>${caution}</li>`)}</ul></section>`;
};

const body = ({ job, result, photographs, readings, units, today }: Shown): Markup => {
  const { number, document } = job;
  const state = lastTrueState(document);
  const links = html`<ul class="links">
<li><a href="/api/jobs/${number}">Document (JSON)</a></li>
<li><a href="/api/jobs/${number}/assessment">Assessment as found (JSON)</a></li>
<li><a href="/api/jobs/${number}/revisions">Revisions (JSON)</a></li>
</ul>`;
  return html`
<header class="top"><p class="name"><a href="/plain">Fettle</a></p></header>
<main>
<h1><span class="number">${number}</span> ${document.job?.title ?? document.filter.name ?? familyName(document.filter.family)}</h1>
${job.putAwayAt === undefined ? '' : html`<p class="fault">Put away on ${job.putAwayAt.slice(0, 10)}.</p>`}
<div class="sheet">
<div>
<section aria-label="The record">${recordFacts(job, today)}</section>
${typeof result === 'string' ? html`<p class="fault">${result}</p>` : computedSection(result, { system: units, state })}
${careSection(document)}
${links}</div>
${typeof result === 'string' ? '' : html`<figure>${drawing(job, units)}</figure>`}
</div>
${typeof result === 'string' ? '' : html`<section aria-label="Findings"><h2>Findings ${stateInWords(state)}, worst first</h2>${findings(result)}</section>`}
${quoteSection(document)}
${readingsSection(number, readings)}
${photographsSection(photographs)}
</main>`;
};

/** One job to read and print. */
export const addJobPage = (app: OpenAPIHono<Environment>, services: Services): void => {
  app.get('/plain/jobs/:number', async (context) => {
    const said = context.req.param('number');
    if (!/^[1-9]\d{0,8}$/.test(said)) throw notFound(`There is no job ${said.slice(0, 40)}.`);
    const job = await jobNumbered(services, Number(said));
    const { units = 'metric' } = await storedSettings(services.store);
    const result = await computed(services, job, units);
    const photographs = await services.store.attachments.list(job.number);
    const readings = await services.store.readings.list(job.number);
    const title = `${job.number} ${job.document.job?.title ?? job.document.filter.name ?? ''}`.trim();
    const today = services.clock().toISOString().slice(0, 10);
    const shown = { job, result, photographs, readings, units, today };
    return context.html(page({ title, body: body(shown) }));
  });
};
