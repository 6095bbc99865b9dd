import type { Attachment } from '@fettle/store/contract/attachments.ts';
import { html } from 'hono/html';
import type { Markup } from './page.ts';

/** So many are there at once, on paper too; of more the rest comes when it is looked at. */
const mostAtOnce = 24;

/** The numbers give the picture its place before it is there; the style gives it its width. */
const photograph = (attachment: Attachment, place: number): Markup => {
  const { job, id, name, caption, widthPx, heightPx, takenAt, addedAt } = attachment;
  const loading = place < mostAtOnce ? 'eager' : 'lazy';
  const address = `/api/jobs/${job}/attachments/${id}`;
  const [says, day] = [caption === '' ? name : caption, (takenAt ?? addedAt).slice(0, 10)];
  return html`<li><figure><a href="${address}"><img src="${address}/thumbnail" alt="Photograph: ${says}" width="${widthPx}" height="${heightPx}" loading="${loading}"></a>
<figcaption>${says}
<span class="soft">${takenAt === undefined ? 'added' : 'taken'} ${day}</span></figcaption></figure></li>`;
};

/** The photographs of a job in small, each leading to the whole one; nothing where there are none. */
export const photographsSection = (photographs: readonly Attachment[]): Markup | '' =>
  photographs.length === 0
    ? ''
    : html`<section aria-labelledby="photographs"><h2 id="photographs">Photographs</h2>
<ul class="photographs">${photographs.map(photograph)}</ul></section>`;
