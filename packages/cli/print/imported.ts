import type { ImportedExport } from '../records/importExport.ts';
import type { ImportedFile } from '../records/importJobs.ts';
import { namedFile } from '../records/incoming.ts';
import { changedFields } from './changes.ts';
import { wrap } from './layout.ts';
import { momentText } from './moments.ts';

/** A file without a number that was taken in once already. */
const beforeText = (
  { file, number }: ImportedFile,
  { takenInAt, changedSince, putAway }: NonNullable<ImportedFile['before']>,
): string => {
  const since = [...(changedSince ? ['was changed'] : []), ...(putAway ? ['was put away'] : [])];
  const then = since.length === 0 ? '' : ` and ${since.join(' and ')} since`;
  return `${namedFile(file)} says the same as job ${number}, which was taken in on ${momentText(takenInAt)}${then}; nothing was written. Where it is another filter, --new takes it in as a job of its own.`;
};

/** What became of one job file, one sentence or two. */
const fileText = (imported: ImportedFile): string => {
  const { file, number, revision, how, changes, tookPlaceOf, before } = imported;
  const name = namedFile(file);
  if (how === 'taken-in') return `Took in ${name} as job ${number}.`;
  if (before !== undefined) return beforeText(imported, before);
  if (how === 'there-already')
    return `Job ${number} has all that ${name} says already, at revision ${revision}; nothing was written.`;
  const now = `Job ${number} is now at revision ${revision}`;
  if (how === 'merged') return `${now}, with the changes of both sides: ${changedFields(changes, 6)}.`;
  const place =
    tookPlaceOf === undefined
      ? ''
      : ` ${name} does not say from which revision it began; it took the place of revision ${tookPlaceOf}.`;
  return `${now}, changed in ${changedFields(changes, 6)}.${place}`;
};

const verbs: Readonly<Record<ImportedFile['how'], string>> = {
  'taken-in': 'taken in',
  'there-already': 'there already',
  revised: 'made a new revision',
  merged: 'merged',
};

const sums = <Kind extends string>(kinds: readonly Kind[], words: Readonly<Record<Kind, string>>): string =>
  [...new Set(kinds)]
    .map((kind) => `${kinds.filter((other) => other === kind).length} ${words[kind]}`)
    .join(', ');

const jobWords = {
  laid: 'taken in',
  'there-already': 'there already',
  conflict: 'left alone',
  refused: 'refused',
} as const;

/** Ways to get across what differs, part by part; the folder is that of the job in the export. */
const acrossBy = (number: number, folder: string) => ({
  revisions: `fettle import ${folder}job.yaml --revise makes its newest revision one of job ${number}, --new a job of its own`,
  readings: `fettle readings ${number} add enters those of ${folder}readings.csv that you miss`,
  photographs: `fettle attach ${number} adds those of ${folder}photographs that you miss, fettle photographs ${number} caption ID TEXT says what one shows`,
});

const leftAloneText = ({ number, says, differs }: ImportedExport['jobs'][number]): string[] => {
  if (says === undefined) return [];
  if (differs === undefined) return [`  Job ${number}: ${says}`];
  const across = acrossBy(number, `jobs/${String(number).padStart(6, '0')}/`);
  return [
    `  Job ${number} was left alone: it ${says}`,
    ...differs
      .filter(({ part, inExport, changed }) => part === 'revisions' || inExport + changed > 0)
      .map(({ part }) => `    Its ${part}: ${across[part]}.`),
  ];
};

const bookText = ({ name, result }: ImportedExport['books'][number]): string[] =>
  result === 'conflict'
    ? [
        `  The ${name} ${name === 'shelf' ? 'was' : 'were'} left alone: here is another history. fettle ${name} --from ${name}.yaml --revise puts what the export says in its place.`,
      ]
    : [];

const exportText = ({ from, jobs, books }: ImportedExport): string[] => {
  const results = jobs.map(({ result }) => result);
  const counted = jobs.length === 0 ? 'no jobs' : `jobs: ${sums(results, jobWords)}`;
  const laid = books.map(({ name, result }) => `${name} ${jobWords[result]}`);
  const more = [...jobs.flatMap(leftAloneText), ...books.flatMap(bookText)];
  const paths = more.some((line) => line.includes('fettle '))
    ? ['  These files are in the export; an archive must be unpacked for that.']
    : [];
  return [`${namedFile(from)}: ${[counted, ...laid].join('; ')}.`, ...more, ...paths];
};

/** What of a file was never filled in; other notes are told where the job is looked at. */
const unfilledText = ({ file, notes }: ImportedFile): string[] =>
  notes.filter(({ code }) => code === 'template-values').map(({ says }) => `${namedFile(file)}: ${says}`);

/** What an import did, a sentence for each file and a sum where there are several. */
export const printImported = (files: readonly ImportedFile[], exports: readonly ImportedExport[]): string => {
  const lines = [
    ...files.flatMap((file) => [fileText(file), ...unfilledText(file)]),
    ...exports.flatMap(exportText),
  ];
  if (files.length > 1)
    lines.push(
      `${files.length} files: ${sums(
        files.map(({ how }) => how),
        verbs,
      )}.`,
    );
  return lines.map((line) => wrap(line, 2)).join('\n');
};
