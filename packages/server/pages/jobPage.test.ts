import { mainsCautions } from '@fettle/engine/planning/steps.ts';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demoText, jobClientOf } from '../testing/jobClient.ts';
import { type TestServer, testServer } from '../testing/testServer.ts';

let server: TestServer;
beforeAll(async () => {
  server = await testServer({ share: false });
});
afterAll(() => server.end());

const { send, post, takeIn } = jobClientOf(() => server);
const textOf = async (path: string) => (await send('GET', path)).text();

/** A line of a list of facts, without its markup. */
const factIn = (page: string, term: string): string | undefined =>
  new RegExp(`<dt>${term}</dt><dd>(.*?)</dd>`).exec(page)?.[1]?.replaceAll(/<[^>]*>/g, '');

const drum = demoText('tall-drum');
const promisedOn = (day: string, stage = '') =>
  drum
    .replace(/received: .*/, 'received: 2020-01-02')
    .replace(/promised: .*/, `promised: ${day}${stage && `\n  stage: ${stage}`}`);

describe('the page of a job', () => {
  test('says where it stands in words: the kind of filter, its stage, also where none is stated', async () => {
    const page = await textOf(`/plain/jobs/${await takeIn()}`);
    expect([factIn(page, 'Kind of filter'), factIn(page, 'Stage')]).toEqual([
      'canister with a stack of baskets',
      'taken in',
    ]);
    const back = await textOf(`/plain/jobs/${await takeIn(promisedOn('2020-02-01', 'handed-back'))}`);
    expect(factIn(back, 'Stage')).toBe('handed back');
    const bench = await textOf('/plain');
    expect(bench).toContain('· handed back · canister with a stack of baskets');
    expect(page + back + bench).not.toContain('basket-stack-canister');
  });

  test.each([
    ['2020-02-01', '', 'late: 2020-02-01'],
    ['2020-02-01', 'planned', 'late: 2020-02-01'],
    ['2020-02-01', 'handed-back', '2020-02-01'],
    ['2999-02-01', '', '2999-02-01'],
  ])('promised on %s, stage “%s”: %s', async (day, stage, says) => {
    const page = await textOf(`/plain/jobs/${await takeIn(promisedOn(day, stage))}`);
    expect(factIn(page, 'Promised')).toBe(says);
  });

  test('gives each figure with its doubt, to no more digits than it is known', async () => {
    const page = await textOf(`/plain/jobs/${await takeIn()}`);
    expect(factIn(page, 'Flow, clean')).toMatch(/^about 6\d\d L\/h \(\d{3} to \d{3}\)$/);
    expect(factIn(page, 'Turnover')).toMatch(/^about 3\.5 times an hour \(\d(\.\d)? to \d(\.\d)?\)$/);
    expect(factIn(page, 'Cleaning')).toMatch(/^after about 3\.5 days \(.+ to .+ days\)$/);
    expect(factIn(page, 'Carries')).toMatch(/^about \d\.\d g\/d \(\d\.\d to \d\.\d\) of dry feed$/);
    expect(factIn(page, 'Cost')).toMatch(/^about \d+0 GBP a year$/);
    expect(page).toContain('In brackets stands the range');
    expect(page).toContain('<h3>How sure, and what to measure next</h3>');
    expect(page).toMatch(/<li>Measure next: .+ of the width of the range\.<\/li>/);
  });

  test('promises nothing of a filter without media', async () => {
    const empty = drum.replace(/^packing:\n(?: .*\n)+/m, 'packing: {}\n');
    const page = await textOf(`/plain/jobs/${await takeIn(empty)}`);
    expect([factIn(page, 'Carries'), factIn(page, 'Cleaning')]).toEqual(['nothing', undefined]);
  });

  test('warns of mains and water, and of what must never be done to this kind of filter', async () => {
    const page = await textOf(`/plain/jobs/${await takeIn()}`);
    for (const says of [mainsCautions.before, mainsCautions.after, 'Never throttle the intake'])
      expect(page).toContain(`<li>${says}`);
  });
});

describe('a job that was built', () => {
  const built = `${drum}\nasLeft:\n  packing:\n    basket-1: [{ medium: foam-20ppi, depth: 40 mm }]\n`;

  test('shows figures, findings and drawing as left, and says so; the assessment of the API stays as found', async () => {
    const number = await takeIn(built);
    const page = await textOf(`/plain/jobs/${number}`);
    for (const says of ['What it does, as left</h2>', 'Findings as left, worst first', 'filter as left with'])
      expect(page).toContain(says);
    const before = await textOf(`/plain/jobs/${await takeIn()}`);
    expect(before).toContain('What it does, as found</h2>');
    expect(factIn(page, 'Carries')).not.toBe(factIn(before, 'Carries'));
    const address = /<img class="drawing" src="([^"]*)"/.exec(page)?.[1]?.replaceAll('&amp;', '&') ?? '';
    const asFound = await textOf(`/api/jobs/${number}/drawing`);
    const asLeft = await textOf(address);
    expect(asLeft).toMatch(/^<svg/);
    expect(asLeft).not.toBe(asFound);
    const api = JSON.parse(await textOf(`/api/jobs/${number}/assessment`));
    expect(api.dutyPoint.flow.value).toBeCloseTo(633, 0);
  });

  test('a drawing of a state that the job does not describe is refused with the field that lacks', async () => {
    const answer = await send('GET', `/api/jobs/${await takeIn()}/drawing?state=as-left`);
    expect(answer.status).toBe(422);
    expect(await answer.text()).toContain('asLeft');
  });
});

describe('the units of the settings', () => {
  const say = async (settings: unknown) => {
    const tag = (await send('GET', '/api/settings')).headers.get('ETag') ?? '';
    const body = JSON.stringify(settings);
    const headers = { 'If-Match': tag };
    const answer = await send('PUT', '/api/settings', { body, type: 'application/json', headers });
    expect(answer.status).toBe(200);
  };

  test('are those of the pages and their drawings; what the API gives stays as it is', async () => {
    const number = await takeIn();
    const { url } = JSON.parse(await (await post(`/api/jobs/${number}/owner-links`, {})).text());
    const owner = new URL(url).pathname;
    const shown = async () => ({
      page: await textOf(`/plain/jobs/${number}`),
      ownerDrawing: await textOf(`${owner}/drawing`),
      assessment: await textOf(`/api/jobs/${number}/assessment`),
      drawing: await textOf(`/api/jobs/${number}/drawing`),
    });
    const metric = await shown();
    await say({ units: 'us' });
    const us = await shown();
    expect(factIn(us.page, 'Flow, clean')).toMatch(/^about 16\d US gal\/h \(\d+ to \d+\)$/);
    expect(factIn(us.page, 'Enough for')).toMatch(/^about \d+ US gal \(\d+ to \d+\) at a normal stock$/);
    const address = `/api/jobs/${number}/drawing?revision=1&amp;state=as-found`;
    expect(metric.page).toContain(`"${address}"`);
    expect(us.page).toContain(`"${address}&amp;units=us"`);
    expect(metric.ownerDrawing).toBe(metric.drawing);
    expect(us.ownerDrawing).toBe(await textOf(`/api/jobs/${number}/drawing?units=us`));
    expect([us.assessment, us.drawing]).toEqual([metric.assessment, metric.drawing]);
    const thin = await textOf(`/plain/jobs/${await takeIn(demoText('back-hanger'))}`);
    expect([/\d\sin\sdeep/.test(thin), /\d\smm\sdeep/.test(thin)]).toEqual([true, false]);
    await say({});
    expect(await shown()).toEqual(metric);
  });
});
