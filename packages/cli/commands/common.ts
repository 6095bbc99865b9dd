import type { Model } from '@fettle/engine/model/model.ts';
import type { Note } from '@fettle/job/problems.ts';
import { readJob } from '@fettle/job/read.ts';
import { type Command, InvalidArgumentError, Option } from 'commander';
import { BadInput } from '../exits.ts';
import { readInput } from '../input.ts';

/** Options that every command has. */
export const withCommonOptions = (command: Command): Command =>
  command
    .option('--json', 'print JSON with stable keys and fixed units')
    .addOption(
      new Option('--units <system>', 'units on the screen').choices(['metric', 'us']).default('metric'),
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

export const dayOption = (): Option =>
  new Option('--day <days>', 'comparison day, days since every bed was cleaned').argParser(
    numberBetween(1, 365),
  );

/** Reads a job file into a model. Throws `BadInput` with every problem found. */
export const openJob = (file: string): { model: Model; notes: readonly Note[] } => {
  const result = readJob(readInput(file));
  if (!result.ok) throw new BadInput(result.problems);
  return { model: result.model, notes: result.notes };
};
