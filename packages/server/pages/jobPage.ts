import type { Attachment } from '@fettle/store/contract/attachments.ts';
import type { StoredJob } from '@fettle/store/contract/jobs.ts';
import type { Reading } from '@fettle/store/contract/readings.ts';
import type { AssessmentResult } from '@fettle/workflows/results/assessment.ts';
import type { OpenAPIHono } from '@hono/zod-openapi';
import { html } from 'hono/html';
import { jobNumbered } from '../api/jobChange.ts';
import { notFound } from '../api/refusal.ts';
import { ComputationBusy, UnreadableDocument } from '../computation/computation.ts';
import type { Environment, Services } from '../services.ts';
import { type Markup, page } from './page.ts';
import { photographsSection } from './photographs.ts';
import { quoteSection } from './quote.ts';
import { readingsSection } from './readingsTable.ts';

type Finding = AssessmentResult['findings'][number];

const severities: readonly Finding['severity'][] = ['grave', 'marked', 'slight', 'note', 'strength'];

/** Three figures are more than is known of most. */
const shown = ({ value, unit }: { readonly value: number; readonly unit: string }): string =>
  `${Number(value.toPrecision(3))}${unit === '1' ? '' : ` ${unit}`}`;

/** A share with two figures; below a thousandth the models know no more than that it is small. */
const percent = ({ value }: { readonly value: number }): string =>
  value > 0 && value < 0.001 ? 'less than 0.1 %' : `${Number((100 * value).toPrecision(2))} %`;

const fact = (term: string, says: string | undefined): Markup | '' =>
  says === undefined || says === '' ? '' : html`<div><dt>${term}</dt><dd>${says}</dd></div>`;

const recordFacts = ({ document, changedAt, changedBy, revision }: StoredJob): Markup => html`
<dl class="facts-list">
${fact('Filter', [document.filter.name, document.filter.family].filter(Boolean).join(', '))}
${fact('Owner', document.owner?.name)}
${fact('Stage', document.job?.stage)}
${fact('Tags', document.job?.tags?.join(', '))}
${fact('Received', document.job?.received)}
${fact('Promised', document.job?.promised)}
${fact('Revision', `${revision}, by ${changedBy} on ${changedAt.slice(0, 10)}`)}
</dl>
${document.job?.notes === undefined ? '' : html`<p class="notes">${document.job.notes}</p>`}`;

const figures = (result: AssessmentResult): Markup => html`
<dl class="facts-list">
${fact('Flow', shown(result.dutyPoint.flow))}
${fact('Turnover', shown(result.turnover))}
${fact('Feed carried', shown(result.carries.feed))}
${fact('Past the mechanical media', percent(result.bypass.mechanical))}
${fact('Cleaning every', `${result.cleaningInterval.beyond ? 'more than ' : ''}${shown(result.cleaningInterval)}`)}
${fact('Cost', shown(result.cost.perYear))}
</dl>`;

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

const drawing = (number: number, revision: number): Markup => {
  const address = `/api/jobs/${number}/drawing?revision=${revision}`;
  return html`<picture>
<source media="print" srcset="${address}&theme=print">
<source media="(prefers-color-scheme: dark)" srcset="${address}&theme=dark">
<img class="drawing" src="${address}" alt="Section of the filter with the way of the water">
</picture>`;
};

/** What was computed, or the sentence that says why nothing was. */
const computed = async (services: Services, job: StoredJob): Promise<AssessmentResult | string> => {
  try {
    return await services.computation.assess(job.document, {
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
}

const body = ({ job, result, photographs, readings }: Shown): Markup => {
  const { number, revision, document } = job;
  const links = html`<ul class="links">
<li><a href="/api/jobs/${number}">Document</a></li>
<li><a href="/api/jobs/${number}/assessment">Assessment</a></li>
<li><a href="/api/jobs/${number}/revisions">Revisions</a></li>
</ul>`;
  return html`
<header class="top"><p class="name"><a href="/bench">Fettle</a></p></header>
<main>
<h1><span class="number">${number}</span> ${document.job?.title ?? document.filter.name ?? document.filter.family}</h1>
${job.putAwayAt === undefined ? '' : html`<p class="fault">Put away on ${job.putAwayAt.slice(0, 10)}.</p>`}
<div class="sheet">
<section aria-label="The record">${recordFacts(job)}
${typeof result === 'string' ? html`<p class="fault">${result}</p>` : figures(result)}
${links}</section>
${typeof result === 'string' ? '' : html`<figure>${drawing(number, revision)}</figure>`}
</div>
${typeof result === 'string' ? '' : html`<section aria-label="Findings"><h2>Findings, worst first</h2>${findings(result)}</section>`}
${quoteSection(document)}
${readingsSection(number, readings)}
${photographsSection(photographs)}
</main>`;
};

/** One job to read and print. */
export const addJobPage = (app: OpenAPIHono<Environment>, services: Services): void => {
  app.get('/jobs/:number', async (context) => {
    const said = context.req.param('number');
    if (!/^[1-9]\d{0,8}$/.test(said)) throw notFound(`There is no job ${said.slice(0, 40)}.`);
    const job = await jobNumbered(services, Number(said));
    const result = await computed(services, job);
    const photographs = await services.store.attachments.list(job.number);
    const readings = await services.store.readings.list(job.number);
    const title = `${job.number} ${job.document.job?.title ?? job.document.filter.name ?? ''}`.trim();
    return context.html(page({ title, body: body({ job, result, photographs, readings }) }));
  });
};
