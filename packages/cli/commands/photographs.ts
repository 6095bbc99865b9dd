import type { Attachment } from '@fettle/store/contract/attachments.ts';
import type { Command } from 'commander';
import { badInput } from '../exits.ts';
import { type CommonOptions, outputFor, writeJson, writeList } from '../output.ts';
import { countText } from '../print/counts.ts';
import { wrap } from '../print/layout.ts';
import { wholePhotographLine } from '../print/photographs.ts';
import { demandShort } from '../records/caption.ts';
import { type DataOptions, withDataOption } from '../records/dataFolder.ts';
import { dataWords, jobNumbered, type Records, withRecords, writeDown } from '../records/records.ts';
import { jobNumber, withCommonOptions } from './common.ts';

type Flags = CommonOptions & DataOptions;

const actions = ['caption', 'remove'] as const;
type Action = (typeof actions)[number];

/** What was typed after the number. */
interface Typed {
  readonly action: Action | undefined;
  readonly id: string | undefined;
  readonly text: readonly string[];
}

/** Arguments and options as the command line hands them over. */
type Given = [number, Typed['action'], Typed['id'], Typed['text'], Flags];

const wanted = (says: string, allowed: string) =>
  badInput({ code: 'command-line-photographs', path: '', says, allowed });

const demandWhole = ({ action, id, text }: Typed): void => {
  if (action !== undefined && id === undefined)
    throw wanted(
      `photographs ${action} needs the id of a photograph.`,
      '16 letters and digits, as fettle photographs NUMBER lists them',
    );
  if (action === 'caption' && text.length === 0)
    throw wanted('photographs caption needs a text.', 'what is seen, or "" for nothing');
  if (action === 'remove' && text.length > 0)
    throw wanted('photographs remove takes one photograph alone.', 'one id');
  if (action === 'caption') demandShort(text.join(' '));
};

/** Without what is kept of one that was taken off. */
const shown = ({ removedAt: _, ...photograph }: Attachment) => photograph;

const noPhotograph = (job: number, id: string) =>
  badInput({
    code: 'no-such-photograph',
    path: '',
    says: `Job ${job} has no photograph ${id}; fettle photographs ${job} lists those that it has.`,
  });

/** Does what was asked for; gives the photograph as it is now, or was before it was taken off. */
const changed = async (
  records: Records,
  number: number,
  { action, id = '', text }: Typed,
): Promise<Attachment> => {
  const { attachments } = records.store;
  const before = await attachments.find(number, id);
  const done =
    action === 'caption'
      ? await attachments.caption({ job: number, id, caption: text.join(' ') })
      : await attachments.remove({ job: number, id });
  if (!done || before === undefined) throw noPhotograph(number, id);
  const what = action === 'caption' ? 'picture-captioned' : 'picture-removed';
  await writeDown(records, { what, job: number, about: id });
  return (await attachments.find(number, id)) ?? before;
};

const saysOf = ({ name, caption, job }: Attachment, action: Action): string => {
  if (action === 'remove') return `${name} is off job ${job}; backups made before still hold it.`;
  return caption === '' ? `${name} has no caption now.` : `${name} is captioned now: ${caption}`;
};

const run = async (number: number, typed: Typed, flags: Flags): Promise<void> => {
  const output = outputFor(flags);
  const { action } = typed;
  demandWhole(typed);
  await withRecords(flags, { begin: false }, async (records) => {
    await jobNumbered(records, number);
    if (action === undefined) {
      const photographs = await records.store.attachments.list(number);
      writeList(output, {
        json: { number, photographs: photographs.map(shown) },
        none: wrap(
          `Job ${number} has no photographs yet: fettle attach ${number} photo.jpg${dataWords(flags)}`,
        ),
        head: wrap(
          `Job ${number}: ${countText(photographs.length, 'photograph')}, those added first on top.`,
        ),
        lines: photographs.map(wholePhotographLine),
      });
      return;
    }
    const photograph = await changed(records, number, typed);
    if (!output.json) output.write(wrap(saysOf(photograph, action)));
    else if (action === 'caption') writeJson(output, { number, photograph: shown(photograph) });
    else writeJson(output, { number, removed: photograph.id });
  });
};

export const addPhotographs = (program: Command): void => {
  const command = withDataOption(withCommonOptions(program.command('photographs')));
  command
    .summary('photographs of a job; caption one, or take it off')
    .description(
      'List the photographs of a job with what they show, their size and when they came, say what one shows, or take one off the job. fettle attach adds some, fettle open --photographs writes them to a folder.',
    )
    .argument('<number>', 'number of the job', jobNumber)
    .addArgument(command.createArgument('[action]', 'what to do; the list, where left out').choices(actions))
    .argument('[id]', 'which photograph')
    .argument('[text...]', 'the caption')
    .addHelpText(
      'after',
      '\nExamples:\n  fettle photographs 12\n  fettle photographs 12 caption sxmjk3cw2t5v9a4b "The gap above basket 2"\n  fettle photographs 12 remove sxmjk3cw2t5v9a4b',
    )
    .action(async (...[number, action, id, text, flags]: Given) => run(number, { action, id, text }, flags));
};
