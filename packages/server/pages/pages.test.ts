import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fullJob } from '@fettle/job/testing/fullJob.ts';
import { plainPicture } from '@fettle/store/photographs/testing/pictures.ts';
import { Hono } from 'hono';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demoText, jobClientOf, told } from '../testing/jobClient.ts';
import { type TestServer, testServer } from '../testing/testServer.ts';
import { buildCommand } from './noWorkbench.ts';
import { staticFiles } from './staticFiles.ts';
import { style } from './style.ts';

let server: TestServer;
beforeAll(async () => {
  server = await testServer({ share: false });
});
afterAll(() => server.end());

const { send, post, takeIn } = jobClientOf(() => server);
const textOf = async (path: string) => (await send('GET', path)).text();

const hostile = '<script>alert(1)</script>"\'&';
const hostileJob = () =>
  demoText('tall-drum')
    .replace(/title: .*/, `title: ${JSON.stringify(hostile)}\n  tags: [${JSON.stringify(hostile)}]`)
    .replace(/notes: .*/, `notes: ${JSON.stringify(hostile)}`);

describe('the pages without script', () => {
  test('show the jobs in hand, soonest promise first, and find them', async () => {
    const late = await takeIn(demoText('tall-drum').replace('2026-11-20', '2027-03-01'));
    const soon = await takeIn(demoText('back-hanger'));
    const page = await textOf('/');
    expect(page.indexOf(`href="/plain/jobs/${soon}"`)).toBeGreaterThan(0);
    expect(page.indexOf(`href="/plain/jobs/${late}"`)).toBeGreaterThan(
      page.indexOf(`href="/plain/jobs/${soon}"`),
    );
    const found = await textOf('/plain?words=cartridges');
    expect([found.includes(`/plain/jobs/${soon}"`), found.includes(`/plain/jobs/${late}"`)]).toEqual([
      true,
      false,
    ]);
  });

  test('show a job with its drawing and its findings, worst first', async () => {
    const number = await takeIn();
    const page = await textOf(`/plain/jobs/${number}`);
    expect(page).toContain(`src="/api/jobs/${number}/drawing?revision=1&amp;state=as-found"`);
    const severities = [...page.matchAll(/<strong>(grave|marked|slight|note|strength)<\/strong>/g)].map(
      ([, severity]) => ['grave', 'marked', 'slight', 'note', 'strength'].indexOf(severity ?? ''),
    );
    expect(severities.length).toBeGreaterThan(2);
    expect(severities).toEqual(severities.toSorted());
  });

  test('show what anybody wrote as text', async () => {
    const number = await takeIn(hostileJob());
    for (const path of ['/', `/plain/jobs/${number}`, `/plain?words=${encodeURIComponent(hostile)}`]) {
      const page = await textOf(path);
      expect(page).not.toContain('<script');
      expect(page).not.toMatch(/\son\w+=|\sstyle=|<style|javascript:/i);
    }
    expect(await textOf(`/plain/jobs/${number}`)).toContain('&lt;script&gt;alert(1)&lt;/script&gt;');
    expect(await textOf(`/api/jobs/${number}/drawing`)).not.toContain('<script');
  });

  test('have a style of their own, and a drawing that can run nothing', async () => {
    const answer = await send('GET', '/assets/fettle.css');
    expect([answer.headers.get('Content-Type'), await answer.text()]).toEqual([
      'text/css; charset=utf-8',
      style,
    ]);
    const number = await takeIn();
    const drawing = await send('GET', `/api/jobs/${number}/drawing`);
    expect(drawing.headers.get('Content-Security-Policy')).toContain('sandbox');
    expect(drawing.headers.get('X-Content-Type-Options')).toBe('nosniff');
  });
});

