import { fullJob } from '@fettle/job/testing/fullJob.ts';
import { assessDocument } from '@fettle/workflows/assessDocument.ts';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { jobCalled, ownersServer } from '../testing/ownersServer.ts';

let owners: Awaited<ReturnType<typeof ownersServer>>;
let job: number;
beforeAll(async () => {
  owners = await ownersServer();
  job = await owners.takeIn(jobCalled('Canister of the hall tank'));
  await owners.takeIn(jobCalled('The other tank'));
});
afterAll(() => owners.server.end());

describe('the sheet of an owner', () => {
  it('shows the filter in plain words without a sign-in', async () => {
    const { at } = await owners.linkTo(job);
    const answer = await owners.get(at);
    expect(answer.status).toBe(200);
    const text = await answer.text();
    for (const part of [
      'Canister of the hall tank',
      'Hall canister',
      'L/h',
      'US gal/h',
      'of dry food a day',
      '20 December 2026',
      'Never cut the housing wall',
      `src="${at}/drawing"`,
    ]) {
      expect(text).toContain(part);
    }
    expect(text).not.toMatch(/<script|<style|\sstyle=|\son\w+=/i);
  });

  it.each(['as-left', 'as-found'] as const)(
    'says what the filter does %s where that is the last that is true of it, and draws that; a plan is not true yet',
    async (state) => {
      const { asLeft: _, ...notBuilt } = jobCalled('Built and not');
      const document = state === 'as-left' ? jobCalled('Built and not') : notBuilt;
      const number = await owners.takeIn(document);
      const { at } = await owners.linkTo(number);
      const flows = (['as-found', 'planned', state] as const).map((each) => {
        const assessed = assessDocument({ document }, { state: each });
        return assessed.ok ? assessed.result.dutyPoint.flow.value : undefined;
      });
      const [found, planned, own] = flows;
      expect(planned).not.toBe(own);
      if (state === 'as-left') expect(own).not.toBe(found);
      const sheet = JSON.parse(await (await owners.get(`/api${at}`)).text());
      expect(sheet.figures).toMatchObject({ state, flow: { value: own } });
      const words = state.replace('-', ' ');
      const page = await (await owners.get(at)).text();
      expect(page).toContain(`What it does, ${words}</h2>`);
      expect(page).toContain(`alt="Section through the filter ${words},`);
      const signedIn = { cookie: owners.technician };
      const drawn = async (query: string) =>
        (await owners.send('GET', `/api/jobs/${number}/drawing?${query}`, signedIn)).text();
      const drawing = await (await owners.get(`${at}/drawing`)).text();
      expect(drawing).toBe(await drawn(`state=${state}`));
      expect(drawing).not.toBe(await drawn('state=planned'));
    },
  );

  it('shows nothing that is not the owner’s to see', async () => {
    const { at } = await owners.linkTo(job);
    const sheets = [await (await owners.get(at)).text(), await (await owners.get(`/api${at}`)).text()];
    const { owner, money } = fullJob;
    const kept = [
      'INTERNAL-NOTE',
      owner.contact,
      owner.name,
      owner.place,
      'The other tank',
      'rosalind',
      String(money.tariff),
    ];
    for (const sheet of sheets) for (const secret of kept) expect(sheet).not.toContain(secret);
  });

  it('leads to what was written up for the owner, and to nothing of the workshop’s own', async () => {
    const { at } = await owners.linkTo(job);
    const { owner } = fullJob;
    expect(await (await owners.get(at)).text()).toContain(`${at}/write-up/sheet.html`);
    const page = await owners.get(`${at}/write-up/sheet.html`);
    expect([page.status, page.headers.get('Cache-Control')]).toEqual([200, 'no-store']);
    const text = await page.text();
    expect(text).toContain('Hall canister');
    for (const secret of ['INTERNAL-NOTE', owner.contact, owner.name, owner.place, 'rosalind'])
      expect(text).not.toContain(secret);
    expect((await owners.get(`${at}/write-up/sheet-a4.pdf`)).headers.get('Content-Type')).toBe(
      'application/pdf',
    );
    for (const name of ['build.pdf', 'quote.pdf', 'talk.md', 'nothing.pdf'])
      expect((await owners.get(`${at}/write-up/${name}`)).status).toBe(404);
    expect((await owners.get(`/owner/${'x'.repeat(43)}/write-up/sheet.html`)).status).toBe(404);
  });

  it('leads to nothing that is planned and not offered', async () => {
    const planned = { packing: fullJob.planned.packing };
    const { quote: _, approval: __, asLeft: ___, ...without } = { ...fullJob, planned };
    const offered = { ...without, quote: fullJob.quote };
    const pageOf = async (document: unknown): Promise<string> => {
      const { at } = await owners.linkTo(
        await owners.takeIn({ ...Object(document), job: { title: 'Planned' } }),
      );
      return (await owners.get(`${at}/write-up/sheet.html`)).text();
    };
    expect(await pageOf(without)).not.toContain('As planned');
    expect(await pageOf(offered)).toContain('As planned');
  });

  it('shows prices only of a quote', async () => {
    const { at } = await owners.linkTo(job);
    expect(await (await owners.get(at)).text()).toContain('93.00 GBP');
    const { quote: _, approval: __, ...without } = fullJob;
    const plain = await owners.linkTo(await owners.takeIn({ ...without, job: { title: 'Plain' } }));
    expect(await (await owners.get(plain.at)).text()).not.toMatch(/GBP|Quote/);
  });

  it('is kept by nobody on the way, found by no search, and tells no other site where it is', async () => {
    const { at } = await owners.linkTo(job);
    for (const path of [
      at,
      `${at}/drawing`,
      `${at}/reminders.ics`,
      `/api${at}`,
      '/owner/wrong',
      '/api/owner/wrong',
    ]) {
      const { headers } = await owners.get(path);
      expect(headers.get('cache-control')).toBe('no-store');
      expect(headers.get('referrer-policy')).toBe('no-referrer');
      expect(headers.get('x-robots-tag')).toContain('noindex');
    }
  });

  it('has a drawing that never runs anything', async () => {
    const { at } = await owners.linkTo(job);
    const drawing = await owners.get(`${at}/drawing?theme=dark`);
    expect(drawing.headers.get('content-type')).toContain('image/svg+xml');
    expect(drawing.headers.get('content-security-policy')).toMatch(/default-src 'none'.*sandbox/);
    expect(await drawing.text()).toMatch(/^<svg/);
  });

  it('is told harmlessly, whatever the job is called', async () => {
    const title = '"><img src=x onerror=alert(1)>';
    const { at } = await owners.linkTo(await owners.takeIn({ ...fullJob, job: { title } }));
    const text = await (await owners.get(at)).text();
    expect(text).not.toContain('<img src=x');
    expect(text).toContain('&lt;img src=x');
  });

  it('changes with the job, and goes with a job that is put away', async () => {
    const number = await owners.takeIn(jobCalled('Before'));
    const { at } = await owners.linkTo(number);
    await owners.get(at);
    const { store } = owners.server.services;
    const stored = await store.jobs.find(number);
    if (stored === undefined) throw new Error('the job is not there');
    const document = { ...stored.document, job: { ...stored.document.job, title: 'After' } };
    await store.jobs.revise({ number, base: 1, by: 'rosalind', document });
    expect(await (await owners.get(at)).text()).toContain('After');
    await store.jobs.putAway({ number, base: 2, by: 'rosalind' });
    expect((await owners.get(at)).status).toBe(404);
  });
});
