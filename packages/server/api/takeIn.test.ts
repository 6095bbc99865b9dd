import { readJob } from '@fettle/job/read.ts';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demoText, jobClientOf, told } from '../testing/jobClient.ts';
import { type TestServer, testServer } from '../testing/testServer.ts';

let server: TestServer;
beforeAll(async () => {
  server = await testServer({ share: false });
});
afterAll(() => server.end());

const { send, takeIn } = jobClientOf(() => server);
const drum = demoText('tall-drum');

describe('taking in a job', () => {
  test('gives it a number, a place and an ETag, and says what to know about it', async () => {
    const answer = await send('POST', '/api/jobs', { body: drum, type: 'application/yaml' });
    const { number, revision, notes } = await told(answer);
    expect([answer.status, revision]).toEqual([201, 1]);
    expect(answer.headers.get('Location')).toBe(`/api/jobs/${number}`);
    expect(answer.headers.get('ETag')).toBe('"1"');
    expect(notes).toEqual([]);
  });

  test.each([
    'application/yaml',
    'application/x-yaml',
    'text/yaml; charset=UTF-8',
    'text/x-yaml',
    'application/json',
  ])('as %s', async (type) => {
    const reading = readJob(drum);
    const body = type === 'application/json' && reading.ok ? JSON.stringify(reading.document) : drum;
    expect((await send('POST', '/api/jobs', { body, type })).status).toBe(201);
  });

  test.each([
    ['nothing said', undefined, {}, 'no-content-type'],
    ['plain text', 'text/plain', {}, 'content-type-not-taken'],
    ['a form', 'multipart/form-data; boundary=x', {}, 'content-type-not-taken'],
    ['another charset', 'application/yaml; charset=iso-8859-1', {}, 'charset-not-taken'],
    ['compressed', 'application/yaml', { 'Content-Encoding': 'gzip' }, 'content-encoding-not-taken'],
  ])('not as %s: 415 that names what is taken', async (_, type, headers, code) => {
    const body = new TextEncoder().encode(drum);
    const answer = await send('POST', '/api/jobs', {
      body,
      headers,
      ...(type === undefined ? {} : { type }),
    });
    expect([answer.status, (await told(answer)).code]).toEqual([415, code]);
  });

  test('not where it is larger than any job', async () => {
    const answer = await send('POST', '/api/jobs', { body: 'x'.repeat(2_000_001), type: 'application/yaml' });
    expect(answer.status).toBe(413);
  });

  test('not where it streams without end', async () => {
    const endless = new ReadableStream<Uint8Array>({
      pull: (controller) => controller.enqueue(new Uint8Array(100_000).fill(0x20)),
    });
    const answer = await server.app.request('http://127.0.0.1:4747/api/jobs', {
      method: 'POST',
      headers: { 'Content-Type': 'application/yaml' },
      body: endless,
      duplex: 'half',
    });
    expect(answer.status).toBe(413);
  });

  test.each([
    ['a wrong unit', drum.replace('volume: 180 L', 'volume: 180 kg'), 'wrong-dimension'],
    ['a field twice in JSON', '{"fettle": 1, "fettle": 1}', 'duplicate-field'],
    ['a prototype', '{"fettle": 1, "__proto__": {"a": 1}}', 'unknown-field'],
    ['an alias', 'fettle: 1\ntank: &a {}\nfilter: *a\n', 'yaml-alias'],
    ['broken off', '{"fettle": 1', 'yaml-syntax'],
    ['empty', ' ', 'file-empty'],
  ])('not with %s: 422 with the field and its line', async (_, body, code) => {
    const type = body.startsWith('{"') && body.endsWith('}') ? 'application/json' : 'application/yaml';
    const answer = await send('POST', '/api/jobs', { body, type });
    const { problems, detail } = await told(answer);
    expect(answer.status).toBe(422);
    expect(answer.headers.get('Content-Type')).toBe('application/problem+json');
    expect(problems.map((each: { code: string }) => each.code)).toContain(code);
    expect(detail).toMatch(/\S/);
  });

  test.each([
    ['YAML', drum],
    ['JSON with a comma too many', '{"fettle": 1,}'],
    ['JSON broken off', '{"fettle": 1'],
    ['nothing', ''],
    ['letters of another code', new Uint8Array([0x22, 0xff, 0x22])],
  ])('as JSON not where it is %s: 400 that says how YAML is sent', async (_, body) => {
    const answers = [
      await send('POST', '/api/jobs', { body, type: 'application/json; charset=utf-8' }),
      await send('PUT', '/api/settings', {
        body,
        type: 'application/json',
        headers: { 'If-Match': '"0"' },
      }),
    ];
    for (const answer of answers) {
      const { code, detail } = await told(answer);
      expect([answer.status, code]).toEqual([400, 'not-json']);
      expect(detail).toMatch(/application\/yaml|UTF-8/);
    }
  });

  test('with thousands of unknown fields it lists some and counts all', async () => {
    const fields = Array.from({ length: 3000 }, (_, index) => `a${index}: 1`).join('\n');
    const answer = await send('POST', '/api/jobs', { body: `fettle: 1\n${fields}`, type: 'text/yaml' });
    const { problems, detail } = await told(answer);
    expect([answer.status, problems.length]).toEqual([422, 200]);
    expect(detail).toMatch(/There are 300\d problems in all/);
  });
});

