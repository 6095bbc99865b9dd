import { basename } from 'node:path';
import type { Attachment } from '@fettle/store/contract/attachments.ts';
import type { Command } from 'commander';
import { BadInput, type InputProblem } from '../exits.ts';
import { shownName } from '../fileReasons.ts';
import { readInput } from '../input.ts';
import { type CommonOptions, outputFor, writeJson } from '../output.ts';
import { countText } from '../print/counts.ts';
import { wrap } from '../print/layout.ts';
import { type DataOptions, withDataOption } from '../records/dataFolder.ts';
import { jobNumbered, type Records, withRecords, writeDown } from '../records/records.ts';
import { jobNumber, withCommonOptions } from './common.ts';

interface AttachFlags extends CommonOptions, DataOptions {
  readonly caption?: string;
  readonly keepPlace?: boolean;
}

/** More than a picture may have; the records tell how much is allowed. */
const MOST_BYTES = 30_000_000;

const attachOne = async (
  { store, by }: Records,
  job: number,
  { file, flags }: { file: string; flags: AttachFlags },
): Promise<Attachment | InputProblem> => {
  const { caption, keepPlace = false } = flags;
  const bytes = readInput(file, { mostBytes: MOST_BYTES, kind: 'photograph' });
  const attached = await store.attachments.add({
    job,
    bytes,
    name: basename(file),
    keepPlace,
    by,
    ...(caption === undefined ? {} : { caption }),
  });
  if (attached.ok) return attached.attachment;
  const { code, says, allowed } = attached;
  return { code, path: '', says: `${shownName(file)}: ${says}`, allowed };
};

const run = async (number: number, files: readonly string[], flags: AttachFlags): Promise<void> => {
  const output = outputFor(flags);
  const attached: Attachment[] = [];
  const problems: InputProblem[] = [];
  await withRecords(flags, { begin: false }, async (records) => {
    await jobNumbered(records, number);
    for (const file of files) {
      try {
        const one = await attachOne(records, number, { file, flags });
        if ('says' in one) problems.push(one);
        else {
          attached.push(one);
          await writeDown(records, { what: 'picture-attached', job: number, about: one.id });
        }
      } catch (error) {
        if (!(error instanceof BadInput)) throw error;
        problems.push(...error.problems);
      }
    }
  });
  if (output.json && problems.length === 0) writeJson(output, { number, attached });
  else if (!output.json && attached.length > 0)
    output.write(
      wrap(
        `Attached ${countText(attached.length, 'photograph')} to job ${number}, without what the camera wrote into them.`,
      ),
    );
  if (problems.length > 0) throw new BadInput(problems);
};

export const addAttach = (program: Command): void => {
  withDataOption(withCommonOptions(program.command('attach')))
    .summary('add photographs to a job')
    .description(
      'Add photographs to a job. Each is written anew without what the camera wrote into it; the place is kept beside it only where --keep-place asks for it.',
    )
    .argument('<number>', 'number of the job', jobNumber)
    .argument('<pictures...>', 'JPEG, PNG or other pictures')
    .option('--caption <text>', 'what is seen')
    .option('--keep-place', 'keep the place that the camera wrote, beside the picture')
    .addHelpText('after', '\nExample:\n  fettle attach 12 photo.jpg --caption "The gap above basket 2"')
    .action(run);
};
