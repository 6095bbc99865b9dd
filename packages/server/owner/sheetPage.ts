import { stateInWords } from '@fettle/job/packedStates.ts';
import { isBackHome } from '@fettle/job/stages.ts';
import { html } from 'hono/html';
import { fact } from '../pages/facts.ts';
import { type Markup, page } from '../pages/page.ts';
import { quoteTable } from '../pages/quote.ts';
import { readingsTable } from '../pages/readingsTable.ts';
import { dayInWords, figuresInWords, stageInWords } from './plainWords.ts';
import { type FormState, readingForm } from './readingForm.ts';
import type { Sheet } from './schemas.ts';

const facts = ({ stage, received, promised, family }: Sheet): Markup =>
  html`<dl class="facts-list">
${fact('Kind of filter', family)}
${fact('Where it stands', stage === undefined ? undefined : stageInWords(stage))}
${fact('Came in', received === undefined ? undefined : dayInWords(received))}
${fact('Promised back', promised === undefined ? undefined : dayInWords(promised))}
</dl>`;

const whatItDoes = ({ figures }: Sheet): string =>
  figures === undefined ? 'What it does' : `What it does, ${stateInWords(figures.state)}`;

const doing = ({ figures }: Sheet): Markup =>
  figures === undefined
    ? html`<p>What it does cannot be computed at the moment.</p>`
    : html`<ul class="plain">${figuresInWords(figures).map((sentence) => html`<li>${sentence}</li>`)}</ul>`;

const drawing = (at: string, { figures }: Sheet): Markup | '' =>
  figures === undefined
    ? ''
    : html`<figure><picture>
<source srcset="${at}/drawing?theme=dark" media="(prefers-color-scheme: dark)">
<img class="drawing" src="${at}/drawing" alt="Section through the filter ${stateInWords(figures.state)}, with the way that the water takes">
</picture></figure>`;

const quote = ({ quote: offered }: Sheet): Markup | '' => {
  if (offered === undefined) return '';
  return html`<section aria-labelledby="quote"><h2 id="quote">Quote</h2>
${quoteTable(offered)}
${offered.validUntil === undefined ? '' : html`<p>It holds until ${dayInWords(offered.validUntil)}.</p>`}
${offered.warranty === undefined ? '' : html`<p>Warranty: ${offered.warranty}</p>`}
</section>`;
};

const readings = ({ readings: all }: Sheet): Markup =>
  all.length === 0
    ? html`<p>None yet.</p>`
    : readingsTable(all.map((one) => ({ ...one, by: one.by === 'owner' ? 'you' : 'the workshop' })));

const reminders = (at: string, { promised, stage }: Sheet): Markup | '' =>
  promised === undefined && !isBackHome(stage)
    ? ''
    : html`<p><a href="${at}/reminders.ics">Reminders for your calendar</a></p>`;

/** What there is to read and to print. */
const toRead = (
  at: string,
): Markup => html`<section aria-labelledby="read"><h2 id="read">To read and to print</h2>
<ul class="plain">
<li><a href="${at}/write-up/sheet.html">What was found and what it does now</a> (<a href="${at}/write-up/sheet-a4.pdf">PDF, A4</a>, <a href="${at}/write-up/sheet-letter.pdf">PDF, US Letter</a>)</li>
<li><a href="${at}/write-up/care.html">Care plan: what to clean when, and in what water</a> (<a href="${at}/write-up/care.pdf">PDF</a>)</li>
</ul></section>`;

const heading = ({ title, filter }: Sheet): Markup =>
  title === undefined || title === filter
    ? html`<h1>${filter}</h1>`
    : html`<h1>${title}</h1><p class="soft">${filter}</p>`;

const takenDown = (notes: readonly string[] | undefined): Markup | '' =>
  notes === undefined
    ? ''
    : html`<p class="done" role="status">Your readings are taken down. Thank you.${notes.map((says) => ` ${says}`)}</p>`;

/** The owner's own sheet. */
export const sheetPage = (of: {
  readonly sheet: Sheet;
  /** Path of the sheet, the token in it. */
  readonly at: string;
  readonly form: FormState;
  /** What there is to know about readings that were just taken down; absent where none were. */
  readonly taken: readonly string[] | undefined;
}): Markup => {
  const { sheet, at, form, taken } = of;
  return page({
    title: form.problems.length > 0 ? `Not taken: ${sheet.filter}` : (sheet.title ?? sheet.filter),
    body: html`<main>
${heading(sheet)}
${takenDown(taken)}
<div class="sheet"><div>
${facts(sheet)}
<section aria-labelledby="does"><h2 id="does">${whatItDoes(sheet)}</h2>
${doing(sheet)}</section>
<section aria-labelledby="care"><h2 id="care">Take care</h2>
<ul class="plain">${sheet.cautions.map((caution) => html`<li>${caution}</li>`)}</ul></section>
${quote(sheet)}
${sheet.figures === undefined ? '' : toRead(at)}
</div>
${drawing(at, sheet)}</div>
<section aria-labelledby="readings"><h2 id="readings">Readings so far</h2>
${readings(sheet)}
${reminders(at, sheet)}</section>
${readingForm(at, form)}
</main>`,
  });
};

/** What a link shows that does not work. */
export const nowherePage = (): Markup =>
  page({
    title: 'This link leads nowhere',
    body: html`<main class="narrow"><h1>This link leads nowhere</h1>
<p>There is nothing here, or no longer. Ask the workshop for a link.</p></main>`,
  });
