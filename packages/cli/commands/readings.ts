import { type Reading, readingKinds } from '@fettle/store/contract/readings.ts';
import type { Command } from 'commander';
import { BadInput, badInput } from '../exits.ts';
import { type CommonOptions, outputFor, writeJson, writeList } from '../output.ts';
import { countText } from '../print/counts.ts';
import { wrap } from '../print/layout.ts';
import { today } from '../print/moments.ts';
import { readingLine } from '../print/readings.ts';
import { type DataOptions, withDataOption } from '../records/dataFolder.ts';
import { dataWords, jobNumbered, type Records, withRecords, writeDown } from '../records/records.ts';
import { jobNumber, withCommonOptions } from './common.ts';

interface ReadingsFlags extends CommonOptions, DataOptions {
  readonly day?: string;
  readonly note?: string;
}

/** What was typed after the number. */
interface Typed {
  readonly action: 'add' | undefined;
  readonly kind: string | undefined;
  readonly value: readonly string[];
}

/** Arguments and options as the command line hands them over. */
type Given = [number, Typed['action'], Typed['kind'], Typed['value'], ReadingsFlags];

const wanted = (says: string, allowed: string) =>
  badInput({ code: 'command-line-readings', path: '', says, allowed });

/** A day or a note belongs to a reading that is entered; where it is only looked at, it was meant otherwise. */
const demandWhole = ({ action, kind, value }: Typed, { day, note }: ReadingsFlags): void => {
  if (action === undefined && (day !== undefined || note !== undefined))
    throw wanted(
      '--day and --note go with readings NUMBER add.',
      'readings NUMBER add KIND VALUE --day DAY --note TEXT',
    );
  if (action === 'add' && (kind === undefined || value.length === 0))
    throw wanted(
      'readings add needs what was measured and its value.',
      `one of ${readingKinds.join(', ')}, then the value with its unit`,
    );
};

const entered = async (
  records: Records,
  number: number,
  { kind = '', value, day = today(), note = '' }: Omit<Typed, 'action'> & ReadingsFlags,
): Promise<Reading> => {
  const { readReading } = await import('@fettle/server/owner/readReading.ts');
  const read = readReading({ kind, value: value.join(' '), day, note }, new Date());
  if (!read.ok) throw new BadInput(read.problems);
  const reading = await records.store.readings.add({ ...read.reading, job: number, by: records.by });
  await writeDown(records, { what: 'reading-entered', job: number, about: reading.kind });
  return reading;
};

const run = async (number: number, typed: Typed, flags: ReadingsFlags): Promise<void> => {
  const output = outputFor(flags);
  demandWhole(typed, flags);
  await withRecords(flags, { begin: false }, async (records) => {
    await jobNumbered(records, number);
    if (typed.action === undefined) {
      const readings = await records.store.readings.list(number);
      const more = dataWords(flags);
      writeList(output, {
        json: { number, readings },
        none: wrap(
          `Job ${number} has no follow-up readings yet: fettle readings ${number} add jug-flow "8 L/min"${more}`,
        ),
        head: wrap(`Job ${number}: ${countText(readings.length, 'reading')}, by day.`),
        lines: readings.map(readingLine),
      });
      return;
    }
    const reading = await entered(records, number, { ...typed, ...flags });
    if (output.json) writeJson(output, { number, reading });
    else output.write(`${wrap(`Entered for job ${number}:`)}\n${readingLine(reading)}`);
  });
};

export const addReadings = (program: Command): void => {
  const command = withDataOption(withCommonOptions(program.command('readings')));
  command
    .summary('follow-up readings of a job, and entering one')
    .description(
      `List the readings that were taken after the filter went back, or enter one: its kind (${readingKinds.join(', ')}) and its value with the unit; ammonia and nitrite say as what they are counted.`,
    )
    .argument('<number>', 'number of the job', jobNumber)
    .addArgument(command.createArgument('[action]', 'what to do; the list, where left out').choices(['add']))
    .argument('[kind]', 'what was measured')
    .argument('[value...]', 'as it was read, with its unit')
    .option('--day <day>', 'day on which it was taken, such as 2026-11-02; today, where left out')
    .option('--note <text>', 'anything else about it')
    .addHelpText(
      'after',
      '\nExamples:\n  fettle readings 12\n  fettle readings 12 add jug-flow 8 L/min\n  fettle readings 12 add ammonia "0.25 mg/L as N" --day 2026-11-02',
    )
    .action(async (...[number, action, kind, value, flags]: Given) =>
      run(number, { action, kind, value }, flags),
    );
};
