import { html } from 'hono/html';
import { type Markup, page } from '../pages/page.ts';
import { dayInWords, figuresInWords, stageInWords } from './plainWords.ts';
import { type FormState, readingForm } from './readingForm.ts';
import { readingFacts } from './readReading.ts';
import type { Sheet } from './schemas.ts';

/** The page shows so many readings, the newest of them. */
const mostReadings = 60;

const fact = (name: string, value: string | undefined): Markup | '' =>
  value === undefined ? '' : html`<div><dt>${name}</dt><dd>${value}</dd></div>`;

const facts = ({ stage, received, promised, family }: Sheet): Markup =>
  html`<dl class="facts-list">
${fact('Kind of filter', family)}
${fact('Where it stands', stage === undefined ? undefined : stageInWords(stage))}
${fact('Came in', received === undefined ? undefined : dayInWords(received))}
${fact('Promised back', promised === undefined ? undefined : dayInWords(promised))}
</dl>`;

const doing = ({ figures }: Sheet): Markup =>
  figures === undefined
    ? html`<p>What it does cannot be computed at the moment.</p>`
    : html`<ul class="plain">${figuresInWords(figures).map((sentence) => html`<li>${sentence}</li>`)}</ul>`;

const drawing = (at: string, { figures }: Sheet): Markup | '' =>
  figures === undefined
    ? ''
    : html`<figure><picture>
<source srcset="${at}/drawing?theme=dark" media="(prefers-color-scheme: dark)">
<img class="drawing" src="${at}/drawing" alt="Section through the filter, with the way that the water takes">
</picture></figure>`;

const quote = ({ quote: offered }: Sheet): Markup | '' => {
  if (offered === undefined) return '';
  const lines = offered.lines.map(
    ({ says, price }) => html`<tr><td>${says}</td><td class="amount">${price ?? 'open'}</td></tr>`,
  );
  return html`<section aria-labelledby="quote"><h2 id="quote">Quote</h2>
<table><thead><tr><th scope="col">What</th><th scope="col" class="amount">Price</th></tr></thead>
<tbody>${lines}</tbody>
<tfoot><tr><th scope="row">In all</th><td class="amount">${offered.total ?? 'open'}</td></tr></tfoot></table>
${offered.validUntil === undefined ? '' : html`<p>It holds until ${dayInWords(offered.validUntil)}.</p>`}
${offered.warranty === undefined ? '' : html`<p>Warranty: ${offered.warranty}</p>`}
</section>`;
};

const readings = ({ readings: all }: Sheet): Markup => {
  if (all.length === 0) return html`<p>None yet.</p>`;
  const rows = all
    .slice(-mostReadings)
    .map(
      ({ day, kind, value, note, by }) =>
        html`<tr><td class="day">${day}</td><td>${readingFacts[kind].label}</td><td class="amount">${value}</td><td>${note}</td><td>${by === 'owner' ? 'you' : 'the workshop'}</td></tr>`,
    );
  return html`<div class="scroll" role="region" aria-label="Readings so far" tabindex="0"><table>
<thead><tr><th scope="col">Day</th><th scope="col">What</th><th scope="col" class="amount">Reading</th><th scope="col">Note</th><th scope="col">By</th></tr></thead>
<tbody>${rows}</tbody></table></div>`;
};

const reminders = (at: string, { promised, stage }: Sheet): Markup | '' =>
  promised === undefined && stage !== 'handed-back' && stage !== 'closed'
    ? ''
    : html`<p><a href="${at}/reminders.ics">Reminders for your calendar</a></p>`;

const heading = ({ title, filter }: Sheet): Markup =>
  title === undefined || title === filter
    ? html`<h1>${filter}</h1>`
    : html`<h1>${title}</h1><p class="soft">${filter}</p>`;

const taken = (isTaken: boolean): Markup | '' =>
  isTaken ? html`<p class="done" role="status">Your readings are taken down. Thank you.</p>` : '';

/** The owner's own sheet. */
export const sheetPage = (of: {
  readonly sheet: Sheet;
  /** Path of the sheet, the token in it. */
  readonly at: string;
  readonly form: FormState;
  /** Whether readings were just taken down. */
  readonly isTaken: boolean;
}): Markup => {
  const { sheet, at, form, isTaken } = of;
  return page({
    title: form.problems.length > 0 ? `Not taken: ${sheet.filter}` : (sheet.title ?? sheet.filter),
    body: html`<main>
${heading(sheet)}
${taken(isTaken)}
<div class="sheet"><div>
${facts(sheet)}
<section aria-labelledby="does"><h2 id="does">What it does</h2>
${doing(sheet)}</section>
<section aria-labelledby="care"><h2 id="care">Take care</h2>
<ul class="plain">${sheet.cautions.map((caution) => html`<li>${caution}</li>`)}</ul></section>
${quote(sheet)}
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
