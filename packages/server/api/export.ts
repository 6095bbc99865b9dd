import { writeExport } from '@fettle/store/plainFiles/exportAll.ts';
import { type OpenAPIHono, z } from '@hono/zod-openapi';
import type { Environment, Services } from '../services.ts';
import { writeDown } from './deeds.ts';
import { Refusal } from './refusal.ts';
import { addRoute } from './route.ts';
import { ClientLeft, mostZipBytes, mostZipFiles, zipStream } from './zipStream.ts';

/** Files that a job has beside its revisions and photographs, at most. */
const FILES_PER_JOB = 4;
/** Files that a book has beside its revisions. */
const FILES_PER_BOOK = 2;
/** What the archive is, which jobs and deeds there are, and the list of its files. */
const OTHER_FILES = 4;

const tooMany = (): Refusal =>
  new Refusal({
    status: 409,
    code: 'too-much-for-zip',
    title: 'Too much for one archive',
    detail: `There are more than ${mostZipFiles} files or ${mostZipBytes / 1e9} GB, which no ZIP archive of the usual form holds; fettle export writes them into a folder.`,
  });

/** At most so many files are in an archive of everything, and about so many bytes. */
const sizeOf = async ({ store }: Services): Promise<{ readonly files: number; readonly bytes: number }> => {
  const { jobs, revisions, attachments, attachmentBytes, databaseBytes } = await store.checkup();
  const books = await Promise.all((['shelf', 'settings'] as const).map((name) => store.books.find(name)));
  const ofBooks = books.reduce((sum, { revision }) => sum + revision + FILES_PER_BOOK, 0);
  return {
    files: FILES_PER_JOB * jobs + revisions + attachments + ofBooks + OTHER_FILES,
    bytes: attachmentBytes + databaseBytes,
  };
};

const send = async (services: Services, zip: ReturnType<typeof zipStream>): Promise<void> => {
  try {
    await writeExport({ store: services.store }, zip.writer);
    zip.finish();
  } catch (error) {
    zip.fail(error);
    if (error instanceof ClientLeft) return;
    const what = error instanceof Error ? error.message : String(error);
    process.stderr.write(`The export broke off: ${what}\n`);
  }
};

/** Everything at once, to take away. */
export const addExport = (app: OpenAPIHono<Environment>, services: Services): void =>
  addRoute(
    app,
    {
      method: 'get',
      path: '/api/export',
      operationId: 'exportAll',
      summary: 'Everything as plain files, in one archive',
      description:
        'Jobs with all revisions as YAML, tables as CSV, photographs as they are kept. Fettle’s import takes it in again.',
      tag: 'Server',
      query: z.strictObject({}),
      answers: {
        200: {
          description: 'The archive.',
          content: { 'application/zip': { schema: { type: 'string', format: 'binary' } } },
        },
      },
      problems: [409],
    },
    async ({ context }) => {
      const { files, bytes } = await sizeOf(services);
      if (files > mostZipFiles || bytes > mostZipBytes) throw tooMany();
      await writeDown(context, services, { what: 'all-exported' });
      const now = services.clock();
      const zip = zipStream(now);
      void send(services, zip);
      return context.body(zip.stream, 200, {
        'Content-Type': 'application/zip',
        'Content-Disposition': `attachment; filename="fettle-${now.toISOString().slice(0, 10)}.zip"`,
      });
    },
  );
