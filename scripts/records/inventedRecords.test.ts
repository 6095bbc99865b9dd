import { readDocument } from '@fettle/job/read.ts';
import { expect, test } from 'vitest';
import { chanceFrom } from './chance.ts';
import { inventedJob, lookedAtAgain } from './inventedJobs.ts';
import { inventedPicture } from './inventedPictures.ts';

test('invented jobs read clean, also when looked at again', () => {
  const chance = chanceFrom(11);
  for (let count = 0; count < 40; count++) {
    const job = inventedJob(chance);
    for (const document of [job, lookedAtAgain(job, chance)]) {
      const reading = readDocument(document);
      expect(reading.ok ? [] : reading.problems).toEqual([]);
    }
  }
});

test('the same seed makes the same records, another seed others', () => {
  expect(inventedJob(chanceFrom(3))).toEqual(inventedJob(chanceFrom(3)));
  expect(inventedJob(chanceFrom(3))).not.toEqual(inventedJob(chanceFrom(4)));
  expect(inventedPicture(3).equals(inventedPicture(3))).toBe(true);
  expect(inventedPicture(3).equals(inventedPicture(4))).toBe(false);
});
