import type { JobLine, JobPage } from '@fettle/store/contract/jobs.ts';
import { type OpenAPIHono, z } from '@hono/zod-openapi';
import { html } from 'hono/html';
import { readQuery, shortText, wholeNumber } from '../api/query.ts';
import type { Environment, Services } from '../services.ts';
import { noWorkbench } from './noWorkbench.ts';
import { type Markup, page } from './page.ts';
import { familyName, promise, stage } from './standing.ts';

const AT_ONCE = 100;

const benchQuery = z.strictObject({
  words: shortText({ says: 'Words to look for.', most: 200 }),
  tag: shortText({ says: 'A tag.', most: 200 }),
  skip: wholeNumber({ says: 'Jobs to pass over.', least: 0, most: 1_000_000 }),
});

interface Shown {
  readonly words?: string | undefined;
  readonly tag?: string | undefined;
  readonly skip: number;
}

const tagged = (tag: string): Markup =>
  html`<li><a class="tag" href="/plain?tag=${encodeURIComponent(tag)}">${tag}</a></li>`;

const line = (job: JobLine, today: string): Markup => html`
<li>
<a class="job" href="/plain/jobs/${job.number}"><span class="number">${job.number}</span>
<span>${job.title ?? job.filterName ?? familyName(job.family)}</span></a>
<p class="facts">${promise(job, today) ?? html`<span class="soft">no day promised</span>`} · ${stage(job)} · ${familyName(job.family)}${
  job.owner === undefined ? '' : html` · ${job.owner}`
}</p>
${job.tags.length === 0 ? '' : html`<ul class="tags">${job.tags.map(tagged)}</ul>`}
</li>`;

const searchForm = ({ words }: Shown): Markup => html`
<form class="search" method="get" action="/plain" role="search">
<label for="words">Find jobs by number, words, owner or medium</label>
<div><input id="words" name="words" type="search" maxlength="200" value="${words ?? ''}">
<button type="submit">Find</button></div>
</form>`;

const address = ({ words, tag }: Shown, skip: number): string => {
  const query = new URLSearchParams();
  if (words !== undefined) query.set('words', words);
  if (tag !== undefined) query.set('tag', tag);
  query.set('skip', String(skip));
  return `/plain?${query}`;
};

const turning = (shown: Shown, total: number): Markup => {
  const { skip } = shown;
  const back = skip > 0 ? html`<a href="${address(shown, Math.max(0, skip - AT_ONCE))}">Earlier</a>` : '';
  const on = skip + AT_ONCE < total ? html`<a href="${address(shown, skip + AT_ONCE)}">Further</a>` : '';
  return html`${back === '' && on === '' ? '' : html`<nav class="turning" aria-label="Parts of the list">${back} ${on}</nav>`}`;
};

const heading = ({ words, tag }: Shown, total: number): string => {
  const count = `${total} ${total === 1 ? 'job' : 'jobs'}`;
  if (words !== undefined && words.trim() !== '') return `${count} with “${words}”`;
  return tag === undefined ? `${count} in hand` : `${count} tagged “${tag}”`;
};

/** Who is signed in, with the way out; nothing where nobody need sign in. */
const signedIn = (name: string | undefined): Markup | '' =>
  name === undefined
    ? ''
    : html`<form method="post" action="/sign-out"><p>Signed in as ${name}. <button type="submit">Sign out</button></p></form>`;

const body = (
  found: JobPage,
  shown: Shown,
  of: { readonly today: string; readonly name: string | undefined; readonly isInstead: boolean },
): Markup => html`
<header class="top"><p class="name"><a href="/plain">Fettle</a></p></header>
<main>
${of.isInstead ? html`<p class="fault">${noWorkbench}</p>` : ''}
${searchForm(shown)}
<h1>${heading(shown, found.total)}</h1>
${
  found.jobs.length === 0
    ? html`<p class="empty">Nothing here. A job file is taken in with <code>fettle import job.yaml</code>.</p>`
    : html`<ol class="jobs">${found.jobs.map((job) => line(job, of.today))}</ol>`
}
${turning(shown, found.total)}
</main>
<footer>${signedIn(of.name)}<p><a href="/api/openapi.json">Description of the API</a></p></footer>`;

/** The jobs in hand, soonest promise first; at `/` it stands in for the workbench that is not built, and says so. */
export const addBench = (app: OpenAPIHono<Environment>, services: Services, path: '/' | '/plain'): void => {
  app.get(path, async (context) => {
    const { words, tag, skip = 0 } = readQuery(context, benchQuery);
    const found = await services.store.jobs.list({
      order: 'promised',
      count: AT_ONCE,
      skip,
      ...(words === undefined ? {} : { words }),
      ...(tag === undefined ? {} : { tag }),
    });
    const today = services.clock().toISOString().slice(0, 10);
    const name = services.config.share ? context.get('visitor').name : undefined;
    const about = { today, name, isInstead: path === '/' };
    return context.html(page({ title: 'Bench', body: body(found, { words, tag, skip }, about) }));
  });
};