describe('reading a job', () => {
  test('as JSON, as YAML, and not at all where it is still the same', async () => {
    const number = await takeIn();
    const json = await send('GET', `/api/jobs/${number}`);
    const yaml = await send('GET', `/api/jobs/${number}`, { headers: { Accept: 'application/yaml' } });
    const document = await told(json);
    const written = readJob(await yaml.text());
    expect(written.ok && written.document).toEqual(document);
    expect([json.headers.get('ETag'), yaml.headers.get('ETag')]).toEqual(['"1"', '"1-yaml"']);
    expect(json.headers.get('Vary')).toBe('Accept');
    const again = await send('GET', `/api/jobs/${number}`, { headers: { 'If-None-Match': '"7", W/"1"' } });
    expect([again.status, await again.text()]).toEqual([304, '']);
  });

  test('HEAD gives the headers alone', async () => {
    const number = await takeIn();
    const answer = await send('HEAD', `/api/jobs/${number}`);
    expect([answer.status, answer.headers.get('ETag'), await answer.text()]).toEqual([200, '"1"', '']);
  });

  test('not in a form that there is none of', async () => {
    const number = await takeIn();
    const answer = await send('GET', `/api/jobs/${number}`, { headers: { Accept: 'image/png' } });
    expect(answer.status).toBe(406);
  });

  test.each(['0', '01', '-1', '1.0', '1e3', '9999999999', 'abc', '%2e%2e', '999999999'])(
    'there is no job %s',
    async (number) => expect((await send('GET', `/api/jobs/${number}`)).status).toBe(404),
  );
});

describe('what is asked in a wrong way', () => {
  test.each([
    ['unknown=1', 'unknown-query-parameter', 'allowed: words, family'],
    ['count=0', 'bad-query-parameter', 'a whole number from 1 to 1000'],
    ['count=1&count=2', 'repeated-query-parameter', 'given twice'],
    ['order=best', 'bad-query-parameter', 'promised, changed, number'],
    ['__proto__=1', 'unknown-query-parameter', 'allowed'],
  ])('the query %s: 400 that says what is allowed', async (query, code, says) => {
    const answer = await send('GET', `/api/jobs?${query}`);
    const answered = await told(answer);
    expect([answer.status, answered.code]).toEqual([400, code]);
    expect(answered.detail).toContain(says);
  });

  test('another method: 405 with those that there are', async () => {
    const answer = await send('PATCH', '/api/jobs/1');
    expect([answer.status, answer.headers.get('Allow')]).toEqual([405, 'GET, HEAD, PUT, DELETE']);
  });

  test('an address that there is not: 404 with problem details', async () => {
    const answer = await send('GET', '/api/nothing');
    expect([answer.status, (await told(answer)).code]).toEqual([404, 'not-found']);
  });
});