describe('what hangs on a job', () => {
  const measured = { kind: 'ammonia', value: '0.25 mg/L', day: '2026-11-02', note: 'after a feed' };

  test('is shown on its page: quote with its sum, readings since, photographs in small', async () => {
    const number = await takeIn(JSON.stringify({ ...fullJob, job: { title: 'With everything' } }));
    await post(`/api/jobs/${number}/readings`, measured);
    const body = new Uint8Array(await plainPicture(60, 40, 3).png().toBuffer());
    const picture = `/api/jobs/${number}/attachments`;
    const attached = await send(
      'POST',
      `${picture}?name=gap.png&caption=${encodeURIComponent('The gap <b>')}`,
      {
        body,
        type: 'image/png',
      },
    );
    const { id } = await told(attached);
    const page = await textOf(`/plain/jobs/${number}`);
    for (const says of ['Quote', 'Readings since', 'Photographs']) expect(page).toContain(`>${says}</h2>`);
    for (const says of [
      '2 × seal-strip',
      '40.00 GBP',
      '3.00 GBP',
      '6 months on seals',
      'Approved on 2026-11-06',
    ])
      expect(page).toContain(says);
    for (const says of ['Ammonia', '0.25 mg/L', 'after a feed', 'The gap &lt;b&gt;'])
      expect(page).toContain(says);
    expect(page).toContain(`<a href="${picture}/${id}"><img src="${picture}/${id}/thumbnail"`);
    expect(page).not.toMatch(/<script|\sstyle=/);
    expect((await send('GET', `${picture}/${id}/thumbnail`)).status).toBe(200);
  });

  test('takes no room where there is nothing', async () => {
    const page = await textOf(`/plain/jobs/${await takeIn()}`);
    expect(page).not.toMatch(/Quote|Readings since|Photographs/);
  });

  test('is open in the sum where a price is missing, and the missing one is told', async () => {
    const quote = { labour: [{ work: 'Take it apart' }] };
    const document = { ...fullJob, job: { title: 'Open' }, quote, money: undefined };
    const page = await textOf(`/plain/jobs/${await takeIn(JSON.stringify(document))}`);
    expect(page).toMatch(/In all<\/th><td class="amount">open</);
    expect(page).toMatch(/<p class="fault">[^<]*quote\.labour/);
  });
});

describe('colours', () => {
  const luminance = (colour: string): number => {
    const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
      const value = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
      return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  };
  const contrast = (one: string, other: string): number => {
    const [light = 0, dark = 0] = [luminance(one), luminance(other)].toSorted((a, b) => b - a);
    return (light + 0.05) / (dark + 0.05);
  };
  const themes = [...style.matchAll(/:root \{([^}]*)\}/g)].map(([, block]) =>
    Object.fromEntries(
      [...(block ?? '').matchAll(/--(\w+): (#[0-9a-f]{6})/g)].map(([, name, colour]) => [name, colour]),
    ),
  );

  test('of words stand out from the ground by 4.5 to 1, lines by 3 to 1, by day, by night and in print', () => {
    expect(themes).toHaveLength(3);
    for (const { paper = '', ink = '', soft = '', line = '', water = '', fault = '', field = '' } of themes) {
      for (const words of [ink, soft, water, fault])
        expect(contrast(words, paper), words).toBeGreaterThanOrEqual(4.5);
      expect(contrast(ink, field)).toBeGreaterThanOrEqual(4.5);
      expect(contrast(line, paper), line).toBeGreaterThanOrEqual(3);
    }
  });
});

describe('a server whose workbench is not built', () => {
  test('says so on its first page, with the command that builds it, and nowhere else', async () => {
    const first = await textOf('/');
    expect(first).toContain('The workbench is not built');
    expect(first).toContain(buildCommand);
    const { scripts } = JSON.parse(readFileSync(new URL('../../../package.json', import.meta.url), 'utf8'));
    expect(scripts).toHaveProperty(buildCommand.replace('npm run ', ''));
    expect(await textOf('/plain')).not.toContain('not built');
  });
});

describe('files of the built workbench', () => {
  let folder: string;
  const app = new Hono();
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'fettle-static-'));
    mkdirSync(join(folder, 'inside', 'assets'), { recursive: true });
    writeFileSync(join(folder, 'secret.txt'), 'secret');
    writeFileSync(join(folder, 'inside', 'index.html'), '<p>workbench</p>');
    writeFileSync(join(folder, 'inside', '.hidden'), 'hidden');
    writeFileSync(join(folder, 'inside', 'assets', 'bench-Ab3dE6gH.js'), '1');
    symlinkSync(join(folder, 'secret.txt'), join(folder, 'inside', 'link.txt'));
    symlinkSync(folder, join(folder, 'inside', 'up'));
    const files = staticFiles(join(folder, 'inside'));
    app.get('*', (context) => files.answer(context, context.req.path));
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  test('are served, those with a hash in their name for ever', async () => {
    const page = await app.request('/index.html');
    expect([await page.text(), page.headers.get('Cache-Control')]).toEqual(['<p>workbench</p>', 'no-cache']);
    const script = await app.request('/assets/bench-Ab3dE6gH.js');
    expect(script.headers.get('Content-Type')).toBe('text/javascript; charset=utf-8');
    expect(script.headers.get('Cache-Control')).toContain('immutable');
  });

  test.each([
    '/.hidden',
    '/link.txt',
    '/up/secret.txt',
    '/../secret.txt',
    '/%2e%2e/secret.txt',
    '/..%2fsecret.txt',
    '/assets/',
    '/assets/../index.html%00',
    '//index.html',
  ])('%s leads nowhere', async (path) => {
    const answer = await app.request(`http://127.0.0.1${path}`);
    expect(await answer.text()).not.toMatch(/secret$|hidden$/);
    expect(answer.status).toBe(404);
  });
});
