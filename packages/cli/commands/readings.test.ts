import { describe, expect, test } from 'vitest';
import { today } from '../print/moments.ts';
import { commandBench } from '../testing/commandBench.ts';
import { addReadings } from './readings.ts';

const { told, json, problems, inRecords } = commandBench(addReadings, 'readings');

const kept = () => inRecords((store) => store.readings.list(1));

describe('follow-up readings by command', () => {
  test('are entered with the day of today or another one, and listed by day', async () => {
    expect(await told('1')).toContain('has no follow-up readings yet: fettle readings 1 add');
    expect(await told('1', 'add', 'jug-flow', '8', 'L/min')).toMatch(
      new RegExp(`^Entered for job 1: [a-z0-9]{16} ${today()} jug-flow 8 L/min, by \\S+$`),
    );
    await told('1', 'add', 'ammonia', '0.25 mg/L', '--day', '2025-11-02', '--note', 'after a feed');
    expect(await told('1')).toMatch(
      /^Job 1: 2 readings, by day\. [a-z0-9]{16} 2025-11-02 ammonia 0\.25 mg\/L, by .*: after a feed .* jug-flow 8 L\/min/,
    );
    expect((await json('1')).readings).toEqual(await kept());
  });

  test('stand in the log of who did what', async () => {
    const { reading } = await json('1', 'add', 'nitrite', '0.1 mg/L');
    expect([reading.kind, reading.value]).toEqual(['nitrite', '0.1 mg/L']);
    const [deed] = await inRecords((store) => store.deeds.list({ job: 1 }));
    expect([deed?.what, deed?.about]).toEqual(['reading-entered', 'nitrite']);
  });

  test('say as what they were understood to be counted, and assume nothing where they do not', async () => {
    expect(await told('1', 'add', 'ammonia', '0.25 mg/L NH4-N')).toMatch(
      /Ammonia: understood to be counted as N\.$/,
    );
    expect(await told('1', 'add', 'nitrite', '0.1 ppm as NO2')).toMatch(/Nitrite: .* counted as NO2\.$/);
    expect(await told('1', 'add', 'ammonia', '0.25 mg/L')).toContain(
      'Ammonia: 0.25 mg/L does not say as what it is counted, and nothing is assumed of it; where the test says so, write as N, as NH3 or as NH4 behind the unit.',
    );
    const { notes } = await json('1', 'add', 'nitrite', '0.1 mg/L');
    expect(notes).toEqual([
      { code: 'basis-not-said', path: 'value', says: expect.stringContaining('as N or as NO2') },
    ]);
  });

  test('may be a flow of nothing, as a blocked filter gives', async () => {
    const { reading, notes } = await json('1', 'add', 'jug-flow', '0 L/min');
    expect([reading.value, notes]).toEqual(['0 L/min', []]);
  });

  test('of a day before the filter came in, or before it was handed back, are taken with a note', async () => {
    const about = (stage: 'tested' | 'handed-back') => ({ number: 1, stage, received: '2025-11-02' });
    await inRecords(async (store) => {
      const document = (await store.jobs.find(1))!.document;
      for (const [base, stage] of [
        [1, 'tested'],
        [2, 'handed-back'],
      ] as const)
        await store.jobs.revise({
          number: 1,
          base,
          by: 'anna',
          document: { ...document, job: about(stage) },
        });
    });
    const noted = async (day: string) => (await json('1', 'add', 'jug-flow', '8 L/min', '--day', day)).notes;
    expect(await noted('2025-11-01')).toEqual([
      {
        code: 'before-it-came-in',
        path: 'day',
        says: 'The day 2025-11-01 is before the filter came in (2025-11-02); it is kept so.',
      },
    ]);
    expect(await noted('2025-11-02')).toEqual([
      { code: 'before-hand-back', path: 'day', says: expect.stringContaining(`handed back (${today()})`) },
    ]);
    expect(await noted(today())).toEqual([]);
    expect((await kept()).map(({ day }) => day)).toEqual(['2025-11-01', '2025-11-02', today()]);
  });

  test('are taken back by their id, and what they said stays in the log', async () => {
    const { reading } = await json('1', 'add', 'jug-flow', '80 L/min', '--note', 'by the jug');
    await json('1', 'add', 'jug-flow', '8 L/min');
    expect(await told('1')).toContain(`${reading.id} ${today()} jug-flow 80 L/min`);
    expect(await told('1', 'remove', reading.id)).toBe(
      `Taken back from job 1, and kept in the log: ${today()} jug-flow 80 L/min, by ${reading.enteredBy}: by the jug`,
    );
    expect((await kept()).map(({ value }) => value)).toEqual(['8 L/min']);
    const [deed] = await inRecords((store) => store.deeds.list({ job: 1 }));
    expect([deed?.what, deed?.who, deed?.about]).toEqual([
      'reading-removed',
      reading.enteredBy,
      `${reading.id}: jug-flow 80 L/min on ${today()}, by ${reading.enteredBy}: by the jug`,
    ]);
    const [again] = await problems('1', 'remove', reading.id);
    expect([again?.code, again?.says]).toEqual(['no-such-reading', expect.stringContaining('lists those')]);
    const [right] = await kept();
    expect(await json('1', 'remove', right?.id ?? '')).toEqual({ number: 1, removed: right?.id });
  });

  test('without a unit are told which units and which forms there are', async () => {
    const [problem] = await problems('1', 'add', 'ammonia', '0.25');
    expect(problem?.allowed).toBe(
      'mg/L, ppm, g/L, µg/L, each followed by as N, as NH3 or as NH4, such as 0.25 mg/L as N',
    );
    const [other] = await problems('1', 'add', 'ammonia', '0.25 mg/L as NO3');
    expect(other?.says).toBe('Ammonia: it is not counted as NO3; allowed: as N, as NH3 or as NH4.');
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
    ['no id', ['1', 'remove'], 'command-line-readings', /needs the id of one reading/],
    ['two ids', ['1', 'remove', 'a', 'b'], 'command-line-readings', /one reading/],
    [
      'a note where one is taken back',
      ['1', 'remove', 'a', '--note', 'x'],
      'command-line-readings',
      /go with/,
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
