import type { OwnerLink } from '@fettle/store/contract/people.ts';
import type { Command } from 'commander';
import { badInput } from '../exits.ts';
import { type CommonOptions, type Output, outputFor, writeJson, writeList } from '../output.ts';
import { countText } from '../print/counts.ts';
import { wrap } from '../print/layout.ts';
import { momentText } from '../print/moments.ts';
import { ownerLinkLine } from '../print/ownerLinks.ts';
import { type DataOptions, withDataOption } from '../records/dataFolder.ts';
import { dataWords, jobNumbered, type Records, withRecords, writeDown } from '../records/records.ts';
import { jobNumber, withCommonOptions } from './common.ts';

interface OwnerLinkFlags extends CommonOptions, DataOptions {
  readonly until?: string;
}

const actions = ['list', 'withdraw'] as const;

/** What was typed after the number. */
interface Typed {
  readonly action: (typeof actions)[number] | undefined;
  readonly id: string | undefined;
}

/** Arguments and options as the command line hands them over. */
type Given = [number, Typed['action'], Typed['id'], OwnerLinkFlags];

const wanted = (says: string, allowed: string) =>
  badInput({ code: 'command-line-owner-link', path: '', says, allowed });

const demandWhole = ({ action, id }: Typed, { until }: OwnerLinkFlags): void => {
  if (action === 'withdraw' && id === undefined)
    throw wanted(
      'owner-link withdraw needs the id of a link.',
      '16 letters and digits, as fettle owner-link NUMBER list shows them',
    );
  if (action === 'list' && id !== undefined)
    throw wanted('owner-link list shows all links of a job.', 'no id');
  if (action !== undefined && until !== undefined)
    throw wanted('--until goes with a link that is made.', 'owner-link NUMBER --until DATE');
};

/** The end that was asked for, read as the API reads it. */
const endOf = async ({ until }: OwnerLinkFlags): Promise<{ readonly endsAt?: string }> => {
  if (until === undefined) return {};
  const { readLinkEnd } = await import('@fettle/server/owner/linkEnd.ts');
  const end = readLinkEnd(until, { now: new Date(), field: '--until' });
  if (end.ok) return { endsAt: end.endsAt };
  throw badInput({ code: end.code, path: 'until', says: end.says });
};

/** What each action does with a job's links, and prints. */
interface Work {
  readonly records: Records;
  readonly number: number;
  readonly output: Output;
  readonly flags: OwnerLinkFlags;
}

const madeText = (link: OwnerLink, path: string, { putAway, more }: { putAway: boolean; more: string }) =>
  [
    path,
    wrap(
      `This path, after the address of your server, leads to the owner's sheet of job ${link.job}, ${link.endsAt === undefined ? 'without end' : `until ${momentText(link.endsAt)}`}. It is told this once; whoever has it sees the sheet. To take it back: fettle owner-link ${link.job} withdraw ${link.id}${more}`,
    ),
    ...(putAway
      ? [wrap(`Job ${link.job} is put away: the link leads nowhere until it is brought back.`)]
      : []),
  ].join('\n');

const make = async ({ records, number, output, flags }: Work): Promise<void> => {
  const { hashOfToken, newToken } = await import('@fettle/server/people/token.ts');
  const ends = await endOf(flags);
  const { putAwayAt } = await jobNumbered(records, number);
  const token = newToken();
  const link = await records.store.ownerLinks.add({
    job: number,
    tokenHash: hashOfToken(token),
    by: records.by,
    ...ends,
  });
  await writeDown(records, { what: 'link-made', job: number, about: link.id });
  const path = `/owner/${token}`;
  if (output.json) writeJson(output, { number, id: link.id, path, ...ends });
  else output.write(madeText(link, path, { putAway: putAwayAt !== undefined, more: dataWords(flags) }));
};

const list = async ({ records, number, output, flags }: Work): Promise<void> => {
  await jobNumbered(records, number);
  const links = await records.store.ownerLinks.list(number);
  const now = new Date();
  writeList(output, {
    json: { number, links },
    none: wrap(
      `There is no link to job ${number}. fettle owner-link ${number}${dataWords(flags)} makes one.`,
    ),
    head: wrap(`Job ${number}: ${countText(links.length, 'link')} for its owner.`),
    lines: links.map((link) => ownerLinkLine(link, now)),
  });
};

const withdraw = async ({ records, number, output }: Work, id: string): Promise<void> => {
  await jobNumbered(records, number);
  if (!(await records.store.ownerLinks.withdraw({ job: number, id, by: records.by })))
    throw badInput({
      code: 'no-such-link',
      path: '',
      says: `Job ${number} has no link ${id} that could be withdrawn; fettle owner-link ${number} list shows them.`,
    });
  await writeDown(records, { what: 'link-withdrawn', job: number, about: id });
  if (output.json) writeJson(output, { number, withdrawn: id });
  else output.write(wrap(`Link ${id} to job ${number} is withdrawn; it leads nowhere from now on.`));
};

const run = async (number: number, typed: Typed, flags: OwnerLinkFlags): Promise<void> => {
  demandWhole(typed, flags);
  const { action, id = '' } = typed;
  await withRecords(flags, { begin: false }, (records) => {
    const work = { records, number, output: outputFor(flags), flags };
    if (action === undefined) return make(work);
    return action === 'list' ? list(work) : withdraw(work, id);
  });
};

export const addOwnerLink = (program: Command): void => {
  const command = withDataOption(withCommonOptions(program.command('owner-link')));
  command
    .summary("a link by which an owner sees the job's sheet")
    .description(
      "Make a link to the owner's sheet of a job, list those that there are, or withdraw one. The link works where fettle serve is reached by others; what is secret in it is printed once and not kept.",
    )
    .argument('<number>', 'number of the job', jobNumber)
    .addArgument(
      command.createArgument('[action]', 'what to do; a new link, where left out').choices(actions),
    )
    .argument('[id]', 'which link')
    .option('--until <date>', 'last day of the link, such as 2027-03-31; without end, where left out')
    .addHelpText(
      'after',
      '\nExamples:\n  fettle owner-link 12\n  fettle owner-link 12 list\n  fettle owner-link 12 withdraw sxmjk3cw2t5v9a4b',
    )
    .action(async (...[number, action, id, flags]: Given) => run(number, { action, id }, flags));
};
