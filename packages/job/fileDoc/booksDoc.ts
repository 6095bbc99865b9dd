import { settingsSchema } from '../books/settings.ts';
import { shelfBookSchema } from '../books/shelf.ts';
import { fieldRowsOf, tableHead } from './tables.ts';

/** The text of `docs/books.md`, made from the schemas of the books. */
export function booksDoc(): string {
  return [
    '<!-- Made by scripts/job-schema.ts: change the schemas, not this file. -->',
    '',
    '# The shelf and the settings',
    '',
    'Beside the jobs, the records keep two documents of the workshop: what is on the shelf, and what holds for every job. Both are written like [a job](job-file.md), with the same quantities and short names; every field may be left out, and an empty book is a valid one: a file with `{}`, or with nothing but comments. A file without any text is refused, since that is mostly a slip. `packages/job/books/shelf.schema.json` and `packages/job/books/settings.schema.json` are the same as JSON Schemas.',
    '',
    'A job can be filled from the books. Then currency, tariff, labour, prices, the media in hand and own media are written into the job wherever it does not say, so that it stays whole and computes the same anywhere. What the job says always stands. Prices in another currency than the job’s are not taken. A medium of which the amount is 0 is not put on the job’s shelf; where nothing is in hand, the job gets none. The price of a metre of hose is taken where all hoses that have one have the same.',
    '',
    '## The shelf',
    '',
    ...tableHead,
    ...fieldRowsOf(shelfBookSchema),
    '',
    'The fields of an own medium are those of `media` in a job. A medium, own or of the catalogue, and a part each stand once.',
    '',
    '## The settings',
    '',
    ...tableHead,
    ...fieldRowsOf(settingsSchema),
    '',
    'Tariff and labour are in the one currency.',
    '',
    '`units` says in which units figures are shown where nothing else does: by `fettle open`, and by `fettle assess` and `fettle plan` for a job of the records, named by its number; `--units` overrides it. The pages of the server go by it, with their drawings; the owner’s sheet gives figures in both, and its drawing in these. It changes nothing in a job file that is named by its path (metric unless `--units` says otherwise), in JSON, whether printed or over the API, in a drawing that is fetched over the API (`?units=us`), or in what somebody wrote: prices, readings and fields are shown as they were written.',
    '',
  ].join('\n');
}
