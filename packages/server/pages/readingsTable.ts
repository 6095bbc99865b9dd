import type { Reading } from '@fettle/store/contract/readings.ts';
import { html } from 'hono/html';
import { measuredInWords } from '../owner/readingNotes.ts';
import type { Markup } from './page.ts';

/** A page shows so many readings, the newest of them. */
const mostReadings = 60;

/** A reading as a page shows it, with the words for who took it. */
type ShownReading = Pick<Reading, 'day' | 'kind' | 'value' | 'note'> & { readonly by: string };

const row = (reading: ShownReading): Markup => {
  const { day, value, note, by } = reading;
  return html`<tr><td class="day">${day}</td><td>${measuredInWords(reading)}</td><td class="amount">${value}</td><td class="note">${note}</td><td>${by}</td></tr>`;
};

/** Follow-up readings by day; on a narrow screen they are moved sideways. */
export const readingsTable = (all: readonly ShownReading[]): Markup =>
  html`<div class="scroll" role="region" aria-label="Table of readings" tabindex="0"><table>
<thead><tr><th scope="col">Day</th><th scope="col">What</th><th scope="col" class="amount">Reading</th><th scope="col">Note</th><th scope="col">By</th></tr></thead>
<tbody>${all.slice(-mostReadings).map(row)}</tbody></table></div>`;

/** The readings since the filter went back, as its technician sees them; nothing where there are none. */
export const readingsSection = (number: number, readings: readonly Reading[]): Markup | '' => {
  if (readings.length === 0) return '';
  const whole =
    readings.length > mostReadings
      ? html`<p><a href="/api/jobs/${number}/readings">All ${readings.length} readings</a></p>`
      : '';
  return html`<section aria-labelledby="readings"><h2 id="readings">Readings since</h2>
${readingsTable(readings.map((reading) => ({ ...reading, by: reading.enteredBy })))}
${whole}</section>`;
};
