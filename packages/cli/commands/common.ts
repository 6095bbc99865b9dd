import type { Model } from '@fettle/engine/model/model.ts';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import type { Note } from '@fettle/job/notes.ts';
import { type PackedState, packedStates } from '@fettle/job/packedStates.ts';
import type { Outcome } from '@fettle/workflows/assessDocument.ts';
import { openState } from '@fettle/workflows/openState.ts';
import { type Command, InvalidArgumentError, Option } from 'commander';
import { BadInput } from '../exits.ts';
import type { DataOptions } from '../records/dataFolder.ts';
import { namedJob } from '../records/jobSource.ts';

/** Options that every command has. */
export const withCommonOptions = (command: Command): Command =>
  command
    .option('--json', 'print JSON with stable keys and fixed units')
    .addOption(
      new Option(
        '--units <system>',
        'units on the screen; else those of the settings for a job of the records, else metric',
      ).choices(['metric', 'us']),
    );

/** A number of an option within bounds. */
export const numberBetween =
  (least: number, most: number, whole = false) =>
  (text: string): number => {
    const value = text.trim() === '' ? Number.NaN : Number(text);
    if (Number.isFinite(value) && value >= least && value <= most && (!whole || Number.isInteger(value)))
      return value;
    throw new InvalidArgumentError(`${whole ? 'A whole' : 'A'} number from ${least} to ${most} is wanted.`);
  };

/** The number of a job in the records, 1 to 999,999,999. */
export const jobNumber = (text: string): number => {
  if (/^\d{1,9}$/.test(text) && Number(text) > 0) return Number(text);
  throw new InvalidArgumentError("A job's number is wanted, such as 12; fettle jobs lists them.");
};

export const dayOption = (): Option =>
  new Option(
    '--day <days>',
    'day on which packings are compared, counted since every bed was cleaned',
  ).argParser(numberBetween(1, 365));

/** Which packing of a job a command looks at. */
export interface StateOption {
  readonly state?: PackedState;
}

export const stateOption = (): Option =>
  new Option('--state <state>', 'which packing of the job: as found where left out').choices(packedStates);

/**
 * Reads a job of a file or of the records into a model, with the units in which it is shown where no option names
 * others. Throws `BadInput` with every problem found.
 */
export const openJob = async (
  word: string,
  options: DataOptions & StateOption,
): Promise<{ readonly model: Model; readonly notes: readonly Note[]; readonly units: System }> => {
  const { source, units } = await namedJob(word, options);
  const reading = openState(source, options.state);
  if (!reading.ok) throw new BadInput(reading.problems);
  return { model: reading.model, notes: reading.notes, units };
};

/** What was made of a job. Throws `BadInput` where its document has problems. */
export const resultOf = <Result>(outcome: Outcome<Result>): Result => {
  if (!outcome.ok) throw new BadInput(outcome.problems);
  return outcome.result;
};
