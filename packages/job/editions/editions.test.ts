import { expect, it } from 'vitest';
import { currentEdition } from '../schema/job.ts';
import { migrations, toCurrentEdition } from './editions.ts';

it('there is a way from every old edition to the current one, and from no other', () => {
  const old = Array.from({ length: currentEdition - 1 }, (_, index) => index + 1);
  expect([...migrations.keys()]).toEqual(old);
});

it('a document of the current edition is left as it is', () => {
  const document = { fettle: currentEdition, tank: {} };
  expect(toCurrentEdition(document)).toEqual({ ok: true, value: document });
});
