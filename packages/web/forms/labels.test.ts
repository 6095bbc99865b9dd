import { fullJob } from '@fettle/job/testing/fullJob.ts';
import { expect, test } from 'vitest';
import { labelAt } from './labels.ts';
import { placeOf } from './places.ts';

const document = fullJob;

test.each([
  ['tank.volume', 'Net water volume'],
  ['tank.pH', 'pH'],
  ['tank.planted', 'Plants in the tank'],
  ['tank.waterChange', 'Water change'],
  ['filter.hoses.intake', 'Intake'],
  ['job.stage', 'Where the work stands'],
  ['tank.salinity', 'Practical salinity: 0 fresh, 35 sea water'],
])('%s is called “%s” in forms', (path, label) => {
  expect(labelAt({ document }, placeOf(path))).toBe(label);
});
