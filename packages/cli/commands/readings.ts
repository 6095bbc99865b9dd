import type { ReadingNote } from '@fettle/server/owner/readingNotes.ts';
import type { StoredJob } from '@fettle/store/contract/jobs.ts';
import { type Reading, readingKinds } from '@fettle/store/contract/readings.ts';
import type { Command } from 'commander';
import { BadInput, badInput } from '../exits.ts';
import { type CommonOptions, outputFor, writeJson, writeList } from '../output.ts';
import { countText } from '../print/counts.ts';
import { wrap } from '../print/layout.ts';
import { today } from '../print/moments.ts';
import { readingLine, readingWords } from '../print/readings.ts';
import { type DataOptions, withDataOption } from '../records/dataFolder.ts';
import { dataWords, jobNumbered, type Records, withRecords, writeDown } from '../records/records.ts';
import { jobNumber, withCommonOptions } from './common.ts';

interface ReadingsFlags extends CommonOptions, DataOptions {
  readonly day?: string;
  readonly note?: string;
}

const actions = ['add', 'remove'] as const;

/** What was typed after the number. */
interface Typed {
  readonly action: (typeof actions)[number] | undefined;
  /** What was measured, or the id of the reading that is taken back. */
  readonly what: string | undefined;
  readonly value: readonly string[];
}

/** Arguments and options as the command line hands them over. */
type Given = [number, Typed['action'], Typed['what'], Typed['value'], ReadingsFlags];

const wanted = (says: string, allowed: string) =>
  badInput({ code: 'command-line-readings', path: '', says, allowed });

/** A day or a note belongs to a reading that is entered; where it is not, it was meant otherwise. */
const demandWhole = ({ action, what, value }: Typed, { day, note }: ReadingsFlags): void => {
  if (action !== 'add' && (day !== undefined || note !== undefined))
    throw wanted(
      '--day and --note go with readings NUMBER add.',
      'readings NUMBER add KIND VALUE --day DAY --note TEXT',
    );
  if (action === 'add' && (what === undefined || value.length === 0))
    throw wanted(
      'readings add needs what was measured and its value.',
      `one of ${readingKinds.join(', ')}, then the value with its unit`,
    );
  if (action === 'remove' && (what === undefined || value.length > 0))
    throw wanted(
      'readings remove needs the id of one reading.',
      '16 letters and digits, as fettle readings NUMBER lists them',
    );
};

interface Entered {
  readonly reading: Reading;
  readonly notes: readonly ReadingNote[];
}

const entered = async (
  records: Records,
  job: StoredJob,
  { what: kind = '', value, day = today(), note = '' }: Typed & ReadingsFlags,
): Promise<Entered> => {
  const { readReading } = await import('@fettle/server/owner/readReading.ts');
  const { readingNotes } = await import('@fettle/server/owner/readingNotes.ts');
  const read = readReading({ kind, value: value.join(' '), day, note }, new Date());
  if (!read.ok) throw new BadInput(read.problems);
  const notes = await readingNotes(records.store, job, [read.reading]);
  const reading = await records.store.readings.add({ ...read.reading, job: job.number, by: records.by });
  await writeDown(records, { what: 'reading-entered', job: job.number, about: reading.kind });
  return { reading, notes };
};

/** Takes a reading back; gives what it said. */
const removed = async ({ store, by }: Records, job: number, id: string): Promise<Reading> => {
  const { readingRemoved } = await import('@fettle/server/owner/readingRemoved.ts');
  const reading = (await store.readings.list(job)).find((each) => each.id === id);
  const done =
    reading !== undefined && (await store.readings.remove({ job, id, by, log: readingRemoved(reading) }));
  if (done) return reading;
  throw badInput({
    code: 'no-such-reading',
    path: '',
    says: `Job ${job} has no reading ${id}; fettle readings ${job} lists those that it has.`,
  });
};

const show = async ({ store }: Records, number: number, flags: ReadingsFlags): Promise<void> => {
  const readings = await store.readings.list(number);
  writeList(outputFor(flags), {
    json: { number, readings },
    none: wrap(
      `Job ${number} has no follow-up readings yet: fettle readings ${number} add jug-flow "8 L/min"${dataWords(flags)}`,
    ),
    head: wrap(`Job ${number}: ${countText(readings.length, 'reading')}, by day.`),
    lines: readings.map(readingLine),
  });
};

const run = async (number: number, typed: Typed, flags: ReadingsFlags): Promise<void> => {
  const output = outputFor(flags);
  demandWhole(typed, flags);
  await withRecords(flags, { begin: false }, async (records) => {
    const job = await jobNumbered(records, number);
    if (typed.action === undefined) return show(records, number, flags);
    if (typed.action === 'remove') {
      const reading = await removed(records, number, typed.what ?? '');
      if (output.json) writeJson(output, { number, removed: reading.id });
      else output.write(wrap(`Taken back from job ${number}, and kept in the log: ${readingWords(reading)}`));
      return undefined;
    }
    const { reading, notes } = await entered(records, job, { ...typed, ...flags });
    if (output.json) writeJson(output, { number, reading, notes });
    else
      output.write(
        [
          wrap(`Entered for job ${number}:`),
          readingLine(reading),
          ...notes.map(({ says }) => wrap(says)),
        ].join('\n'),
      );
    return undefined;
  });
};

export const addReadings = (program: Command): void => {
  const command = withDataOption(withCommonOptions(program.command('readings')));
  command
    .summary('follow-up readings of a job; enter one, or take it back')
    .description(
      `List the readings that were taken after the filter went back, enter one (its kind, ${readingKinds.join(', ')}, and its value with the unit; ammonia as N, as NH3 or as NH4 and nitrite as N or as NO2, where the test says it), or take one back by its id.`,
    )
    .argument('<number>', 'number of the job', jobNumber)
    .addArgument(command.createArgument('[action]', 'what to do; the list, where left out').choices(actions))
    .argument('[what]', 'what was measured, or the id of the reading to take back')
    .argument('[value...]', 'as it was read, with its unit')
    .option('--day <day>', 'day on which it was taken, such as 2026-11-02; today, where left out')
    .option('--note <text>', 'anything else about it')
    .addHelpText(
      'after',
      '\nExamples:\n  fettle readings 12\n  fettle readings 12 add jug-flow 8 L/min\n  fettle readings 12 add ammonia "0.25 mg/L as N" --day 2026-11-02\n  fettle readings 12 remove sxmjk3cw2t5v9a4b',
    )
    .action(async (...[number, action, what, value, flags]: Given) =>
      run(number, { action, what, value }, flags),
    );
};
