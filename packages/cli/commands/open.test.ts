import { readDocument } from '@fettle/job/read.ts';
import { fullJob } from '@fettle/job/testing/fullJob.ts';
import { describe, expect, test } from 'vitest';
import { commandBench } from '../testing/commandBench.ts';
import { addOpen } from './open.ts';

const { told, json, inRecords } = commandBench(addOpen, 'open');

const filling = {
  kind: 'timed-volume',
  id: 'fill-as-left',
  state: 'as-left',
  volume: '5 L ± 1 %',
  times: ['90 s', '90 s', '90 s'],
};

/** Takes in the full job, changed so, and gives its number. */
const takeIn = async (changes: object): Promise<string> => {
  const reading = readDocument({ ...structuredClone(fullJob), ...changes });
  if (!reading.ok) throw new Error(reading.problems.map(({ says }) => says).join(' '));
  const { document } = reading;
  const { number } = await inRecords((store) => store.jobs.create({ document, by: 'anna' }));
  return String(number);
};

describe('a job whose filter was packed anew', () => {
  test('is told from found to left: feed carried, flow, cleaning; and its filling beside what was computed', async () => {
    const number = await takeIn({ tests: [filling] });
    const text = await told(number);
    expect(text).toMatch(
      /as left feed carried [\d.]+ -> [\d.]+ g\/d .*flow \d+ -> \d+ L\/h .*cleaning after [^.]+ -> [^.]+\./,
    );
    expect(text).toMatch(
      /timed-volume, as-left: measured 200 L\/h ± .*they differ by more than their doubts/,
    );
    const { assessment, later } = await json(number);
    expect(assessment.state).toBe('as-found');
    expect(later.map(({ state }: { state: string }) => state)).toEqual(['planned', 'as-left']);
    expect(later[1].effect.flow.before).toEqual(assessment.carries.flow);
  });

  test('is to be proven while nothing was timed as left, and to be handed back once it was', async () => {
    const job = { stage: 'mapped' };
    expect((await json(await takeIn({ job, tests: [] }))).next).toMatch(
      /^Prove it: .* The job still says mapped \(job\.stage\)/,
    );
    expect((await json(await takeIn({ job, tests: [filling] }))).next).toMatch(/^Hand it back/);
  });

  test('is told by its stage where that is further on', async () => {
    const number = await takeIn({ job: { stage: 'closed' }, tests: [filling] });
    expect((await json(number)).next).toBe('Nothing: the job is closed.');
  });
});

test('a job that is only found has nothing later', async () => {
  expect(await told('1')).not.toContain('From found to later');
  expect(await json('1')).not.toHaveProperty('later');
});
