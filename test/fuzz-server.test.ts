import { expect, test } from 'vitest';
import { fuzzImports } from '../scripts/records/fuzz/fuzzImports.ts';
import { faultOf } from '../scripts/records/fuzz/oracle.ts';
import { tryServer } from '../scripts/records/fuzz/tryServer.ts';

// `npm run fuzz -- 20000` asks for more; here every kind of request and of damage comes once at least.
test('hostile requests are answered by the rules and change nothing', { timeout: 240_000 }, async () => {
  const trial = await tryServer({ cases: 500, seed: 5 });
  expect(trial.faults).toEqual([]);
  expect(trial.answers.size).toBeGreaterThan(30);
  expect(trial.revisions).toBeGreaterThan(12);
});

test('damaged exports and backups are refused in a sentence or taken whole', {
  timeout: 240_000,
}, async () => {
  const trial = await fuzzImports({ cases: 24, seed: 5 });
  expect(trial.faults).toEqual([]);
});

test('an answer against the rules is seen', () => {
  const json = 'application/problem+json';
  const problem = {
    type: 'urn:fettle:problem:a',
    title: 'A',
    status: 400,
    detail: 'The field a is missing.',
  };
  const answer = (change: object, type = json, status = 400) => {
    const text = JSON.stringify({ ...problem, ...change });
    return faultOf({ status, type, text, mayBeEmpty: false }, false);
  };
  expect(answer({})).toBeUndefined();
  expect(answer({ detail: 'two\nlines.' })).toContain('sentence');
  expect(answer({ detail: '' })).toContain('sentence');
  expect(answer({ status: 404 })).toContain('404');
  expect(answer({ type: 'about:blank' })).toContain('about:blank');
  expect(answer({ detail: 'SQLITE_BUSY: locked.' })).toContain('inside');
  expect(answer({}, 'text/html')).toContain('text/html');
  expect(answer({ status: 500 }, json, 500)).toContain('500');
  expect(answer({ status: 503 }, json, 503)).toBeUndefined();
  expect(faultOf({ status: 404, type: json, text: '', mayBeEmpty: false }, false)).toContain(
    'without a word',
  );
});
