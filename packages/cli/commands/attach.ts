import { statSync } from 'node:fs';
import { basename } from 'node:path';
import { type Attachment, mostPictureBytes } from '@fettle/store/contract/attachments.ts';
import type { Command } from 'commander';
import { BadInput, type InputProblem } from '../exits.ts';
import { shownName } from '../fileReasons.ts';
import { readInput } from '../input.ts';
import { type CommonOptions, outputFor, writeJson } from '../output.ts';
import { countText } from '../print/counts.ts';
import { wrap } from '../print/layout.ts';
import { photographLine } from '../print/photographs.ts';
import { demandShort } from '../records/caption.ts';
import { type DataOptions, withDataOption } from '../records/dataFolder.ts';
import { jobNumbered, type Records, withRecords, writeDown } from '../records/records.ts';
import { jobNumber, withCommonOptions } from './common.ts';

interface AttachFlags extends CommonOptions, DataOptions {
  readonly caption?: string;
  readonly keepPlace?: boolean;
}

/** The most that the records and the server take of one picture. */
const photograph = { mostBytes: mostPictureBytes, kind: 'photograph' };

/** A picture that can be read and is not too large; gives its bytes. */
interface Picture {
  readonly file: string;
  readonly bytes: () => Uint8Array;
}

/** Many pictures together may be more than memory holds, so each is read anew when its turn comes. */
const readAgain = (file: string): Picture => ({ file, bytes: () => readInput(file, photograph) });

const readFirst = (file: string): Picture => {
  const bytes = readInput(file, photograph);
  // A pipe can be read only once.
  const isPipe = file === '-' || statSync(file, { throwIfNoEntry: false })?.isFile() !== true;
  return isPipe ? { file, bytes: () => bytes } : readAgain(file);
};

/**
 * Looks at every file before any is attached.
 * @throws BadInput with the problems of all of them
 */
const lookFirst = (files: readonly string[]): readonly Picture[] => {
  const pictures: Picture[] = [];
  const problems: InputProblem[] = [];
  for (const file of files) {
    try {
      pictures.push(readFirst(file));
    } catch (error) {
      if (!(error instanceof BadInput)) throw error;
      problems.push(...error.problems);
    }
  }
  if (problems.length > 0) throw new BadInput(problems);
  return pictures;
};

/** A photograph that was attached, and the ids of those of the job that are the same picture. */
interface Attached extends Attachment {
  readonly sameAs: readonly string[];
}

const attachOne = async (
  { store, by }: Records,
  job: number,
  { picture: { file, bytes }, flags }: { picture: Picture; flags: AttachFlags },
): Promise<Attached | InputProblem> => {
  const { caption, keepPlace = false } = flags;
  const attached = await store.attachments.add({
    job,
    bytes: bytes(),
    name: basename(file),
    keepPlace,
    by,
    ...(caption === undefined ? {} : { caption }),
  });
  if (attached.ok) {
    const { id, hash } = attached.attachment;
    const all = await store.attachments.list(job);
    const same = all.filter((other) => other.hash === hash && other.id !== id);
    return { ...attached.attachment, sameAs: same.map((other) => other.id) };
  }
  const { code, says, allowed } = attached;
  return { code, path: '', says: `${shownName(file)}: ${says}`, allowed };
};

/** A picture may be wanted twice, with another caption, so that it is told and not refused. */
const sameText = ({ job, id, name, sameAs }: Attached): string[] =>
  sameAs.length === 0
    ? []
    : [
        wrap(
          `${name} was there already, the same picture, as ${sameAs.join(', ')}; it is there once more now. fettle photographs ${job} remove ${id} takes it off again.`,
        ),
      ];

const attachedText = (number: number, attached: readonly Attached[]): string =>
  [
    wrap(
      `Attached ${countText(attached.length, 'photograph')} to job ${number}, without what the camera wrote into ${attached.length === 1 ? 'it' : 'them'}:`,
    ),
    ...attached.map(photographLine),
    ...attached.flatMap(sameText),
  ].join('\n');

const run = async (number: number, files: readonly string[], flags: AttachFlags): Promise<void> => {
  const output = outputFor(flags);
  if (flags.caption !== undefined) demandShort(flags.caption);
  const attached: Attached[] = [];
  const problems: InputProblem[] = [];
  await withRecords(flags, { begin: false }, async (records) => {
    await jobNumbered(records, number);
    for (const picture of lookFirst(files)) {
      try {
        const one = await attachOne(records, number, { picture, flags });
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
  else if (!output.json && attached.length > 0) output.write(attachedText(number, attached));
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
