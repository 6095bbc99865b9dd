import { describe, expect, test } from 'vitest';
import { today } from '../print/moments.ts';
import { commandBench } from '../testing/commandBench.ts';
import { addReadings } from './readings.ts';

const { told, json, problems, inRecords } = commandBench(addReadings, 'readings');

const kept = () => inRecords((store) => store.readings.list(1));

describe('follow-up readings by command', () => {
  test('are entered with the day of today or another one, and listed by day', async () => {
    expect(await told('1')).toContain('has no follow-up readings yet: fettle readings 1 add');
    expect(await told('1', 'add', 'jug-flow', '8', 'L/min')).toContain(`${today()} jug-flow 8 L/min, by `);
    await told('1', 'add', 'ammonia', '0.25 mg/L', '--day', '2025-11-02', '--note', 'after a feed');
    expect(await told('1')).toMatch(
      /^Job 1: 2 readings, by day\. 2025-11-02 ammonia 0\.25 mg\/L, by .*: after a feed .* jug-flow 8 L\/min/,
    );
    expect((await json('1')).readings).toEqual(await kept());
  });

  test('stand in the log of who did what', async () => {
    const { reading } = await json('1', 'add', 'nitrite', '0.1 mg/L');
    expect([reading.kind, reading.value]).toEqual(['nitrite', '0.1 mg/L']);
    const [deed] = await inRecords((store) => store.deeds.list({ job: 1 }));
    expect([deed?.what, deed?.about]).toEqual(['reading-entered', 'nitrite']);
  });

  test.each([
    ['a kind that nobody knows', ['1', 'add', 'nitrate', '3 mg/L'], 'kind-not-known', /jug-flow, ammonia/],
    ['a flow for ammonia', ['1', 'add', 'ammonia', '3 L/h'], 'wrong-dimension', /Ammonia: .*concentration/],
    ['a number without a unit', ['1', 'add', 'nitrite', '0.1'], 'no-unit', /no unit/],
    [
      'a day to come',
      ['1', 'add', 'nitrite', '0.1 mg/L', '--day', '2999-01-01'],
      'day-not-allowed',
      /2000-01-01 to/,
    ],
    [
      'a note without end',
      ['1', 'add', 'nitrite', '0.1 mg/L', '--note', 'x'.repeat(501)],
      'too-long',
      /501 characters; at most 500/,
    ],
    ['no value', ['1', 'add', 'nitrite'], 'command-line-readings', /needs what was measured/],
    ['a note where nothing is entered', ['1', '--note', 'x'], 'command-line-readings', /go with/],
    ['a job that is not there', ['7', 'add', 'nitrite', '0.1 mg/L'], 'no-such-job', /no job 7/],
  ] as const)('with %s are refused, and nothing is written', async (_what, words, code, says) => {
    const [problem] = await problems(...words);
    expect([problem?.code, problem?.says]).toEqual([code, expect.stringMatching(says)]);
    expect(await kept()).toEqual([]);
  });
});
